<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
    <context>
        <name>magview</name>
        <message>
            <source>Plate and screw both move the opening, only the screw moves the gap: check both again after tightening.</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>Plateau et vis déplacent tous deux l'ouverture, seule la vis déplace l'écartement : revérifier les deux après serrage.</translation>
        </message>
        <message>
            <source>tightening the lock screw carries it on by {creep}° (closer), to {angle}°</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>le serrage de la vis de blocage l'entraîne de {creep}° (plus près), jusqu'à {angle}°</translation>
        </message>
        <message>
            <source>tightening the lock screw carries the contact screw along, which would first have to stand at {value}°, {beyond}° beyond the end of its travel ({low}° to {high}°)</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>le serrage de la vis de blocage entraîne la vis de contact, qui devrait d'abord être à {value}°, {beyond}° au-delà du bout de sa course ({low}° à {high}°)</translation>
        </message>
        <message>
            <source>A largest gap of {gap} with opening at the E-gap cannot be had: {reason}.</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>Un écartement maximal de {gap} avec ouverture à l'E-gap est impossible à obtenir : {reason}.</translation>
        </message>
        <message>
            <source>Nothing to turn: {creep}; then the contacts open at the E-gap and the largest gap is {gap}.</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>Rien à tourner : {creep} ; alors les contacts s'ouvrent à l'E-gap et l'écartement maximal est {gap}.</translation>
        </message>
        <message>
            <source>tightening the lock screw carries it back by {creep}° (wider), to {angle}°</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>le serrage de la vis de blocage la ramène de {creep}° (plus écartés), jusqu'à {angle}°</translation>
        </message>
        <message>
            <source>Nothing: the contacts open at the E-gap and the largest gap is {gap}.</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>Rien : les contacts s'ouvrent à l'E-gap et l'écartement maximal est {gap}.</translation>
        </message>
        <message>
            <source>slacken the clamp screws and the lock screw</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>desserrer les vis de serrage et la vis de blocage</translation>
        </message>
        <message>
            <source>{first}, then {then}</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>{first}, puis {then}</translation>
        </message>
        <message>
            <source>{moves}, to {angle}°; {creep}</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>{moves}, jusqu'à {angle}° ; {creep}</translation>
        </message>
        <message>
            <source>{moves}; {creep}</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>{moves} ; {creep}</translation>
        </message>
        <message>
            <source>slacken the clamp screws</source>
            <extracomment>bench/advised.py, bench/describe.py</extracomment>
            <translation>desserrer les vis de serrage</translation>
        </message>
        <message>
            <source>slacken the lock screw</source>
            <extracomment>bench/advised.py, bench/describe.py</extracomment>
            <translation>desserrer la vis de blocage</translation>
        </message>
        <message>
            <source>the backplate's angle is {value}; it must be a finite number of degrees</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>l'angle du plateau est {value} ; il doit être un nombre fini de degrés</translation>
        </message>
        <message>
            <source>the contact screw's angle is {value}; it must be a finite number of degrees</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>l'angle de la vis de contact est {value} ; il doit être un nombre fini de degrés</translation>
        </message>
        <message>
            <source>the lamp's reading is {value}; it must be a finite number of degrees</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>la lecture de la lampe est {value} ; elle doit être un nombre fini de degrés</translation>
        </message>
        <message>
            <source>{to} is not a length; wear must be a finite number of millimetres</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>{to} n'est pas une longueur ; l'usure doit être un nombre fini de millimètres</translation>
        </message>
        <message>
            <source>this magneto's file gives no heel arm, so it cannot be said what a worn heel does</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>le fichier de cette magnéto n'indique pas de bras du toucheau : l'effet d'un toucheau usé ne peut être dit</translation>
        </message>
        <message>
            <source>the clamp screws are tight: slacken them before turning the backplate</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>les vis de serrage sont serrées : les desserrer avant de tourner le plateau</translation>
        </message>
        <message>
            <source>the lock screw is tight: slacken it before turning the contact screw</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>la vis de blocage est serrée : la desserrer avant de tourner la vis de contact</translation>
        </message>
        <message>
            <source>this magneto is not on an engine: open an installation first</source>
            <extracomment>bench/apply.py, bench/sureness.py, ui/uncertainty_panel.py</extracomment>
            <translation>cette magnéto n'est pas sur un moteur : ouvrir d'abord une installation</translation>
        </message>
        <message>
            <source>with this setting the contacts never open and close, so the lamp tells no timing</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>avec ce réglage, les contacts ne s'ouvrent et ne se ferment jamais : la lampe n'indique aucun calage</translation>
        </message>
        <message>
            <source>“{fault}” is not a fault of the switch lead; it is shorted, broken or tab</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>« {fault} » n'est pas un défaut du fil de masse ; il y a shorted, broken ou tab</translation>
        </message>
        <message>
            <source>the wanted timing is {value}; it must be a finite number of degrees</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>le calage voulu est {value} ; il doit être un nombre fini de degrés</translation>
        </message>
        <message>
            <source>the rotor's angle is {value}; it must be a finite number of degrees</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>l'angle du rotor est {value} ; il doit être un nombre fini de degrés</translation>
        </message>
        <message>
            <source>the clock cannot run {steps} steps; it takes 0 to {most} at a time</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>l'horloge ne peut avancer de {steps} pas ; elle en prend de 0 à {most} à la fois</translation>
        </message>
        <message>
            <source>the crank's angle is {value}; it must be a finite number of degrees</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>l'angle du vilebrequin est {value} ; il doit être un nombre fini de degrés</translation>
        </message>
        <message>
            <source>a whole turn of teeth brings the coupling back to where it was, with the finger off</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>un tour complet de dents ramène l'accouplement où il était, le doigt retiré</translation>
        </message>
        <message>
            <source>there are {most} trials already; strike one out first</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>il y a déjà {most} essais ; en rayer un d'abord</translation>
        </message>
        <message>
            <source>there is no trial {place}; there are {count}</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>il n'y a pas d'essai {place} ; il y en a {count}</translation>
        </message>
        <message>
            <source>there are {most} inspections already; strike one out first</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>il y a déjà {most} visites ; en rayer une d'abord</translation>
        </message>
        <message>
            <source>there is no inspection {place}; there are {count}</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>il n'y a pas de visite {place} ; il y en a {count}</translation>
        </message>
        <message>
            <source>{name}: is not a kept bench; its format must be "{wanted}"</source>
            <extracomment>bench/autosave.py</extracomment>
            <translation>{name} : n'est pas un banc conservé ; son format doit être « {wanted} »</translation>
        </message>
        <message>
            <source>{name}: is damaged: an inspection lacks the setting it was noted at</source>
            <extracomment>bench/autosave.py</extracomment>
            <translation>{name} : est endommagé : il manque à une visite le réglage auquel elle a été notée</translation>
        </message>
        <message>
            <source>{name}: is damaged: an angle is not a finite number</source>
            <extracomment>bench/autosave.py</extracomment>
            <translation>{name} : est endommagé : un angle n'est pas un nombre fini</translation>
        </message>
        <message>
            <source>{name}: is damaged: {reason}</source>
            <extracomment>bench/autosave.py</extracomment>
            <translation>{name} : est endommagé : {reason}</translation>
        </message>
        <message>
            <source>{name}: cannot be used: {reason}</source>
            <extracomment>bench/autosave.py</extracomment>
            <translation>{name} : est inutilisable : {reason}</translation>
        </message>
        <message>
            <source>Another magneto is on the bench: {magneto}.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Une autre magnéto est au banc : {magneto}.</translation>
        </message>
        <message>
            <source>Wear or pips of the magneto are others.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>L'usure ou les picots de la magnéto sont autres.</translation>
        </message>
        <message>
            <source>The rotor is held.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Le rotor est tenu.</translation>
        </message>
        <message>
            <source>The rotor was let go.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Le rotor a été lâché.</translation>
        </message>
        <message>
            <source>The lock screw is tight.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>La vis de blocage est serrée.</translation>
        </message>
        <message>
            <source>The lock screw is slack.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>La vis de blocage est desserrée.</translation>
        </message>
        <message>
            <source>The clamp screws are tight.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Les vis de serrage sont serrées.</translation>
        </message>
        <message>
            <source>The clamp screws are slack.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Les vis de serrage sont desserrées.</translation>
        </message>
        <message>
            <source>The switch is on.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Le contacteur est sur marche.</translation>
        </message>
        <message>
            <source>The switch is off.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Le contacteur est sur arrêt.</translation>
        </message>
        <message>
            <source>The lead's plug is in.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>La fiche du fil est branchée.</translation>
        </message>
        <message>
            <source>The lead's plug is out.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>La fiche du fil est débranchée.</translation>
        </message>
        <message>
            <source>The switch lead is in another condition.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Le fil de masse est dans un autre état.</translation>
        </message>
        <message>
            <source>The magneto flange stands in other teeth of the disc.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>La bride de la magnéto est dans d'autres dents du disque.</translation>
        </message>
        <message>
            <source>The disc stands in other teeth of the drive flange.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Le disque est dans d'autres dents de la bride d'entraînement.</translation>
        </message>
        <message>
            <source>The magneto stands for itself now.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>La magnéto est maintenant seule.</translation>
        </message>
        <message>
            <source>The magneto is on an engine now.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>La magnéto est maintenant sur un moteur.</translation>
        </message>
        <message>
            <source>The magneto is on the engine.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>La magnéto est sur le moteur.</translation>
        </message>
        <message>
            <source>The magneto is off the engine.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>La magnéto est déposée du moteur.</translation>
        </message>
        <message>
            <source>The left magneto is in view.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>La magnéto gauche est affichée.</translation>
        </message>
        <message>
            <source>The right magneto is in view.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>La magnéto droite est affichée.</translation>
        </message>
        <message>
            <source>The contacts open now.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Les contacts s'ouvrent maintenant.</translation>
        </message>
        <message>
            <source>The contacts never open now.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Les contacts ne s'ouvrent plus jamais.</translation>
        </message>
        <message>
            <source>It is within its limits now.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Elle est maintenant dans ses limites.</translation>
        </message>
        <message>
            <source>It is out of its limits now.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Elle est maintenant hors de ses limites.</translation>
        </message>
        <message>
            <source>The rotor was turned {angle} with rotation.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Le rotor a été tourné de {angle} dans le sens de rotation.</translation>
        </message>
        <message>
            <source>The rotor was turned {angle} against rotation.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Le rotor a été tourné de {angle} en sens inverse de la rotation.</translation>
        </message>
        <message>
            <source>The rotor was turned with rotation.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Le rotor a été tourné dans le sens de rotation.</translation>
        </message>
        <message>
            <source>The rotor was turned against rotation.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Le rotor a été tourné en sens inverse de la rotation.</translation>
        </message>
        <message>
            <source>The backplate was turned {angle} with rotation.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Le plateau a été tourné de {angle} dans le sens de rotation.</translation>
        </message>
        <message>
            <source>The backplate was turned {angle} against rotation.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Le plateau a été tourné de {angle} en sens inverse de la rotation.</translation>
        </message>
        <message>
            <source>The backplate was turned with rotation.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Le plateau a été tourné dans le sens de rotation.</translation>
        </message>
        <message>
            <source>The backplate was turned against rotation.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Le plateau a été tourné en sens inverse de la rotation.</translation>
        </message>
        <message>
            <source>The contact screw was turned {angle}, contacts closer.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>La vis de contact a été tournée de {angle}, contacts rapprochés.</translation>
        </message>
        <message>
            <source>The contact screw was turned {angle}, contacts wider.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>La vis de contact a été tournée de {angle}, contacts écartés.</translation>
        </message>
        <message>
            <source>The contact screw was turned, contacts closer.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>La vis de contact a été tournée, contacts rapprochés.</translation>
        </message>
        <message>
            <source>The contact screw was turned, contacts wider.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>La vis de contact a été tournée, contacts écartés.</translation>
        </message>
        <message>
            <source>The largest gap is {length} wider: {gap}.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>L'écartement maximal est plus grand de {length} : {gap}.</translation>
        </message>
        <message>
            <source>The largest gap is {length} narrower: {gap}.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>L'écartement maximal est plus petit de {length} : {gap}.</translation>
        </message>
        <message>
            <source>The largest gap is wider.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>L'écartement maximal est plus grand.</translation>
        </message>
        <message>
            <source>The largest gap is narrower.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>L'écartement maximal est plus petit.</translation>
        </message>
        <message>
            <source>The contacts open {angle} of rotor later.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Les contacts s'ouvrent {angle} de rotor plus tard.</translation>
        </message>
        <message>
            <source>The contacts open {angle} of rotor earlier.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Les contacts s'ouvrent {angle} de rotor plus tôt.</translation>
        </message>
        <message>
            <source>The contacts open later.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Les contacts s'ouvrent plus tard.</translation>
        </message>
        <message>
            <source>The contacts open earlier.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Les contacts s'ouvrent plus tôt.</translation>
        </message>
        <message>
            <source>Assumed: constant speed, linear core without losses, contacts that make and break at once, no load on the secondary while they are closed; illustrative unless the file's values are measured. At running speed this model's best opening lies past the E-gap: the maker's E-gap governs.</source>
            <extracomment>bench/curves_coil.py</extracomment>
            <translation>Hypothèses : vitesse constante, noyau linéaire sans pertes, contacts qui ferment et coupent net, secondaire sans charge tant qu'ils sont fermés ; à titre d'illustration, sauf si les valeurs du fichier sont mesurées. À la vitesse de marche, la meilleure ouverture de ce modèle est au-delà de l'E-gap : l'E-gap du constructeur fait foi.</translation>
        </message>
        <message>
            <source>put in a short inside the magneto</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>mettre un court-circuit dans la magnéto</translation>
        </message>
        <message>
            <source>take away a short inside the magneto</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>enlever un court-circuit dans la magnéto</translation>
        </message>
        <message>
            <source>put in a break in the switch lead</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>mettre une coupure dans le fil de masse</translation>
        </message>
        <message>
            <source>take away a break in the switch lead</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>enlever une coupure dans le fil de masse</translation>
        </message>
        <message>
            <source>put in a bent spring tab</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>mettre une languette ressort tordue</translation>
        </message>
        <message>
            <source>take away a bent spring tab</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>enlever une languette ressort tordue</translation>
        </message>
        <message>
            <source>let go of the rotor</source>
            <extracomment>bench/describe.py, practice/words.py</extracomment>
            <translation>lâcher le rotor</translation>
        </message>
        <message>
            <source>grow a pip of {pip_height} mm</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>former un picot de {pip_height} mm</translation>
        </message>
        <message>
            <source>wear the heel to {heel_wear} mm</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>user le toucheau à {heel_wear} mm</translation>
        </message>
        <message>
            <source>move teeth</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>déplacer des dents</translation>
        </message>
        <message>
            <source>move the magneto flange {flange} and the disc {disc}</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>déplacer la bride de la magnéto de {flange} et le disque de {disc}</translation>
        </message>
        <message>
            <source>move the magneto flange {teeth}</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>déplacer la bride de la magnéto de {teeth}</translation>
        </message>
        <message>
            <source>move the disc {teeth}</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>déplacer le disque de {teeth}</translation>
        </message>
        <message>
            <source>move the coupling</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>déplacer l'accouplement</translation>
        </message>
        <message>
            <source>place the {magneto}</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>placer : {magneto}</translation>
        </message>
        <message>
            <source>set backplate and contact screw</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>régler le plateau et la vis de contact</translation>
        </message>
        <message>
            <source>turn the rotor {angle}° against rotation</source>
            <extracomment>bench/describe.py, practice/words.py</extracomment>
            <translation>tourner le rotor de {angle}° en sens inverse de la rotation</translation>
        </message>
        <message>
            <source>hold the rotor</source>
            <extracomment>bench/describe.py, practice/words.py</extracomment>
            <translation>tenir le rotor</translation>
        </message>
        <message>
            <source>wait</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>attendre</translation>
        </message>
        <message>
            <source>note the trial at plate {backplate}°</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>noter l'essai, plateau à {backplate}°</translation>
        </message>
        <message>
            <source>note the inspection at {hours} h</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>noter la visite à {hours} h</translation>
        </message>
        <message>
            <source>strike out trial {place}</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>rayer l'essai {place}</translation>
        </message>
        <message>
            <source>strike out inspection {place}</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>rayer la visite {place}</translation>
        </message>
        <message>
            <source>turn the crank {angle}° against rotation</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>tourner le vilebrequin de {angle}° en sens inverse de la rotation</translation>
        </message>
        <message>
            <source>read the lamp: right fires {btdc}° before top dead centre</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>lire la lampe : la droite allume à {btdc}° avant le point mort haut</translation>
        </message>
        <message>
            <source>want right at {btdc}° before top dead centre</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>vouloir la droite à {btdc}° avant le point mort haut</translation>
        </message>
        <message>
            <source>paint new marks on the coupling</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>peindre de nouveaux repères sur l'accouplement</translation>
        </message>
        <message>
            <source>tighten the lock screw</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>serrer la vis de blocage</translation>
        </message>
        <message>
            <source>tighten the clamp screws</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>serrer les vis de serrage</translation>
        </message>
        <message>
            <source>turn the rotor {angle}° with rotation</source>
            <extracomment>bench/describe.py, practice/words.py</extracomment>
            <translation>tourner le rotor de {angle}° dans le sens de rotation</translation>
        </message>
        <message>
            <source>pull the switch lead's plug</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>débrancher la fiche du fil de masse</translation>
        </message>
        <message>
            <source>push in the switch lead's plug</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>brancher la fiche du fil de masse</translation>
        </message>
        <message>
            <source>switch on</source>
            <extracomment>bench/describe.py, bench/lead_picture.py, ui/class_editor_fields.py</extracomment>
            <translation>contacteur sur marche</translation>
        </message>
        <message>
            <source>switch off</source>
            <extracomment>bench/describe.py, bench/lead_picture.py, practice/advice.py, practice/goals.py</extracomment>
            <translation>contacteur sur arrêt</translation>
        </message>
        <message>
            <source>turn the crank</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>tourner le vilebrequin</translation>
        </message>
        <message>
            <source>turn the crank {angle}° with rotation</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>tourner le vilebrequin de {angle}° dans le sens de rotation</translation>
        </message>
        <message>
            <source>refit the magneto by its marks</source>
            <extracomment>bench/describe.py, practice/words.py</extracomment>
            <translation>remonter la magnéto selon ses repères</translation>
        </message>
        <message>
            <source>take the magneto off the engine</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>déposer la magnéto du moteur</translation>
        </message>
        <message>
            <source>read the lamp: left fires {btdc}° before top dead centre</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>lire la lampe : la gauche allume à {btdc}° avant le point mort haut</translation>
        </message>
        <message>
            <source>want left at {btdc}° before top dead centre</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>vouloir la gauche à {btdc}° avant le point mort haut</translation>
        </message>
        <message>
            <source>look at the left magneto</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>regarder la magnéto gauche</translation>
        </message>
        <message>
            <source>look at the right magneto</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>regarder la magnéto droite</translation>
        </message>
        <message>
            <source>contacts just open</source>
            <extracomment>bench/events.py</extracomment>
            <translation>début d'ouverture</translation>
        </message>
        <message>
            <source>contacts just close</source>
            <extracomment>bench/events.py</extracomment>
            <translation>début de fermeture</translation>
        </message>
        <message>
            <source>top of lobe</source>
            <extracomment>bench/events.py</extracomment>
            <translation>sommet</translation>
        </message>
        <message>
            <source>E-gap</source>
            <extracomment>bench/events.py, bench/own_magneto_fields.py, job/svg.py, practice/paper.py, ui/breaker_view.py, ui/plot_lift.py</extracomment>
            <translation>E-gap</translation>
        </message>
        <message>
            <source>neutral</source>
            <extracomment>bench/events.py, job/svg.py, ui/breaker_view.py</extracomment>
            <translation>neutre</translation>
        </message>
        <message>
            <source>“{kind}” is not something to stop at; there are {known}</source>
            <extracomment>bench/events.py</extracomment>
            <translation>« {kind} » n'est pas un point d'arrêt ; il y a {known}</translation>
        </message>
        <message>
            <source>Grounded by the switch, through its lead. No spark; the lamp sees “closed” whatever the contacts do.</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>À la masse par le contacteur, par son fil. Pas d'étincelle ; la lampe voit « fermé » quoi que fassent les contacts.</translation>
        </message>
        <message>
            <source>Grounded by the switch, through its lead. A short inside the magneto grounds it too. No spark; the lamp sees “closed” whatever the contacts do.</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>À la masse par le contacteur, par son fil. Un court-circuit dans la magnéto la met aussi à la masse. Pas d'étincelle ; la lampe voit « fermé » quoi que fassent les contacts.</translation>
        </message>
        <message>
            <source>Grounded by the spring tab: the plug is out. No spark; the lamp sees “closed” whatever the contacts do.</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>À la masse par la languette ressort : la fiche est débranchée. Pas d'étincelle ; la lampe voit « fermé » quoi que fassent les contacts.</translation>
        </message>
        <message>
            <source>Grounded by the spring tab: the plug is out. A short inside the magneto grounds it too. No spark; the lamp sees “closed” whatever the contacts do.</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>À la masse par la languette ressort : la fiche est débranchée. Un court-circuit dans la magnéto la met aussi à la masse. Pas d'étincelle ; la lampe voit « fermé » quoi que fassent les contacts.</translation>
        </message>
        <message>
            <source>Meter on the lead: no ground</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>Ohmmètre sur le fil : pas de masse</translation>
        </message>
        <message>
            <source>Meter: pull the plug to read the lead</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>Ohmmètre : débrancher la fiche pour mesurer le fil</translation>
        </message>
        <message>
            <source>Meter on the lead: ground</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>Ohmmètre sur le fil : masse</translation>
        </message>
        <message>
            <source>coil</source>
            <extracomment>bench/lead_picture.py, bench/told.py</extracomment>
            <translation>bobine</translation>
        </message>
        <message>
            <source>contacts</source>
            <extracomment>bench/lead_picture.py, bench/told.py, bench/words.py, practice/state.py</extracomment>
            <translation>contacts</translation>
        </message>
        <message>
            <source>plug</source>
            <extracomment>bench/lead_picture.py, bench/told.py</extracomment>
            <translation>fiche</translation>
        </message>
        <message>
            <source>lead</source>
            <extracomment>bench/lead_picture.py, bench/told.py</extracomment>
            <translation>fil</translation>
        </message>
        <message>
            <source>spring tab</source>
            <extracomment>bench/lead_picture.py, bench/told.py</extracomment>
            <translation>languette ressort</translation>
        </message>
        <message>
            <source>Grounded only by a short inside the magneto, not by the switch: no spark now, but DANGER: without the short it would be live.</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>À la masse seulement par un court-circuit dans la magnéto, pas par le contacteur : pas d'étincelle pour l'instant, mais DANGER : sans le court-circuit, elle serait active.</translation>
        </message>
        <message>
            <source>DANGER: live with the plug out: its tab does not touch the case. Any turn can fire a plug.</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>DANGER : active, fiche débranchée : sa languette ne touche pas le carter. Toute rotation peut faire donner une bougie.</translation>
        </message>
        <message>
            <source>Live: the switch is on. A turn of the propeller can fire a plug.</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>Active : le contacteur est sur marche. Un tour d'hélice peut faire donner une bougie.</translation>
        </message>
        <message>
            <source>broken inside</source>
            <extracomment>bench/lead_picture.py, ui/practice_notebook.py</extracomment>
            <translation>coupé à l'intérieur</translation>
        </message>
        <message>
            <source>short</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>court-circuit</translation>
        </message>
        <message>
            <source>DANGER: live with the switch off: the lead is broken inside. Any turn can fire a plug.</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>DANGER : active, contacteur sur arrêt : le fil est coupé à l'intérieur. Toute rotation peut faire donner une bougie.</translation>
        </message>
        <message>
            <source>{first} and {second}</source>
            <extracomment>bench/own.py</extracomment>
            <translation>{first} et {second}</translation>
        </message>
        <message>
            <source>“{text}” could not be taken: type it again</source>
            <extracomment>bench/own.py</extracomment>
            <translation>« {text} » n'a pu être pris : le saisir de nouveau</translation>
        </message>
        <message>
            <source>the magneto in this window is not complete yet: its own pages say what is missing</source>
            <extracomment>bench/own.py</extracomment>
            <translation>la magnéto de cette fenêtre n'est pas encore complète : ses pages disent ce qui manque</translation>
        </message>
        <message>
            <source>the engine in this window is not complete yet: its own pages say what is missing</source>
            <extracomment>bench/own.py</extracomment>
            <translation>le moteur de cette fenêtre n'est pas encore complet : ses pages disent ce qui manque</translation>
        </message>
        <message>
            <source>cannot be had</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>impossible à obtenir</translation>
        </message>
        <message>
            <source>Lobe 1 opens, past neutral</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Ouverture bossage 1, après le neutre</translation>
        </message>
        <message>
            <source>Off the E-gap</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Écart à l'E-gap</translation>
        </message>
        <message>
            <source>Largest gap on lobe 1</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Écartement max. au bossage 1</translation>
        </message>
        <message>
            <source>Gap of all lobes, least</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Écartement de tous les bossages, min.</translation>
        </message>
        <message>
            <source>Gap of all lobes, most</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Écartement de tous les bossages, max.</translation>
        </message>
        <message>
            <source>Contacts closed before lobe 1</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Contacts fermés avant le bossage 1</translation>
        </message>
        <message>
            <source>Contact lift at the top</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Levée des contacts au sommet</translation>
        </message>
        <message>
            <source>At the rim for 1° late</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Au bord, pour 1° de retard</translation>
        </message>
        <message>
            <source>Plate for the least gap allowed</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Plateau pour l'écartement min. permis</translation>
        </message>
        <message>
            <source>Plate for the most gap allowed</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Plateau pour l'écartement max. permis</translation>
        </message>
        <message>
            <source>Between two sparks</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Entre deux étincelles</translation>
        </message>
        <message>
            <source>Dead centres uneven by up to</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Points morts inégaux jusqu'à</translation>
        </message>
        <message>
            <source>Left before right</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Gauche avant droite</translation>
        </message>
        <message>
            <source>One tooth, at the crank</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Une dent, au vilebrequin</translation>
        </message>
        <message>
            <source>One vernier step, at the crank</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Un pas de vernier, au vilebrequin</translation>
        </message>
        <message>
            <source>Finest step, at the crank</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Pas le plus fin, au vilebrequin</translation>
        </message>
        <message>
            <source>Wanted, before top dead centre</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Voulu, avant le point mort haut</translation>
        </message>
        <message>
            <source>E-gap, at the crank</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>E-gap, au vilebrequin</translation>
        </message>
        <message>
            <source>No. 1 down at the left spark</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Descente du n° 1, étincelle gauche</translation>
        </message>
        <message>
            <source>No. 1 down at the right spark</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Descente du n° 1, étincelle droite</translation>
        </message>
        <message>
            <source>Cylinders and firing order</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Cylindres et ordre d'allumage</translation>
        </message>
        <message>
            <source>From the engine's data plate and the maker's manual.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>D'après la plaque du moteur et le manuel du constructeur.</translation>
        </message>
        <message>
            <source>Timing wanted</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Calage voulu</translation>
        </message>
        <message>
            <source>From the maker's current manual, which governs.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>D'après le manuel en vigueur du constructeur, qui fait foi.</translation>
        </message>
        <message>
            <source>Stroke and rod</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Course et bielle</translation>
        </message>
        <message>
            <source>From the manual; they tell how far the piston stands down at the timing.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>D'après le manuel ; elles disent de combien le piston est descendu au calage.</translation>
        </message>
        <message>
            <source>Link rods</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Biellettes</translation>
        </message>
        <message>
            <source>For a radial engine with a master rod. None, or not known? Leave all empty.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Pour un moteur en étoile à bielle maîtresse. Aucune, ou inconnues ? Tout laisser vide.</translation>
        </message>
        <message>
            <source>Magneto and engine</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Magnéto et moteur</translation>
        </message>
        <message>
            <source>The two that belong together: those in this window, shipped ones, or files of yours.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Les deux qui vont ensemble : ceux de cette fenêtre, fournis, ou vos fichiers.</translation>
        </message>
        <message>
            <source>Coupling and drive</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Accouplement et entraînement</translation>
        </message>
        <message>
            <source>Count the teeth on both faces of the coupling's disc; paint a mark before you begin.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Comptez les dents des deux faces du disque d'accouplement ; peignez un repère avant de commencer.</translation>
        </message>
        <message>
            <source>Name</source>
            <extracomment>bench/own_engine_fields.py, bench/own_magneto_fields.py, classroom/worksheet.py, job/parts.py, job/shift_plan.py</extracomment>
            <translation>Nom</translation>
        </message>
        <message>
            <source>What you call this engine: type, number, aircraft.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Comment vous appelez ce moteur : type, numéro, aéronef.</translation>
        </message>
        <message>
            <source>One line of up to 120 characters.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Une ligne de 120 caractères au plus.</translation>
        </message>
        <message>
            <source>Cylinders</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Cylindres</translation>
        </message>
        <message>
            <source>How many cylinders the two magnetos fire.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Combien de cylindres les deux magnétos allument.</translation>
        </message>
        <message>
            <source>A whole number.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Un nombre entier.</translation>
        </message>
        <message>
            <source>Arrangement</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Disposition</translation>
        </message>
        <message>
            <source>How the cylinders stand round the crank.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Disposition des cylindres autour du vilebrequin.</translation>
        </message>
        <message>
            <source>Only a radial engine can have link rods on a master rod.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Seul un moteur en étoile peut avoir des biellettes sur une bielle maîtresse.</translation>
        </message>
        <message>
            <source>Rotation of the crank</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Rotation du vilebrequin</translation>
        </message>
        <message>
            <source>Which way the crank turns, seen from the propeller end.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Sens de rotation du vilebrequin, vu côté hélice.</translation>
        </message>
        <message>
            <source>Clockwise or anticlockwise.</source>
            <extracomment>bench/own_engine_fields.py, bench/own_magneto_fields.py</extracomment>
            <translation>Horaire ou antihoraire.</translation>
        </message>
        <message>
            <source>Firing order</source>
            <extracomment>bench/own_engine_fields.py, practice/paper.py</extracomment>
            <translation>Ordre d'allumage</translation>
        </message>
        <message>
            <source>The cylinders in the order they fire, such as 1-3-5-2-4.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Les cylindres dans l'ordre d'allumage, par exemple 1-3-5-2-4.</translation>
        </message>
        <message>
            <source>Begins with 1 and names each cylinder once.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Commence par 1 et nomme chaque cylindre une fois.</translation>
        </message>
        <message>
            <source>Left magneto fires before top dead centre</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>La gauche allume avant le point mort haut</translation>
        </message>
        <message>
            <source>Crank degrees before top dead centre at which the left magneto should fire No. 1.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Degrés de vilebrequin avant le point mort haut où la magnéto gauche doit allumer le n° 1.</translation>
        </message>
        <message>
            <source>Larger is earlier; staggered settings, left unlike right, are allowed.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Plus grand = plus tôt ; un calage décalé, gauche et droite différentes, est permis.</translation>
        </message>
        <message>
            <source>Right magneto fires before top dead centre</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>La droite allume avant le point mort haut</translation>
        </message>
        <message>
            <source>Crank degrees before top dead centre at which the right magneto should fire No. 1.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Degrés de vilebrequin avant le point mort haut où la magnéto droite doit allumer le n° 1.</translation>
        </message>
        <message>
            <source>An engine with a single magneto has the same figure twice.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Un moteur à magnéto unique porte deux fois la même valeur.</translation>
        </message>
        <message>
            <source>Timing tolerance</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Tolérance de calage</translation>
        </message>
        <message>
            <source>How far off the wanted timing either magneto may fire, either way.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>De combien chaque magnéto peut allumer hors du calage voulu, dans un sens ou l'autre.</translation>
        </message>
        <message>
            <source>Above 0: no reading is ever exact.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Plus de 0 : aucune lecture n'est jamais exacte.</translation>
        </message>
        <message>
            <source>Synchronising tolerance</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Tolérance de synchronisation</translation>
        </message>
        <message>
            <source>How far apart the two magnetos may fire, beyond a wanted stagger.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>De combien les deux magnétos peuvent s'écarter l'une de l'autre, hors décalage voulu.</translation>
        </message>
        <message>
            <source>Stroke</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Course</translation>
        </message>
        <message>
            <source>How far the piston travels from one dead centre to the other.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Trajet du piston d'un point mort à l'autre.</translation>
        </message>
        <message>
            <source>Above 0, and below twice the rod's length.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Plus de 0, et moins de deux fois la longueur de la bielle.</translation>
        </message>
        <message>
            <source>Connecting rod</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Bielle</translation>
        </message>
        <message>
            <source>From the centre of its big end to that of its piston pin; the master rod's in a radial.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Du centre de la tête à celui de l'axe de piston ; la bielle maîtresse sur un moteur en étoile.</translation>
        </message>
        <message>
            <source>Longer than half the stroke, or the crank could not turn.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Plus longue que la demi-course, sinon le vilebrequin ne pourrait tourner.</translation>
        </message>
        <message>
            <source>Cylinder of the master rod</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Cylindre de la bielle maîtresse</translation>
        </message>
        <message>
            <source>The cylinder whose rod carries all others.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Le cylindre dont la bielle porte toutes les autres.</translation>
        </message>
        <message>
            <source>One of the engine's cylinders.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>L'un des cylindres du moteur.</translation>
        </message>
        <message>
            <source>Radius of the knuckle pins</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Rayon des axes de biellette</translation>
        </message>
        <message>
            <source>From the crank pin's centre to the pins of the link rods.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Du centre du maneton aux axes des biellettes.</translation>
        </message>
        <message>
            <source>0 or more; 0 gives evenly spaced dead centres.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>0 ou plus ; 0 donne des points morts régulièrement espacés.</translation>
        </message>
        <message>
            <source>From the knuckle pin's centre to the piston pin's.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Du centre de l'axe de biellette à celui de l'axe de piston.</translation>
        </message>
        <message>
            <source>Longer than half the stroke and the knuckle radius together.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Plus longue que la demi-course et le rayon des axes de biellette réunis.</translation>
        </message>
        <message>
            <source>Angles of the knuckle pins</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Angles des axes de biellette</translation>
        </message>
        <message>
            <source>By cylinder number, from the master rod's axis in the direction of rotation.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Par numéro de cylindre, depuis l'axe de la bielle maîtresse dans le sens de rotation.</translation>
        </message>
        <message>
            <source>One for each cylinder, or none: then they stand as the cylinders do.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Un par cylindre, ou aucun : ils sont alors placés comme les cylindres.</translation>
        </message>
        <message>
            <source>Magneto</source>
            <extracomment>bench/own_engine_fields.py, classroom/key.py, job/document.py, job/parts.py, job/sheet.py, job/shift_plan.py, practice/paper.py, spec/formats.py, ui/lamp_box.py, ui/menus.py</extracomment>
            <translation>Magnéto</translation>
        </message>
        <message>
            <source>The magneto that is mounted.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>La magnéto qui est montée.</translation>
        </message>
        <message>
            <source>A complete magneto: of this window, shipped, or a file.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Une magnéto complète : de cette fenêtre, fournie, ou un fichier.</translation>
        </message>
        <message>
            <source>Engine</source>
            <extracomment>bench/own_engine_fields.py, job/document.py, job/sheet.py, job/shift_plan.py, practice/paper.py, spec/formats.py</extracomment>
            <translation>Moteur</translation>
        </message>
        <message>
            <source>The engine that it is mounted on.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Le moteur sur lequel elle est montée.</translation>
        </message>
        <message>
            <source>A complete engine: of this window, shipped, or a file.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Un moteur complet : de cette fenêtre, fourni, ou un fichier.</translation>
        </message>
        <message>
            <source>Mounted</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Montage</translation>
        </message>
        <message>
            <source>Which of the engine's magnetos it is, seen from the pilot's seat.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Laquelle des magnétos du moteur, vue du siège du pilote.</translation>
        </message>
        <message>
            <source>Left or right of two, or the single one.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Gauche ou droite des deux, ou l'unique.</translation>
        </message>
        <message>
            <source>Teeth on the magneto's side</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Dents côté magnéto</translation>
        </message>
        <message>
            <source>Teeth of the disc's face that the magneto's flange sits in.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Dents de la face du disque où s'engage la bride de la magnéto.</translation>
        </message>
        <message>
            <source>A whole number; one more or fewer than the other side makes the finest steps.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Un nombre entier ; une de plus ou de moins que l'autre côté donne les pas les plus fins.</translation>
        </message>
        <message>
            <source>Teeth on the drive's side</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Dents côté entraînement</translation>
        </message>
        <message>
            <source>Teeth of the disc's face that the drive's flange sits in.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Dents de la face du disque où s'engage la bride d'entraînement.</translation>
        </message>
        <message>
            <source>Rotor turns per crank turn</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Tours de rotor par tour de vilebrequin</translation>
        </message>
        <message>
            <source>How fast the drive turns the rotor; cylinders over twice the poles, for a spark a pole.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Vitesse à laquelle l'entraînement tourne le rotor ; cylindres sur deux fois les pôles, pour une étincelle par pôle.</translation>
        </message>
        <message>
            <source>Above 0: count ten turns of the propeller, plugs out, to be sure.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Plus de 0 : compter dix tours d'hélice, bougies déposées, pour être sûr.</translation>
        </message>
        <message>
            <source>radial</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>en étoile</translation>
        </message>
        <message>
            <source>in line</source>
            <extracomment>bench/own_engine_fields.py, job/words.py</extracomment>
            <translation>en ligne</translation>
        </message>
        <message>
            <source>opposed</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>à plat</translation>
        </message>
        <message>
            <source>vee</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>en V</translation>
        </message>
        <message>
            <source>clockwise</source>
            <extracomment>bench/own_engine_fields.py, bench/own_magneto_fields.py, bench/words.py, classroom/drawings.py, ui/crank_view.py</extracomment>
            <translation>horaire</translation>
        </message>
        <message>
            <source>anticlockwise</source>
            <extracomment>bench/own_engine_fields.py, bench/own_magneto_fields.py, bench/words.py, classroom/drawings.py, ui/crank_view.py</extracomment>
            <translation>antihoraire</translation>
        </message>
        <message>
            <source>left</source>
            <extracomment>bench/own_engine_fields.py, classroom/key.py, job/document.py, job/words.py, ui/class_editor_fields.py, ui/class_editor_rows.py, ui/job_drift_sheet.py, ui/job_kinds.py</extracomment>
            <translation>gauche</translation>
        </message>
        <message>
            <source>right</source>
            <extracomment>bench/own_engine_fields.py, classroom/key.py, job/document.py, job/words.py, ui/class_editor_fields.py, ui/class_editor_rows.py, ui/job_kinds.py</extracomment>
            <translation>droite</translation>
        </message>
        <message>
            <source>single</source>
            <extracomment>bench/own_engine_fields.py, job/document.py, ui/class_editor_fields.py, ui/job_kinds.py</extracomment>
            <translation>unique</translation>
        </message>
        <message>
            <source>“{piece}” is not one number: separate the values by semicolons, such as 0; 90.5; 180</source>
            <extracomment>bench/own_entry.py</extracomment>
            <translation>« {piece} » n'est pas un nombre unique : séparer les valeurs par des points-virgules, par exemple 0; 90.5; 180</translation>
        </message>
        <message>
            <source>maker's manual</source>
            <extracomment>bench/own_fields.py</extracomment>
            <translation>manuel du constructeur</translation>
        </message>
        <message>
            <source>measured</source>
            <extracomment>bench/own_fields.py</extracomment>
            <translation>mesuré</translation>
        </message>
        <message>
            <source>worked out</source>
            <extracomment>bench/own_fields.py</extracomment>
            <translation>calculé</translation>
        </message>
        <message>
            <source>assumed</source>
            <extracomment>bench/own_fields.py</extracomment>
            <translation>supposé</translation>
        </message>
        <message>
            <source>from a shipped file</source>
            <extracomment>bench/own_fields.py</extracomment>
            <translation>d'un fichier fourni</translation>
        </message>
        <message>
            <source>{file}: is neither a magneto's nor an engine's nor an installation's file</source>
            <extracomment>bench/own_files.py</extracomment>
            <translation>{file} : n'est un fichier ni de magnéto, ni de moteur, ni d'installation</translation>
        </message>
        <message>
            <source>this is not complete yet: what is missing or refused is marked at its field</source>
            <extracomment>bench/own_files.py</extracomment>
            <translation>ce n'est pas encore complet : ce qui manque ou est refusé est marqué à son champ</translation>
        </message>
        <message>
            <source>{file}: holds no drafts; its format must be "{format}"</source>
            <extracomment>bench/own_files.py</extracomment>
            <translation>{file} : ne contient pas de brouillons ; son format doit être « {format} »</translation>
        </message>
        <message>
            <source>Allowed: {low} to {high}.</source>
            <extracomment>bench/own_limits.py</extracomment>
            <translation>Permis : {low} à {high}.</translation>
        </message>
        <message>
            <source>Allowed: between {low} and {high}, neither included.</source>
            <extracomment>bench/own_limits.py</extracomment>
            <translation>Permis : entre {low} et {high}, bornes exclues.</translation>
        </message>
        <message>
            <source>Allowed: above {low}, up to {high}.</source>
            <extracomment>bench/own_limits.py</extracomment>
            <translation>Permis : plus de {low}, jusqu'à {high}.</translation>
        </message>
        <message>
            <source>Allowed: {low} and more, below {high}.</source>
            <extracomment>bench/own_limits.py</extracomment>
            <translation>Permis : {low} et plus, moins de {high}.</translation>
        </message>
        <message>
            <source>What it is</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Ce que c'est</translation>
        </message>
        <message>
            <source>From the data plate and the maker's manual; no tools yet.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>D'après la plaque et le manuel du constructeur ; encore sans outils.</translation>
        </message>
        <message>
            <source>Cam and lobes</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Came et bossages</translation>
        </message>
        <message>
            <source>Degree disc on the cam, dial gauge at the heel or at the contacts.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Disque gradué sur la came, comparateur au toucheau ou aux contacts.</translation>
        </message>
        <message>
            <source>Breaker arm</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Levier du rupteur</translation>
        </message>
        <message>
            <source>Calliper or rule on the arm, taken out. With a traced lift only the contact arm is needed.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Pied à coulisse ou réglet sur le levier déposé. Avec une levée relevée, seul le bras du contact est nécessaire.</translation>
        </message>
        <message>
            <source>Contacts and screw</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Contacts et vis</translation>
        </message>
        <message>
            <source>Dial gauge on the fixed contact while the screw is turned, lock screw slack.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Comparateur sur le contact fixe pendant qu'on tourne la vis, vis de blocage desserrée.</translation>
        </message>
        <message>
            <source>Plate and setting</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Plateau et réglage</translation>
        </message>
        <message>
            <source>The scale on the plate, and the gap by blades when the contacts open exactly at the E-gap.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>La graduation du plateau, et l'écartement aux jauges quand les contacts s'ouvrent exactement à l'E-gap.</translation>
        </message>
        <message>
            <source>E-gap and limits</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>E-gap et limites</translation>
        </message>
        <message>
            <source>From the maker's current manual, which governs; radius of the rim marks by calliper.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>D'après le manuel en vigueur du constructeur, qui fait foi ; rayon des repères du bord au pied à coulisse.</translation>
        </message>
        <message>
            <source>Pull of the magnet</source>
            <extracomment>bench/own_magneto_fields.py, ui/plot_coil.py</extracomment>
            <translation>Attraction de l'aimant</translation>
        </message>
        <message>
            <source>Spring balance on an arm at the drive shaft. Not known? Leave all three empty.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Peson sur un bras à l'arbre d'entraînement. Inconnue ? Laisser les trois vides.</translation>
        </message>
        <message>
            <source>Coil</source>
            <extracomment>bench/own_magneto_fields.py, ui/plot_coil.py, ui/plot_pane.py</extracomment>
            <translation>Bobine</translation>
        </message>
        <message>
            <source>Bridge and ohmmeter at the primary, if you have them. Not known? Leave all five empty.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Pont et ohmmètre au primaire, si vous les avez. Inconnue ? Laisser les cinq vides.</translation>
        </message>
        <message>
            <source>Condition</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>État</translation>
        </message>
        <message>
            <source>What wear and handling have done. New or not known? Leave it empty.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Effets de l'usure et des manipulations. Neuve ou inconnu ? Laisser vide.</translation>
        </message>
        <message>
            <source>What you call this magneto: type, number, aircraft.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Comment vous appelez cette magnéto : type, numéro, aéronef.</translation>
        </message>
        <message>
            <source>One line of up to 120 characters, so that it fits on sheets and titles.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Une ligne de 120 caractères au plus, pour tenir sur les fiches et les titres.</translation>
        </message>
        <message>
            <source>Notes</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Notes</translation>
        </message>
        <message>
            <source>Anything that the next person should know.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Tout ce que la personne suivante devrait savoir.</translation>
        </message>
        <message>
            <source>Up to 4000 characters.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>4000 caractères au plus.</translation>
        </message>
        <message>
            <source>Rotation</source>
            <extracomment>bench/own_magneto_fields.py, job/shift_plan.py, practice/paper.py</extracomment>
            <translation>Rotation</translation>
        </message>
        <message>
            <source>Which way the rotor turns in service, seen from the drive end.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Sens de rotation du rotor en service, vu côté entraînement.</translation>
        </message>
        <message>
            <source>Clockwise or anticlockwise; the breaker end sees the mirror image.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Horaire ou antihoraire ; côté rupteur, on voit l'image inversée.</translation>
        </message>
        <message>
            <source>Poles of the rotor</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Pôles du rotor</translation>
        </message>
        <message>
            <source>How many magnet poles the rotor has: the magnet's pull holds it at as many places a turn.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Nombre de pôles magnétiques du rotor : l'aimant le retient en autant d'endroits par tour.</translation>
        </message>
        <message>
            <source>An even number, as north and south poles take turns.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Un nombre pair, car pôles nord et sud alternent.</translation>
        </message>
        <message>
            <source>Tops of the lobes</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Sommets des bossages</translation>
        </message>
        <message>
            <source>How far the cam turns from the top of lobe 1 to each top after it, in firing order.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>De combien la came tourne du sommet du bossage 1 à chaque sommet suivant, dans l'ordre d'allumage.</translation>
        </message>
        <message>
            <source>Begins with 0 and increases below 360°; neighbouring lobes must not overlap.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Commence par 0 et croît jusqu'à moins de 360° ; les bossages voisins ne doivent pas se chevaucher.</translation>
        </message>
        <message>
            <source>Cam turns per rotor turn</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Tours de came par tour de rotor</translation>
        </message>
        <message>
            <source>1 for a cam on the rotor's shaft, less for one on the distributor's shaft.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>1 pour une came sur l'arbre du rotor, moins pour une sur l'arbre du distributeur.</translation>
        </message>
        <message>
            <source>Counted by turning the rotor ten times by hand.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Compter en tournant le rotor dix fois à la main.</translation>
        </message>
        <message>
            <source>The lift is known as</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>La levée est connue par</translation>
        </message>
        <message>
            <source>Either a lobe drawn by a law of motion, or a table of lift traced with a gauge.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Soit un bossage tracé selon une loi de mouvement, soit une table de levée relevée au comparateur.</translation>
        </message>
        <message>
            <source>A traced lift needs fewer sizes of the arm; a drawn one needs fewer readings.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Une levée relevée demande moins de cotes du levier ; un bossage tracé, moins de lectures.</translation>
        </message>
        <message>
            <source>Base circle's radius</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Rayon du cercle de base</translation>
        </message>
        <message>
            <source>From the cam's centre to its low part: half of what a calliper reads across it.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Du centre de la came à sa partie basse : la moitié de ce que lit un pied à coulisse en travers.</translation>
        </message>
        <message>
            <source>Above 0; with the heel's radius it must be within the arm's reach.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Plus de 0 ; avec le rayon du toucheau, il doit être à portée du levier.</translation>
        </message>
        <message>
            <source>Height of the lobe</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Hauteur du bossage</translation>
        </message>
        <message>
            <source>How much further from the centre the top stands than the low part.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>De combien le sommet est plus loin du centre que la partie basse.</translation>
        </message>
        <message>
            <source>Its lift at the contacts must exceed the gap, or they would never close.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Sa levée aux contacts doit dépasser l'écartement, sinon ils ne se fermeraient jamais.</translation>
        </message>
        <message>
            <source>Rise</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Montée</translation>
        </message>
        <message>
            <source>Cam degrees from the low part to the top, on the side that meets the heel first.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Degrés de came de la partie basse au sommet, du côté qui rencontre d'abord le toucheau.</translation>
        </message>
        <message>
            <source>Rise, dwell and fall together must fit between two tops.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Montée, palier et descente doivent tenir ensemble entre deux sommets.</translation>
        </message>
        <message>
            <source>Flat at the top</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Palier au sommet</translation>
        </message>
        <message>
            <source>Cam degrees over which the lobe stays at its full height.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Degrés de came où le bossage reste à pleine hauteur.</translation>
        </message>
        <message>
            <source>May be 0; rise, dwell and fall together must fit between two tops.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Peut être 0 ; montée, palier et descente doivent tenir ensemble entre deux sommets.</translation>
        </message>
        <message>
            <source>Fall</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Descente</translation>
        </message>
        <message>
            <source>Cam degrees from the top down to the low part again.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Degrés de came du sommet à la partie basse suivante.</translation>
        </message>
        <message>
            <source>Law of motion</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Loi de mouvement</translation>
        </message>
        <message>
            <source>How the lobe's height grows along the rise; take modified sine if nobody knows.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Comment la hauteur du bossage croît dans la montée ; prendre le sinus modifié si nul ne sait.</translation>
        </message>
        <message>
            <source>One of the standard laws: they differ little near the middle of the flank.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>L'une des lois usuelles : elles diffèrent peu vers le milieu du flanc.</translation>
        </message>
        <message>
            <source>Angles of the traced lift</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Angles de la levée relevée</translation>
        </message>
        <message>
            <source>Cam degrees from the lobe's top, before it below 0, as many as there are lifts.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Degrés de came depuis le sommet du bossage, négatifs avant lui, autant que de levées.</translation>
        </message>
        <message>
            <source>Five values or more that increase; 0 lies on the top.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Cinq valeurs ou plus, croissantes ; 0 est au sommet.</translation>
        </message>
        <message>
            <source>Lifts at the contacts</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Levées aux contacts</translation>
        </message>
        <message>
            <source>How far the moving contact is lifted at each of those angles.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>De combien le contact mobile est levé à chacun de ces angles.</translation>
        </message>
        <message>
            <source>Begins and ends with 0, rises to one top and falls again without dips.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Commence et finit par 0, monte à un sommet et redescend sans creux.</translation>
        </message>
        <message>
            <source>Pivot to contact</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Pivot au contact</translation>
        </message>
        <message>
            <source>From the pivot's centre to the middle of the moving contact.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Du centre du pivot au milieu du contact mobile.</translation>
        </message>
        <message>
            <source>Above 0: it tells how much the contacts lift when the heel does.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Plus de 0 : dit de combien les contacts se lèvent quand le toucheau se lève.</translation>
        </message>
        <message>
            <source>Pivot to heel</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Pivot au toucheau</translation>
        </message>
        <message>
            <source>From the pivot's centre to the centre of the heel's rounding.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Du centre du pivot au centre de l'arrondi du toucheau.</translation>
        </message>
        <message>
            <source>Such that the heel reaches the cam, from its low part to the lobe's top.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Telle que le toucheau atteigne la came, de la partie basse au sommet du bossage.</translation>
        </message>
        <message>
            <source>Pivot to cam</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Pivot à la came</translation>
        </message>
        <message>
            <source>From the pivot's centre to the cam's centre.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Du centre du pivot au centre de la came.</translation>
        </message>
        <message>
            <source>The pivot must stand outside the lobe's top.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Le pivot doit être hors du sommet du bossage.</translation>
        </message>
        <message>
            <source>Rounding of the heel</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Arrondi du toucheau</translation>
        </message>
        <message>
            <source>Radius of the rubbing face that rides on the cam.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Rayon de la face frottante qui suit la came.</translation>
        </message>
        <message>
            <source>Not so large that it would ride over a hollow of the cam.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Pas si grand qu'elle passerait par-dessus un creux de la came.</translation>
        </message>
        <message>
            <source>Pivot stands</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Place du pivot</translation>
        </message>
        <message>
            <source>Behind: the turning cam passes the pivot first and then the heel, which trails.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Derrière : la came en rotation passe d'abord le pivot, puis le toucheau, qui est traîné.</translation>
        </message>
        <message>
            <source>Behind or ahead: it decides which way the heel wanders along the cam.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Derrière ou devant : cela décide du sens où le toucheau se déplace sur la came.</translation>
        </message>
        <message>
            <source>Pivot's place in the drawing</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Place du pivot dans le dessin</translation>
        </message>
        <message>
            <source>Clockwise from the top, seen from the breaker end with the plate at 0.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Dans le sens horaire depuis le haut, vu côté rupteur, plateau à 0.</translation>
        </message>
        <message>
            <source>Any angle: only the drawing needs it, no reading does.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Un angle quelconque : seul le dessin en a besoin, aucune lecture.</translation>
        </message>
        <message>
            <source>Contact screw</source>
            <extracomment>bench/own_magneto_fields.py, job/parts.py, practice/paper.py</extracomment>
            <translation>Vis de contact</translation>
        </message>
        <message>
            <source>What the screw does: turn an eccentric, or drive the contact by its thread.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Ce que fait la vis : tourner un excentrique, ou pousser le contact par son filet.</translation>
        </message>
        <message>
            <source>Eccentric or threaded.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>À excentrique ou filetée.</translation>
        </message>
        <message>
            <source>Throw of the eccentric</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Excentricité</translation>
        </message>
        <message>
            <source>How far the fixed contact moves from the middle when the screw turns a quarter.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>De combien le contact fixe s'écarte du milieu quand la vis fait un quart de tour.</translation>
        </message>
        <message>
            <source>Above 0: half of the whole to and fro.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Plus de 0 : la moitié du va-et-vient entier.</translation>
        </message>
        <message>
            <source>Lead of the thread</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Pas du filet</translation>
        </message>
        <message>
            <source>How far the fixed contact moves in one whole turn of the screw.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>De combien le contact fixe se déplace en un tour entier de la vis.</translation>
        </message>
        <message>
            <source>Above 0.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Plus de 0.</translation>
        </message>
        <message>
            <source>Screw's travel, towards wider</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Course de la vis, en écartant</translation>
        </message>
        <message>
            <source>How far the screw can be turned from its middle so that the contacts open.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>De combien la vis peut tourner depuis son milieu en ouvrant les contacts.</translation>
        </message>
        <message>
            <source>0 or below: the middle, 0, must lie within the travel.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>0 ou moins : le milieu, 0, doit être dans la course.</translation>
        </message>
        <message>
            <source>Screw's travel, towards closer</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Course de la vis, en rapprochant</translation>
        </message>
        <message>
            <source>How far the screw can be turned from its middle so that the contacts close.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>De combien la vis peut tourner depuis son milieu en fermant les contacts.</translation>
        </message>
        <message>
            <source>0 or above: the middle, 0, must lie within the travel.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>0 ou plus : le milieu, 0, doit être dans la course.</translation>
        </message>
        <message>
            <source>Contacts come closer</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Contacts rapprochés</translation>
        </message>
        <message>
            <source>Which way the screw is turned to bring them closer, looking at its head.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Sens où tourner la vis pour les rapprocher, en regardant sa tête.</translation>
        </message>
        <message>
            <source>Plate against rotation, to</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Plateau en sens inverse, jusqu'à</translation>
        </message>
        <message>
            <source>How far the slots let the plate turn against the cam's rotation, below 0.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>De combien les lumières laissent tourner le plateau contre la rotation de la came, négatif.</translation>
        </message>
        <message>
            <source>Below the other end.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Inférieur à l'autre butée.</translation>
        </message>
        <message>
            <source>Plate with rotation, to</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Plateau dans le sens, jusqu'à</translation>
        </message>
        <message>
            <source>How far the slots let the plate turn with the cam's rotation, above 0.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>De combien les lumières laissent tourner le plateau dans le sens de la came, positif.</translation>
        </message>
        <message>
            <source>Above the other end.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Supérieur à l'autre butée.</translation>
        </message>
        <message>
            <source>Plate as set</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Plateau au réglage</translation>
        </message>
        <message>
            <source>Where the plate stood in a setting that opened exactly at the E-gap, screw at 0.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Où était le plateau dans un réglage ouvrant exactement à l'E-gap, vis à 0.</translation>
        </message>
        <message>
            <source>Within the plate's slots.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Dans les lumières du plateau.</translation>
        </message>
        <message>
            <source>Gap as set</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Écartement au réglage</translation>
        </message>
        <message>
            <source>The largest gap that this setting had, by blades on lobe 1.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>L'écartement maximal de ce réglage, aux jauges, au bossage 1.</translation>
        </message>
        <message>
            <source>Below the contact lift at the lobe's top, or the contacts would never close.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Moins que la levée des contacts au sommet du bossage, sinon les contacts ne se fermeraient jamais.</translation>
        </message>
        <message>
            <source>Rotor degrees past neutral at which the contacts should open.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Degrés de rotor après le neutre où les contacts doivent s'ouvrir.</translation>
        </message>
        <message>
            <source>Above 0 and short of full register, half of the way to the next neutral.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Plus de 0 et avant le plein alignement, à mi-chemin du neutre suivant.</translation>
        </message>
        <message>
            <source>Smallest gap allowed</source>
            <extracomment>bench/own_magneto_fields.py, job/parts.py</extracomment>
            <translation>Écartement min. permis</translation>
        </message>
        <message>
            <source>The maker's lower limit of the largest gap.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>La limite inférieure du constructeur pour l'écartement maximal.</translation>
        </message>
        <message>
            <source>Below the upper limit.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Sous la limite supérieure.</translation>
        </message>
        <message>
            <source>Largest gap allowed</source>
            <extracomment>bench/own_magneto_fields.py, job/parts.py</extracomment>
            <translation>Écartement max. permis</translation>
        </message>
        <message>
            <source>The maker's upper limit of the largest gap.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>La limite supérieure du constructeur pour l'écartement maximal.</translation>
        </message>
        <message>
            <source>Above the lower limit.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Au-dessus de la limite inférieure.</translation>
        </message>
        <message>
            <source>Radius of the rim marks</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Rayon des repères du bord</translation>
        </message>
        <message>
            <source>From the cam's centre to the marks that the straightedge is laid against.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Du centre de la came aux repères contre lesquels on pose le réglet.</translation>
        </message>
        <message>
            <source>Above 0: it turns degrees into what is seen at the rim.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Plus de 0 : il convertit les degrés en ce qui se voit au bord.</translation>
        </message>
        <message>
            <source>Tolerance at the marks</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Tolérance aux repères</translation>
        </message>
        <message>
            <source>How far beside the mark the straightedge may point when the contacts open.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>De combien le réglet peut viser à côté du repère quand les contacts s'ouvrent.</translation>
        </message>
        <message>
            <source>Above 0: the maker's figure, or the width of the mark.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Plus de 0 : la valeur du constructeur, ou la largeur du repère.</translation>
        </message>
        <message>
            <source>Greatest pull</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Attraction maximale</translation>
        </message>
        <message>
            <source>Torque needed to turn the rotor out of neutral at its worst place.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Couple nécessaire pour sortir le rotor du neutre à son pire endroit.</translation>
        </message>
        <message>
            <source>0 or more: force times arm.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>0 ou plus : force fois bras.</translation>
        </message>
        <message>
            <source>Inertia of the rotor</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Inertie du rotor</translation>
        </message>
        <message>
            <source>How sluggish the rotor is, with what hangs on its shaft.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Inertie du rotor, avec ce que porte son arbre.</translation>
        </message>
        <message>
            <source>Above 0, or it would swing without end of speed.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Plus de 0, sinon il oscillerait à une vitesse sans fin.</translation>
        </message>
        <message>
            <source>Damping</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Amortissement</translation>
        </message>
        <message>
            <source>Friction that grows with speed: what brings the swing to rest.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Frottement qui croît avec la vitesse : ce qui arrête l'oscillation.</translation>
        </message>
        <message>
            <source>0 or more; only the swing on the screen needs it.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>0 ou plus ; seule l'oscillation à l'écran en a besoin.</translation>
        </message>
        <message>
            <source>Turns of the primary</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Spires du primaire</translation>
        </message>
        <message>
            <source>How many turns of thick wire the primary winding has.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Nombre de spires de gros fil de l'enroulement primaire.</translation>
        </message>
        <message>
            <source>1 or more.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>1 ou plus.</translation>
        </message>
        <message>
            <source>Inductance of the primary</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Inductance du primaire</translation>
        </message>
        <message>
            <source>Read with a bridge, the rotor at neutral and the contacts held open.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Lue au pont, rotor au neutre et contacts maintenus ouverts.</translation>
        </message>
        <message>
            <source>Resistance of the primary</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Résistance du primaire</translation>
        </message>
        <message>
            <source>Read with an ohmmeter that resolves hundredths, leads taken off the reading.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Lue à un ohmmètre au centième, résistance des cordons déduite.</translation>
        </message>
        <message>
            <source>0 or more.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>0 ou plus.</translation>
        </message>
        <message>
            <source>Greatest flux</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Flux maximal</translation>
        </message>
        <message>
            <source>Flux through the core at full register.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Flux dans le noyau au plein alignement.</translation>
        </message>
        <message>
            <source>0 or more; illustrative unless it was measured.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>0 ou plus ; à titre d'illustration, sauf mesure.</translation>
        </message>
        <message>
            <source>Third harmonic of the flux</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Troisième harmonique du flux</translation>
        </message>
        <message>
            <source>How far the flux departs from a plain sine: 0 is a plain one.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>De combien le flux s'écarte d'un sinus simple : 0, sinus simple.</translation>
        </message>
        <message>
            <source>Between −1 and 1; illustrative unless it was measured.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Entre −1 et 1 ; à titre d'illustration, sauf mesure.</translation>
        </message>
        <message>
            <source>Heel worn by</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Usure du toucheau</translation>
        </message>
        <message>
            <source>How much of the rubbing face has gone since new.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Ce qui manque à la face frottante depuis le neuf.</translation>
        </message>
        <message>
            <source>0 or more; needs the length from pivot to heel, to know what wear does.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>0 ou plus ; demande la longueur du pivot au toucheau, pour savoir l'effet de l'usure.</translation>
        </message>
        <message>
            <source>Pip on the contacts</source>
            <extracomment>bench/own_magneto_fields.py, job/parts.py, practice/debrief.py</extracomment>
            <translation>Picot sur les contacts</translation>
        </message>
        <message>
            <source>How high metal has built up on one contact: a blade feels so much less gap.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Hauteur du métal accumulé sur un contact : une jauge sent autant d'écartement en moins.</translation>
        </message>
        <message>
            <source>Lobes late by</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Retard des bossages</translation>
        </message>
        <message>
            <source>How far each lobe stands from its place, in cam degrees, late above 0.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>De combien chaque bossage est décalé de sa place, en degrés de came, retard positif.</translation>
        </message>
        <message>
            <source>As many values as there are lobes, or none; lobes must not overlap.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Autant de valeurs que de bossages, ou aucune ; les bossages ne doivent pas se chevaucher.</translation>
        </message>
        <message>
            <source>Lobes high by</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Surhauteur des bossages</translation>
        </message>
        <message>
            <source>How much more than lobe 1 as new each lobe lifts the contacts.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>De combien chaque bossage lève les contacts de plus que le bossage 1 neuf.</translation>
        </message>
        <message>
            <source>As many values as there are lobes, or none; some lift must be left.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Autant de valeurs que de bossages, ou aucune ; il doit rester une levée.</translation>
        </message>
        <message>
            <source>Screw creeps by</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Glissement de la vis</translation>
        </message>
        <message>
            <source>How far tightening the lock screw carries the contact screw along, closer above 0.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>De combien serrer la vis de blocage entraîne la vis de contact, positif en rapprochant.</translation>
        </message>
        <message>
            <source>Small: a quarter turn would be a broken screw.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Petit : un quart de tour serait une vis cassée.</translation>
        </message>
        <message>
            <source>Play of the coupling</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Jeu de l'accouplement</translation>
        </message>
        <message>
            <source>How far the rotor can be rocked with the drive held still.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>De combien le rotor peut basculer, entraînement tenu immobile.</translation>
        </message>
        <message>
            <source>a law of motion</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>une loi de mouvement</translation>
        </message>
        <message>
            <source>a traced table</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>une table relevée</translation>
        </message>
        <message>
            <source>harmonic</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>harmonique</translation>
        </message>
        <message>
            <source>cycloidal</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>cycloïdale</translation>
        </message>
        <message>
            <source>polynomial 3-4-5</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>polynomiale 3-4-5</translation>
        </message>
        <message>
            <source>polynomial 4-5-6-7</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>polynomiale 4-5-6-7</translation>
        </message>
        <message>
            <source>modified sine</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>sinus modifié</translation>
        </message>
        <message>
            <source>modified trapezoid</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>trapèze modifié</translation>
        </message>
        <message>
            <source>behind the heel</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>derrière le toucheau</translation>
        </message>
        <message>
            <source>ahead of the heel</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>devant le toucheau</translation>
        </message>
        <message>
            <source>turns an eccentric</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>tourne un excentrique</translation>
        </message>
        <message>
            <source>is threaded</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>est filetée</translation>
        </message>
        <message>
            <source>evenly spaced, one a spark of the rotor's turns</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>régulièrement espacés, un par étincelle des tours du rotor</translation>
        </message>
        <message>
            <source>poles over lobes, for a spark at every pole</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>pôles sur bossages, pour une étincelle à chaque pôle</translation>
        </message>
        <message>
            <source>cylinders over twice the poles</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>cylindres sur deux fois les pôles</translation>
        </message>
        <message>
            <source>connecting rod less the knuckle pins' radius</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>bielle moins le rayon des axes de biellette</translation>
        </message>
        <message>
            <source>one trial on the bench</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>un essai au banc</translation>
        </message>
        <message>
            <source>{count} trials on the bench</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>{count} essais au banc</translation>
        </message>
        <message>
            <source>there are no trials on the bench: note some on its page Trials first</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>il n'y a pas d'essais au banc : en noter d'abord à sa page Essais</translation>
        </message>
        <message>
            <source>trials correct a complete magneto: begin from a shipped one and fill in what is known</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>les essais corrigent une magnéto complète : partir d'une fournie et saisir ce qui est connu</translation>
        </message>
        <message>
            <source>give the poles of the rotor and the cam's turns per rotor turn first</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>donner d'abord les pôles du rotor et les tours de came par tour de rotor</translation>
        </message>
        <message>
            <source>poles over the cam's turns per rotor turn is {lobes}; it must be a whole number from 1 to 36</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>les pôles sur les tours de came par tour de rotor font {lobes} ; ce doit être un nombre entier de 1 à 36</translation>
        </message>
        <message>
            <source>give the poles of the rotor and the tops of the lobes first</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>donner d'abord les pôles du rotor et les sommets des bossages</translation>
        </message>
        <message>
            <source>give the connecting rod and the knuckle pins' radius first</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>donner d'abord la bielle et le rayon des axes de biellette</translation>
        </message>
        <message>
            <source>this magneto is not on an engine</source>
            <extracomment>bench/state.py, job/feeds.py, practice/actions.py</extracomment>
            <translation>cette magnéto n'est pas sur un moteur</translation>
        </message>
        <message>
            <source>with this setting the contacts never open and close, so there is nothing to read</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>avec ce réglage, les contacts ne s'ouvrent et ne se ferment jamais : il n'y a rien à lire</translation>
        </message>
        <message>
            <source>Reading the offset</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>Lecture du décalage</translation>
        </message>
        <message>
            <source>Straightedge</source>
            <extracomment>bench/sureness.py, ui/class_editor_fields.py, ui/practice_sight.py</extracomment>
            <translation>Réglet</translation>
        </message>
        <message>
            <source>Feeler blades</source>
            <extracomment>bench/sureness.py, ui/practice_tray.py</extracomment>
            <translation>Jauges d'épaisseur</translation>
        </message>
        <message>
            <source>Drag of the blade</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>Frottement de la jauge</translation>
        </message>
        <message>
            <source>Opening shown by</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>Ouverture indiquée par</translation>
        </message>
        <message>
            <source>Turning the rotor</source>
            <extracomment>bench/sureness.py, ui/practice_sight.py</extracomment>
            <translation>Rotation du rotor</translation>
        </message>
        <message>
            <source>Turning the crank</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>Rotation du vilebrequin</translation>
        </message>
        <message>
            <source>Crank disc</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>Disque du vilebrequin</translation>
        </message>
        <message>
            <source>Play</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>Jeu</translation>
        </message>
        <message>
            <source>Tightening</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>Serrage</translation>
        </message>
        <message>
            <source>{name}: {value} ± {spread} (k = {k}); limits {low} to {high}: {percent} likely within them.</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>{name} : {value} ± {spread} (k = {k}) ; limites {low} à {high} : {percent} de chances d'y être.</translation>
        </message>
        <message>
            <source>What matters most: {name}, {share} of the variance ({source}).</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>Ce qui compte le plus : {name}, {share} de la variance ({source}).</translation>
        </message>
        <message>
            <source>With {instead} instead of {was}: {after} likely all in limits, now {before}.</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>Avec {instead} au lieu de {was} : {after} de chances d'être dans toutes les limites, {before} maintenant.</translation>
        </message>
        <message>
            <source>under 1 %</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>moins de 1 %</translation>
        </message>
        <message>
            <source>over 99 %</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>plus de 99 %</translation>
        </message>
        <message>
            <source>Breaker end</source>
            <extracomment>bench/told.py, ui/breaker_view.py</extracomment>
            <translation>Côté rupteur</translation>
        </message>
        <message>
            <source>Drive end: the coupling</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Côté entraînement : l'accouplement</translation>
        </message>
        <message>
            <source>Crank, timing disc and piston of No. 1</source>
            <extracomment>bench/told.py, ui/crank_view.py</extracomment>
            <translation>Vilebrequin, disque de calage et piston n° 1</translation>
        </message>
        <message>
            <source>Switch lead</source>
            <extracomment>bench/told.py, classroom/blanks.py, practice/debrief.py, ui/panes.py, ui/practice_notebook.py, ui/practice_work.py</extracomment>
            <translation>Fil de masse</translation>
        </message>
        <message>
            <source>rotor</source>
            <extracomment>bench/told.py, bench/words.py, ui/breaker_hands.py</extracomment>
            <translation>rotor</translation>
        </message>
        <message>
            <source>pole shoe</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>pièce polaire</translation>
        </message>
        <message>
            <source>cam</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>came</translation>
        </message>
        <message>
            <source>heel</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>toucheau</translation>
        </message>
        <message>
            <source>breaker arm</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>levier du rupteur</translation>
        </message>
        <message>
            <source>pivot</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>pivot</translation>
        </message>
        <message>
            <source>spring</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>ressort</translation>
        </message>
        <message>
            <source>contact screw</source>
            <extracomment>bench/told.py, bench/words.py, ui/breaker_hands.py</extracomment>
            <translation>vis de contact</translation>
        </message>
        <message>
            <source>lock screw</source>
            <extracomment>bench/told.py, bench/words.py, ui/setting_panel.py</extracomment>
            <translation>vis de blocage</translation>
        </message>
        <message>
            <source>backplate</source>
            <extracomment>bench/told.py, bench/words.py, ui/breaker_hands.py</extracomment>
            <translation>plateau</translation>
        </message>
        <message>
            <source>clamp screw</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>vis de serrage</translation>
        </message>
        <message>
            <source>step</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>épaulement</translation>
        </message>
        <message>
            <source>rim mark</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>repère du bord</translation>
        </message>
        <message>
            <source>A magnet whose poles alternate round it; the engine turns it.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Aimant dont les pôles alternent sur le pourtour ; le moteur le tourne.</translation>
        </message>
        <message>
            <source>Iron that leads the magnet's field through the coil's core and back.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Fer qui mène le champ de l'aimant à travers le noyau de la bobine et retour.</translation>
        </message>
        <message>
            <source>It turns with the rotor, or in a fixed ratio to it, and has a lobe for each spark.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Elle tourne avec le rotor, ou dans un rapport fixe avec lui, et a un bossage par étincelle.</translation>
        </message>
        <message>
            <source>The block on the breaker arm that rides on the cam; it wears.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Le bloc du levier du rupteur qui suit la came ; il s'use.</translation>
        </message>
        <message>
            <source>It swings about its pivot and carries the moving contact.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Il bascule autour de son pivot et porte le contact mobile.</translation>
        </message>
        <message>
            <source>The pin the breaker arm swings about.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>L'axe autour duquel bascule le levier du rupteur.</translation>
        </message>
        <message>
            <source>It presses the arm towards the cam and closes the contacts.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Il pousse le levier vers la came et ferme les contacts.</translation>
        </message>
        <message>
            <source>As they part, the primary current breaks and the spark jumps.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Quand ils se séparent, le courant primaire est coupé et l'étincelle jaillit.</translation>
        </message>
        <message>
            <source>It moves the fixed contact: nearer or further off, later or earlier.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Elle déplace le contact fixe : plus près ou plus loin, plus tard ou plus tôt.</translation>
        </message>
        <message>
            <source>It holds the contact screw, and may carry it along as it is tightened.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Elle tient la vis de contact et peut l'entraîner au serrage.</translation>
        </message>
        <message>
            <source>It carries contacts and arm; turned about the cam it shifts the opening alone.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Il porte contacts et levier ; tourné autour de la came, il ne déplace que l'ouverture.</translation>
        </message>
        <message>
            <source>The clamp screws hold the backplate in its slots.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Les vis de serrage tiennent le plateau dans ses lumières.</translation>
        </message>
        <message>
            <source>An edge on the cam along which a straightedge is laid.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Une arête de la came le long de laquelle on pose un réglet.</translation>
        </message>
        <message>
            <source>With the straightedge in line with it, the rotor stands at the E-gap.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Le réglet aligné dessus, le rotor est à l'E-gap.</translation>
        </message>
        <message>
            <source>drive flange</source>
            <extracomment>bench/told.py, bench/words.py, job/coupling_picture.py, ui/drive_view.py</extracomment>
            <translation>bride d'entraînement</translation>
        </message>
        <message>
            <source>disc</source>
            <extracomment>bench/told.py, bench/words.py, job/coupling_picture.py, practice/state.py, ui/drive_view.py</extracomment>
            <translation>disque</translation>
        </message>
        <message>
            <source>magneto flange</source>
            <extracomment>bench/told.py, bench/words.py, job/coupling_picture.py, ui/drive_view.py</extracomment>
            <translation>bride de la magnéto</translation>
        </message>
        <message>
            <source>painted mark</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>repère peint</translation>
        </message>
        <message>
            <source>The engine turns it; its slots take the disc's outer teeth.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Le moteur la tourne ; ses encoches reçoivent les dents extérieures du disque.</translation>
        </message>
        <message>
            <source>It joins both flanges, with one more tooth or fewer on one face than on the other.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Il joint les deux brides, avec une dent de plus ou de moins sur une face que sur l'autre.</translation>
        </message>
        <message>
            <source>It sits on the rotor's shaft, in the disc's inner teeth.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Elle est sur l'arbre du rotor, dans les dents intérieures du disque.</translation>
        </message>
        <message>
            <source>Paint across all three before anything is taken apart.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>À peindre en travers des trois avant tout démontage.</translation>
        </message>
        <message>
            <source>crank</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>vilebrequin</translation>
        </message>
        <message>
            <source>connecting rod</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>bielle</translation>
        </message>
        <message>
            <source>piston pin</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>axe de piston</translation>
        </message>
        <message>
            <source>piston</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>piston</translation>
        </message>
        <message>
            <source>cylinder</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>cylindre</translation>
        </message>
        <message>
            <source>timing disc</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>disque de calage</translation>
        </message>
        <message>
            <source>pointer</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>index</translation>
        </message>
        <message>
            <source>It turns once for each up and down of the piston.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Il fait un tour par aller et retour du piston.</translation>
        </message>
        <message>
            <source>It joins crank and piston.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Elle joint vilebrequin et piston.</translation>
        </message>
        <message>
            <source>The rod swings about it in the piston.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>La bielle bascule autour de lui dans le piston.</translation>
        </message>
        <message>
            <source>About top dead centre it hardly moves while the crank does.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Autour du point mort haut, il bouge à peine alors que le vilebrequin tourne.</translation>
        </message>
        <message>
            <source>No. 1 is the one that the timing is read on.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>C'est sur le n° 1 que se lit le calage.</translation>
        </message>
        <message>
            <source>Degrees before and after top dead centre, set to zero by the piston stop.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Degrés avant et après le point mort haut, mis à zéro par la butée de piston.</translation>
        </message>
        <message>
            <source>Fixed to the engine: it reads the disc.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Fixé au moteur : il lit le disque.</translation>
        </message>
        <message>
            <source>switch</source>
            <extracomment>bench/told.py</extracomment>
            <translation>contacteur</translation>
        </message>
        <message>
            <source>The primary winding, grounded at one end.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>L'enroulement primaire, à la masse à un bout.</translation>
        </message>
        <message>
            <source>Closed, they carry the primary current; open, they break it.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Fermés, ils portent le courant primaire ; ouverts, ils le coupent.</translation>
        </message>
        <message>
            <source>It joins the lead to the magneto, and pulled, lets the spring tab touch the case.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Elle joint le fil à la magnéto et, débranchée, laisse la languette ressort toucher le carter.</translation>
        </message>
        <message>
            <source>With the plug out it grounds the coil on the case – if it touches.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Fiche débranchée, elle met la bobine à la masse du carter – si elle touche.</translation>
        </message>
        <message>
            <source>The wire to the switch; broken inside, it leaves the magneto live.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Le fil vers le contacteur ; coupé à l'intérieur, il laisse la magnéto active.</translation>
        </message>
        <message>
            <source>Off, it is closed and grounds the primary: no spark.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Sur arrêt, il est fermé et met le primaire à la masse : pas d'étincelle.</translation>
        </message>
        <message>
            <source>Check the marks: disc in line with the drive flange's mark, magneto flange in line with the disc's mark.</source>
            <extracomment>bench/tooth_steps.py</extracomment>
            <translation>Vérifier les repères : disque en face du repère de la bride d'entraînement, bride de la magnéto en face du repère du disque.</translation>
        </message>
        <message>
            <source>Check the marks: disc in line with the drive flange's mark, magneto flange {flange} from the disc's mark.</source>
            <extracomment>bench/tooth_steps.py</extracomment>
            <translation>Vérifier les repères : disque en face du repère de la bride d'entraînement, bride de la magnéto à {flange} du repère du disque.</translation>
        </message>
        <message>
            <source>Check the marks: disc {disc} from the drive flange's mark, magneto flange in line with the disc's mark.</source>
            <extracomment>bench/tooth_steps.py</extracomment>
            <translation>Vérifier les repères : disque à {disc} du repère de la bride d'entraînement, bride de la magnéto en face du repère du disque.</translation>
        </message>
        <message>
            <source>Check the marks: disc {disc} from the drive flange's mark, magneto flange {flange} from the disc's mark.</source>
            <extracomment>bench/tooth_steps.py</extracomment>
            <translation>Vérifier les repères : disque à {disc} du repère de la bride d'entraînement, bride de la magnéto à {flange} du repère du disque.</translation>
        </message>
        <message>
            <source>One tooth of the magneto flange on the disc is {magneto}; of the disc on the drive flange {disc}; one with rotation at the flange and one against at the disc {both}.</source>
            <extracomment>bench/tooth_steps.py</extracomment>
            <translation>Une dent de la bride de la magnéto sur le disque vaut {magneto} ; du disque sur la bride d'entraînement {disc} ; une dans le sens de rotation à la bride et une en sens contraire au disque {both}.</translation>
        </message>
        <message>
            <source>{magneto_teeth} teeth at the magneto, {drive_teeth} at the drive. The disc's marked tooth sits in magneto slot {magneto_slots} and in drive slot {drive_slots}.</source>
            <extracomment>bench/tooth_steps.py</extracomment>
            <translation>{magneto_teeth} dents côté magnéto, {drive_teeth} côté entraînement. La dent repérée du disque est dans l'encoche {magneto_slots} de la magnéto et dans l'encoche {drive_slots} de l'entraînement.</translation>
        </message>
        <message>
            <source>Move the magneto flange {teeth} on the disc.</source>
            <extracomment>bench/tooth_steps.py</extracomment>
            <translation>Déplacer la bride de la magnéto de {teeth} sur le disque.</translation>
        </message>
        <message>
            <source>Move the disc {teeth} on the drive flange, the magneto flange with it.</source>
            <extracomment>bench/tooth_steps.py</extracomment>
            <translation>Déplacer le disque de {teeth} sur la bride d'entraînement, la bride de la magnéto avec lui.</translation>
        </message>
        <message>
            <source>{rotor}° of rotor = {crank}° of crank</source>
            <extracomment>bench/tooth_steps.py</extracomment>
            <translation>{rotor}° de rotor = {crank}° de vilebrequin</translation>
        </message>
        <message>
            <source>compensated cam: the opening is judged on lobe 1</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation>came compensée : l'ouverture est jugée au bossage 1</translation>
        </message>
        <message>
            <source>never: they stay open</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation>jamais : ils restent ouverts</translation>
        </message>
        <message>
            <source>never: they stay closed</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation>jamais : ils restent fermés</translation>
        </message>
        <message>
            <source>{offset} past</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation>{offset} après</translation>
        </message>
        <message>
            <source>{offset} short</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation>{offset} avant</translation>
        </message>
        <message>
            <source>opening of every lobe</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation>ouverture de chaque bossage</translation>
        </message>
        <message>
            <source>opening of lobe {lobes}</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation>ouverture du bossage {lobes}</translation>
        </message>
        <message>
            <source>gap of every lobe</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation>écartement de chaque bossage</translation>
        </message>
        <message>
            <source>gap of lobe {lobes}</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation>écartement du bossage {lobes}</translation>
        </message>
        <message>
            <source>After {hours} h: opens at the E-gap, largest gap {gap}; within limits.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Après {hours} h : ouverture à l'E-gap, écartement max. {gap} ; dans les limites.</translation>
        </message>
        <message>
            <source>After {hours} h: opens at the E-gap, largest gap {gap}; out of limits.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Après {hours} h : ouverture à l'E-gap, écartement max. {gap} ; hors limites.</translation>
        </message>
        <message>
            <source>After {hours} h: opens {angle} late, largest gap {gap}; within limits.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Après {hours} h : ouverture en retard de {angle}, écartement max. {gap} ; dans les limites.</translation>
        </message>
        <message>
            <source>After {hours} h: opens {angle} late, largest gap {gap}; out of limits.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Après {hours} h : ouverture en retard de {angle}, écartement max. {gap} ; hors limites.</translation>
        </message>
        <message>
            <source>After {hours} h: opens {angle} early, largest gap {gap}; within limits.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Après {hours} h : ouverture en avance de {angle}, écartement max. {gap} ; dans les limites.</translation>
        </message>
        <message>
            <source>After {hours} h: opens {angle} early, largest gap {gap}; out of limits.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Après {hours} h : ouverture en avance de {angle}, écartement max. {gap} ; hors limites.</translation>
        </message>
        <message>
            <source>Leaves its limits: {limits}.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Sort de ses limites : {limits}.</translation>
        </message>
        <message>
            <source>The blade gap closes by {rate}.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>L'écartement à la jauge se ferme de {rate}.</translation>
        </message>
        <message>
            <source>opens late</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>ouverture en retard</translation>
        </message>
        <message>
            <source>opens late after {hours} h</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>ouverture en retard après {hours} h</translation>
        </message>
        <message>
            <source>opens early</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>ouverture en avance</translation>
        </message>
        <message>
            <source>opens early after {hours} h</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>ouverture en avance après {hours} h</translation>
        </message>
        <message>
            <source>gap too small</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>écartement trop petit</translation>
        </message>
        <message>
            <source>gap too small after {hours} h</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>écartement trop petit après {hours} h</translation>
        </message>
        <message>
            <source>gap too wide</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>écartement trop grand</translation>
        </message>
        <message>
            <source>gap too wide after {hours} h</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>écartement trop grand après {hours} h</translation>
        </message>
        <message>
            <source>blade gap too small</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>écartement à la jauge trop petit</translation>
        </message>
        <message>
            <source>blade gap too small after {hours} h</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>écartement à la jauge trop petit après {hours} h</translation>
        </message>
        <message>
            <source>never opens</source>
            <extracomment>bench/wear_words.py, classroom/blanks.py, practice/debrief.py, practice/goals.py, practice/readings.py</extracomment>
            <translation>ne s'ouvre jamais</translation>
        </message>
        <message>
            <source>never opens after {hours} h</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>ne s'ouvre plus après {hours} h</translation>
        </message>
        <message>
            <source>After {hours} h the contacts would not open and close any more.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Après {hours} h, les contacts ne s'ouvriraient et ne se fermeraient plus.</translation>
        </message>
        <message>
            <source>A blade would find {gap}: it rides on the pip, {pip} high, and the true gap is wider.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Une jauge trouverait {gap} : elle porte sur le picot, haut de {pip}, et le vrai écartement est plus grand.</translation>
        </message>
        <message>
            <source>Out of limits already: {limits}. Set it first.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Déjà hors limites : {limits}. Régler d'abord.</translation>
        </message>
        <message>
            <source>At these rates nothing leaves its limits within {hours} h.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>À ces taux, rien ne sort de ses limites en {hours} h.</translation>
        </message>
        <message>
            <source>{value} per 100 h ({low} to {high}, {probability} times in 100)</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>{value} par 100 h ({low} à {high}, {probability} fois sur 100)</translation>
        </message>
        <message>
            <source>Of that the heel wears {heel}, and the pip grows {pip}.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Là-dedans, le toucheau s'use de {heel} et le picot croît de {pip}.</translation>
        </message>
        <message>
            <source>Note where it opened, too, to tell the heel's part from the pip's.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Noter aussi où elle s'ouvrait, pour distinguer la part du toucheau de celle du picot.</translation>
        </message>
        <message>
            <source>turn the backplate {angle}° with rotation (clockwise seen from the breaker end)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>tourner le plateau de {angle}° dans le sens de rotation (horaire vu côté rupteur)</translation>
        </message>
        <message>
            <source>turn the backplate {angle}° with rotation (anticlockwise seen from the breaker end)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>tourner le plateau de {angle}° dans le sens de rotation (antihoraire vu côté rupteur)</translation>
        </message>
        <message>
            <source>turn the backplate {angle}° against rotation (clockwise seen from the breaker end)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>tourner le plateau de {angle}° en sens inverse de la rotation (horaire vu côté rupteur)</translation>
        </message>
        <message>
            <source>turn the backplate {angle}° against rotation (anticlockwise seen from the breaker end)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>tourner le plateau de {angle}° en sens inverse de la rotation (antihoraire vu côté rupteur)</translation>
        </message>
        <message>
            <source>turn the backplate {angle}° against rotation</source>
            <extracomment>bench/words.py</extracomment>
            <translation>tourner le plateau de {angle}° en sens inverse de la rotation</translation>
        </message>
        <message>
            <source>turn the contact screw {angle}° clockwise (contacts closer)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>tourner la vis de contact de {angle}° dans le sens horaire (contacts rapprochés)</translation>
        </message>
        <message>
            <source>turn the contact screw {angle}° clockwise (contacts wider)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>tourner la vis de contact de {angle}° dans le sens horaire (contacts écartés)</translation>
        </message>
        <message>
            <source>turn the contact screw {angle}° anticlockwise (contacts closer)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>tourner la vis de contact de {angle}° dans le sens antihoraire (contacts rapprochés)</translation>
        </message>
        <message>
            <source>turn the contact screw {angle}° anticlockwise (contacts wider)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>tourner la vis de contact de {angle}° dans le sens antihoraire (contacts écartés)</translation>
        </message>
        <message>
            <source>{count} teeth against rotation</source>
            <extracomment>bench/words.py</extracomment>
            <translation>{count} dents en sens inverse de la rotation</translation>
        </message>
        <message>
            <source>{move} (clockwise seen from the drive end)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>{move} (horaire vu côté entraînement)</translation>
        </message>
        <message>
            <source>{move} (anticlockwise seen from the drive end)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>{move} (antihoraire vu côté entraînement)</translation>
        </message>
        <message>
            <source>{move} (clockwise seen from the breaker end)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>{move} (horaire vu côté rupteur)</translation>
        </message>
        <message>
            <source>{move} (anticlockwise seen from the breaker end)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>{move} (antihoraire vu côté rupteur)</translation>
        </message>
        <message>
            <source>{move} (clockwise)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>{move} (horaire)</translation>
        </message>
        <message>
            <source>{move} (anticlockwise)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>{move} (antihoraire)</translation>
        </message>
        <message>
            <source>direction of rotation</source>
            <extracomment>bench/words.py, job/coupling_picture.py</extracomment>
            <translation>sens de rotation</translation>
        </message>
        <message>
            <source>plate scale</source>
            <extracomment>bench/words.py</extracomment>
            <translation>graduation du plateau</translation>
        </message>
        <message>
            <source>rim</source>
            <extracomment>bench/words.py</extracomment>
            <translation>bord</translation>
        </message>
        <message>
            <source>rotor scale</source>
            <extracomment>bench/words.py</extracomment>
            <translation>graduation du rotor</translation>
        </message>
        <message>
            <source>straightedge</source>
            <extracomment>bench/words.py, practice/state.py</extracomment>
            <translation>réglet</translation>
        </message>
        <message>
            <source>turn the backplate {angle}° with rotation</source>
            <extracomment>bench/words.py</extracomment>
            <translation>tourner le plateau de {angle}° dans le sens de rotation</translation>
        </message>
        <message>
            <source>not moved</source>
            <extracomment>bench/words.py</extracomment>
            <translation>non déplacé</translation>
        </message>
        <message>
            <source>{count} teeth with rotation</source>
            <extracomment>bench/words.py</extracomment>
            <translation>{count} dents dans le sens de rotation</translation>
        </message>
        <message>
            <source>{count} with</source>
            <extracomment>bench/words.py</extracomment>
            <translation>{count} dans le sens</translation>
        </message>
        <message>
            <source>{count} against</source>
            <extracomment>bench/words.py</extracomment>
            <translation>{count} en sens inverse</translation>
        </message>
        <message>
            <source>“{text}” is not a whole number of teeth: write one such as 3, -3, {ahead} or {back} (rotation)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>« {text} » n'est pas un nombre entier de dents : en écrire un tel que 3, -3, {ahead} ou {back} (rotation)</translation>
        </message>
        <message>
            <source>1 tooth with rotation</source>
            <extracomment>bench/words.py</extracomment>
            <translation>1 dent dans le sens de rotation</translation>
        </message>
        <message>
            <source>1 tooth against rotation</source>
            <extracomment>bench/words.py</extracomment>
            <translation>1 dent en sens inverse de la rotation</translation>
        </message>
        <message>
            <source>{table}: left magneto</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>{table} : magnéto gauche</translation>
        </message>
        <message>
            <source>{mm} mm = {inch} in</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>{mm} mm = {inch} in</translation>
        </message>
        <message>
            <source>within {length}</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>à {length} près</translation>
        </message>
        <message>
            <source>{low} to {high}</source>
            <extracomment>classroom/blanks.py, job/document.py, job/words.py, practice/debrief.py, ui/trials_panel.py</extracomment>
            <translation>{low} à {high}</translation>
        </message>
        <message>
            <source>off, and meshed anew</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>déposée, et réengrenée</translation>
        </message>
        <message>
            <source>{table}: right magneto</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>{table} : magnéto droite</translation>
        </message>
        <message>
            <source>sound, and proved</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>sain, et prouvé</translation>
        </message>
        <message>
            <source>Plug out. A lead without ground while the switch is off leaves the magneto live.</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Fiche débranchée. Un fil sans masse, contacteur sur arrêt, laisse la magnéto active.</translation>
        </message>
        <message>
            <source>in line, within {length}</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>aligné, à {length} près</translation>
        </message>
        <message>
            <source>The rotor at the E-gap</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Le rotor à l'E-gap</translation>
        </message>
        <message>
            <source>Held by hand, looked at square over the straightedge, reached with rotation.</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Tenu à la main, visé d'équerre par-dessus le réglet, atteint dans le sens de rotation.</translation>
        </message>
        <message>
            <source>a pip of {length}</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>un picot de {length}</translation>
        </message>
        <message>
            <source>clean and flat</source>
            <extracomment>classroom/blanks.py, practice/instruments.py</extracomment>
            <translation>propres et plans</translation>
        </message>
        <message>
            <source>Look before measuring: a blade on a pip reads too small a gap.</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Regarder avant de mesurer : une jauge sur un picot lit un écartement trop petit.</translation>
        </message>
        <message>
            <source>{amount} mm past</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>{amount} mm après</translation>
        </message>
        <message>
            <source>{amount} mm short</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>{amount} mm avant</translation>
        </message>
        <message>
            <source>Turn with rotation. Lobe 1 opens for No. 1; the gap is measured with the heel on top of the lobe.</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Tourner dans le sens de rotation. Le bossage 1 ouvre pour le n° 1 ; l'écartement se mesure toucheau au sommet du bossage.</translation>
        </message>
        <message>
            <source>Top dead centre of No. 1</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Point mort haut du n° 1</translation>
        </message>
        <message>
            <source>Bring the piston to the stop gently, by hand, from both sides; readings after zero count as negative.</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Amener le piston à la butée en douceur, à la main, des deux côtés ; les lectures après zéro comptent en négatif.</translation>
        </message>
        <message>
            <source>Fires before top dead centre</source>
            <extracomment>classroom/blanks.py, practice/debrief.py, ui/practice_notebook.py</extracomment>
            <translation>Allume avant le point mort haut</translation>
        </message>
        <message>
            <source>{angle}° within {allowed}°</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>{angle}° à {allowed}° près</translation>
        </message>
        <message>
            <source>within {allowed}°</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>à {allowed}° près</translation>
        </message>
        <message>
            <source>Timing to the engine</source>
            <extracomment>classroom/blanks.py, ui/panes.py, ui/uncertainty_panel.py</extracomment>
            <translation>Calage sur moteur</translation>
        </message>
        <message>
            <source>Lamp and disc, approached with rotation; teeth as seen from the drive end.</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Lampe et disque, approchés dans le sens de rotation ; dents vues côté entraînement.</translation>
        </message>
        <message>
            <source>Magneto flange moved on the disc</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Bride de la magnéto déplacée sur le disque</translation>
        </message>
        <message>
            <source>Disc moved on the drive flange</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Disque déplacé sur la bride d'entraînement</translation>
        </message>
        <message>
            <source>never</source>
            <extracomment>classroom/blanks.py, practice/debrief.py</extracomment>
            <translation>jamais</translation>
        </message>
        <message>
            <source>{angle}°, on the wrong stroke</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>{angle}°, au mauvais temps</translation>
        </message>
        <message>
            <source>one never fires</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>une n'allume jamais</translation>
        </message>
        <message>
            <source>{angle}° and a turn of the crank</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>{angle}° et un tour de vilebrequin</translation>
        </message>
        <message>
            <source>ground</source>
            <extracomment>classroom/blanks.py, practice/instruments.py</extracomment>
            <translation>masse</translation>
        </message>
        <message>
            <source>no ground</source>
            <extracomment>classroom/blanks.py, practice/instruments.py</extracomment>
            <translation>pas de masse</translation>
        </message>
        <message>
            <source>the lead is broken inside</source>
            <extracomment>classroom/blanks.py, practice/goals.py</extracomment>
            <translation>le fil est coupé à l'intérieur</translation>
        </message>
        <message>
            <source>a short inside the magneto grounds it</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>un court-circuit dans la magnéto la met à la masse</translation>
        </message>
        <message>
            <source>the spring tab does not touch the case</source>
            <extracomment>classroom/blanks.py, practice/goals.py</extracomment>
            <translation>la languette ressort ne touche pas le carter</translation>
        </message>
        <message>
            <source>nothing: it is sound</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>rien : il est sain</translation>
        </message>
        <message>
            <source>Reading</source>
            <extracomment>classroom/blanks.py, job/document.py, ui/uncertainty_panel.py</extracomment>
            <translation>Lecture</translation>
        </message>
        <message>
            <source>As found</source>
            <extracomment>classroom/blanks.py, classroom/preview.py, job/document.py, job/sheet.py, practice/report.py, ui/debrief_view.py, ui/job_sources.py</extracomment>
            <translation>Tel que trouvé</translation>
        </message>
        <message>
            <source>As left</source>
            <extracomment>classroom/blanks.py, job/document.py, practice/report.py, ui/job_sources.py</extracomment>
            <translation>Tel que laissé</translation>
        </message>
        <message>
            <source>Try</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Essai</translation>
        </message>
        <message>
            <source>Straightedge from the rim mark</source>
            <extracomment>classroom/blanks.py, job/parts.py</extracomment>
            <translation>Réglet au repère du bord</translation>
        </message>
        <message>
            <source>Short of it or past it</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Avant ou après lui</translation>
        </message>
        <message>
            <source>The contacts</source>
            <extracomment>classroom/blanks.py, lessons/what-the-parts-are.json</extracomment>
            <translation>Les contacts</translation>
        </message>
        <message>
            <source>Looked at</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Examinés</translation>
        </message>
        <message>
            <source>Opening and gap, lobe by lobe</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Ouverture et écartement, par bossage</translation>
        </message>
        <message>
            <source>Lobe</source>
            <extracomment>classroom/blanks.py, job/document.py, ui/job_table.py</extracomment>
            <translation>Bossage</translation>
        </message>
        <message>
            <source>Disc reads</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Lecture du disque</translation>
        </message>
        <message>
            <source>Disc set anew</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Disque remis à zéro</translation>
        </message>
        <message>
            <source>Left magneto flange moved on the disc</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Bride de la magnéto gauche déplacée sur le disque</translation>
        </message>
        <message>
            <source>Left disc moved on the drive flange</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Disque gauche déplacé sur la bride d'entraînement</translation>
        </message>
        <message>
            <source>Meter from plug to case, switch off</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Ohmmètre, fiche au carter, contacteur sur arrêt</translation>
        </message>
        <message>
            <source>Meter from plug to case, switch on</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Ohmmètre, fiche au carter, contacteur sur marche</translation>
        </message>
        <message>
            <source>What it suffers from</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>De quoi il souffre</translation>
        </message>
        <message>
            <source>Faces of the contacts</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Faces des contacts</translation>
        </message>
        <message>
            <source>Opens from the mark, as found</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Ouverture au repère, tel que trouvé</translation>
        </message>
        <message>
            <source>Largest gap, as found</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Écartement max., tel que trouvé</translation>
        </message>
        <message>
            <source>At the stop, turned with rotation</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>À la butée, dans le sens de rotation</translation>
        </message>
        <message>
            <source>At the stop, turned against rotation</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>À la butée, en sens inverse</translation>
        </message>
        <message>
            <source>Half-way between: true top dead centre</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>À mi-chemin : vrai point mort haut</translation>
        </message>
        <message>
            <source>Left fires before top dead centre</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Gauche allume avant le point mort haut</translation>
        </message>
        <message>
            <source>Right fires before top dead centre</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Droite allume avant le point mort haut</translation>
        </message>
        <message>
            <source>Apart from one another</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Écart entre elles</translation>
        </message>
        <message>
            <source>Right magneto flange moved on the disc</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Bride de la magnéto droite déplacée sur le disque</translation>
        </message>
        <message>
            <source>Right disc moved on the drive flange</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Disque droit déplacé sur la bride d'entraînement</translation>
        </message>
        <message>
            <source>Opens from the mark, as left</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Ouverture au repère, tel que laissé</translation>
        </message>
        <message>
            <source>Largest gap, as left</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Écartement max., tel que laissé</translation>
        </message>
        <message>
            <source>0°</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>0°</translation>
        </message>
        <message>
            <source>{count} symbols; at most {most} can be checked</source>
            <extracomment>classroom/code.py</extracomment>
            <translation>{count} symboles ; au plus {most} peuvent être vérifiés</translation>
        </message>
        <message>
            <source>No code was given; it looks like 8K2M-4TXN-0QZ7-5C</source>
            <extracomment>classroom/code.py</extracomment>
            <translation>Aucun code donné ; il ressemble à 8K2M-4TXN-0QZ7-5C</translation>
        </message>
        <message>
            <source>The code “{code}” was mistyped: its check characters do not fit</source>
            <extracomment>classroom/code.py</extracomment>
            <translation>Le code « {code} » est mal saisi : ses caractères de contrôle ne concordent pas</translation>
        </message>
        <message>
            <source>Character {place} of the code is “{letter}”; codes have digits and letters without U</source>
            <extracomment>classroom/code.py</extracomment>
            <translation>Le caractère {place} du code est « {letter} » ; les codes ont des chiffres et des lettres sans U</translation>
        </message>
        <message>
            <source>The code has {count} characters; codes have at most {most}</source>
            <extracomment>classroom/code.py</extracomment>
            <translation>Le code a {count} caractères ; les codes en ont {most} au plus</translation>
        </message>
        <message>
            <source>The code is cut short: it has {count} characters</source>
            <extracomment>classroom/code.py</extracomment>
            <translation>Le code est tronqué : il a {count} caractères</translation>
        </message>
        <message>
            <source>{value} does not fit {bits} bits</source>
            <extracomment>classroom/code.py</extracomment>
            <translation>{value} ne tient pas dans {bits} bits</translation>
        </message>
        <message>
            <source>{left} bits are left, {wanted} are wanted</source>
            <extracomment>classroom/code.py</extracomment>
            <translation>il reste {left} bits, il en faut {wanted}</translation>
        </message>
        <message>
            <source>“{exercise}” is not in this set, or was done with other settings</source>
            <extracomment>classroom/desk.py</extracomment>
            <translation>« {exercise} » n'est pas de cette série, ou a été fait avec d'autres réglages</translation>
        </message>
        <message>
            <source>turns {way}</source>
            <extracomment>classroom/drawings.py, ui/breaker_view.py, ui/drive_view.py</extracomment>
            <translation>tourne en sens {way}</translation>
        </message>
        <message>
            <source>Largest gap</source>
            <extracomment>classroom/drawings.py, job/document.py, job/parts.py, practice/debrief.py, practice/paper.py, ui/practice_notebook.py, ui/setting_panel.py</extracomment>
            <translation>Écartement maximal</translation>
        </message>
        <message>
            <source>Straightedge and rim mark</source>
            <extracomment>classroom/drawings.py</extracomment>
            <translation>Réglet et repère du bord</translation>
        </message>
        <message>
            <source>This magneto is not on an engine: there is no such picture of it</source>
            <extracomment>classroom/drawings.py</extracomment>
            <translation>Cette magnéto n'est pas sur un moteur : il n'y en a pas de telle image</translation>
        </message>
        <message>
            <source>{magneto}, seen from the breaker end; the rotor turns {way}. Rotor and pole shoes are diagrammatic; cam, arm, contacts and marks are to scale.</source>
            <extracomment>classroom/drawings.py</extracomment>
            <translation>{magneto}, vue côté rupteur ; le rotor tourne en sens {way}. Rotor et pièces polaires sont schématiques ; came, levier, contacts et repères sont à l'échelle.</translation>
        </message>
        <message>
            <source>{magneto}, seen from the drive end; the rotor turns {way}. Both faces of the disc are drawn, the drive face outside, the magneto face inside.</source>
            <extracomment>classroom/drawings.py</extracomment>
            <translation>{magneto}, vue côté entraînement ; le rotor tourne en sens {way}. Les deux faces du disque sont dessinées, celle de l'entraînement à l'extérieur, celle de la magnéto à l'intérieur.</translation>
        </message>
        <message>
            <source>{engine}, seen from the propeller end; it turns {way}.</source>
            <extracomment>classroom/drawings.py</extracomment>
            <translation>{engine}, vu côté hélice ; il tourne en sens {way}.</translation>
        </message>
        <message>
            <source>The primary circuit with its switch lead; the switch is off.</source>
            <extracomment>classroom/drawings.py</extracomment>
            <translation>Le circuit primaire avec son fil de masse ; le contacteur est sur arrêt.</translation>
        </message>
        <message>
            <source>mm</source>
            <extracomment>classroom/drawings.py, ui/class_editor_rows.py, ui/job_kinds.py</extracomment>
            <translation>mm</translation>
        </message>
        <message>
            <source>{folder}: the folder cannot be read: {reason}</source>
            <extracomment>classroom/gather.py</extracomment>
            <translation>{folder} : le dossier est illisible : {reason}</translation>
        </message>
        <message>
            <source>The digest finds damage in copying. It is no protection against a determined cheat: the acts are marked again, but who did them, and when, is believed as written.</source>
            <extracomment>classroom/handed.py</extracomment>
            <translation>L'empreinte révèle les dommages de copie. Elle ne protège pas d'un tricheur décidé : les actions sont notées de nouveau, mais qui les a faites, et quand, est cru tel qu'écrit.</translation>
        </message>
        <message>
            <source>{file}: was changed or damaged after it was handed in: its digest does not fit</source>
            <extracomment>classroom/handed.py</extracomment>
            <translation>{file} : a été modifié ou endommagé après la remise : son empreinte ne concorde pas</translation>
        </message>
        <message>
            <source>the attempt has not been handed in</source>
            <extracomment>classroom/handed.py</extracomment>
            <translation>la tentative n'a pas été remise</translation>
        </message>
        <message>
            <source>another file has its name</source>
            <extracomment>classroom/handed.py</extracomment>
            <translation>un autre fichier porte son nom</translation>
        </message>
        <message>
            <source>{folder}: the attempt cannot be written there: {reason}</source>
            <extracomment>classroom/handed.py</extracomment>
            <translation>{folder} : la tentative ne peut y être écrite : {reason}</translation>
        </message>
        <message>
            <source>Exercise</source>
            <extracomment>classroom/key.py, classroom/summary.py, spec/formats.py, ui/class_desk.py, ui/class_paper_dialog.py</extracomment>
            <translation>Exercice</translation>
        </message>
        <message>
            <source>Pupil</source>
            <extracomment>classroom/key.py, classroom/summary.py</extracomment>
            <translation>Élève</translation>
        </message>
        <message>
            <source>What</source>
            <extracomment>classroom/key.py, practice/report.py</extracomment>
            <translation>Objet</translation>
        </message>
        <message>
            <source>Answer</source>
            <extracomment>classroom/key.py, ui/job_bars.py, ui/practice_sight.py</extracomment>
            <translation>Réponse</translation>
        </message>
        <message>
            <source>{number}. {name}</source>
            <extracomment>classroom/key.py, classroom/summary.py</extracomment>
            <translation>{number}. {name}</translation>
        </message>
        <message>
            <source>Each pupil of this set has a fault of their own: name the pupils the key is for</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>Chaque élève de cette série a son propre défaut : nommer les élèves du corrigé</translation>
        </message>
        <message>
            <source>contacts open {amount}° of rotor late</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>les contacts s'ouvrent {amount}° de rotor en retard</translation>
        </message>
        <message>
            <source>largest gap {length} too wide</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>écartement maximal trop grand de {length}</translation>
        </message>
        <message>
            <source>backplate {amount}° off, with cam rotation</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>plateau décalé de {amount}°, dans le sens de la came</translation>
        </message>
        <message>
            <source>lock screw carries the contact screw {amount}° along, contacts closer</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>la vis de blocage entraîne la vis de contact de {amount}°, contacts rapprochés</translation>
        </message>
        <message>
            <source>crank disc reads {reading}° at top dead centre</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>le disque du vilebrequin lit {reading}° au point mort haut</translation>
        </message>
        <message>
            <source>fitted with the rotor at neutral</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>montée avec le rotor au neutre</translation>
        </message>
        <message>
            <source>lobe {lobe} lifts {length} less</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>le bossage {lobe} lève de {length} en moins</translation>
        </message>
        <message>
            <source>pip of {length} on the contacts</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>picot de {length} sur les contacts</translation>
        </message>
        <message>
            <source>{amount}° of rotor play in the coupling</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>{amount}° de jeu du rotor dans l'accouplement</translation>
        </message>
        <message>
            <source>switch lead broken: no ground</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>fil de masse coupé : pas de masse</translation>
        </message>
        <message>
            <source>switch lead shorted: always grounded</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>fil de masse en court-circuit : toujours à la masse</translation>
        </message>
        <message>
            <source>spring tab does not touch: the coil is not joined</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>la languette ressort ne touche pas : la bobine n'est pas jointe</translation>
        </message>
        <message>
            <source>switch lead sound</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>fil de masse sain</translation>
        </message>
        <message>
            <source>everyone</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>tous</translation>
        </message>
        <message>
            <source>Answer key: {title}</source>
            <extracomment>classroom/key.py, classroom/set_papers.py</extracomment>
            <translation>Corrigé : {title}</translation>
        </message>
        <message>
            <source>Answer key</source>
            <extracomment>classroom/key.py, classroom/set_papers.py, ui/class_maker.py</extracomment>
            <translation>Corrigé</translation>
        </message>
        <message>
            <source>Code {code}</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>Code {code}</translation>
        </message>
        <message>
            <source>{number}. {name} – {who} (draws from {seed})</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>{number}. {name} – {who} (tiré de {seed})</translation>
        </message>
        <message>
            <source>contacts open {amount}° of rotor early</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>les contacts s'ouvrent {amount}° de rotor en avance</translation>
        </message>
        <message>
            <source>largest gap {length} too narrow</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>écartement maximal trop petit de {length}</translation>
        </message>
        <message>
            <source>backplate {amount}° off, against cam rotation</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>plateau décalé de {amount}°, en sens inverse de la came</translation>
        </message>
        <message>
            <source>lock screw carries the contact screw {amount}° along, contacts wider</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>la vis de blocage entraîne la vis de contact de {amount}°, contacts écartés</translation>
        </message>
        <message>
            <source>fires on the wrong stroke</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>allume au mauvais temps</translation>
        </message>
        <message>
            <source>one tooth early at the magneto flange</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>une dent d'avance à la bride de la magnéto</translation>
        </message>
        <message>
            <source>{count} teeth early at the magneto flange</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>{count} dents d'avance à la bride de la magnéto</translation>
        </message>
        <message>
            <source>one tooth late at the magneto flange</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>une dent de retard à la bride de la magnéto</translation>
        </message>
        <message>
            <source>{count} teeth late at the magneto flange</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>{count} dents de retard à la bride de la magnéto</translation>
        </message>
        <message>
            <source>one tooth early at the drive flange</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>une dent d'avance à la bride d'entraînement</translation>
        </message>
        <message>
            <source>{count} teeth early at the drive flange</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>{count} dents d'avance à la bride d'entraînement</translation>
        </message>
        <message>
            <source>one tooth late at the drive flange</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>une dent de retard à la bride d'entraînement</translation>
        </message>
        <message>
            <source>{count} teeth late at the drive flange</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>{count} dents de retard à la bride d'entraînement</translation>
        </message>
        <message>
            <source>one vernier step early</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>un pas de vernier d'avance</translation>
        </message>
        <message>
            <source>{count} vernier steps early</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>{count} pas de vernier d'avance</translation>
        </message>
        <message>
            <source>one vernier step late</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>un pas de vernier de retard</translation>
        </message>
        <message>
            <source>{count} vernier steps late</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>{count} pas de vernier de retard</translation>
        </message>
        <message>
            <source>Fault</source>
            <extracomment>classroom/key.py, ui/class_editor_rows.py</extracomment>
            <translation>Défaut</translation>
        </message>
        <message>
            <source>   • no fault: it is as it should be</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>   • aucun défaut : tout est comme il se doit</translation>
        </message>
        <message>
            <source>none</source>
            <extracomment>classroom/key.py, practice/debrief.py, practice/report.py, ui/class_editor_fields.py</extracomment>
            <translation>aucun</translation>
        </message>
        <message>
            <source>A name or a number is needed: each pupil's fault is drawn from it</source>
            <extracomment>classroom/names.py</extracomment>
            <translation>Il faut un nom ou un numéro : le défaut de chaque élève en est tiré</translation>
        </message>
        <message>
            <source>{why}; and it cannot be kept on this machine either ({here}): save the attempt by hand</source>
            <extracomment>classroom/outbox.py</extracomment>
            <translation>{why} ; et elle ne peut pas non plus être conservée sur cette machine ({here}) : enregistrer la tentative à la main</translation>
        </message>
        <message>
            <source>About {minutes} minutes; {percent} % are needed.</source>
            <extracomment>classroom/preview.py</extracomment>
            <translation>Environ {minutes} minutes ; {percent} % exigés.</translation>
        </message>
        <message>
            <source>Hidden, for this seed</source>
            <extracomment>classroom/preview.py</extracomment>
            <translation>Caché, pour cette graine</translation>
        </message>
        <message>
            <source>What the pupil reads</source>
            <extracomment>classroom/preview.py</extracomment>
            <translation>Ce que lit l'élève</translation>
        </message>
        <message>
            <source>Hints, one at a time</source>
            <extracomment>classroom/preview.py</extracomment>
            <translation>Indices, un par un</translation>
        </message>
        <message>
            <source>Nothing on the tray can prove “{goal}”.</source>
            <extracomment>classroom/preview.py</extracomment>
            <translation>Rien dans le bac ne peut prouver « {goal} ».</translation>
        </message>
        <message>
            <source>No goal asks for “{fault}”.</source>
            <extracomment>classroom/preview.py</extracomment>
            <translation>Aucun objectif ne demande « {fault} ».</translation>
        </message>
        <message>
            <source>no fault</source>
            <extracomment>classroom/preview.py</extracomment>
            <translation>aucun défaut</translation>
        </message>
        <message>
            <source>{file}: cannot be marked: {reason}</source>
            <extracomment>classroom/results.py</extracomment>
            <translation>{file} : ne peut être noté : {reason}</translation>
        </message>
        <message>
            <source>{file}: is not handed in yet</source>
            <extracomment>classroom/results.py</extracomment>
            <translation>{file} : n'est pas encore remis</translation>
        </message>
        <message>
            <source>Worksheets</source>
            <extracomment>classroom/set_papers.py</extracomment>
            <translation>Fiches d'exercice</translation>
        </message>
        <message>
            <source>Each pupil of this set has a fault of their own: name the pupils the sheets are for</source>
            <extracomment>classroom/set_papers.py</extracomment>
            <translation>Chaque élève de cette série a son propre défaut : nommer les élèves des fiches</translation>
        </message>
        <message>
            <source>Class code {code}.</source>
            <extracomment>classroom/set_papers.py</extracomment>
            <translation>Code de classe {code}.</translation>
        </message>
        <message>
            <source>{number}. {exercise}</source>
            <extracomment>classroom/set_papers.py, classroom/worksheet.py</extracomment>
            <translation>{number}. {exercise}</translation>
        </message>
        <message>
            <source>A code holds {most} exercises at most; this set needs its file</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation>Un code contient {most} exercices au plus ; cette série demande son fichier</translation>
        </message>
        <message>
            <source>“{exercise}” is not a shipped exercise; this set needs its file</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation>« {exercise} » n'est pas un exercice fourni ; cette série demande son fichier</translation>
        </message>
        <message>
            <source>This is no class code: it looks like 8K2M-4TXN-0QZ7-5C</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation>Ce n'est pas un code de classe : il ressemble à 8K2M-4TXN-0QZ7-5C</translation>
        </message>
        <message>
            <source>This code was made by a newer magview, which is needed to use it</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation>Ce code vient d'un magview plus récent, nécessaire pour l'utiliser</translation>
        </message>
        <message>
            <source>Exercise {number} of this code is not shipped with this magview; both sides need the same version</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation>L'exercice {number} de ce code n'est pas fourni avec ce magview ; il faut la même version des deux côtés</translation>
        </message>
        <message>
            <source>This code was made with another version of its exercises; both sides need the same magview</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation>Ce code vient d'une autre version de ses exercices ; il faut le même magview des deux côtés</translation>
        </message>
        <message>
            <source>exercise {number} is not in this set, which has {count}</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation>l'exercice {number} n'est pas dans cette série, qui en a {count}</translation>
        </message>
        <message>
            <source>pupils[{i}] is “{name}”, which has neither a letter nor a digit</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation>pupils[{i}] est « {name} », sans lettre ni chiffre</translation>
        </message>
        <message>
            <source>pupils has “{one}” and “{other}”, who cannot be told apart; capitals, accents and spaces do not count</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation>pupils contient « {one} » et « {other} », qu'on ne peut distinguer ; majuscules, accents et espaces ne comptent pas</translation>
        </message>
        <message>
            <source>Marks %</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Note %</translation>
        </message>
        <message>
            <source>Verdict</source>
            <extracomment>classroom/summary.py, job/document.py, ui/debrief_view.py, ui/job_table.py</extracomment>
            <translation>Verdict</translation>
        </message>
        <message>
            <source>Minutes</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Minutes</translation>
        </message>
        <message>
            <source>Acts</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Actions</translation>
        </message>
        <message>
            <source>Found</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Trouvés</translation>
        </message>
        <message>
            <source>Missed</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Manqués</translation>
        </message>
        <message>
            <source>Dangers</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Dangers</translation>
        </message>
        <message>
            <source>Handed in</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Remise</translation>
        </message>
        <message>
            <source>Counts</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Compte</translation>
        </message>
        <message>
            <source>Remarks</source>
            <extracomment>classroom/summary.py, job/parts.py, job/sheet.py</extracomment>
            <translation>Remarques</translation>
        </message>
        <message>
            <source>File</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Fichier</translation>
        </message>
        <message>
            <source>Done</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Faits</translation>
        </message>
        <message>
            <source>Passed</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Réussis</translation>
        </message>
        <message>
            <source>Weakest step</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Étape la plus faible</translation>
        </message>
        <message>
            <source>Step</source>
            <extracomment>classroom/summary.py, ui/lesson_view.py</extracomment>
            <translation>Étape</translation>
        </message>
        <message>
            <source>Attempts</source>
            <extracomment>classroom/summary.py, ui/class_gather.py</extracomment>
            <translation>Tentatives</translation>
        </message>
        <message>
            <source>Wrong</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Faux</translation>
        </message>
        <message>
            <source>Nearly right</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Presque juste</translation>
        </message>
        <message>
            <source>Right, not proved</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Juste, non prouvé</translation>
        </message>
        <message>
            <source>What goes wrong</source>
            <extracomment>classroom/summary.py, ui/class_gather.py</extracomment>
            <translation>Ce qui échoue</translation>
        </message>
        <message>
            <source>Pupils</source>
            <extracomment>classroom/summary.py, ui/class_gather.py, ui/class_maker_fields.py</extracomment>
            <translation>Élèves</translation>
        </message>
        <message>
            <source>its exercise is not the set's</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>son exercice n'est pas celui de la série</translation>
        </message>
        <message>
            <source>its fault was not drawn for this pupil</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>son défaut n'a pas été tiré pour cet élève</translation>
        </message>
        <message>
            <source>not on the list of pupils</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>absent de la liste des élèves</translation>
        </message>
        <message>
            <source>DANGER: {what}</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>DANGER : {what}</translation>
        </message>
        <message>
            <source>missed: {fault}</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>manqué : {fault}</translation>
        </message>
        <message>
            <source>yes</source>
            <extracomment>classroom/summary.py, job/words.py, ui/job_kinds.py</extracomment>
            <translation>oui</translation>
        </message>
        <message>
            <source>no</source>
            <extracomment>classroom/summary.py, job/words.py, ui/job_kinds.py</extracomment>
            <translation>non</translation>
        </message>
        <message>
            <source>a copy of {file}</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>une copie de {file}</translation>
        </message>
        <message>
            <source>the same acts, to the second, as {pupil} in {file}</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>les mêmes actions, à la seconde près, que {pupil} dans {file}</translation>
        </message>
        <message>
            <source>there is a later attempt</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>il y a une tentative ultérieure</translation>
        </message>
        <message>
            <source>of another set</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>d'une autre série</translation>
        </message>
        <message>
            <source>saved by hand, not handed in with a class</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>enregistrée à la main, non remise avec une classe</translation>
        </message>
        <message>
            <source>rotor held at the E-gap</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>rotor tenu à l'E-gap</translation>
        </message>
        <message>
            <source>contacts open at the mark</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>contacts ouvrant au repère</translation>
        </message>
        <message>
            <source>largest gap within its limits</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>écartement maximal dans ses limites</translation>
        </message>
        <message>
            <source>contacts clean and flat</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>contacts propres et plans</translation>
        </message>
        <message>
            <source>disc set to top dead centre</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>disque mis au point mort haut</translation>
        </message>
        <message>
            <source>timed to the engine</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>calée sur le moteur</translation>
        </message>
        <message>
            <source>both magnetos together</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>les deux magnétos ensemble</translation>
        </message>
        <message>
            <source>switch lead sound and proved</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>fil de masse sain et prouvé</translation>
        </message>
        <message>
            <source>coupling marked first</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>accouplement repéré d'abord</translation>
        </message>
        <message>
            <source>everything tight and closed up</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>tout serré et refermé</translation>
        </message>
        <message>
            <source>opening, as written down</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>ouverture, telle que notée</translation>
        </message>
        <message>
            <source>largest gap, as written down</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>écartement maximal, tel que noté</translation>
        </message>
        <message>
            <source>firing, as written down</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>allumage, tel que noté</translation>
        </message>
        <message>
            <source>disc's zero, as written down</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>zéro du disque, tel que noté</translation>
        </message>
        <message>
            <source>switch lead, as written down</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>fil de masse, tel que noté</translation>
        </message>
        <message>
            <source>opens early or late</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>ouverture en avance ou en retard</translation>
        </message>
        <message>
            <source>gap too wide or narrow</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>écartement trop grand ou trop petit</translation>
        </message>
        <message>
            <source>backplate off</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>plateau décalé</translation>
        </message>
        <message>
            <source>lock screw carries the contact screw along</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>la vis de blocage entraîne la vis de contact</translation>
        </message>
        <message>
            <source>a low lobe</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>un bossage bas</translation>
        </message>
        <message>
            <source>pip on the contacts</source>
            <extracomment>classroom/words.py, physics/setting_uncertainty.py</extracomment>
            <translation>picot sur les contacts</translation>
        </message>
        <message>
            <source>play in the coupling</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>jeu dans l'accouplement</translation>
        </message>
        <message>
            <source>teeth out at the magneto flange</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>dents décalées à la bride de la magnéto</translation>
        </message>
        <message>
            <source>teeth out at the drive flange</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>dents décalées à la bride d'entraînement</translation>
        </message>
        <message>
            <source>vernier steps out</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>pas de vernier décalés</translation>
        </message>
        <message>
            <source>disc not at zero</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>disque hors du zéro</translation>
        </message>
        <message>
            <source>on the wrong stroke</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>au mauvais temps</translation>
        </message>
        <message>
            <source>fitted at neutral</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>montée au neutre</translation>
        </message>
        <message>
            <source>switch lead</source>
            <extracomment>classroom/words.py, practice/words.py</extracomment>
            <translation>fil de masse</translation>
        </message>
        <message>
            <source>took the magneto off unmarked</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>a déposé la magnéto sans repères</translation>
        </message>
        <message>
            <source>turned the propeller with no chocks at the wheels</source>
            <extracomment>classroom/words.py, practice/evidence.py</extracomment>
            <translation>a tourné l'hélice sans cales aux roues</translation>
        </message>
        <message>
            <source>turned the propeller with a live magneto and the plugs in</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>a tourné l'hélice, magnéto active et bougies en place</translation>
        </message>
        <message>
            <source>turned the propeller, plugs in, without proving the switch</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>a tourné l'hélice, bougies en place, sans prouver le contacteur</translation>
        </message>
        <message>
            <source>handed in with screws or nuts slack</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>remise avec des vis ou écrous desserrés</translation>
        </message>
        <message>
            <source>handed in with the switch on</source>
            <extracomment>classroom/words.py, practice/marking.py</extracomment>
            <translation>remise avec le contacteur sur marche</translation>
        </message>
        <message>
            <source>{step}: wrong</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>{step} : faux</translation>
        </message>
        <message>
            <source>{step}: nearly right</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>{step} : presque juste</translation>
        </message>
        <message>
            <source>{step}: right, not proved by instruments</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>{step} : juste, non prouvé aux instruments</translation>
        </message>
        <message>
            <source>{what} (left)</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>{what} (gauche)</translation>
        </message>
        <message>
            <source>{what} (right)</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>{what} (droite)</translation>
        </message>
        <message>
            <source>newer version</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>version plus récente</translation>
        </message>
        <message>
            <source>not handed in</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>non remise</translation>
        </message>
        <message>
            <source>damaged</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>endommagé</translation>
        </message>
        <message>
            <source>passed</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>réussi</translation>
        </message>
        <message>
            <source>not passed</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>non réussi</translation>
        </message>
        <message>
            <source>On a real magneto: treat the propeller as live; switch off, its lead grounded and proved; plugs out; wheels chocked. The maker's current manual and local rules govern; work on a certified aircraft is done or released by a licensed person. This sheet is for training; its magneto is invented.</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Sur une vraie magnéto : traiter l'hélice comme active ; contacteur sur arrêt, son fil à la masse et prouvé ; bougies déposées ; roues calées. Le manuel en vigueur du constructeur et les règles locales font foi ; le travail sur un aéronef certifié est fait ou libéré par une personne licenciée. Cette fiche sert à la formation ; sa magnéto est inventée.</translation>
        </message>
        <message>
            <source>{magneto}: pictures</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>{magneto} : images</translation>
        </message>
        <message>
            <source>{title} · magview {version} · treat the propeller as live</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>{title} · magview {version} · traiter l'hélice comme active</translation>
        </message>
        <message>
            <source>In the program: begin this exercise with the code {seed}.</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Dans le programme : commencer cet exercice avec le code {seed}.</translation>
        </message>
        <message>
            <source>Name the parts: key</source>
            <extracomment>classroom/worksheet.py, ui/class_paper_dialog.py</extracomment>
            <translation>Nommer les pièces : corrigé</translation>
        </message>
        <message>
            <source>Name the parts</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Nommer les pièces</translation>
        </message>
        <message>
            <source>Answer key: {exercise}</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Corrigé : {exercise}</translation>
        </message>
        <message>
            <source>In the program: class code {code}, under this name.</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Dans le programme : code de classe {code}, sous ce nom.</translation>
        </message>
        <message>
            <source>In the program: class code {code}.</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Dans le programme : code de classe {code}.</translation>
        </message>
        <message>
            <source>The straightedge (dashed) as the contacts open, and the rim mark: how far apart, short or past?</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Le réglet (tireté) à l'ouverture des contacts, et le repère du bord : à quelle distance, avant ou après ?</translation>
        </message>
        <message>
            <source>The case</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Le cas</translation>
        </message>
        <message>
            <source>About {minutes} minutes. Done when:</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Environ {minutes} minutes. Terminé quand :</translation>
        </message>
        <message>
            <source>Data sheet</source>
            <extracomment>classroom/worksheet.py, ui/practice_task.py</extracomment>
            <translation>Fiche technique</translation>
        </message>
        <message>
            <source>Readings</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Lectures</translation>
        </message>
        <message>
            <source>What was wrong, and what put it right</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Ce qui n'allait pas, et ce qui l'a corrigé</translation>
        </message>
        <message>
            <source>{side} magneto: {fault}</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Magnéto {side} : {fault}</translation>
        </message>
        <message>
            <source>Class</source>
            <extracomment>classroom/worksheet.py, ui/class_desk.py</extracomment>
            <translation>Classe</translation>
        </message>
        <message>
            <source>Date</source>
            <extracomment>classroom/worksheet.py, job/document.py, job/history.py, job/parts.py, job/sheet.py, job/shift_plan.py</extracomment>
            <translation>Date</translation>
        </message>
        <message>
            <source>Hints</source>
            <extracomment>classroom/worksheet.py, ui/practice_task.py</extracomment>
            <translation>Indices</translation>
        </message>
        <message>
            <source>{number}. {table}</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>{number}. {table}</translation>
        </message>
        <message>
            <source>Into the pictures: lobe 1 as found</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Dans les images : bossage 1 tel que trouvé</translation>
        </message>
        <message>
            <source>The contacts at their widest. Not to scale.</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Les contacts au plus ouvert. Pas à l'échelle.</translation>
        </message>
        <message>
            <source>For {pupil}.</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Pour {pupil}.</translation>
        </message>
        <message>
            <source>For everyone.</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Pour tous.</translation>
        </message>
        <message>
            <source>Nothing needs to be put right.</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Rien n'est à corriger.</translation>
        </message>
        <message>
            <source>Name the parts – {picture}</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Nommer les pièces – {picture}</translation>
        </message>
        <message>
            <source>Part</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Pièce</translation>
        </message>
        <message>
            <source>What it does</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Ce qu'elle fait</translation>
        </message>
        <message>
            <source>not installed; install magview again</source>
            <extracomment>cli_check.py</extracomment>
            <translation>pas installé ; réinstaller magview</translation>
        </message>
        <message>
            <source>{count} magnetos and {more} installations can be read</source>
            <extracomment>cli_check.py</extracomment>
            <translation>{count} magnétos et {more} installations lisibles</translation>
        </message>
        <message>
            <source>opens ({platform}, screen of {width} × {height})</source>
            <extracomment>cli_check.py</extracomment>
            <translation>s'ouvre ({platform}, écran de {width} × {height})</translation>
        </message>
        <message>
            <source>Qt does not start: {reason}</source>
            <extracomment>cli_check.py</extracomment>
            <translation>Qt ne démarre pas : {reason}</translation>
        </message>
        <message>
            <source>good</source>
            <extracomment>cli_check.py</extracomment>
            <translation>bon</translation>
        </message>
        <message>
            <source>MISSING</source>
            <extracomment>cli_check.py</extracomment>
            <translation>MANQUE</translation>
        </message>
        <message>
            <source>no magnetos in {folder}; install magview again</source>
            <extracomment>cli_check.py</extracomment>
            <translation>pas de magnétos dans {folder} ; réinstaller magview</translation>
        </message>
        <message>
            <source>Qt needs it for a window; the package {package} of Debian and Ubuntu has it</source>
            <extracomment>cli_check.py</extracomment>
            <translation>Qt en a besoin pour une fenêtre ; le paquet {package} de Debian et Ubuntu le fournit</translation>
        </message>
        <message>
            <source>opens, but where nobody sees it: QT_QPA_PLATFORM is {platform}</source>
            <extracomment>cli_check.py</extracomment>
            <translation>s'ouvre, mais là où nul ne la voit : QT_QPA_PLATFORM vaut {platform}</translation>
        </message>
        <message>
            <source>there are no fonts, so words are boxes; the package fonts-dejavu-core of Debian and Ubuntu has some</source>
            <extracomment>cli_check.py</extracomment>
            <translation>il n'y a pas de polices, les mots sont donc des carrés ; le paquet fonts-dejavu-core de Debian et Ubuntu en fournit</translation>
        </message>
        <message>
            <source>Qt has no working platform plugin “{chosen}”, which QT_QPA_PLATFORM asks for; unset it, or choose one of: {known}</source>
            <extracomment>cli_check.py</extracomment>
            <translation>Qt n'a pas de module de plateforme « {chosen} » qui marche, demandé par QT_QPA_PLATFORM ; l'annuler, ou choisir parmi : {known}</translation>
        </message>
        <message>
            <source>folder of work under way</source>
            <extracomment>cli_check.py</extracomment>
            <translation>dossier des travaux en cours</translation>
        </message>
        <message>
            <source>folder of the log</source>
            <extracomment>cli_check.py</extracomment>
            <translation>dossier du journal</translation>
        </message>
        <message>
            <source>folder of fault reports</source>
            <extracomment>cli_check.py</extracomment>
            <translation>dossier des rapports d'erreur</translation>
        </message>
        <message>
            <source>folder for the time being</source>
            <extracomment>cli_check.py</extracomment>
            <translation>dossier temporaire</translation>
        </message>
        <message>
            <source>{trouble}; make the folder writable, or set XDG_DATA_HOME and XDG_STATE_HOME to ones that are</source>
            <extracomment>cli_check.py</extracomment>
            <translation>{trouble} ; rendre le dossier inscriptible, ou donner à XDG_DATA_HOME et XDG_STATE_HOME des dossiers qui le sont</translation>
        </message>
        <message>
            <source>{folder} has only {free} MB free; make room</source>
            <extracomment>cli_check.py</extracomment>
            <translation>{folder} n'a que {free} MB libres ; faire de la place</translation>
        </message>
        <message>
            <source>{folder} can be written, {free} MB free</source>
            <extracomment>cli_check.py</extracomment>
            <translation>{folder} est inscriptible, {free} MB libres</translation>
        </message>
        <message>
            <source>versions</source>
            <extracomment>cli_check.py</extracomment>
            <translation>versions</translation>
        </message>
        <message>
            <source>shipped files</source>
            <extracomment>cli_check.py</extracomment>
            <translation>fichiers fournis</translation>
        </message>
        <message>
            <source>window</source>
            <extracomment>cli_check.py</extracomment>
            <translation>fenêtre</translation>
        </message>
        <message>
            <source>printing</source>
            <extracomment>cli_check.py</extracomment>
            <translation>impression</translation>
        </message>
        <message>
            <source>files</source>
            <extracomment>cli_check.py</extracomment>
            <translation>fichiers</translation>
        </message>
        <message>
            <source>desktop</source>
            <extracomment>cli_check.py</extracomment>
            <translation>bureau</translation>
        </message>
        <message>
            <source>PDF is written, with {count} families of type</source>
            <extracomment>cli_check.py</extracomment>
            <translation>PDF écrit, avec {count} familles de caractères</translation>
        </message>
        <message>
            <source>it gave no reason</source>
            <extracomment>cli_check.py</extracomment>
            <translation>aucune raison donnée</translation>
        </message>
        <message>
            <source>not in the menu; `magview desktop` puts it there</source>
            <extracomment>cli_check.py</extracomment>
            <translation>pas au menu ; `magview desktop` l'y met</translation>
        </message>
        <message>
            <source>Nothing is missing.</source>
            <extracomment>cli_check.py</extracomment>
            <translation>Rien ne manque.</translation>
        </message>
        <message>
            <source>Something is missing.</source>
            <extracomment>cli_check.py</extracomment>
            <translation>Il manque quelque chose.</translation>
        </message>
        <message>
            <source>Qt writes no PDF or reads no SVG; install magview again</source>
            <extracomment>cli_check.py</extracomment>
            <translation>Qt n'écrit pas de PDF ou ne lit pas de SVG ; réinstaller magview</translation>
        </message>
        <message>
            <source>Qt did not answer within {seconds} s; try again</source>
            <extracomment>cli_check.py</extracomment>
            <translation>Qt n'a pas répondu en {seconds} s ; réessayer</translation>
        </message>
        <message>
            <source>in the menu; `magview desktop --remove` takes it away</source>
            <extracomment>cli_check.py</extracomment>
            <translation>au menu ; `magview desktop --remove` l'enlève</translation>
        </message>
        <message>
            <source>could not be looked at: {reason}</source>
            <extracomment>cli_check.py</extracomment>
            <translation>n'a pu être examiné : {reason}</translation>
        </message>
        <message>
            <source>about {minutes} minutes</source>
            <extracomment>cli_class.py</extracomment>
            <translation>environ {minutes} minutes</translation>
        </message>
        <message>
            <source>A fault of their own for each pupil.</source>
            <extracomment>cli_class.py</extracomment>
            <translation>Un défaut propre à chaque élève.</translation>
        </message>
        <message>
            <source>The same faults for everyone.</source>
            <extracomment>cli_class.py</extracomment>
            <translation>Les mêmes défauts pour tous.</translation>
        </message>
        <message>
            <source>the set</source>
            <extracomment>cli_class.py</extracomment>
            <translation>la série</translation>
        </message>
        <message>
            <source>{count} attempts count, of {files} files.</source>
            <extracomment>cli_class.py, ui/class_gather.py</extracomment>
            <translation>{count} tentatives comptent, sur {files} fichiers.</translation>
        </message>
        <message>
            <source>{name}: {percent} %, {passed} of {done} passed</source>
            <extracomment>cli_class.py</extracomment>
            <translation>{name} : {percent} %, {passed} réussis sur {done}</translation>
        </message>
        <message>
            <source>a code for a class, its answer key, and its attempts gathered</source>
            <extracomment>cli_class.py</extracomment>
            <translation>un code de classe, son corrigé, et ses tentatives réunies</translation>
        </message>
        <message>
            <source>make a class code, or say what one stands for</source>
            <extracomment>cli_class.py</extracomment>
            <translation>faire un code de classe, ou dire ce qu'un code désigne</translation>
        </message>
        <message>
            <source>shipped exercises or files, in order; or one code or set</source>
            <extracomment>cli_class.py</extracomment>
            <translation>exercices fournis ou fichiers, dans l'ordre ; ou un code ou une série</translation>
        </message>
        <message>
            <source>the same seed makes the same code; left out: drawn</source>
            <extracomment>cli_class.py</extracomment>
            <translation>la même graine donne le même code ; omise : tirée au sort</translation>
        </message>
        <message>
            <source>a fault of their own for each pupil</source>
            <extracomment>cli_class.py</extracomment>
            <translation>un défaut propre à chaque élève</translation>
        </message>
        <message>
            <source>the exercises' hints are not given</source>
            <extracomment>cli_class.py</extracomment>
            <translation>les indices des exercices ne sont pas donnés</translation>
        </message>
        <message>
            <source>straightedge, and blades beside the exercise's</source>
            <extracomment>cli_class.py</extracomment>
            <translation>réglet, et jauges en plus de celles de l'exercice</translation>
        </message>
        <message>
            <source>the time allowed for each exercise</source>
            <extracomment>cli_class.py</extracomment>
            <translation>le temps accordé à chaque exercice</translation>
        </message>
        <message>
            <source>for the file and the key</source>
            <extracomment>cli_class.py</extracomment>
            <translation>pour le fichier et le corrigé</translation>
        </message>
        <message>
            <source>a pupil; again for each</source>
            <extracomment>cli_class.py</extracomment>
            <translation>un élève ; à répéter pour chacun</translation>
        </message>
        <message>
            <source>write the set as a file, pupils and own exercises included</source>
            <extracomment>cli_class.py</extracomment>
            <translation>écrire la série en fichier, élèves et exercices propres compris</translation>
        </message>
        <message>
            <source>the answer key of a code or a set's file</source>
            <extracomment>cli_class.py</extracomment>
            <translation>le corrigé d'un code ou d'un fichier de série</translation>
        </message>
        <message>
            <source>a code or a file</source>
            <extracomment>cli_class.py</extracomment>
            <translation>un code ou un fichier</translation>
        </message>
        <message>
            <source>write it as CSV</source>
            <extracomment>cli_class.py</extracomment>
            <translation>l'écrire en CSV</translation>
        </message>
        <message>
            <source>mark every attempt in a folder</source>
            <extracomment>cli_class.py</extracomment>
            <translation>noter toutes les tentatives d'un dossier</translation>
        </message>
        <message>
            <source>hold them against a code or a set's file</source>
            <extracomment>cli_class.py</extracomment>
            <translation>les comparer à un code ou à un fichier de série</translation>
        </message>
        <message>
            <source>write every attempt as CSV</source>
            <extracomment>cli_class.py</extracomment>
            <translation>écrire toutes les tentatives en CSV</translation>
        </message>
        <message>
            <source>keep the marks there, for the next time</source>
            <extracomment>cli_class.py</extracomment>
            <translation>y garder les notes, pour la prochaine fois</translation>
        </message>
        <message>
            <source>put a finished attempt's file into the class's folder</source>
            <extracomment>cli_class.py</extracomment>
            <translation>mettre le fichier d'une tentative finie dans le dossier de la classe</translation>
        </message>
        <message>
            <source>a file saved from a practice window</source>
            <extracomment>cli_class.py</extracomment>
            <translation>un fichier enregistré depuis une fenêtre d'exercice</translation>
        </message>
        <message>
            <source>--seed is {seed}; it must be from 0 to {most}</source>
            <extracomment>cli_class.py</extracomment>
            <translation>--seed vaut {seed} ; il doit être de 0 à {most}</translation>
        </message>
        <message>
            <source>Most often:</source>
            <extracomment>cli_class.py</extracomment>
            <translation>Le plus souvent :</translation>
        </message>
        <message>
            <source>Nothing from: {names}</source>
            <extracomment>cli_class.py</extracomment>
            <translation>Rien de : {names}</translation>
        </message>
        <message>
            <source>Handed in as {file}.</source>
            <extracomment>cli_class.py</extracomment>
            <translation>Remis sous {file}.</translation>
        </message>
        <message>
            <source>passed over: {why}</source>
            <extracomment>cli_class.py</extracomment>
            <translation>ignoré : {why}</translation>
        </message>
        <message>
            <source>weakest: {step}</source>
            <extracomment>cli_class.py</extracomment>
            <translation>le plus faible : {step}</translation>
        </message>
        <message>
            <source>magview is in the desktop's menu, and opens files whose names end in {ending}. `magview desktop --remove` takes it away again. Put there, in {folder}:</source>
            <extracomment>cli_desktop.py</extracomment>
            <translation>magview est au menu du bureau et ouvre les fichiers dont le nom finit par {ending}. `magview desktop --remove` l'enlève. Mis là, dans {folder} :</translation>
        </message>
        <message>
            <source>magview is taken off the desktop. Deleted, in {folder}:</source>
            <extracomment>cli_desktop.py</extracomment>
            <translation>magview est enlevé du bureau. Supprimé, dans {folder} :</translation>
        </message>
        <message>
            <source>There was nothing to take away in {folder}.</source>
            <extracomment>cli_desktop.py</extracomment>
            <translation>Il n'y avait rien à enlever dans {folder}.</translation>
        </message>
        <message>
            <source>Menu entries of this kind are for Linux desktops. Here, pin {program} to the task bar or Dock, and choose it under Open with for files of the program.</source>
            <extracomment>cli_desktop.py</extracomment>
            <translation>Les entrées de menu de ce type sont pour les bureaux Linux. Ici, épingler {program} à la barre des tâches ou au Dock, et le choisir sous Ouvrir avec pour les fichiers du programme.</translation>
        </message>
        <message>
            <source>the guide, as one HTML file or as PDF; or what is in it</source>
            <extracomment>cli_guide.py</extracomment>
            <translation>le guide, en un fichier HTML ou en PDF ; ou son contenu</translation>
        </message>
        <message>
            <source>write it as HTML</source>
            <extracomment>cli_guide.py</extracomment>
            <translation>l'écrire en HTML</translation>
        </message>
        <message>
            <source>write it as PDF</source>
            <extracomment>cli_guide.py</extracomment>
            <translation>l'écrire en PDF</translation>
        </message>
        <message>
            <source>paper size; left out: a4</source>
            <extracomment>cli_guide.py, cli_paper.py</extracomment>
            <translation>format de papier ; omis : a4</translation>
        </message>
        <message>
            <source>words to search for</source>
            <extracomment>cli_guide.py</extracomment>
            <translation>mots à chercher</translation>
        </message>
        <message>
            <source>no PDF: {reason} For HTML, which needs no Qt, use --html.</source>
            <extracomment>cli_guide.py</extracomment>
            <translation>pas de PDF : {reason} Pour le HTML, qui se passe de Qt, utiliser --html.</translation>
        </message>
        <message>
            <source>F1 in the window opens it; --html and --pdf write it to a file.</source>
            <extracomment>cli_guide.py</extracomment>
            <translation>F1 l'ouvre dans la fenêtre ; --html et --pdf l'écrivent dans un fichier.</translation>
        </message>
        <message>
            <source>with --set: for whom; may be given again; left out: those of the set's file</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>avec --set : pour qui ; répétable ; omis : ceux du fichier de la série</translation>
        </message>
        <message>
            <source>Wrote {file}: 1 page.</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>Écrit {file} : 1 page.</translation>
        </message>
        <message>
            <source>a worksheet of an exercise, or its answer key, as PDF</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>une fiche d'exercice, ou son corrigé, en PDF</translation>
        </message>
        <message>
            <source>a file or a shipped one (gap-wrong), or:</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>un fichier ou un exercice fourni (gap-wrong), ou :</translation>
        </message>
        <message>
            <source>a class's set instead, by its code or its file</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>à la place, la série d'une classe, par son code ou son fichier</translation>
        </message>
        <message>
            <source>the code that draws the faults; left out: 0</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>le code qui tire les défauts ; omis : 0</translation>
        </message>
        <message>
            <source>the answer key instead of the worksheet</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>le corrigé au lieu de la fiche</translation>
        </message>
        <message>
            <source>print the exercise's hints, too</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>imprimer aussi les indices de l'exercice</translation>
        </message>
        <message>
            <source>leave out the pictures whose parts are named</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>omettre les images dont les pièces sont nommées</translation>
        </message>
        <message>
            <source>whose sheet it is; left out: a line for it</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>à qui est la fiche ; omis : une ligne pour l'écrire</translation>
        </message>
        <message>
            <source>pictures of a magneto or installation as PDF</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>images d'une magnéto ou d'une installation en PDF</translation>
        </message>
        <message>
            <source>a file or a shipped magneto or installation</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>un fichier, ou une magnéto ou installation fournie</translation>
        </message>
        <message>
            <source>which; may be given again; left out: all there are</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>lesquelles ; répétable ; omis : toutes</translation>
        </message>
        <message>
            <source>what stands beside the parts</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>ce qui figure près des pièces</translation>
        </message>
        <message>
            <source>add what there is to say of each part</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>ajouter ce qu'il y a à dire de chaque pièce</translation>
        </message>
        <message>
            <source>the file to write</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>le fichier à écrire</translation>
        </message>
        <message>
            <source>give either an EXERCISE or --set with a class's code or file</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>donner soit un EXERCICE, soit --set avec le code ou le fichier d'une classe</translation>
        </message>
        <message>
            <source>--seed is “{seed}”; it must be a whole number from 0 on, of at most 16 digits</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>--seed vaut « {seed} » ; ce doit être un nombre entier à partir de 0, de 16 chiffres au plus</translation>
        </message>
        <message>
            <source>no PDF: {reason}</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>pas de PDF : {reason}</translation>
        </message>
        <message>
            <source>Wrote {file}: {pages} pages.</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>Écrit {file} : {pages} pages.</translation>
        </message>
        <message>
            <source>“{name}” is neither a file nor one of the shipped: {known}</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>« {name} » n'est ni un fichier ni l'un des fournis : {known}</translation>
        </message>
        <message>
            <source>How sure the readings are: each may be out by the half-width of the instrument or habit it was taken with, all values within it equally likely. These were propagated linearly (JCGM 100:2008); the interval stated is the expanded uncertainty with its coverage factor k, and holds the true value 95 times in 100 unless stated otherwise. It does not allow for mistakes, nor for a magneto that differs from the file it was compared with.</source>
            <extracomment>job/document.py</extracomment>
            <translation>Sûreté des lectures : chacune peut être fausse de la demi-largeur de l'instrument ou de l'usage dont elle vient, toutes les valeurs y étant également probables. Elles ont été propagées linéairement (JCGM 100:2008) ; l'intervalle indiqué est l'incertitude élargie avec son facteur d'élargissement k, et contient la vraie valeur 95 fois sur 100, sauf indication contraire. Il ne tient compte ni des erreurs de manipulation, ni d'une magnéto différente du fichier auquel elle a été comparée.</translation>
        </message>
        <message>
            <source>Breaker end as found</source>
            <extracomment>job/document.py</extracomment>
            <translation>Côté rupteur, tel que trouvé</translation>
        </message>
        <message>
            <source>Breaker end as left</source>
            <extracomment>job/document.py</extracomment>
            <translation>Côté rupteur, tel que laissé</translation>
        </message>
        <message>
            <source>Coupling as found</source>
            <extracomment>job/document.py, job/shift_plan.py</extracomment>
            <translation>Accouplement, tel que trouvé</translation>
        </message>
        <message>
            <source>Coupling as left</source>
            <extracomment>job/document.py</extracomment>
            <translation>Accouplement, tel que laissé</translation>
        </message>
        <message>
            <source>{sheet} · magview {version} · treat the propeller as live</source>
            <extracomment>job/document.py, job/shift_plan.py</extracomment>
            <translation>{sheet} · magview {version} · traiter l'hélice comme active</translation>
        </message>
        <message>
            <source>OUT OF LIMITS</source>
            <extracomment>job/document.py, job/readings.py</extracomment>
            <translation>HORS LIMITES</translation>
        </message>
        <message>
            <source>NOT AS IT MUST BE</source>
            <extracomment>job/document.py, job/readings.py</extracomment>
            <translation>PAS COMME IL SE DOIT</translation>
        </message>
        <message>
            <source>found out of limits</source>
            <extracomment>job/document.py, job/readings.py</extracomment>
            <translation>trouvé hors limites</translation>
        </message>
        <message>
            <source>As found and as left: breaker end, contacts just opening</source>
            <extracomment>job/document.py</extracomment>
            <translation>Tel que trouvé et laissé : côté rupteur, contacts en début d'ouverture</translation>
        </message>
        <message>
            <source>As found: breaker end, contacts just opening</source>
            <extracomment>job/document.py</extracomment>
            <translation>Tel que trouvé : côté rupteur, contacts en début d'ouverture</translation>
        </message>
        <message>
            <source>As left: breaker end, contacts just opening</source>
            <extracomment>job/document.py</extracomment>
            <translation>Tel que laissé : côté rupteur, contacts en début d'ouverture</translation>
        </message>
        <message>
            <source>Seen from the drive end, rotation {way}.</source>
            <extracomment>job/document.py, ui/drive_view.py</extracomment>
            <translation>Vu côté entraînement, rotation {way}.</translation>
        </message>
        <message>
            <source>Trial</source>
            <extracomment>job/document.py, ui/job_table.py</extracomment>
            <translation>Essai</translation>
        </message>
        <message>
            <source>Backplate</source>
            <extracomment>job/document.py, job/parts.py</extracomment>
            <translation>Plateau</translation>
        </message>
        <message>
            <source>Gap at least</source>
            <extracomment>job/document.py, job/parts.py</extracomment>
            <translation>Écartement min.</translation>
        </message>
        <message>
            <source>Gap at most</source>
            <extracomment>job/document.py, job/parts.py</extracomment>
            <translation>Écartement max.</translation>
        </message>
        <message>
            <source>Opening from the E-gap</source>
            <extracomment>job/document.py, job/parts.py</extracomment>
            <translation>Ouverture depuis l'E-gap</translation>
        </message>
        <message>
            <source>Opening from its place</source>
            <extracomment>job/document.py</extracomment>
            <translation>Ouverture depuis sa place</translation>
        </message>
        <message>
            <source>Contacts closed</source>
            <extracomment>job/document.py, ui/contact_view.py</extracomment>
            <translation>Contacts fermés</translation>
        </message>
        <message>
            <source>backplate {angle}</source>
            <extracomment>job/document.py</extracomment>
            <translation>plateau {angle}</translation>
        </message>
        <message>
            <source>contact screw {angle}</source>
            <extracomment>job/document.py</extracomment>
            <translation>vis de contact {angle}</translation>
        </message>
        <message>
            <source>Seen from the breaker end, rotation clockwise.</source>
            <extracomment>job/document.py</extracomment>
            <translation>Vu côté rupteur, rotation horaire.</translation>
        </message>
        <message>
            <source>Seen from the breaker end, rotation anticlockwise.</source>
            <extracomment>job/document.py</extracomment>
            <translation>Vu côté rupteur, rotation antihoraire.</translation>
        </message>
        <message>
            <source>magneto flange {teeth}</source>
            <extracomment>job/document.py</extracomment>
            <translation>bride de la magnéto {teeth}</translation>
        </message>
        <message>
            <source>disc {teeth}</source>
            <extracomment>job/document.py, ui/plan_box.py</extracomment>
            <translation>disque {teeth}</translation>
        </message>
        <message>
            <source>Aircraft</source>
            <extracomment>job/document.py, job/sheet.py</extracomment>
            <translation>Aéronef</translation>
        </message>
        <message>
            <source>Manual</source>
            <extracomment>job/document.py</extracomment>
            <translation>Manuel</translation>
        </message>
        <message>
            <source>Limits</source>
            <extracomment>job/document.py, job/sheet.py</extracomment>
            <translation>Limites</translation>
        </message>
        <message>
            <source>Next check</source>
            <extracomment>job/document.py, job/sheet.py</extracomment>
            <translation>Prochain contrôle</translation>
        </message>
        <message>
            <source>Program</source>
            <extracomment>job/document.py</extracomment>
            <translation>Programme</translation>
        </message>
        <message>
            <source>magview {version}</source>
            <extracomment>job/document.py</extracomment>
            <translation>magview {version}</translation>
        </message>
        <message>
            <source>missing in {stage}</source>
            <extracomment>job/document.py</extracomment>
            <translation>manque dans {stage}</translation>
        </message>
        <message>
            <source>Value</source>
            <extracomment>job/document.py</extracomment>
            <translation>Valeur</translation>
        </message>
        <message>
            <source>Verdict ({limits})</source>
            <extracomment>job/document.py</extracomment>
            <translation>Verdict ({limits})</translation>
        </message>
        <message>
            <source>How sure</source>
            <extracomment>job/document.py</extracomment>
            <translation>Sûreté</translation>
        </message>
        <message>
            <source>Best estimate ± expanded uncertainty</source>
            <extracomment>job/document.py</extracomment>
            <translation>Meilleure estimation ± incertitude élargie</translation>
        </message>
        <message>
            <source>Likely in limits</source>
            <extracomment>job/document.py</extracomment>
            <translation>Probabilité dans les limites</translation>
        </message>
        <message>
            <source>What matters most</source>
            <extracomment>job/document.py</extracomment>
            <translation>Ce qui compte le plus</translation>
        </message>
        <message>
            <source>opens {angle} against the E-gap</source>
            <extracomment>job/document.py</extracomment>
            <translation>ouverture à {angle} de l'E-gap</translation>
        </message>
        <message>
            <source>largest gap {gap}</source>
            <extracomment>job/document.py</extracomment>
            <translation>écartement maximal {gap}</translation>
        </message>
        <message>
            <source>drawn is the gap that plate and screw give, {gap}</source>
            <extracomment>job/document.py</extracomment>
            <translation>le dessin montre l'écartement que donnent plateau et vis, {gap}</translation>
        </message>
        <message>
            <source>fires {angle}</source>
            <extracomment>job/document.py</extracomment>
            <translation>allume {angle}</translation>
        </message>
        <message>
            <source>Thick lines: the painted marks, each of them number 1.</source>
            <extracomment>job/document.py</extracomment>
            <translation>Traits épais : les repères peints, chacun portant le numéro 1.</translation>
        </message>
        <message>
            <source>Earlier sheets of this magneto</source>
            <extracomment>job/document.py</extracomment>
            <translation>Fiches antérieures de cette magnéto</translation>
        </message>
        <message>
            <source>Signature</source>
            <extracomment>job/document.py, job/sheet.py, job/shift_plan.py</extracomment>
            <translation>Signature</translation>
        </message>
        <message>
            <source>Magneto job sheet</source>
            <extracomment>job/document.py, job/report.py, ui/print_pdf.py</extracomment>
            <translation>Fiche de travail de magnéto</translation>
        </message>
        <message>
            <source>INVENTED FOR DEMONSTRATION: no such aircraft, engine, magneto or person.</source>
            <extracomment>job/document.py</extracomment>
            <translation>INVENTÉ POUR DÉMONSTRATION : ni aéronef, ni moteur, ni magnéto, ni personne de ce nom.</translation>
        </message>
        <message>
            <source>taken from: {source}</source>
            <extracomment>job/document.py</extracomment>
            <translation>tiré de : {source}</translation>
        </message>
        <message>
            <source>OUT OF LIMITS OR NOT AS IT MUST BE: {what}.</source>
            <extracomment>job/document.py</extracomment>
            <translation>HORS LIMITES OU PAS COMME IL SE DOIT : {what}.</translation>
        </message>
        <message>
            <source>TO BE CLEARED UP: see {stages}.</source>
            <extracomment>job/document.py</extracomment>
            <translation>À ÉCLAIRCIR : voir {stages}.</translation>
        </message>
        <message>
            <source>open: {stages}</source>
            <extracomment>job/document.py</extracomment>
            <translation>ouvert : {stages}</translation>
        </message>
        <message>
            <source>NOT FINISHED: {words}.</source>
            <extracomment>job/document.py</extracomment>
            <translation>NON TERMINÉ : {words}.</translation>
        </message>
        <message>
            <source>CHANGED SINCE IT WAS SIGNED: the signature does not cover this sheet.</source>
            <extracomment>job/document.py</extracomment>
            <translation>MODIFIÉE DEPUIS LA SIGNATURE : la signature ne couvre pas cette fiche.</translation>
        </message>
        <message>
            <source>Finished; as left, all readings that have limits are within them.</source>
            <extracomment>job/document.py</extracomment>
            <translation>Terminée ; telle que laissée, toutes les lectures ayant des limites y sont.</translation>
        </message>
        <message>
            <source>Skipped: {reason}</source>
            <extracomment>job/document.py, ui/job_bars.py</extracomment>
            <translation>Sauté : {reason}</translation>
        </message>
        <message>
            <source>TO BE CLEARED UP: {what}</source>
            <extracomment>job/document.py</extracomment>
            <translation>À ÉCLAIRCIR : {what}</translation>
        </message>
        <message>
            <source>Note: {note}</source>
            <extracomment>job/document.py</extracomment>
            <translation>Note : {note}</translation>
        </message>
        <message>
            <source>Done by: {by}</source>
            <extracomment>job/document.py</extracomment>
            <translation>Fait par : {by}</translation>
        </message>
        <message>
            <source>Nothing entered.</source>
            <extracomment>job/document.py</extracomment>
            <translation>Rien de saisi.</translation>
        </message>
        <message>
            <source>As found and as left: coupling, seen from the drive end</source>
            <extracomment>job/document.py</extracomment>
            <translation>Tel que trouvé et laissé : accouplement, vu côté entraînement</translation>
        </message>
        <message>
            <source>The signature covers the sheet with the digest {covers}.</source>
            <extracomment>job/document.py</extracomment>
            <translation>La signature couvre la fiche d'empreinte {covers}.</translation>
        </message>
        <message>
            <source>Cautions.</source>
            <extracomment>job/document.py, job/shift_plan.py</extracomment>
            <translation>Mises en garde.</translation>
        </message>
        <message>
            <source>{hours} h total</source>
            <extracomment>job/document.py</extracomment>
            <translation>{hours} h au total</translation>
        </message>
        <message>
            <source>serial {serial}</source>
            <extracomment>job/document.py</extracomment>
            <translation>n° de série {serial}</translation>
        </message>
        <message>
            <source>{hours} h since overhaul</source>
            <extracomment>job/document.py</extracomment>
            <translation>{hours} h depuis révision</translation>
        </message>
        <message>
            <source>{hours} h of the magneto</source>
            <extracomment>job/document.py</extracomment>
            <translation>{hours} h de la magnéto</translation>
        </message>
        <message>
            <source>no blade refused</source>
            <extracomment>job/document.py</extracomment>
            <translation>aucune jauge refusée</translation>
        </message>
        <message>
            <source>No drawings: {error}</source>
            <extracomment>job/document.py</extracomment>
            <translation>Pas de dessins : {error}</translation>
        </message>
        <message>
            <source>Work done and released by</source>
            <extracomment>job/document.py</extracomment>
            <translation>Travail fait et libéré par</translation>
        </message>
        <message>
            <source>Licence no.</source>
            <extracomment>job/document.py, job/parts.py</extracomment>
            <translation>Licence n°</translation>
        </message>
        <message>
            <source>Independent check by</source>
            <extracomment>job/document.py, job/parts.py</extracomment>
            <translation>Contrôle indépendant par</translation>
        </message>
        <message>
            <source>opening {limits}</source>
            <extracomment>job/document.py</extracomment>
            <translation>ouverture {limits}</translation>
        </message>
        <message>
            <source>gap {limits}</source>
            <extracomment>job/document.py</extracomment>
            <translation>écartement {limits}</translation>
        </message>
        <message>
            <source>Largest gap [mm]</source>
            <extracomment>job/drift_line.py</extracomment>
            <translation>Écartement max. [mm]</translation>
        </message>
        <message>
            <source>The gap moved {change} in 100 h (± {spread}); after 100 h more, at {at} h, it should read {value}, between {low} and {high} 95 times in 100.</source>
            <extracomment>job/drift_line.py</extracomment>
            <translation>L'écartement a varié de {change} en 100 h (± {spread}) ; après 100 h de plus, à {at} h, il devrait valoir {value}, entre {low} et {high} 95 fois sur 100.</translation>
        </message>
        <message>
            <source>The gap may leave its limits from {hours} h on.</source>
            <extracomment>job/drift_line.py</extracomment>
            <translation>L'écartement peut sortir de ses limites à partir de {hours} h.</translation>
        </message>
        <message>
            <source>Opening from the E-gap [rotor °]</source>
            <extracomment>job/drift_line.py</extracomment>
            <translation>Ouverture depuis l'E-gap [° rotor]</translation>
        </message>
        <message>
            <source>The opening moved {change} in 100 h (± {spread}); after 100 h more, at {at} h, it should read {value}, between {low} and {high} 95 times in 100.</source>
            <extracomment>job/drift_line.py</extracomment>
            <translation>L'ouverture a varié de {change} en 100 h (± {spread}) ; après 100 h de plus, à {at} h, elle devrait valoir {value}, entre {low} et {high} 95 fois sur 100.</translation>
        </message>
        <message>
            <source>The opening may leave its limits from {hours} h on.</source>
            <extracomment>job/drift_line.py</extracomment>
            <translation>L'ouverture peut sortir de ses limites à partir de {hours} h.</translation>
        </message>
        <message>
            <source>Fires before top dead centre [crank °]</source>
            <extracomment>job/drift_line.py</extracomment>
            <translation>Allume avant le point mort haut [° vilebrequin]</translation>
        </message>
        <message>
            <source>The firing moved {change} of crank in 100 h (± {spread}), positive earlier; after 100 h more, at {at} h, it should read {value} before top dead centre, between {low} and {high} 95 times in 100.</source>
            <extracomment>job/drift_line.py</extracomment>
            <translation>L'allumage a varié de {change} de vilebrequin en 100 h (± {spread}), positif vers plus tôt ; après 100 h de plus, à {at} h, il devrait valoir {value} avant le point mort haut, entre {low} et {high} 95 fois sur 100.</translation>
        </message>
        <message>
            <source>The firing may leave its limits from {hours} h on.</source>
            <extracomment>job/drift_line.py</extracomment>
            <translation>L'allumage peut sortir de ses limites à partir de {hours} h.</translation>
        </message>
        <message>
            <source>no reading of the lamp stands on the bench: enter on its Engine page what the lamp says now, after contacts and teeth were last moved</source>
            <extracomment>job/feeds.py</extracomment>
            <translation>aucune lecture de la lampe ne vaut au banc : saisir à sa page Moteur ce que la lampe dit maintenant, après le dernier déplacement des contacts et des dents</translation>
        </message>
        <message>
            <source>the bench</source>
            <extracomment>job/feeds.py</extracomment>
            <translation>le banc</translation>
        </message>
        <message>
            <source>file of the {name}</source>
            <extracomment>job/feeds.py</extracomment>
            <translation>fichier : {name}</translation>
        </message>
        <message>
            <source>neither wear nor a pip has been set on the bench yet</source>
            <extracomment>job/feeds.py</extracomment>
            <translation>ni usure ni picot n'ont encore été réglés au banc</translation>
        </message>
        <message>
            <source>this gap cannot be had: {reason}</source>
            <extracomment>job/feeds.py</extracomment>
            <translation>cet écartement est impossible à obtenir : {reason}</translation>
        </message>
        <message>
            <source>this magneto is not on an engine: there is no coupling to mark</source>
            <extracomment>job/feeds.py</extracomment>
            <translation>cette magnéto n'est pas sur un moteur : il n'y a pas d'accouplement à repérer</translation>
        </message>
        <message>
            <source>no marks were painted on the bench yet; that is done on its Engine page</source>
            <extracomment>job/feeds.py</extracomment>
            <translation>aucun repère n'a encore été peint au banc ; cela se fait à sa page Moteur</translation>
        </message>
        <message>
            <source>with this setting the contacts never open and close, so there is nothing to plan</source>
            <extracomment>job/feeds.py, job/shift_plan.py</extracomment>
            <translation>avec ce réglage, les contacts ne s'ouvrent et ne se ferment jamais : il n'y a rien à prévoir</translation>
        </message>
        <message>
            <source>no tooth has been moved on the bench since the lamp was read</source>
            <extracomment>job/feeds.py</extracomment>
            <translation>aucune dent n'a été déplacée au banc depuis la lecture de la lampe</translation>
        </message>
        <message>
            <source>with the plug in and the contacts closed nothing tells of the lead: open the contacts</source>
            <extracomment>job/feeds.py</extracomment>
            <translation>fiche branchée et contacts fermés, rien ne renseigne sur le fil : ouvrir les contacts</translation>
        </message>
        <message>
            <source>Next check as entered: at {hours} h or {day}.</source>
            <extracomment>job/history.py</extracomment>
            <translation>Prochain contrôle saisi : à {hours} h ou le {day}.</translation>
        </message>
        <message>
            <source>Next check as entered: {day}.</source>
            <extracomment>job/history.py</extracomment>
            <translation>Prochain contrôle saisi : le {day}.</translation>
        </message>
        <message>
            <source>Next check as entered: at {hours} h.</source>
            <extracomment>job/history.py</extracomment>
            <translation>Prochain contrôle saisi : à {hours} h.</translation>
        </message>
        <message>
            <source>this magneto</source>
            <extracomment>job/history.py</extracomment>
            <translation>cette magnéto</translation>
        </message>
        <message>
            <source>Next check of {name}: due at {at} h of the magneto, in {hours} h.</source>
            <extracomment>job/history.py</extracomment>
            <translation>Prochain contrôle de {name} : dû à {at} h de la magnéto, dans {hours} h.</translation>
        </message>
        <message>
            <source>magneto hours [h]</source>
            <extracomment>job/history.py, ui/job_drift_sheet.py</extracomment>
            <translation>heures de la magnéto [h]</translation>
        </message>
        <message>
            <source>{title} over the magneto's hours. Open: as found; filled: as left; dashed: limits.</source>
            <extracomment>job/history.py</extracomment>
            <translation>{title} selon les heures de la magnéto. Vide : tel que trouvé ; plein : tel que laissé ; tireté : limites.</translation>
        </message>
        <message>
            <source>{title} over the magneto's hours. Open: as found; filled: as left; dashed: limits; grey: where the next reading should lie, 95 times in 100.</source>
            <extracomment>job/history.py</extracomment>
            <translation>{title} selon les heures de la magnéto. Vide : tel que trouvé ; plein : tel que laissé ; tireté : limites ; gris : où la prochaine lecture devrait se trouver, 95 fois sur 100.</translation>
        </message>
        <message>
            <source>Hours</source>
            <extracomment>job/history.py, job/parts.py, ui/wear_panel.py</extracomment>
            <translation>Heures</translation>
        </message>
        <message>
            <source>Gap found</source>
            <extracomment>job/history.py</extracomment>
            <translation>Écartement trouvé</translation>
        </message>
        <message>
            <source>Gap left</source>
            <extracomment>job/history.py</extracomment>
            <translation>Écartement laissé</translation>
        </message>
        <message>
            <source>Opens found</source>
            <extracomment>job/history.py</extracomment>
            <translation>Ouverture trouvée</translation>
        </message>
        <message>
            <source>Opens left</source>
            <extracomment>job/history.py</extracomment>
            <translation>Ouverture laissée</translation>
        </message>
        <message>
            <source>Fires found</source>
            <extracomment>job/history.py</extracomment>
            <translation>Allumage trouvé</translation>
        </message>
        <message>
            <source>Fires left</source>
            <extracomment>job/history.py</extracomment>
            <translation>Allumage laissé</translation>
        </message>
        <message>
            <source>the magneto has no serial number on this sheet, so that no earlier one can be told to be its own</source>
            <extracomment>job/history.py</extracomment>
            <translation>la magnéto n'a pas de numéro de série sur cette fiche : aucune antérieure ne peut lui être attribuée</translation>
        </message>
        <message>
            <source>{name}: holds {count} files; only the first {most} were looked at</source>
            <extracomment>job/history.py</extracomment>
            <translation>{name} : contient {count} fichiers ; seuls les {most} premiers ont été examinés</translation>
        </message>
        <message>
            <source>Look again at {when} h of the magneto, or sooner as the manual says.</source>
            <extracomment>job/history.py</extracomment>
            <translation>Revoir à {when} h de la magnéto, ou plus tôt selon le manuel.</translation>
        </message>
        <message>
            <source>Next check of {name}: due at {at} h of the magneto, {hours} h ago.</source>
            <extracomment>job/history.py</extracomment>
            <translation>Prochain contrôle de {name} : dû à {at} h de la magnéto, il y a {hours} h.</translation>
        </message>
        <message>
            <source>Next check of {name}: due on {day}, in {days} days.</source>
            <extracomment>job/history.py</extracomment>
            <translation>Prochain contrôle de {name} : dû le {day}, dans {days} jours.</translation>
        </message>
        <message>
            <source>{name}: cannot be read: {reason}</source>
            <extracomment>job/history.py</extracomment>
            <translation>{name} : est illisible : {reason}</translation>
        </message>
        <message>
            <source>Next check of {name}: due on {day}, {days} days ago.</source>
            <extracomment>job/history.py</extracomment>
            <translation>Prochain contrôle de {name} : dû le {day}, il y a {days} jours.</translation>
        </message>
        <message>
            <source>{stage} is not done yet; missing: {lacks}</source>
            <extracomment>job/judge.py</extracomment>
            <translation>{stage} : pas encore fait ; manque : {lacks}</translation>
        </message>
        <message>
            <source>{stage} comes after {others}: do that first, or skip it with a reason</source>
            <extracomment>job/judge.py</extracomment>
            <translation>{stage} vient après {others} : faire cela d'abord, ou le sauter avec une raison</translation>
        </message>
        <message>
            <source>the lobes</source>
            <extracomment>job/judge.py</extracomment>
            <translation>les bossages</translation>
        </message>
        <message>
            <source>meter or lamp, switch off</source>
            <extracomment>job/judge.py</extracomment>
            <translation>ohmmètre ou lampe, contacteur sur arrêt</translation>
        </message>
        <message>
            <source>meter or lamp, switch on</source>
            <extracomment>job/judge.py</extracomment>
            <translation>ohmmètre ou lampe, contacteur sur marche</translation>
        </message>
        <message>
            <source>“{name}” is neither a file nor one of the shipped jobs: {known}</source>
            <extracomment>job/library.py</extracomment>
            <translation>« {name} » n'est ni un fichier ni l'une des fiches fournies : {known}</translation>
        </message>
        <message>
            <source>Registration</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Immatriculation</translation>
        </message>
        <message>
            <source>Type</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Type</translation>
        </message>
        <message>
            <source>Serial no.</source>
            <extracomment>job/parts.py</extracomment>
            <translation>N° de série</translation>
        </message>
        <message>
            <source>Hours since overhaul</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Heures depuis révision</translation>
        </message>
        <message>
            <source>Position</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Position</translation>
        </message>
        <message>
            <source>Straightedge from the rim mark, either way</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Réglet au repère du bord, dans un sens ou l'autre</translation>
        </message>
        <message>
            <source>Left should fire</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Gauche doit allumer</translation>
        </message>
        <message>
            <source>Right should fire</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Droite doit allumer</translation>
        </message>
        <message>
            <source>Timing to the engine, either way</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Calage sur moteur, dans un sens ou l'autre</translation>
        </message>
        <message>
            <source>Left against right, either way</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Gauche contre droite, dans un sens ou l'autre</translation>
        </message>
        <message>
            <source>Largest drop on one magneto</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Chute max. sur une magnéto</translation>
        </message>
        <message>
            <source>Largest difference of the drops</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Différence max. des chutes</translation>
        </message>
        <message>
            <source>Taken from</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Tiré de</translation>
        </message>
        <message>
            <source>At magneto hours</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Aux heures de magnéto</translation>
        </message>
        <message>
            <source>Or on</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Ou le</translation>
        </message>
        <message>
            <source>Left fires</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Gauche allume</translation>
        </message>
        <message>
            <source>Right fires</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Droite allume</translation>
        </message>
        <message>
            <source>Left error less right error</source>
            <extracomment>job/parts.py, job/readings.py</extracomment>
            <translation>Erreur gauche moins erreur droite</translation>
        </message>
        <message>
            <source>Propeller treated as live; its arc kept clear</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Hélice traitée comme active ; son champ dégagé</translation>
        </message>
        <message>
            <source>Ignition switch off, key out</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Contacteur d'allumage sur arrêt, clé retirée</translation>
        </message>
        <message>
            <source>Switch lead grounded, to be proved at the next stage</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Fil de masse à la masse, à prouver à l'étape suivante</translation>
        </message>
        <message>
            <source>Plugs out: at least one from every cylinder</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Bougies déposées : au moins une par cylindre</translation>
        </message>
        <message>
            <source>Wheels chocked</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Roues calées</translation>
        </message>
        <message>
            <source>The maker's current manual and local rules at hand</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Manuel en vigueur du constructeur et règles locales sous la main</translation>
        </message>
        <message>
            <source>Manual and revision</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Manuel et révision</translation>
        </message>
        <message>
            <source>Meter on the lead, switch off: grounded</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Ohmmètre sur le fil, contacteur sur arrêt : à la masse</translation>
        </message>
        <message>
            <source>Meter on the lead, switch on: grounded</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Ohmmètre sur le fil, contacteur sur marche : à la masse</translation>
        </message>
        <message>
            <source>Lamp, plug in, switch off: grounded</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Lampe, fiche branchée, contacteur sur arrêt : à la masse</translation>
        </message>
        <message>
            <source>Lamp, plug in, switch on: grounded</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Lampe, fiche branchée, contacteur sur marche : à la masse</translation>
        </message>
        <message>
            <source>Lamp, plug out: grounded by the tab</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Lampe, fiche débranchée : à la masse par la languette</translation>
        </message>
        <message>
            <source>Disc at the stop, one way</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Disque à la butée, dans un sens</translation>
        </message>
        <message>
            <source>Disc at the stop, the other way</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Disque à la butée, dans l'autre sens</translation>
        </message>
        <message>
            <source>Stroke of No. 1 before it fires</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Temps du n° 1 avant l'allumage</translation>
        </message>
        <message>
            <source>Disc</source>
            <extracomment>job/parts.py, ui/plan_box.py, ui/practice_sight.py, ui/practice_work.py</extracomment>
            <translation>Disque</translation>
        </message>
        <message>
            <source>Opening from the E-gap, rotor</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Ouverture depuis l'E-gap, rotor</translation>
        </message>
        <message>
            <source>Wear of the heel</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Usure du toucheau</translation>
        </message>
        <message>
            <source>Read with</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Lu avec</translation>
        </message>
        <message>
            <source>Clean and dry</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Propres et secs</translation>
        </message>
        <message>
            <source>Faces meet squarely</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Faces portant d'équerre</translation>
        </message>
        <message>
            <source>Cam felt oiled as the manual says</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Feutre de came huilé selon le manuel</translation>
        </message>
        <message>
            <source>Faces dressed</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Faces rectifiées</translation>
        </message>
        <message>
            <source>Contacts replaced</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Contacts remplacés</translation>
        </message>
        <message>
            <source>Spring, at the contacts</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Ressort, aux contacts</translation>
        </message>
        <message>
            <source>Backplate planned</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Plateau prévu</translation>
        </message>
        <message>
            <source>Contact screw planned</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Vis de contact prévue</translation>
        </message>
        <message>
            <source>Gap planned</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Écartement prévu</translation>
        </message>
        <message>
            <source>Read again after tightening</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Relu après serrage</translation>
        </message>
        <message>
            <source>Opening from its place, rotor</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Ouverture depuis sa place, rotor</translation>
        </message>
        <message>
            <source>Contacts closed, rotor</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Contacts fermés, rotor</translation>
        </message>
        <message>
            <source>Drive flange marked</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Bride d'entraînement repérée</translation>
        </message>
        <message>
            <source>Disc marked</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Disque repéré</translation>
        </message>
        <message>
            <source>Magneto flange marked</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Bride de la magnéto repérée</translation>
        </message>
        <message>
            <source>Magneto marked on the engine's pad</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Magnéto repérée sur l'embase du moteur</translation>
        </message>
        <message>
            <source>Magneto flange's mark from the disc's, with rotation</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Repère de la bride de la magnéto depuis celui du disque, dans le sens de rotation</translation>
        </message>
        <message>
            <source>Disc's mark from the drive flange's, with rotation</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Repère du disque depuis celui de la bride d'entraînement, dans le sens de rotation</translation>
        </message>
        <message>
            <source>Fires, as read</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Allumage, tel que lu</translation>
        </message>
        <message>
            <source>Wanted</source>
            <extracomment>job/parts.py, job/shift_plan.py, practice/report.py, ui/lamp_box.py</extracomment>
            <translation>Voulu</translation>
        </message>
        <message>
            <source>Planned: magneto flange on the disc</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Prévu : bride de la magnéto sur le disque</translation>
        </message>
        <message>
            <source>Planned: disc on the drive flange</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Prévu : disque sur la bride d'entraînement</translation>
        </message>
        <message>
            <source>Planned: fires</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Prévu : allumage</translation>
        </message>
        <message>
            <source>Moved: magneto flange on the disc</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Déplacé : bride de la magnéto sur le disque</translation>
        </message>
        <message>
            <source>Moved: disc on the drive flange</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Déplacé : disque sur la bride d'entraînement</translation>
        </message>
        <message>
            <source>Fires, afterwards</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Allumage, ensuite</translation>
        </message>
        <message>
            <source>Lock screw and clamp screws tight</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Vis de blocage et vis de serrage serrées</translation>
        </message>
        <message>
            <source>Coupling pins and split pins fitted</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Axes d'accouplement et goupilles fendues en place</translation>
        </message>
        <message>
            <source>Nuts torqued as the manual says</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Écrous serrés au couple selon le manuel</translation>
        </message>
        <message>
            <source>Safety wire fitted</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Fil frein en place</translation>
        </message>
        <message>
            <source>Spark plugs refitted and torqued as the manual says</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Bougies remontées et serrées au couple selon le manuel</translation>
        </message>
        <message>
            <source>Plug leads connected, each to its cylinder</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Fils de bougie branchés, chacun à son cylindre</translation>
        </message>
        <message>
            <source>Switch lead connected and proved again</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Fil de masse branché et prouvé de nouveau</translation>
        </message>
        <message>
            <source>Tools, timing pins and stop counted back</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Outils, piges de calage et butée recomptés</translation>
        </message>
        <message>
            <source>Engine speed</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Régime moteur</translation>
        </message>
        <message>
            <source>Drop, running on left</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Chute, marche sur gauche</translation>
        </message>
        <message>
            <source>Drop, running on right</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Chute, marche sur droite</translation>
        </message>
        <message>
            <source>Stops firing with the switch off, at idle</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Cesse d'allumer, contacteur sur arrêt, au ralenti</translation>
        </message>
        <message>
            <source>Trials</source>
            <extracomment>job/parts.py, ui/plot_pane.py, ui/plot_trials.py</extracomment>
            <translation>Essais</translation>
        </message>
        <message>
            <source>Uncertainty</source>
            <extracomment>job/parts.py, ui/job_form.py, ui/plot_pane.py, ui/uncertainty_panel.py</extracomment>
            <translation>Incertitude</translation>
        </message>
        <message>
            <source>Lobes</source>
            <extracomment>job/parts.py, practice/paper.py, ui/plot_lift.py, ui/plot_pane.py</extracomment>
            <translation>Bossages</translation>
        </message>
        <message>
            <source>gap_low_mm is {low}; it must not be above gap_high_mm, {high}</source>
            <extracomment>job/parts.py</extracomment>
            <translation>gap_low_mm vaut {low} ; il ne doit pas dépasser gap_high_mm, {high}</translation>
        </message>
        <message>
            <source>reason is missing; a stage can be skipped only with a reason</source>
            <extracomment>job/parts.py</extracomment>
            <translation>reason manque ; une étape ne peut être sautée qu'avec une raison</translation>
        </message>
        <message>
            <source>reason is given, but the stage is not skipped; write it as a note</source>
            <extracomment>job/parts.py</extracomment>
            <translation>reason est donné, mais l'étape n'est pas sautée ; l'écrire en note</translation>
        </message>
        <message>
            <source>gap_low_mm is {gap_low}; it must not be above gap_high_mm</source>
            <extracomment>job/parts.py</extracomment>
            <translation>gap_low_mm vaut {gap_low} ; il ne doit pas dépasser gap_high_mm</translation>
        </message>
        <message>
            <source>“{text}” is not a date; write it as 2026-11-25</source>
            <extracomment>job/parts.py</extracomment>
            <translation>« {text} » n'est pas une date ; l'écrire comme 2026-11-25</translation>
        </message>
        <message>
            <source>{label}: expanded uncertainty</source>
            <extracomment>job/readings.py</extracomment>
            <translation>{label} : incertitude élargie</translation>
        </message>
        <message>
            <source>{label}: probability in limits</source>
            <extracomment>job/readings.py</extracomment>
            <translation>{label} : probabilité dans les limites</translation>
        </message>
        <message>
            <source>Not judged, for no limit was given: {what}.</source>
            <extracomment>job/readings.py</extracomment>
            <translation>Non jugé, faute de limite donnée : {what}.</translation>
        </message>
        <message>
            <source>no limit given, not judged</source>
            <extracomment>job/readings.py</extracomment>
            <translation>pas de limite donnée, non jugé</translation>
        </message>
        <message>
            <source>in limits</source>
            <extracomment>job/readings.py, ui/plot_window.py</extracomment>
            <translation>dans les limites</translation>
        </message>
        <message>
            <source>{label}: best estimate</source>
            <extracomment>job/readings.py</extracomment>
            <translation>{label} : meilleure estimation</translation>
        </message>
        <message>
            <source>{label}: coverage factor</source>
            <extracomment>job/readings.py</extracomment>
            <translation>{label} : facteur d'élargissement</translation>
        </message>
        <message>
            <source>as it must be</source>
            <extracomment>job/readings.py</extracomment>
            <translation>comme il se doit</translation>
        </message>
        <message>
            <source>Disc at true top dead centre</source>
            <extracomment>job/readings.py</extracomment>
            <translation>Disque au vrai point mort haut</translation>
        </message>
        <message>
            <source>Difference of the drops</source>
            <extracomment>job/readings.py</extracomment>
            <translation>Différence des chutes</translation>
        </message>
        <message>
            <source>Trial {number}: {reading}</source>
            <extracomment>job/readings.py</extracomment>
            <translation>Essai {number} : {reading}</translation>
        </message>
        <message>
            <source>Lobe {number}: {reading}</source>
            <extracomment>job/readings.py</extracomment>
            <translation>Bossage {number} : {reading}</translation>
        </message>
        <message>
            <source>Treat the propeller as live at all times: keep out of its arc, and let nobody else near it.</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Traiter l'hélice comme active à tout moment : rester hors de son champ, et n'en laisser approcher personne.</translation>
        </message>
        <message>
            <source>Ignition switch off; switch lead grounded and proved with a meter or lamp, not taken for granted.</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Contacteur d'allumage sur arrêt ; fil de masse à la masse et prouvé à l'ohmmètre ou à la lampe, jamais tenu pour acquis.</translation>
        </message>
        <message>
            <source>Plugs out: at least one from every cylinder.</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Bougies déposées : au moins une par cylindre.</translation>
        </message>
        <message>
            <source>Wheels chocked; the aircraft cannot move.</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Roues calées ; l'aéronef ne peut pas bouger.</translation>
        </message>
        <message>
            <source>The manufacturer's current manual and local rules govern, not this sheet.</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Le manuel en vigueur du constructeur et les règles locales font foi, pas cette fiche.</translation>
        </message>
        <message>
            <source>Work on a certified aircraft is done or released by a licensed person.</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Le travail sur un aéronef certifié est fait ou libéré par une personne licenciée.</translation>
        </message>
        <message>
            <source>magview is a training and planning aid; the magnetos it ships are invented.</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>magview est une aide à la formation et à la préparation ; les magnétos qu'il fournit sont inventées.</translation>
        </message>
        <message>
            <source>this sheet</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>cette fiche</translation>
        </message>
        <message>
            <source>Invented for demonstration</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Inventé pour démonstration</translation>
        </message>
        <message>
            <source>Cautions and making safe</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Mises en garde et mise en sécurité</translation>
        </message>
        <message>
            <source>Switch-lead proof</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Preuve du fil de masse</translation>
        </message>
        <message>
            <source>Top dead centre and stroke</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Point mort haut et temps</translation>
        </message>
        <message>
            <source>Condition of the contacts</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>État des contacts</translation>
        </message>
        <message>
            <source>Internal timing, as left</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Calage interne, tel que laissé</translation>
        </message>
        <message>
            <source>Every lobe</source>
            <extracomment>job/sheet.py, ui/job_sources.py</extracomment>
            <translation>Chaque bossage</translation>
        </message>
        <message>
            <source>Marks before removal</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Repères avant dépose</translation>
        </message>
        <message>
            <source>Tooth shift</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Décalage de dents</translation>
        </message>
        <message>
            <source>Synchronising</source>
            <extracomment>job/sheet.py, ui/job_sources.py, ui/timing_panel.py</extracomment>
            <translation>Synchronisation</translation>
        </message>
        <message>
            <source>Closing checks</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Contrôles de fin</translation>
        </message>
        <message>
            <source>Ground run</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Point fixe</translation>
        </message>
        <message>
            <source>“{name}” is no stage of a job; stages are {known}</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>« {name} » n'est pas une étape d'une fiche ; les étapes sont {known}</translation>
        </message>
        <message>
            <source>“{part}” is no part of a job</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>« {part} » n'est pas une partie d'une fiche</translation>
        </message>
        <message>
            <source>a signature takes a name and a date</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>une signature demande un nom et une date</translation>
        </message>
        <message>
            <source>done is {done}; it must be at most the number of steps, {count}</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>done vaut {done} ; il doit être au plus le nombre d'étapes, {count}</translation>
        </message>
        <message>
            <source>magneto_file and installation are both given; the installation has a magneto of its own</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>magneto_file et installation sont tous deux donnés ; l'installation a sa propre magnéto</translation>
        </message>
        <message>
            <source>The slots are those of the disc's marked tooth.</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Les encoches sont celles de la dent repérée du disque.</translation>
        </message>
        <message>
            <source>{face}: {each}</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>{face} : {each}</translation>
        </message>
        <message>
            <source>as found, marks painted</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>tel que trouvé, repères peints</translation>
        </message>
        <message>
            <source>Tooth-shift plan: {magneto}</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Plan du décalage de dents : {magneto}</translation>
        </message>
        <message>
            <source>⚠ The internal timing is out of limits: put that right first, no tooth makes up for it.</source>
            <extracomment>job/shift_plan.py, ui/lamp_box.py</extracomment>
            <translation>⚠ Le calage interne est hors limites : le corriger d'abord, aucune dent ne le compense.</translation>
        </message>
        <message>
            <source>The contacts were set anew since the lamp was read: with the teeth as found it would now read {found}.</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Les contacts ont été réglés de nouveau depuis la lecture de la lampe : avec les dents trouvées, elle lirait maintenant {found}.</translation>
        </message>
        <message>
            <source>magneto slot {magneto}, drive slot {drive}</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>encoches magnéto {magneto}, entraînement {drive}</translation>
        </message>
        <message>
            <source>One tooth with rotation, so much earlier</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Une dent dans le sens de rotation, d'autant plus tôt</translation>
        </message>
        <message>
            <source>at the rotor</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>au rotor</translation>
        </message>
        <message>
            <source>at the crank</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>au vilebrequin</translation>
        </message>
        <message>
            <source>Magneto flange on the disc</source>
            <extracomment>job/shift_plan.py, ui/teeth_box.py</extracomment>
            <translation>Bride de la magnéto sur le disque</translation>
        </message>
        <message>
            <source>Disc on the drive flange</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Disque sur la bride d'entraînement</translation>
        </message>
        <message>
            <source>{slot} of {teeth}</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>{slot} sur {teeth}</translation>
        </message>
        <message>
            <source>this magneto is not on an engine: there is no coupling to move</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>cette magnéto n'est pas sur un moteur : il n'y a pas d'accouplement à déplacer</translation>
        </message>
        <message>
            <source>Tooth-shift plan</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Plan du décalage de dents</translation>
        </message>
        <message>
            <source>{way} seen from the drive end</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>{way} vu côté entraînement</translation>
        </message>
        <message>
            <source>Teeth</source>
            <extracomment>job/shift_plan.py, lessons/a-full-job.json</extracomment>
            <translation>Dents</translation>
        </message>
        <message>
            <source>{magneto} at the magneto, {drive} at the drive</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>{magneto} côté magnéto, {drive} côté entraînement</translation>
        </message>
        <message>
            <source>Lamp reads</source>
            <extracomment>job/shift_plan.py, ui/lamp_box.py</extracomment>
            <translation>La lampe lit</translation>
        </message>
        <message>
            <source>Expected</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Attendu</translation>
        </message>
        <message>
            <source>Off by</source>
            <extracomment>job/shift_plan.py, practice/report.py, ui/plan_box.py</extracomment>
            <translation>Écart</translation>
        </message>
        <message>
            <source>Coupling as wanted</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Accouplement, tel que voulu</translation>
        </message>
        <message>
            <source>Magneto flange one with rotation, disc one against</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Bride de la magnéto une dans le sens, disque une en sens contraire</translation>
        </message>
        <message>
            <source>One tooth at a time, seen from the drive end: check the slot, then tick</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Une dent à la fois, vu côté entraînement : contrôler l'encoche, puis cocher</translation>
        </message>
        <message>
            <source>Magneto slot</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Encoche magnéto</translation>
        </message>
        <message>
            <source>Drive slot</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Encoche entraîn.</translation>
        </message>
        <message>
            <source>{box} Tightened and secured. {box} Lamp read again, the propeller turned with rotation so that the play is taken up. What it reads then counts, not what is expected here.</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>{box} Serré et freiné. {box} Lampe relue, l'hélice tournée dans le sens de rotation pour rattraper le jeu. C'est ce qu'elle lit alors qui compte, non ce qui est attendu ici.</translation>
        </message>
        <message>
            <source>✗ This move does not reach it: {outside}.</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>✗ Ce déplacement ne l'atteint pas : {outside}.</translation>
        </message>
        <message>
            <source>⚠ The installation does not fit together: {mismatch}.</source>
            <extracomment>job/shift_plan.py, ui/lamp_box.py</extracomment>
            <translation>⚠ L'installation ne va pas ensemble : {mismatch}.</translation>
        </message>
        <message>
            <source>Lamp reads afterwards, ° before top dead centre</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>La lampe lit ensuite, ° avant le point mort haut</translation>
        </message>
        <message>
            <source>DANGER: THE MAGNETO IS LIVE WITH THE SWITCH OFF. Stop. Keep clear of the propeller. Repair the switch lead, or take the magneto out of use, and prove the lead again before anything is turned.</source>
            <extracomment>job/standing.py</extracomment>
            <translation>DANGER : LA MAGNÉTO EST ACTIVE AVEC LE CONTACT COUPÉ. Arrêter. Rester à l'écart de l'hélice. Réparer le fil de masse, ou mettre la magnéto hors service, et prouver de nouveau le fil avant de tourner quoi que ce soit.</translation>
        </message>
        <message>
            <source>DANGER: THE MAGNETO IS LIVE WITH ITS PLUG OUT: the tab does not ground it. Stop. Keep clear of the propeller; ground the magneto before anything is turned.</source>
            <extracomment>job/standing.py</extracomment>
            <translation>DANGER : LA MAGNÉTO EST ACTIVE AVEC SA FICHE DÉBRANCHÉE : la languette ne la met pas à la masse. Arrêter. Rester à l'écart de l'hélice ; mettre la magnéto à la masse avant de tourner quoi que ce soit.</translation>
        </message>
        <message>
            <source>1 reading out of limits or not as it must be</source>
            <extracomment>job/standing.py</extracomment>
            <translation>1 lecture hors limites ou pas comme il se doit</translation>
        </message>
        <message>
            <source>{count} readings out of limits or not as they must be</source>
            <extracomment>job/standing.py</extracomment>
            <translation>{count} lectures hors limites ou pas comme il se doit</translation>
        </message>
        <message>
            <source>1 reading found out of limits</source>
            <extracomment>job/standing.py</extracomment>
            <translation>1 lecture trouvée hors limites</translation>
        </message>
        <message>
            <source>{count} readings found out of limits</source>
            <extracomment>job/standing.py</extracomment>
            <translation>{count} lectures trouvées hors limites</translation>
        </message>
        <message>
            <source>1 point to be cleared up</source>
            <extracomment>job/standing.py</extracomment>
            <translation>1 point à éclaircir</translation>
        </message>
        <message>
            <source>{count} points to be cleared up</source>
            <extracomment>job/standing.py</extracomment>
            <translation>{count} points à éclaircir</translation>
        </message>
        <message>
            <source>skipped</source>
            <extracomment>job/standing.py</extracomment>
            <translation>sauté</translation>
        </message>
        <message>
            <source>open</source>
            <extracomment>job/standing.py, ui/plot_lift.py</extracomment>
            <translation>ouvert</translation>
        </message>
        <message>
            <source>done, with {what}</source>
            <extracomment>job/standing.py</extracomment>
            <translation>fait, avec {what}</translation>
        </message>
        <message>
            <source>done</source>
            <extracomment>job/standing.py</extracomment>
            <translation>fait</translation>
        </message>
        <message>
            <source>The timing wanted, {wanted}, is outside this sheet's limits, {limits}; readings are judged by the limits.</source>
            <extracomment>job/standing.py</extracomment>
            <translation>Le calage voulu, {wanted}, est hors des limites de cette fiche, {limits} ; les lectures sont jugées d'après les limites.</translation>
        </message>
        <message>
            <source>Teeth and readings contradict each other: magneto flange {magneto} and disc {disc} would bring it from {before} to {expected}, and it is said to fire {after}; count the teeth, and read the lamp again.</source>
            <extracomment>job/standing.py</extracomment>
            <translation>Dents et lectures se contredisent : bride de la magnéto {magneto} et disque {disc} mèneraient de {before} à {expected}, et l'allumage est donné à {after} ; compter les dents, et relire la lampe.</translation>
        </message>
        <message>
            <source>1 missing</source>
            <extracomment>job/standing.py</extracomment>
            <translation>1 manquant</translation>
        </message>
        <message>
            <source>{count} missing</source>
            <extracomment>job/standing.py</extracomment>
            <translation>{count} manquants</translation>
        </message>
        <message>
            <source>{error}. What you entered is kept here and tried again with your next step; a copy is in {folder}</source>
            <extracomment>job/store.py</extracomment>
            <translation>{error}. Votre saisie est conservée ici et sera retentée à la prochaine étape ; une copie est dans {folder}</translation>
        </message>
        <message>
            <source>{error}. What you entered is kept here and tried again with your next step</source>
            <extracomment>job/store.py</extracomment>
            <translation>{error}. Votre saisie est conservée ici et sera retentée à la prochaine étape</translation>
        </message>
        <message>
            <source>{error}. What you entered is kept here; a copy is in {folder}</source>
            <extracomment>job/store.py</extracomment>
            <translation>{error}. Votre saisie est conservée ici ; une copie est dans {folder}</translation>
        </message>
        <message>
            <source>{error}. What you entered is kept here</source>
            <extracomment>job/store.py</extracomment>
            <translation>{error}. Votre saisie est conservée ici</translation>
        </message>
        <message>
            <source>{name} may only be read; save it under another name to change it</source>
            <extracomment>job/store.py</extracomment>
            <translation>{name} est en lecture seule ; l'enregistrer sous un autre nom pour le modifier</translation>
        </message>
        <message>
            <source>{name}: is there already; open it, or choose another name</source>
            <extracomment>job/store.py</extracomment>
            <translation>{name} : existe déjà ; l'ouvrir, ou choisir un autre nom</translation>
        </message>
        <message>
            <source>{name}: is there already; choose another name</source>
            <extracomment>job/store.py</extracomment>
            <translation>{name} : existe déjà ; choisir un autre nom</translation>
        </message>
        <message>
            <source>{name} is open in another window or program: it can be read here, and changed there; save it under another name to change it here</source>
            <extracomment>job/store.py</extracomment>
            <translation>{name} est ouvert dans une autre fenêtre ou un autre programme : on peut le lire ici, et le modifier là-bas ; l'enregistrer sous un autre nom pour le modifier ici</translation>
        </message>
        <message>
            <source>{name} can only be read: its folder takes no files ({reason}); save it elsewhere to change it</source>
            <extracomment>job/store.py</extracomment>
            <translation>{name} est en lecture seule : son dossier n'accepte pas de fichiers ({reason}) ; l'enregistrer ailleurs pour le modifier</translation>
        </message>
        <message>
            <source>{name}: cannot be written: its folder or drive is gone; put it back, or save elsewhere</source>
            <extracomment>job/store.py</extracomment>
            <translation>{name} : écriture impossible : son dossier ou son lecteur a disparu ; le remettre, ou enregistrer ailleurs</translation>
        </message>
        <message>
            <source>{name}: was changed by another program and is left as it is; reload it, or save under another name</source>
            <extracomment>job/store.py</extracomment>
            <translation>{name} : a été modifié par un autre programme et est laissé tel quel ; le recharger, ou enregistrer sous un autre nom</translation>
        </message>
        <message>
            <source>this sheet is larger than {most} MB, the most that is read again; shorten it</source>
            <extracomment>job/store.py</extracomment>
            <translation>cette fiche dépasse {most} MB, le maximum qui se relit ; la raccourcir</translation>
        </message>
        <message>
            <source>{name}: is no name of a file</source>
            <extracomment>job/store.py</extracomment>
            <translation>{name} : n'est pas un nom de fichier</translation>
        </message>
        <message>
            <source>this step of the history is damaged; it cannot be undone or done again</source>
            <extracomment>job/store.py</extracomment>
            <translation>cette étape de l'historique est endommagée ; elle ne peut être ni annulée ni rétablie</translation>
        </message>
        <message>
            <source>{name}: cannot be written; choose another name</source>
            <extracomment>job/store.py</extracomment>
            <translation>{name} : écriture impossible ; choisir un autre nom</translation>
        </message>
        <message>
            <source>intake</source>
            <extracomment>job/words.py, ui/job_kinds.py</extracomment>
            <translation>admission</translation>
        </message>
        <message>
            <source>compression</source>
            <extracomment>job/words.py, ui/job_kinds.py</extracomment>
            <translation>compression</translation>
        </message>
        <message>
            <source>power</source>
            <extracomment>job/words.py, ui/job_kinds.py</extracomment>
            <translation>détente</translation>
        </message>
        <message>
            <source>exhaust</source>
            <extracomment>job/words.py, ui/job_kinds.py</extracomment>
            <translation>échappement</translation>
        </message>
        <message>
            <source>within ±{limit}</source>
            <extracomment>job/words.py</extracomment>
            <translation>à ±{limit} près</translation>
        </message>
        <message>
            <source>{angle} late</source>
            <extracomment>job/words.py, ui/plot_window.py, ui/setting_panel.py</extracomment>
            <translation>{angle} en retard</translation>
        </message>
        <message>
            <source>{angle} early</source>
            <extracomment>job/words.py, ui/plot_window.py, ui/setting_panel.py</extracomment>
            <translation>{angle} en avance</translation>
        </message>
        <message>
            <source>at most {limit}</source>
            <extracomment>job/words.py</extracomment>
            <translation>au plus {limit}</translation>
        </message>
        <message>
            <source>at least {limit}</source>
            <extracomment>job/words.py</extracomment>
            <translation>au moins {limit}</translation>
        </message>
        <message>
            <source>{angle} before top dead centre</source>
            <extracomment>job/words.py</extracomment>
            <translation>{angle} avant le point mort haut</translation>
        </message>
        <message>
            <source>{angle} after top dead centre</source>
            <extracomment>job/words.py</extracomment>
            <translation>{angle} après le point mort haut</translation>
        </message>
        <message>
            <source>{name} has shape {shape}; an axis of a map is one-dimensional</source>
            <extracomment>physics/adjustment_map.py</extracomment>
            <translation>{name} a la forme {shape} ; un axe de carte n'a qu'une dimension</translation>
        </message>
        <message>
            <source>{name} holds a value that is not finite</source>
            <extracomment>physics/adjustment_map.py</extracomment>
            <translation>{name} contient une valeur qui n'est pas finie</translation>
        </message>
        <message>
            <source>The trials ask for {scale} times the file's lift: check that this is the file for this cam.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Les essais demandent {scale} fois la levée du fichier : vérifier que c'est le fichier de cette came.</translation>
        </message>
        <message>
            <source>The trials ask for {scale} times the file's rise: check that this is the file for this cam.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Les essais demandent {scale} fois la montée du fichier : vérifier que c'est le fichier de cette came.</translation>
        </message>
        <message>
            <source>The gap of trial {behind} is smaller than that of trial {ahead}, though its plate stands further with rotation; openings off the mark but within the tolerance explain it: set them closer to the mark.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>L'écartement de l'essai {behind} est plus petit que celui de l'essai {ahead}, bien que son plateau soit plus loin dans le sens de rotation ; des ouvertures hors du repère mais dans la tolérance l'expliquent : les régler plus près du repère.</translation>
        </message>
        <message>
            <source>{mm} mm ({inches} in)</source>
            <extracomment>physics/advice.py, physics/setting.py, practice/words.py</extracomment>
            <translation>{mm} mm ({inches} in)</translation>
        </message>
        <message>
            <source>{low} to {high} mm ({low_in} to {high_in} in)</source>
            <extracomment>physics/advice.py, practice/paper.py</extracomment>
            <translation>{low} à {high} mm ({low_in} à {high_in} in)</translation>
        </message>
        <message>
            <source>Done: the gap, {span}, is in limits.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Terminé : l'écartement, {span}, est dans les limites.</translation>
        </message>
        <message>
            <source>{gap}; {probability} times in 100 it will be {span}</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>{gap} ; {probability} fois sur 100, il sera {span}</translation>
        </message>
        <message>
            <source>Start with the plate at {plate}° and the contacts set to open at the E-gap: by the file the gap should be {expected}.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Commencer avec le plateau à {plate}° et les contacts réglés pour ouvrir à l'E-gap : d'après le fichier, l'écartement devrait être {expected}.</translation>
        </message>
        <message>
            <source>The gap cannot be brought into limits within the slot ({low}° to {high}°): that would take about {aim}°. The nearest is the end of the slot at {plate}°, where the gap should be {expected}.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>L'écartement ne peut être amené dans les limites avec cette lumière ({low}° à {high}°) : il faudrait environ {aim}°. Le plus proche est le bout de la lumière à {plate}°, où l'écartement devrait être {expected}.</translation>
        </message>
        <message>
            <source>Leave the plate at {plate}° and set the opening again, closer to the mark: an opening off the mark but within the tolerance explains this gap, which should be {expected}.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Laisser le plateau à {plate}° et refaire le réglage d'ouverture, plus près du repère : une ouverture hors du repère mais dans la tolérance explique cet écartement, qui devrait être {expected}.</translation>
        </message>
        <message>
            <source>Trials {first} and {second} stood at the same plate and give different gaps; openings off the mark but within the tolerance explain it: set them closer to the mark.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Les essais {first} et {second} étaient au même plateau et donnent des écartements différents ; des ouvertures hors du repère mais dans la tolérance l'expliquent : les régler plus près du repère.</translation>
        </message>
        <message>
            <source>The gap of trial {behind} is smaller than that of trial {ahead}, though its plate stands further with rotation, more than openings within the tolerance explain: check that the clamping screws hold, that lobe 1 was used, and which blades were, and repeat one of the two.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>L'écartement de l'essai {behind} est plus petit que celui de l'essai {ahead}, bien que son plateau soit plus loin dans le sens de rotation, plus que des ouvertures dans la tolérance ne l'expliquent : vérifier que les vis de serrage tiennent, que le bossage 1 a servi, et quelles jauges, et refaire l'un des deux.</translation>
        </message>
        <message>
            <source>above {length}</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>plus de {length}</translation>
        </message>
        <message>
            <source>the limits are {low} to {high} mm; they must be above 0, the low one first</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>les limites sont {low} à {high} mm ; elles doivent être au-dessus de 0, la plus basse d'abord</translation>
        </message>
        <message>
            <source>the wanted gap is {wanted} mm; the limits are {low} to {high} mm</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>l'écartement voulu est {wanted} mm ; les limites sont {low} à {high} mm</translation>
        </message>
        <message>
            <source>Turn the plate {turn}° with cam rotation, to {plate}°: the gap should be {expected}.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Tourner le plateau de {turn}° dans le sens de la came, à {plate}° : l'écartement devrait être {expected}.</translation>
        </message>
        <message>
            <source>Turn the plate {turn}° against cam rotation, to {plate}°: the gap should be {expected}.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Tourner le plateau de {turn}° en sens inverse de la came, à {plate}° : l'écartement devrait être {expected}.</translation>
        </message>
        <message>
            <source>The aim is about {aim}°, but that is too far from what was tried to be sure of.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Le but est vers {aim}°, mais c'est trop loin de ce qui a été essayé pour en être sûr.</translation>
        </message>
        <message>
            <source>The gap, {span}, may be in limits, but the blades cannot tell: the plate is right where it is, so try finer blades, or set the opening again, closer to the mark.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>L'écartement, {span}, est peut-être dans les limites, mais les jauges ne peuvent le dire : le plateau est bien où il est ; essayer des jauges plus fines, ou refaire le réglage d'ouverture, plus près du repère.</translation>
        </message>
        <message>
            <source>Leave the plate at the end of the slot and set the opening again, closer to the mark: an opening off the mark but within the tolerance explains this gap, which should be {expected}.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Laisser le plateau au bout de la lumière et refaire le réglage d'ouverture, plus près du repère : une ouverture hors du repère mais dans la tolérance explique cet écartement, qui devrait être {expected}.</translation>
        </message>
        <message>
            <source>Trial {trial} does not fit the others and is left out: its gap is larger than any opening within the tolerance explains; check it.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>L'essai {trial} ne va pas avec les autres et est laissé de côté : son écartement est plus grand que ne l'explique toute ouverture dans la tolérance ; le vérifier.</translation>
        </message>
        <message>
            <source>Trial {trial} does not fit the others and is left out: its gap is smaller than any opening within the tolerance explains; check it.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>L'essai {trial} ne va pas avec les autres et est laissé de côté : son écartement est plus petit que ne l'explique toute ouverture dans la tolérance ; le vérifier.</translation>
        </message>
        <message>
            <source>Trials {first} and {second} stood at the same plate and give different gaps, more than openings within the tolerance explain: check that the clamping screws hold, that lobe 1 was used, and which blades were, and repeat one of the two.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Les essais {first} et {second} étaient au même plateau et donnent des écartements différents, plus que des ouvertures dans la tolérance ne l'expliquent : vérifier que les vis de serrage tiennent, que le bossage 1 a servi, et quelles jauges, et refaire l'un des deux.</translation>
        </message>
        <message>
            <source>The trials contradict each other; clear that up before going on.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Les essais se contredisent ; éclaircir cela avant de continuer.</translation>
        </message>
        <message>
            <source>It is not what the other trials lead to expect, so try the blades once more.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Ce n'est pas ce que les autres essais laissent attendre : essayer encore une fois les jauges.</translation>
        </message>
        <message>
            <source>That is the end of the slot; the gap may just come into limits there.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>C'est le bout de la lumière ; l'écartement peut tout juste y rentrer dans les limites.</translation>
        </message>
        <message>
            <source>{hidden} mm of lift</source>
            <extracomment>physics/breaker.py</extracomment>
            <translation>{hidden} mm de levée</translation>
        </message>
        <message>
            <source>a part of it altogether</source>
            <extracomment>physics/breaker.py</extracomment>
            <translation>toute une partie</translation>
        </message>
        <message>
            <source>breaker.heel_radius_mm: the heel cannot follow the cam's flank, which is too hollow for its radius or too steep for its arm: it misses {missed}, where at most {most} mm is allowed; a smaller heel, a longer rise_deg or fall_deg, or another law would fit</source>
            <extracomment>physics/breaker.py</extracomment>
            <translation>breaker.heel_radius_mm : le toucheau ne peut suivre le flanc de la came, trop creux pour son rayon ou trop raide pour son bras : il manque {missed}, où {most} mm au plus est permis ; un toucheau plus petit, rise_deg ou fall_deg plus long, ou une autre loi conviendrait</translation>
        </message>
        <message>
            <source>closed_deg is {closed}; it must be 0 or more</source>
            <extracomment>physics/coil.py</extracomment>
            <translation>closed_deg vaut {closed} ; il doit être 0 ou plus</translation>
        </message>
        <message>
            <source>{name} has no electrical values</source>
            <extracomment>physics/coil.py</extracomment>
            <translation>{name} n'a pas de valeurs électriques</translation>
        </message>
        <message>
            <source>readings have shape {shape}; those of one setting are needed</source>
            <extracomment>physics/coil.py</extracomment>
            <translation>les lectures ont la forme {shape} ; il faut celles d'un seul réglage</translation>
        </message>
        <message>
            <source>poles is {poles}; it must be an even number from 2 on</source>
            <extracomment>physics/coil.py</extracomment>
            <translation>poles vaut {poles} ; ce doit être un nombre pair à partir de 2</translation>
        </message>
        <message>
            <source>speed_rpm is {speed}; it must be above 0 and at most {most}</source>
            <extracomment>physics/coil.py</extracomment>
            <translation>speed_rpm vaut {speed} ; il doit être au-dessus de 0 et d'au plus {most}</translation>
        </message>
        <message>
            <source>an angle is infinite</source>
            <extracomment>physics/coil.py</extracomment>
            <translation>un angle est infini</translation>
        </message>
        <message>
            <source>the nearest this coupling comes is {residual}° of crank late, outside the tolerance of {tolerance}°</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>au plus près, cet accouplement donne {residual}° de vilebrequin en retard, hors de la tolérance de {tolerance}°</translation>
        </message>
        <message>
            <source>rotor_turns_per_crank_turn is {given}; {cylinders} cylinders and {poles} poles need {cylinders}/{twice}, which is {needed}</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>rotor_turns_per_crank_turn vaut {given} ; {cylinders} cylindres et {poles} pôles demandent {cylinders}/{twice}, soit {needed}</translation>
        </message>
        <message>
            <source>the nearest this coupling comes is {residual}° of crank early, outside the tolerance of {tolerance}°</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>au plus près, cet accouplement donne {residual}° de vilebrequin en avance, hors de la tolérance de {tolerance}°</translation>
        </message>
        <message>
            <source>the list of moves must be allowed at least 1 move, not {most}</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>la liste des déplacements doit en permettre au moins 1, pas {most}</translation>
        </message>
        <message>
            <source>the reading is {value}° before top dead centre; it must lie within ±3600°</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>la lecture est {value}° avant le point mort haut ; elle doit être dans ±3600°</translation>
        </message>
        <message>
            <source>the wanted timing is {value}° before top dead centre; it must lie within ±3600°</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>le calage voulu est {value}° avant le point mort haut ; il doit être dans ±3600°</translation>
        </message>
        <message>
            <source>the rotor turns {ratio} times per crank turn; it must be 0.05 to 20 times</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>le rotor fait {ratio} tours par tour de vilebrequin ; il doit en faire 0.05 à 20</translation>
        </message>
        <message>
            <source>the coupling has {count} teeth at the magneto; it must have 1 to {most}</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>l'accouplement a {count} dents côté magnéto ; il doit en avoir 1 à {most}</translation>
        </message>
        <message>
            <source>the coupling has {count} teeth at the drive; it must have 1 to {most}</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>l'accouplement a {count} dents côté entraînement ; il doit en avoir 1 à {most}</translation>
        </message>
        <message>
            <source>{cylinders} cylinders and {poles} poles have no speed ratio; both must be at least 1</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>{cylinders} cylindres et {poles} pôles n'ont pas de rapport de vitesse ; il en faut au moins 1 de chaque</translation>
        </message>
        <message>
            <source>the left magneto's reading is {value}; it must be a number of degrees</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>la lecture de la magnéto gauche est {value} ; ce doit être un nombre de degrés</translation>
        </message>
        <message>
            <source>the right magneto's reading is {value}; it must be a number of degrees</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>la lecture de la magnéto droite est {value} ; ce doit être un nombre de degrés</translation>
        </message>
        <message>
            <source>the knots of a rising curve must increase in x and in y</source>
            <extracomment>physics/curve.py</extracomment>
            <translation>les nœuds d'une courbe montante doivent croître en x et en y</translation>
        </message>
        <message>
            <source>firing_order puts cylinder {cylinder} {away}° from where its piston is at the top; with all rods on one crank pin it cannot fire in that place</source>
            <extracomment>physics/engine.py</extracomment>
            <translation>firing_order place le cylindre {cylinder} à {away}° d'où son piston est en haut ; toutes les bielles étant sur un seul maneton, il ne peut allumer à cette place</translation>
        </message>
        <message>
            <source>there is no cylinder {cylinder}; the engine has 1 to {cylinders}</source>
            <extracomment>physics/engine.py</extracomment>
            <translation>il n'y a pas de cylindre {cylinder} ; le moteur a 1 à {cylinders}</translation>
        </message>
        <message>
            <source>both stop readings are {first}°; for the second the crank is turned to the stop the other way</source>
            <extracomment>physics/engine.py</extracomment>
            <translation>les deux lectures à la butée sont {first}° ; pour la seconde, on tourne le vilebrequin à la butée dans l'autre sens</translation>
        </message>
        <message>
            <source>stop readings of {first}° and {second}° have no middle that can be told from its opposite; they must be numbers, and not 180° apart</source>
            <extracomment>physics/engine.py</extracomment>
            <translation>les lectures à la butée de {first}° et {second}° n'ont pas de milieu qui se distingue de son opposé ; ce doivent être des nombres, non distants de 180°</translation>
        </message>
        <message>
            <source>there are {count} openings; there must be one for each of the {lobes} lobes</source>
            <extracomment>physics/engine.py</extracomment>
            <translation>il y a {count} ouvertures ; il en faut une pour chacun des {lobes} bossages</translation>
        </message>
        <message>
            <source>the cam gives {sparks} sparks in two crank turns; the engine needs {n}</source>
            <extracomment>physics/engine.py</extracomment>
            <translation>la came donne {sparks} étincelles en deux tours de vilebrequin ; le moteur en demande {n}</translation>
        </message>
        <message>
            <source>the timing is {btdc}° before top dead centre; it must lie within ±90°</source>
            <extracomment>physics/engine.py</extracomment>
            <translation>le calage est {btdc}° avant le point mort haut ; il doit être dans ±90°</translation>
        </message>
        <message>
            <source>the piston of cylinder {cylinder} does not reach {wanted} mm below top dead centre</source>
            <extracomment>physics/engine.py</extracomment>
            <translation>le piston du cylindre {cylinder} n'atteint pas {wanted} mm sous le point mort haut</translation>
        </message>
        <message>
            <source>the scaled magneto</source>
            <extracomment>physics/flank.py</extracomment>
            <translation>la magnéto mise à l'échelle</translation>
        </message>
        <message>
            <source>the scaled cam cannot be: {reason}</source>
            <extracomment>physics/flank.py</extracomment>
            <translation>la came mise à l'échelle est impossible : {reason}</translation>
        </message>
        <message>
            <source>Fitted from {trials}: lift × {lift_scale} ± {lift_spread}, rise × {rise_scale} ± {rise_spread}, index {index}° ± {index_spread}° (95 in 100). Law of motion, dwell and fall are the first file's.</source>
            <extracomment>physics/flank_fit.py</extracomment>
            <translation>Ajusté sur {trials} : levée × {lift_scale} ± {lift_spread}, montée × {rise_scale} ± {rise_spread}, repère {index}° ± {index_spread}° (95 sur 100). Loi de mouvement, palier et descente sont ceux du premier fichier.</translation>
        </message>
        <message>
            <source>1 trial</source>
            <extracomment>physics/flank_fit.py</extracomment>
            <translation>1 essai</translation>
        </message>
        <message>
            <source>{count} trials</source>
            <extracomment>physics/flank_fit.py</extracomment>
            <translation>{count} essais</translation>
        </message>
        <message>
            <source>{name}, fitted from {trials}</source>
            <extracomment>physics/flank_fit.py</extracomment>
            <translation>{name}, ajustée sur {trials}</translation>
        </message>
        <message>
            <source>{count} trials are given; at most {most} are used</source>
            <extracomment>physics/flank_fit.py</extracomment>
            <translation>{count} essais sont donnés ; {most} au plus servent</translation>
        </message>
        <message>
            <source>the probability is {probability}; it must lie between 0 and 1</source>
            <extracomment>physics/flank_fit.py</extracomment>
            <translation>la probabilité est {probability} ; elle doit être entre 0 et 1</translation>
        </message>
        <message>
            <source>fitted from {trials}</source>
            <extracomment>physics/flank_fit.py</extracomment>
            <translation>ajusté sur {trials}</translation>
        </message>
        <message>
            <source>an inspection at {hours} h; hours lie between 0 and {most}</source>
            <extracomment>physics/inspection.py</extracomment>
            <translation>une visite à {hours} h ; les heures sont entre 0 et {most}</translation>
        </message>
        <message>
            <source>the gap is {value} mm; it must lie between 0 and 100</source>
            <extracomment>physics/inspection.py</extracomment>
            <translation>l'écartement est {value} mm ; il doit être entre 0 et 100</translation>
        </message>
        <message>
            <source>the gap's half-width is {value} mm; it must lie between 0 and 100</source>
            <extracomment>physics/inspection.py</extracomment>
            <translation>la demi-largeur de l'écartement est {value} mm ; elle doit être entre 0 et 100</translation>
        </message>
        <message>
            <source>the opening's error is {value}°; it must lie within 90°</source>
            <extracomment>physics/inspection.py</extracomment>
            <translation>l'erreur d'ouverture est {value}° ; elle doit être de 90° au plus</translation>
        </message>
        <message>
            <source>the opening's half-width is {value}°; it must lie within 90°</source>
            <extracomment>physics/inspection.py</extracomment>
            <translation>la demi-largeur de l'ouverture est {value}° ; elle doit être de 90° au plus</translation>
        </message>
        <message>
            <source>common practice</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>usage courant</translation>
        </message>
        <message>
            <source>resolution: read to the nearest division, half of one to each side</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>résolution : lu à la division la plus proche, une demie de chaque côté</translation>
        </message>
        <message>
            <source>resolution: between the blade that passes and the next</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>résolution : entre la jauge qui passe et la suivante</translation>
        </message>
        <message>
            <source>straightedge held by hand</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>réglet tenu à la main</translation>
        </message>
        <message>
            <source>straightedge clamped to the cam</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>réglet bridé sur la came</translation>
        </message>
        <message>
            <source>rule to 1 mm</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>règle à 1 mm</translation>
        </message>
        <message>
            <source>rule to thirty-seconds of an inch</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>rule to 0.5 mm</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>règle à 0.5 mm</translation>
        </message>
        <message>
            <source>rule to 1/64 in</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>règle à 1/64 in</translation>
        </message>
        <message>
            <source>magnifier with a scale to 0.1 mm</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>loupe graduée à 0.1 mm</translation>
        </message>
        <message>
            <source>blades in steps of 0.05 mm</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>jauges par pas de 0.05 mm</translation>
        </message>
        <message>
            <source>blades in steps of 0.001 in</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>jauges par pas de 0.001 in</translation>
        </message>
        <message>
            <source>blades in steps of 0.0005 in</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>jauges par pas de 0.0005 in</translation>
        </message>
        <message>
            <source>blades in steps of 0.01 mm</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>jauges par pas de 0.01 mm</translation>
        </message>
        <message>
            <source>drag judged by one blade</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>frottement jugé sur une jauge</translation>
        </message>
        <message>
            <source>drag compared with the next blade's</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>frottement comparé à celui de la jauge suivante</translation>
        </message>
        <message>
            <source>strip of thin paper, just free</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>bande de papier fin, juste libre</translation>
        </message>
        <message>
            <source>ohmmeter across the contacts</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>ohmmètre aux bornes des contacts</translation>
        </message>
        <message>
            <source>timing lamp</source>
            <extracomment>physics/instruments.py, ui/class_editor_fields.py</extracomment>
            <translation>lampe de calage</translation>
        </message>
        <message>
            <source>rotor turned by hand</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>rotor tourné à la main</translation>
        </message>
        <message>
            <source>rotor turned with a bar, against a stop</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>rotor tourné à la barre, contre une butée</translation>
        </message>
        <message>
            <source>propeller turned by hand</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>hélice tournée à la main</translation>
        </message>
        <message>
            <source>propeller tapped round</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>hélice tournée par petits coups</translation>
        </message>
        <message>
            <source>disc to 1°</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>disque à 1°</translation>
        </message>
        <message>
            <source>disc to 0.5°</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>disque à 0.5°</translation>
        </message>
        <message>
            <source>angle indicator to 0.1°</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>indicateur d'angle à 0.1°</translation>
        </message>
        <message>
            <source>turned to and fro</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>tourné en va-et-vient</translation>
        </message>
        <message>
            <source>anywhere within the play</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>n'importe où dans le jeu</translation>
        </message>
        <message>
            <source>always led in with rotation</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>toujours amené dans le sens de rotation</translation>
        </message>
        <message>
            <source>the play is taken up</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>le jeu est rattrapé</translation>
        </message>
        <message>
            <source>read before tightening</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>lu avant serrage</translation>
        </message>
        <message>
            <source>either way, as the file</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>dans un sens ou l'autre, selon le fichier</translation>
        </message>
        <message>
            <source>read again after tightening</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>relu après serrage</translation>
        </message>
        <message>
            <source>as found</source>
            <extracomment>physics/instruments.py, ui/drive_view.py</extracomment>
            <translation>tel que trouvé</translation>
        </message>
        <message>
            <source>the table's lift comes to {lift} mm at the contacts, and {least} to {most} mm is allowed: are its unit and the kind of reading right?</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>la levée de la table fait {lift} mm aux contacts, et {least} à {most} mm sont permis : son unité et le genre de lecture sont-ils justes ?</translation>
        </message>
        <message>
            <source>the readings stand high off the lobe and fall on it: say that the dial falls with lift</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>les lectures sont hautes hors du bossage et baissent dessus : indiquer que le cadran baisse avec la levée</translation>
        </message>
        <message>
            <source>the table shows {count} tops, near {places}; it must show one lobe, from base circle to base circle</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>la table montre {count} sommets, vers {places} ; elle doit montrer un bossage, de cercle de base à cercle de base</translation>
        </message>
        <message>
            <source>the readings scatter by {noise} mm about any smooth curve, {share} % of the lift; at most {most} % is taken for a lobe</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>les lectures se dispersent de {noise} mm autour de toute courbe lisse, {share} % de la levée ; {most} % au plus passent pour un bossage</translation>
        </message>
        <message>
            <source>the table covers one side of the lobe only; it must go over the top and down again</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>la table ne couvre qu'un côté du bossage ; elle doit passer le sommet et redescendre</translation>
        </message>
        <message>
            <source>neither end of the table lies on the base circle; measure from base circle to base circle</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>aucun bout de la table n'est sur le cercle de base ; mesurer de cercle de base à cercle de base</translation>
        </message>
        <message>
            <source>The table begins on the flank; its foot is drawn, not measured.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>La table commence sur le flanc ; son pied est dessiné, pas mesuré.</translation>
        </message>
        <message>
            <source>The table ends on the flank; its foot is drawn, not measured.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>La table finit sur le flanc ; son pied est dessiné, pas mesuré.</translation>
        </message>
        <message>
            <source>The base circle reads {difference} mm more after the lobe than before it (the dial slipped, or the cam runs out); each flank was taken from its own side.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>Le cercle de base lit {difference} mm de plus après le bossage qu'avant (le cadran a glissé, ou la came a du faux-rond) ; chaque flanc a été pris de son côté.</translation>
        </message>
        <message>
            <source>The base circle reads {difference} mm more before the lobe than after it (the dial slipped, or the cam runs out); each flank was taken from its own side.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>Le cercle de base lit {difference} mm de plus avant le bossage qu'après (le cadran a glissé, ou la came a du faux-rond) ; chaque flanc a été pris de son côté.</translation>
        </message>
        <message>
            <source>Only {count} rows lie on the rise; between them it is a guess.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>Seules {count} lignes sont sur la montée ; entre elles, on devine.</translation>
        </message>
        <message>
            <source>Only {count} rows lie on the fall; between them it is a guess.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>Seules {count} lignes sont sur la descente ; entre elles, on devine.</translation>
        </message>
        <message>
            <source>The readings scatter by {noise} mm about the curve, {share} % of the lift.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>Les lectures se dispersent de {noise} mm autour de la courbe, {share} % de la levée.</translation>
        </message>
        <message>
            <source>Below {lift} mm of lift the contacts were closed; the foot is drawn, not measured.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>Sous {lift} mm de levée, les contacts étaient fermés ; le pied est dessiné, pas mesuré.</translation>
        </message>
        <message>
            <source>The base circle before the lobe is uneven by {uneven} mm.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>Le cercle de base avant le bossage est irrégulier de {uneven} mm.</translation>
        </message>
        <message>
            <source>The base circle after the lobe is uneven by {uneven} mm.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>Le cercle de base après le bossage est irrégulier de {uneven} mm.</translation>
        </message>
        <message>
            <source>table of the lift</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>table de la levée</translation>
        </message>
        <message>
            <source>the measured lift</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>la levée mesurée</translation>
        </message>
        <message>
            <source>The table has {columns} columns; two of them were used.</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>La table a {columns} colonnes ; deux ont servi.</translation>
        </message>
        <message>
            <source>Turned both ways, the readings lie {backlash}° of cam apart, as backlash makes them; the middle of the two was taken.</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>Tournées dans les deux sens, les lectures sont à {backlash}° de came d'écart, comme par jeu ; leur milieu a été pris.</translation>
        </message>
        <message>
            <source>{outliers} of {count} rows, far off their neighbours, were left out.</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>{outliers} lignes sur {count}, très loin de leurs voisines, ont été laissées de côté.</translation>
        </message>
        <message>
            <source>the table tells the lift at {places} different angles; it must be at {least} or more, better at 20</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>la table donne la levée à {places} angles différents ; il en faut {least} ou plus, mieux 20</translation>
        </message>
        <message>
            <source>the cam's turns per rotor turn is {value}; it must be 0.01 to 100</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>les tours de came par tour de rotor valent {value} ; ils doivent être de 0.01 à 100</translation>
        </message>
        <message>
            <source>the contact arm over the heel arm is {value}; it must be 0.01 to 100</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>le bras du contact sur le bras du toucheau vaut {value} ; il doit être de 0.01 à 100</translation>
        </message>
        <message>
            <source>the stop is {stop} mm; it must be 0 to {most} mm</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>la butée est {stop} mm ; elle doit être de 0 à {most} mm</translation>
        </message>
        <message>
            <source>the measured lift: {reason}</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>la levée mesurée : {reason}</translation>
        </message>
        <message>
            <source>no lobe can be drawn through the table: {reason}</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>aucun bossage ne peut être tracé par la table : {reason}</translation>
        </message>
        <message>
            <source>{count} instruments are given for {role}; there must be one</source>
            <extracomment>physics/measurement.py</extracomment>
            <translation>{count} instruments sont donnés pour {role} ; il en faut un</translation>
        </message>
        <message>
            <source>nothing was read with an instrument for {role}</source>
            <extracomment>physics/measurement.py</extracomment>
            <translation>rien n'a été lu avec un instrument pour {role}</translation>
        </message>
        <message>
            <source>linear and Monte Carlo agree: the ends of their intervals differ by {worst} at most, where {tolerance} is allowed</source>
            <extracomment>physics/monte_carlo.py</extracomment>
            <translation>calcul linéaire et Monte-Carlo concordent : les bornes de leurs intervalles diffèrent de {worst} au plus, où {tolerance} est permis</translation>
        </message>
        <message>
            <source>linear and Monte Carlo agree: the ends of their intervals differ by {worst} at most, where {tolerance} is allowed; more trials are needed to be sure</source>
            <extracomment>physics/monte_carlo.py</extracomment>
            <translation>calcul linéaire et Monte-Carlo concordent : les bornes de leurs intervalles diffèrent de {worst} au plus, où {tolerance} est permis ; il faut plus de tirages pour en être sûr</translation>
        </message>
        <message>
            <source>linear and Monte Carlo disagree: the ends of their intervals differ by {worst} at most, where {tolerance} is allowed</source>
            <extracomment>physics/monte_carlo.py</extracomment>
            <translation>calcul linéaire et Monte-Carlo divergent : les bornes de leurs intervalles diffèrent de {worst} au plus, où {tolerance} est permis</translation>
        </message>
        <message>
            <source>linear and Monte Carlo disagree: the ends of their intervals differ by {worst} at most, where {tolerance} is allowed; more trials are needed to be sure</source>
            <extracomment>physics/monte_carlo.py</extracomment>
            <translation>calcul linéaire et Monte-Carlo divergent : les bornes de leurs intervalles diffèrent de {worst} au plus, où {tolerance} est permis ; il faut plus de tirages pour en être sûr</translation>
        </message>
        <message>
            <source>a Monte Carlo of {trials} trials tells nothing; it takes at least 1</source>
            <extracomment>physics/monte_carlo.py</extracomment>
            <translation>un Monte-Carlo de {trials} tirages ne dit rien ; il en faut au moins 1</translation>
        </message>
        <message>
            <source>{count} values are too few for an interval of probability {probability}</source>
            <extracomment>physics/monte_carlo.py</extracomment>
            <translation>{count} valeurs sont trop peu pour un intervalle de probabilité {probability}</translation>
        </message>
        <message>
            <source>a standard uncertainty of {uncertainty} has no digits</source>
            <extracomment>physics/monte_carlo.py</extracomment>
            <translation>une incertitude-type de {uncertainty} n'a pas de chiffres</translation>
        </message>
        <message>
            <source>intervals of {probability} and {other} cannot be compared</source>
            <extracomment>physics/monte_carlo.py</extracomment>
            <translation>des intervalles de {probability} et {other} ne se comparent pas</translation>
        </message>
        <message>
            <source>the backplate would stand at {value}°, {beyond}° beyond the end of its slot ({low}° to {high}°)</source>
            <extracomment>physics/setting.py</extracomment>
            <translation>le plateau serait à {value}°, {beyond}° au-delà du bout de sa lumière ({low}° à {high}°)</translation>
        </message>
        <message>
            <source>the contact screw would stand at {value}°, {beyond}° beyond the end of its travel ({low}° to {high}°)</source>
            <extracomment>physics/setting.py</extracomment>
            <translation>la vis de contact serait à {value}°, {beyond}° au-delà du bout de sa course ({low}° à {high}°)</translation>
        </message>
        <message>
            <source>the nearest gap that can be had is {gap}</source>
            <extracomment>physics/setting.py</extracomment>
            <translation>l'écartement possible le plus proche est {gap}</translation>
        </message>
        <message>
            <source>the gap is {gap} mm; it must be 0 or more</source>
            <extracomment>physics/setting.py</extracomment>
            <translation>l'écartement est {gap} mm ; il doit être 0 ou plus</translation>
        </message>
        <message>
            <source>lobe 1 lifts the contacts {both} in all, so they would never close</source>
            <extracomment>physics/setting.py</extracomment>
            <translation>le bossage 1 lève les contacts de {both} en tout : ils ne se fermeraient donc jamais</translation>
        </message>
        <message>
            <source>no gap within reach opens at the E-gap</source>
            <extracomment>physics/setting.py</extracomment>
            <translation>aucun écartement à portée n'ouvre à l'E-gap</translation>
        </message>
        <message>
            <source>the nearest gap that can be had is {gap}, with the backplate at the end of its slot</source>
            <extracomment>physics/setting.py</extracomment>
            <translation>l'écartement possible le plus proche est {gap}, plateau au bout de sa lumière</translation>
        </message>
        <message>
            <source>the nearest gap that can be had is {gap}, with the contact screw at the end of its travel</source>
            <extracomment>physics/setting.py</extracomment>
            <translation>l'écartement possible le plus proche est {gap}, vis de contact au bout de sa course</translation>
        </message>
        <message>
            <source>the contact screw's eccentric does not reach that far</source>
            <extracomment>physics/setting.py</extracomment>
            <translation>l'excentrique de la vis de contact ne va pas aussi loin</translation>
        </message>
        <message>
            <source>disc, left magneto</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>disque, magnéto gauche</translation>
        </message>
        <message>
            <source>turning the crank, left</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>rotation du vilebrequin, gauche</translation>
        </message>
        <message>
            <source>gap when it shows, left</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>écartement à l'indication, gauche</translation>
        </message>
        <message>
            <source>play not taken up, left</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>jeu non rattrapé, gauche</translation>
        </message>
        <message>
            <source>left magneto fires</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>la magnéto gauche allume</translation>
        </message>
        <message>
            <source>disc, right magneto</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>disque, magnéto droite</translation>
        </message>
        <message>
            <source>turning the crank, right</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>rotation du vilebrequin, droite</translation>
        </message>
        <message>
            <source>gap when it shows, right</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>écartement à l'indication, droite</translation>
        </message>
        <message>
            <source>play not taken up, right</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>jeu non rattrapé, droite</translation>
        </message>
        <message>
            <source>right magneto fires</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>la magnéto droite allume</translation>
        </message>
        <message>
            <source>straightedge from the mark</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>réglet au repère</translation>
        </message>
        <message>
            <source>straightedge along the step</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>réglet le long de l'épaulement</translation>
        </message>
        <message>
            <source>blade</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>jauge</translation>
        </message>
        <message>
            <source>drag of the blade</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>frottement de la jauge</translation>
        </message>
        <message>
            <source>gap when it shows</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>écartement à l'indication</translation>
        </message>
        <message>
            <source>turning the rotor</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>rotation du rotor</translation>
        </message>
        <message>
            <source>play not taken up</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>jeu non rattrapé</translation>
        </message>
        <message>
            <source>creep of the screw</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>glissement de la vis</translation>
        </message>
        <message>
            <source>a gap of {gap} mm cannot be: lobe 1 lifts the contacts {top} mm, and below {parting} mm nothing would show that they part</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>un écartement de {gap} mm est impossible : le bossage 1 lève les contacts de {top} mm, et sous {parting} mm rien ne montrerait qu'ils se séparent</translation>
        </message>
        <message>
            <source>a gap of {gap} mm cannot be: lobe 1 lifts the contacts {top} mm</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>un écartement de {gap} mm est impossible : le bossage 1 lève les contacts de {top} mm</translation>
        </message>
        <message>
            <source>neither magneto was read; at least one must be</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>aucune magnéto n'a été lue ; il en faut au moins une</translation>
        </message>
        <message>
            <source>disc at the first stop</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>disque à la première butée</translation>
        </message>
        <message>
            <source>disc at the second stop</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>disque à la seconde butée</translation>
        </message>
        <message>
            <source>left less right, beyond the {design}° wanted</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>gauche moins droite, au-delà des {design}° voulus</translation>
        </message>
        <message>
            <source>left less right</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>gauche moins droite</translation>
        </message>
        <message>
            <source>as given</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>tel que donné</translation>
        </message>
        <message>
            <source>opening from the E-gap</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>ouverture depuis l'E-gap</translation>
        </message>
        <message>
            <source>widest gap</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>écartement le plus grand</translation>
        </message>
        <message>
            <source>the radius of the slot is {value}; it must be above 0</source>
            <extracomment>physics/trials.py</extracomment>
            <translation>le rayon de la lumière est {value} ; il doit être au-dessus de 0</translation>
        </message>
        <message>
            <source>the angle between two marks is {value}; it must be above 0</source>
            <extracomment>physics/trials.py</extracomment>
            <translation>l'angle entre deux repères est {value} ; il doit être au-dessus de 0</translation>
        </message>
        <message>
            <source>the plate stands at {backplate}°; it must lie within ±3600°</source>
            <extracomment>physics/trials.py</extracomment>
            <translation>le plateau est à {backplate}° ; il doit être dans ±3600°</translation>
        </message>
        <message>
            <source>the opening is {opening_error}° off; it must lie within ±45°</source>
            <extracomment>physics/trials.py</extracomment>
            <translation>l'ouverture est décalée de {opening_error}° ; elle doit l'être de ±45° au plus</translation>
        </message>
        <message>
            <source>the gap is given as {low} to {high} mm; it must be above 0, within 1000 mm, low end first</source>
            <extracomment>physics/trials.py</extracomment>
            <translation>l'écartement est donné de {low} à {high} mm ; il doit être au-dessus de 0, de moins de 1000 mm, la borne basse d'abord</translation>
        </message>
        <message>
            <source>a gap of 0 mm or more says nothing; give the blade that passes or the one that does not</source>
            <extracomment>physics/trials.py</extracomment>
            <translation>un écartement de 0 mm ou plus ne dit rien ; donner la jauge qui passe ou celle qui ne passe pas</translation>
        </message>
        <message>
            <source>the gap is known to within {within} mm; it must be 0 or more</source>
            <extracomment>physics/trials.py</extracomment>
            <translation>l'écartement est connu à {within} mm près ; ce doit être 0 ou plus</translation>
        </message>
        <message>
            <source>the errors of a trial must be numbers, 0 or more</source>
            <extracomment>physics/trials.py</extracomment>
            <translation>les erreurs d'un essai doivent être des nombres, 0 ou plus</translation>
        </message>
        <message>
            <source>doubt in lift and rise must be above 0 and at most 1, in the index at most 90°</source>
            <extracomment>physics/trials.py</extracomment>
            <translation>le doute sur la levée et la montée doit être au-dessus de 0 et d'au plus 1, sur le repère d'au plus 90°</translation>
        </message>
        <message>
            <source>no coverage factor for a probability of {probability} and {dof} degrees of freedom</source>
            <extracomment>physics/uncertainty.py</extracomment>
            <translation>pas de facteur d'élargissement pour une probabilité de {probability} et {dof} degrés de liberté</translation>
        </message>
        <message>
            <source>the second-order terms leave no variance: the expansion does not hold for this model</source>
            <extracomment>physics/uncertainty.py</extracomment>
            <translation>les termes du second ordre ne laissent pas de variance : le développement ne vaut pas pour ce modèle</translation>
        </message>
        <message>
            <source>{name}: {estimate} ± {spread} is no estimate with a spread</source>
            <extracomment>physics/uncertainty.py</extracomment>
            <translation>{name} : {estimate} ± {spread} n'est pas une estimation avec dispersion</translation>
        </message>
        <message>
            <source>{name}: {dof} degrees of freedom; there must be at least 1</source>
            <extracomment>physics/uncertainty.py</extracomment>
            <translation>{name} : {dof} degrés de liberté ; il en faut au moins 1</translation>
        </message>
        <message>
            <source>{name}: a {distribution} distribution has no half-width</source>
            <extracomment>physics/uncertainty.py</extracomment>
            <translation>{name} : une loi {distribution} n'a pas de demi-largeur</translation>
        </message>
        <message>
            <source>{name}: a t distribution needs its degrees of freedom</source>
            <extracomment>physics/uncertainty.py</extracomment>
            <translation>{name} : une loi t demande ses degrés de liberté</translation>
        </message>
        <message>
            <source>hours since the setting must be 0 or more, and finite</source>
            <extracomment>physics/wear.py</extracomment>
            <translation>les heures depuis le réglage doivent être 0 ou plus, et finies</translation>
        </message>
        <message>
            <source>after {hours} h the heel would have lost {heel} mm and the pip be {pip} mm high</source>
            <extracomment>physics/wear.py</extracomment>
            <translation>après {hours} h, le toucheau aurait perdu {heel} mm et le picot serait haut de {pip} mm</translation>
        </message>
        <message>
            <source>a rate takes inspections at two different hours at least</source>
            <extracomment>physics/wear.py</extracomment>
            <translation>un taux demande des visites à deux heures différentes au moins</translation>
        </message>
        <message>
            <source>heel wear is {rate} mm per 100 h; it must be 0 or more</source>
            <extracomment>physics/wear.py</extracomment>
            <translation>l'usure du toucheau est {rate} mm par 100 h ; elle doit être 0 ou plus</translation>
        </message>
        <message>
            <source>the pip's growth is {rate} mm per 100 h; it must be 0 or more</source>
            <extracomment>physics/wear.py</extracomment>
            <translation>la croissance du picot est {rate} mm par 100 h ; elle doit être 0 ou plus</translation>
        </message>
        <message>
            <source>breaker.heel_arm_mm is missing in the magneto's file: it tells what heel wear does</source>
            <extracomment>physics/wear.py</extracomment>
            <translation>breaker.heel_arm_mm manque dans le fichier de la magnéto : il dit l'effet de l'usure du toucheau</translation>
        </message>
        <message>
            <source>that is not to be had in practice: here hands and instruments do the work</source>
            <extracomment>practice/actions.py</extracomment>
            <translation>cela ne s'obtient pas en exercice : ici, ce sont les mains et les instruments qui travaillent</translation>
        </message>
        <message>
            <source>the coupling is moved one tooth at a time, at one face</source>
            <extracomment>practice/actions.py</extracomment>
            <translation>l'accouplement se déplace d'une dent à la fois, sur une face</translation>
        </message>
        <message>
            <source>On {name}, renew the lead, and prove it again.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Sur {name}, remplacer le fil et le prouver de nouveau.</translation>
        </message>
        <message>
            <source>On {name}, renew the insulation, and prove it again.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Sur {name}, remplacer l'isolation et le prouver de nouveau.</translation>
        </message>
        <message>
            <source>On {name}, renew the tab, and prove it again.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Sur {name}, remplacer la languette et le prouver de nouveau.</translation>
        </message>
        <message>
            <source>Stop in No. 1, met gently from both sides; half-way between the two readings is top dead centre.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Butée dans le n° 1, touchée en douceur des deux côtés ; à mi-chemin des deux lectures est le point mort haut.</translation>
        </message>
        <message>
            <source>On {name}: paint marks, nuts off; magneto flange on the disc {flange}; disc on the drive flange {disc}; nuts on. {residual}° remain. Lamp and disc, approached with rotation.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Sur {name} : peindre des repères, écrous ôtés ; bride de la magnéto sur le disque {flange} ; disque sur la bride d'entraînement {disc} ; écrous remis. Il reste {residual}°. Lampe et disque, approchés dans le sens de rotation.</translation>
        </message>
        <message>
            <source>Lay the straightedge on, look square over it, turn to the mark with rotation, and hold.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Poser le réglet, viser d'équerre par-dessus, tourner au repère dans le sens de rotation, et tenir.</translation>
        </message>
        <message>
            <source>Close up: screws, nuts, plug in, switch off; and look once more at what tightening can shift.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Refermer : vis, écrous, fiche branchée, contacteur sur arrêt ; et revoir ce que le serrage peut décaler.</translation>
        </message>
        <message>
            <source>Make it safe: {words}.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Mettre en sécurité : {words}.</translation>
        </message>
        <message>
            <source>On {name}, prove the lead: plug pulled, meter with the switch off and on, lamp for tab and coil.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Sur {name}, prouver le fil : fiche débranchée, ohmmètre avec contacteur sur arrêt puis marche, lampe pour languette et bobine.</translation>
        </message>
        <message>
            <source>On {name}, dress the contacts before measuring.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Sur {name}, rectifier les contacts avant de mesurer.</translation>
        </message>
        <message>
            <source>On {name}, no setting puts gap and opening right at once.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Sur {name}, aucun réglage ne met à la fois écartement et ouverture justes.</translation>
        </message>
        <message>
            <source>On {name}, slacken the clamp screws, {move}, tighten; lamp and straightedge.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Sur {name}, desserrer les vis de serrage, {move}, serrer ; lampe et réglet.</translation>
        </message>
        <message>
            <source>Turn the disc {error}° later, to read zero there. Stop out.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Tourner le disque de {error}° plus tard, pour y lire zéro. Ôter la butée.</translation>
        </message>
        <message>
            <source>Turn the disc {error}° earlier, to read zero there. Stop out.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Tourner le disque de {error}° plus tôt, pour y lire zéro. Ôter la butée.</translation>
        </message>
        <message>
            <source>On {name}: paint marks, plug out, nuts off, lift it off.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Sur {name} : peindre des repères, débrancher la fiche, ôter les écrous, déposer.</translation>
        </message>
        <message>
            <source>No. 1 on compression at {wanted}° before top dead centre, the rotor where the contacts open with the finger at No. 1; mesh to the nearest tooth.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>N° 1 en compression à {wanted}° avant le point mort haut, rotor où les contacts s'ouvrent, doigt au n° 1 ; engrener à la dent la plus proche.</translation>
        </message>
        <message>
            <source>On {name}, no tooth needs to move; lamp and disc with rotation say so.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Sur {name}, aucune dent à déplacer ; lampe et disque, dans le sens de rotation, le disent.</translation>
        </message>
        <message>
            <source>On {name}, slacken the lock screw, {turn}, tighten (tightening carries it {creep}° on); blades on both limits.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Sur {name}, desserrer la vis de blocage, {turn}, serrer (le serrage l'entraîne de {creep}°) ; jauges aux deux limites.</translation>
        </message>
        <message>
            <source>On {name}, slacken the lock screw, {turn}, tighten; blades on both limits.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Sur {name}, desserrer la vis de blocage, {turn}, serrer ; jauges aux deux limites.</translation>
        </message>
        <message>
            <source>chocks</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>cales</translation>
        </message>
        <message>
            <source>spark plugs out</source>
            <extracomment>practice/advice.py, practice/seen.py, ui/class_editor_fields.py</extracomment>
            <translation>bougies déposées</translation>
        </message>
        <message>
            <source>there is no piston stop on the tray</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>il n'y a pas de butée de piston dans le bac</translation>
        </message>
        <message>
            <source>the attempt has been handed in</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>la tentative a été remise</translation>
        </message>
        <message>
            <source>there is no meter on the tray</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>il n'y a pas d'ohmmètre dans le bac</translation>
        </message>
        <message>
            <source>the stop goes into No. 1's plug hole: take the spark plugs out first</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>la butée va dans le trou de bougie du n° 1 : déposer d'abord les bougies</translation>
        </message>
        <message>
            <source>the piston of No. 1 stands too high for the stop: turn the propeller on first</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>le piston du n° 1 est trop haut pour la butée : faire d'abord avancer l'hélice</translation>
        </message>
        <message>
            <source>there is no engine here</source>
            <extracomment>practice/apply.py, practice/instruments.py</extracomment>
            <translation>il n'y a pas de moteur ici</translation>
        </message>
        <message>
            <source>the piston stop is in No. 1's plug hole: take it out first</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>la butée de piston est dans le trou de bougie du n° 1 : l'ôter d'abord</translation>
        </message>
        <message>
            <source>the magneto is off the engine</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>la magnéto est déposée du moteur</translation>
        </message>
        <message>
            <source>there is no {side} magneto here</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>il n'y a pas de magnéto {side} ici</translation>
        </message>
        <message>
            <source>the magneto is off the engine already</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>la magnéto est déjà déposée du moteur</translation>
        </message>
        <message>
            <source>the nuts hold the magneto: take them off first</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>les écrous tiennent la magnéto : les ôter d'abord</translation>
        </message>
        <message>
            <source>the switch lead holds the magneto: pull its plug first</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>le fil de masse tient la magnéto : débrancher d'abord sa fiche</translation>
        </message>
        <message>
            <source>the magneto is on the engine already</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>la magnéto est déjà sur le moteur</translation>
        </message>
        <message>
            <source>the coupling is moved one tooth at a time, at its magneto or its disc face</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>l'accouplement se déplace d'une dent à la fois, sur sa face magnéto ou sa face disque</translation>
        </message>
        <message>
            <source>the coupling is closed: take the nuts off and draw the magneto back first</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>l'accouplement est fermé : ôter d'abord les écrous et reculer la magnéto</translation>
        </message>
        <message>
            <source>the pin holds the rotor: take it out to turn the flange</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>la pige tient le rotor : l'ôter pour tourner la bride</translation>
        </message>
        <message>
            <source>“{kind}” is no kind of reading</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>« {kind} » n'est pas un genre de lecture</translation>
        </message>
        <message>
            <source>the notebook is full: it holds {most} lines</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>le carnet est plein : il contient {most} lignes</translation>
        </message>
        <message>
            <source>a note is one line of at most {most} characters</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>une note est une ligne de {most} caractères au plus</translation>
        </message>
        <message>
            <source>a finding on the switch lead is sound, broken, shorted or tab</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>un constat sur le fil de masse est sound, broken, shorted ou tab</translation>
        </message>
        <message>
            <source>a finding in words takes no number</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>un constat en mots ne prend pas de nombre</translation>
        </message>
        <message>
            <source>a reading needs its number</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>une lecture demande son nombre</translation>
        </message>
        <message>
            <source>there is no lobe {lobe}; the cam has {lobes}</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>il n'y a pas de bossage {lobe} ; la came en a {lobes}</translation>
        </message>
        <message>
            <source>the backplate is at the end of its slot</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>le plateau est au bout de sa lumière</translation>
        </message>
        <message>
            <source>the contact screw is at the end of its travel</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>la vis de contact est au bout de sa course</translation>
        </message>
        <message>
            <source>what can be renewed is the lead, the tab or the insulation</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>ce qui peut se remplacer est le fil, la languette ou l'isolation</translation>
        </message>
        <message>
            <source>there is no straightedge on the tray</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>il n'y a pas de réglet dans le bac</translation>
        </message>
        <message>
            <source>there is no timing lamp on the tray</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>il n'y a pas de lampe de calage dans le bac</translation>
        </message>
        <message>
            <source>there is no {kind} set of blades on the tray</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>il n'y a pas de jeu de jauges {kind} dans le bac</translation>
        </message>
        <message>
            <source>there is no crank disc on the tray</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>il n'y a pas de disque de vilebrequin dans le bac</translation>
        </message>
        <message>
            <source>no marks were painted to refit it by: it can only go on as its rotor stands</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>aucun repère n'a été peint pour la remonter : elle ne peut se poser que selon son rotor</translation>
        </message>
        <message>
            <source>a part's name is one line of at most {most} characters</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>un nom de pièce est une ligne de {most} caractères au plus</translation>
        </message>
        <message>
            <source>the pin holds the rotor</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>la pige tient le rotor</translation>
        </message>
        <message>
            <source>that is the {part}</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>c'est : {part}</translation>
        </message>
        <message>
            <source>{where}.{field} is {found}; it must be true or false</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where}.{field} vaut {found} ; ce doit être true ou false</translation>
        </message>
        <message>
            <source>{where}.{field} is {found}; it must be a whole number</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where}.{field} vaut {found} ; ce doit être un nombre entier</translation>
        </message>
        <message>
            <source>{where}.{field} is {found}; it must be text</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where}.{field} vaut {found} ; ce doit être du texte</translation>
        </message>
        <message>
            <source>{where}.{field} is {found}; it must be a list</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where}.{field} vaut {found} ; ce doit être une liste</translation>
        </message>
        <message>
            <source>{source}: holds no attempt; it must be one JSON object in braces</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{source} : ne contient pas de tentative ; ce doit être un objet JSON entre accolades</translation>
        </message>
        <message>
            <source>{source}: format is {found}; it must be "{wanted}"</source>
            <extracomment>practice/attempt.py, spec/files.py</extracomment>
            <translation>{source} : format vaut {found} ; ce doit être "{wanted}"</translation>
        </message>
        <message>
            <source>{source}: {name} is missing</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{source} : {name} manque</translation>
        </message>
        <message>
            <source>{source}: {name} is not a known name</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{source} : {name} n'est pas un nom connu</translation>
        </message>
        <message>
            <source>{source}: events must be a list of at most {most}</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{source} : events doit être une liste d'au plus {most}</translation>
        </message>
        <message>
            <source>{where} must be an object in braces</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where} doit être un objet entre accolades</translation>
        </message>
        <message>
            <source>{where}.at_s is {found}; it must be a number of seconds from 0 on</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where}.at_s vaut {found} ; ce doit être un nombre de secondes à partir de 0</translation>
        </message>
        <message>
            <source>{where}.do is {found}, which is no act this program knows</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where}.do vaut {found}, qui n'est pas une action connue de ce programme</translation>
        </message>
        <message>
            <source>{where}.{field} is {found}; it must be {allowed}</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where}.{field} vaut {found} ; ce doit être {allowed}</translation>
        </message>
        <message>
            <source>{where}.{field} is {found}; it must be a number</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where}.{field} vaut {found} ; ce doit être un nombre</translation>
        </message>
        <message>
            <source>{where}.{field} is {found}; it must be what the act takes</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where}.{field} vaut {found} ; ce doit être ce que prend l'action</translation>
        </message>
        <message>
            <source>the time is {at_s}; it must be a number of seconds</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>le temps est {at_s} ; ce doit être un nombre de secondes</translation>
        </message>
        <message>
            <source>the record is full at {most} acts: hand in</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>le journal est plein à {most} actions : remettre</translation>
        </message>
        <message>
            <source>{source}: format is {found} (a newer magview wrote it; it is left as it was); it must be "{wanted}"</source>
            <extracomment>practice/attempt.py, spec/files.py</extracomment>
            <translation>{source} : format vaut {found} (écrit par un magview plus récent ; laissé tel quel) ; ce doit être "{wanted}"</translation>
        </message>
        <message>
            <source>{source}: {name} is {found}; it must be text of at most {most} characters</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{source} : {name} vaut {found} ; ce doit être du texte de {most} caractères au plus</translation>
        </message>
        <message>
            <source>{source}: events[{i}].at_s is {at_s}; time does not run backwards</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{source} : events[{i}].at_s vaut {at_s} ; le temps ne recule pas</translation>
        </message>
        <message>
            <source>{where}.{field} is not a known name of {name}</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where}.{field} n'est pas un nom connu de {name}</translation>
        </message>
        <message>
            <source>{where}.{field} is missing</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where}.{field} manque</translation>
        </message>
        <message>
            <source>Done with version {version}, shown with {here}: what followed from an act may differ.</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>Fait avec la version {version}, montré avec {here} : les suites d'une action peuvent différer.</translation>
        </message>
        <message>
            <source>Opening from the mark</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>Ouverture au repère</translation>
        </message>
        <message>
            <source>Opening from the mark, {name}</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>Ouverture au repère, {name}</translation>
        </message>
        <message>
            <source>Largest gap, {name}</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>Écartement maximal, {name}</translation>
        </message>
        <message>
            <source>Pip on the contacts, {name}</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>Picot sur les contacts, {name}</translation>
        </message>
        <message>
            <source>Lock screw carries the contact screw along</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>La vis de blocage entraîne la vis de contact</translation>
        </message>
        <message>
            <source>Lock screw carries the contact screw along, {name}</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>La vis de blocage entraîne la vis de contact, {name}</translation>
        </message>
        <message>
            <source>Switch lead, {name}</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>Fil de masse, {name}</translation>
        </message>
        <message>
            <source>Fires before top dead centre, {name}</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>Allume avant le point mort haut, {name}</translation>
        </message>
        <message>
            <source>Play in the coupling</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>Jeu dans l'accouplement</translation>
        </message>
        <message>
            <source>Play in the coupling, {name}</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>Jeu dans l'accouplement, {name}</translation>
        </message>
        <message>
            <source>not at all</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>pas du tout</translation>
        </message>
        <message>
            <source>{angle}° closer</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>{angle}° plus près</translation>
        </message>
        <message>
            <source>{angle}° wider</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>{angle}° plus écartés</translation>
        </message>
        <message>
            <source>{mm} mm past</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>{mm} mm après</translation>
        </message>
        <message>
            <source>{mm} mm short</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>{mm} mm avant</translation>
        </message>
        <message>
            <source>off the engine</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>déposée du moteur</translation>
        </message>
        <message>
            <source>{fires}° (the wrong stroke)</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>{fires}° (au mauvais temps)</translation>
        </message>
        <message>
            <source>the attempt has not been handed in: until then nothing true is shown</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>la tentative n'a pas été remise : d'ici là, rien de vrai n'est montré</translation>
        </message>
        <message>
            <source>within {tolerance} mm</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>à {tolerance} mm près</translation>
        </message>
        <message>
            <source>sound</source>
            <extracomment>practice/debrief.py, practice/words.py, ui/class_editor_rows.py, ui/practice_notebook.py</extracomment>
            <translation>sain</translation>
        </message>
        <message>
            <source>Disc at top dead centre of No. 1</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>Disque au point mort haut du n° 1</translation>
        </message>
        <message>
            <source>to be allowed for</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>à compenser</translation>
        </message>
        <message>
            <source>{wanted}° within {allowed}°</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>{wanted}° à {allowed}° près</translation>
        </message>
        <message>
            <source>taken up with rotation</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>rattrapé dans le sens de rotation</translation>
        </message>
        <message>
            <source>the lock screw was tightened</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation>la vis de blocage a été serrée</translation>
        </message>
        <message>
            <source>the clamp screws were tightened</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation>les vis de serrage ont été serrées</translation>
        </message>
        <message>
            <source>the contacts were dressed</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation>les contacts ont été rectifiés</translation>
        </message>
        <message>
            <source>the backplate was turned</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation>le plateau a été tourné</translation>
        </message>
        <message>
            <source>the contact screw was turned</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation>la vis de contact a été tournée</translation>
        </message>
        <message>
            <source>took the magneto off with no marks across its coupling</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation>a déposé la magnéto sans repères sur son accouplement</translation>
        </message>
        <message>
            <source>turned the propeller with a live magneto and the spark plugs in</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation>a tourné l'hélice, magnéto active et bougies en place</translation>
        </message>
        <message>
            <source>a tooth was moved</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation>une dent a été déplacée</translation>
        </message>
        <message>
            <source>the magneto was refitted</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation>la magnéto a été remontée</translation>
        </message>
        <message>
            <source>turned the propeller, plugs in, without proving that the switch grounds</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation>a tourné l'hélice, bougies en place, sans prouver que le contacteur met à la masse</translation>
        </message>
        <message>
            <source>rotor degrees, positive = opens late</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>degrés de rotor, positif = ouvre en retard</translation>
        </message>
        <message>
            <source>millimetres, positive = too wide; it opens at the E-gap all the same</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>millimètres, positif = trop grand ; l'ouverture reste à l'E-gap</translation>
        </message>
        <message>
            <source>degrees the plate is off, positive with cam rotation</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>degrés de décalage du plateau, positif dans le sens de la came</translation>
        </message>
        <message>
            <source>degrees the contact screw goes along with its lock screw, positive = contacts closer</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>degrés dont la vis de contact suit sa vis de blocage, positif = contacts rapprochés</translation>
        </message>
        <message>
            <source>millimetres one lobe lifts less</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>millimètres de levée en moins d'un bossage</translation>
        </message>
        <message>
            <source>millimetres of pip on the contacts</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>millimètres de picot sur les contacts</translation>
        </message>
        <message>
            <source>rotor degrees of play in the coupling</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>degrés de jeu du rotor dans l'accouplement</translation>
        </message>
        <message>
            <source>whole teeth at the magneto flange, positive = fires early</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>dents entières à la bride de la magnéto, positif = allume en avance</translation>
        </message>
        <message>
            <source>whole teeth at the drive flange, positive = fires early</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>dents entières à la bride d'entraînement, positif = allume en avance</translation>
        </message>
        <message>
            <source>whole vernier steps, positive = fires early</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>pas de vernier entiers, positif = allume en avance</translation>
        </message>
        <message>
            <source>crank degrees the disc reads at top dead centre</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>degrés de vilebrequin lus au disque au point mort haut</translation>
        </message>
        <message>
            <source>size is [{low}, {high}]; it must run upwards from 0 or more (way gives the sign)</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>size vaut [{low}, {high}] ; il doit croître à partir de 0 ou plus (way donne le signe)</translation>
        </message>
        <message>
            <source>among is for kind lead, which needs it: a list of sound, broken, shorted, tab</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>among est pour le genre lead, qui le demande : une liste de sound, broken, shorted, tab</translation>
        </message>
        <message>
            <source>way of {kind} must be left out or "plus"</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>way de {kind} doit être omis ou "plus"</translation>
        </message>
        <message>
            <source>reading is for goal "reading", which needs it</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>reading est pour l'objectif "reading", qui le demande</translation>
        </message>
        <message>
            <source>within is for a reading in numbers, which needs it</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>within est pour une lecture en nombres, qui le demande</translation>
        </message>
        <message>
            <source>magneto or installation: an exercise has one of the two</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>magneto ou installation : un exercice a l'un des deux</translation>
        </message>
        <message>
            <source>both_sides needs an installation with two magnetos</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>both_sides demande une installation à deux magnétos</translation>
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
            <translation>goals : synchronised demande both_sides</translation>
        </message>
        <message>
            <source>faults has {twice} twice; give each kind once for a magneto</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>faults contient {twice} deux fois ; donner chaque genre une fois par magnéto</translation>
        </message>
        <message>
            <source>size of {kind} ends at {high}; it must be above 0 and at most {most} ({unit})</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>size de {kind} finit à {high} ; il doit être au-dessus de 0 et d'au plus {most} ({unit})</translation>
        </message>
        <message>
            <source>size of {kind} is [{low}, {high}]; it must be whole numbers</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>size de {kind} vaut [{low}, {high}] ; ce doivent être des nombres entiers</translation>
        </message>
        <message>
            <source>size is not for {kind}, which is there or is not</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>size n'est pas pour {kind}, qui est là ou ne l'est pas</translation>
        </message>
        <message>
            <source>{what}.side is {side}, a magneto this exercise does not have</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>{what}.side vaut {side}, une magnéto que cet exercice n'a pas</translation>
        </message>
        <message>
            <source>faults[{i}].lobe is {lobe}; the cam has {lobes}</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>faults[{i}].lobe vaut {lobe} ; la came en a {lobes}</translation>
        </message>
        <message>
            <source>faults[{i}].kind is {kind}, which needs an installation</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>faults[{i}].kind vaut {kind}, qui demande une installation</translation>
        </message>
        <message>
            <source>goals[{i}] is {goal} of an engine, which needs an installation</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>goals[{i}] vaut {goal}, d'un moteur, qui demande une installation</translation>
        </message>
        <message>
            <source>the seed is {seed}; it must be a whole number from 0 to {most}</source>
            <extracomment>practice/faults.py</extracomment>
            <translation>la graine est {seed} ; ce doit être un nombre entier de 0 à {most}</translation>
        </message>
        <message>
            <source>lobe-low takes {lobe_low} mm off a lobe that lifts {top_lift} mm</source>
            <extracomment>practice/faults.py</extracomment>
            <translation>lobe-low ôte {lobe_low} mm d'un bossage qui lève {top_lift} mm</translation>
        </message>
        <message>
            <source>{name} cannot be set for a gap of {wanted} mm: {reason}</source>
            <extracomment>practice/faults.py</extracomment>
            <translation>{name} ne peut être réglée pour un écartement de {wanted} mm : {reason}</translation>
        </message>
        <message>
            <source>blades on both sides of the limits were tried on every lobe after the last change</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>des jauges des deux côtés des limites ont été essayées à chaque bossage après le dernier changement</translation>
        </message>
        <message>
            <source>blades on both sides of the limits were not tried on every lobe after {why}</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>des jauges des deux côtés des limites n'ont pas été essayées à chaque bossage après ceci : {why}</translation>
        </message>
        <message>
            <source>blades on both sides of the limits were not tried on every lobe</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>des jauges des deux côtés des limites n'ont pas été essayées à chaque bossage</translation>
        </message>
        <message>
            <source>blades on both sides of the limits were tried on a lobe after the last change</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>des jauges des deux côtés des limites ont été essayées à un bossage après le dernier changement</translation>
        </message>
        <message>
            <source>blades on both sides of the limits were not tried on a lobe after {why}</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>des jauges des deux côtés des limites n'ont pas été essayées à un bossage après ceci : {why}</translation>
        </message>
        <message>
            <source>blades on both sides of the limits were not tried on a lobe</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>des jauges des deux côtés des limites n'ont pas été essayées à un bossage</translation>
        </message>
        <message>
            <source>fires {error}° of crank early, {allowed}° are allowed</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>allume {error}° de vilebrequin en avance, {allowed}° sont permis</translation>
        </message>
        <message>
            <source>fires {error}° of crank early, {allowed}° are allowed: on the wrong stroke</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>allume {error}° de vilebrequin en avance, {allowed}° sont permis : au mauvais temps</translation>
        </message>
        <message>
            <source>fires {error}° of crank late, {allowed}° are allowed</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>allume {error}° de vilebrequin en retard, {allowed}° sont permis</translation>
        </message>
        <message>
            <source>fires {error}° of crank late, {allowed}° are allowed: on the wrong stroke</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>allume {error}° de vilebrequin en retard, {allowed}° sont permis : au mauvais temps</translation>
        </message>
        <message>
            <source>{magneto}: coupling marked before it was taken apart</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>{magneto} : accouplement repéré avant démontage</translation>
        </message>
        <message>
            <source>{magneto}: closed up</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>{magneto} : refermée</translation>
        </message>
        <message>
            <source>the edge stands {offset} mm from the mark, {allowed} mm are allowed</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>l'arête est à {offset} mm du repère, {allowed} mm sont permis</translation>
        </message>
        <message>
            <source>the rotor stands near no mark</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>le rotor n'est près d'aucun repère</translation>
        </message>
        <message>
            <source>the straightedge lay on it, looked at square</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>le réglet était posé, visé d'équerre</translation>
        </message>
        <message>
            <source>the straightedge was not looked at square there</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>le réglet n'y a pas été visé d'équerre</translation>
        </message>
        <message>
            <source>Rotor at the E-gap</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Rotor à l'E-gap</translation>
        </message>
        <message>
            <source>opens {worst} mm from the mark, {allowed} mm are allowed</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>s'ouvre à {worst} mm du repère, {allowed} mm sont permis</translation>
        </message>
        <message>
            <source>{magneto}: contacts open at the mark</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>{magneto} : contacts ouvrant au repère</translation>
        </message>
        <message>
            <source>The largest gap is {span}, limits {low} to {high}; {how}.</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>L'écartement maximal est {span}, limites {low} à {high} ; {how}.</translation>
        </message>
        <message>
            <source>{low} to {high} over the lobes</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>{low} à {high} selon les bossages</translation>
        </message>
        <message>
            <source>The contacts are clean</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Les contacts sont propres</translation>
        </message>
        <message>
            <source>A pip of {pip} stands on the contacts</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Un picot de {pip} est sur les contacts</translation>
        </message>
        <message>
            <source>they were looked at</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>ils ont été examinés</translation>
        </message>
        <message>
            <source>they were not looked at as they are now</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>ils n'ont pas été examinés dans leur état actuel</translation>
        </message>
        <message>
            <source>Contacts clean and flat</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Contacts propres et plans</translation>
        </message>
        <message>
            <source>the piston met its stop from both sides</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>le piston a touché sa butée des deux côtés</translation>
        </message>
        <message>
            <source>the stop was not met from both sides</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>la butée n'a pas été touchée des deux côtés</translation>
        </message>
        <message>
            <source>Crank disc at zero</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Disque du vilebrequin à zéro</translation>
        </message>
        <message>
            <source>The disc reads {error}° at top dead centre, {allowed}° are allowed; {how}.</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Le disque lit {error}° au point mort haut, {allowed}° sont permis ; {how}.</translation>
        </message>
        <message>
            <source>the magneto is off the engine, or never opens</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>la magnéto est déposée du moteur, ou ne s'ouvre jamais</translation>
        </message>
        <message>
            <source>{magneto}: timed to the engine</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>{magneto} : calée sur le moteur</translation>
        </message>
        <message>
            <source>both were read with lamp and disc after the last change</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>les deux ont été lues à la lampe et au disque après le dernier changement</translation>
        </message>
        <message>
            <source>not both were read after the last change</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>les deux n'ont pas été lues après le dernier changement</translation>
        </message>
        <message>
            <source>left and right are {apart}° apart, {allowed}° are allowed</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>gauche et droite ont {apart}° d'écart, {allowed}° sont permis</translation>
        </message>
        <message>
            <source>one does not fire</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>une n'allume pas</translation>
        </message>
        <message>
            <source>Left and right together</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Gauche et droite ensemble</translation>
        </message>
        <message>
            <source>the meter with the switch off and on</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>l'ohmmètre, contacteur sur arrêt puis marche</translation>
        </message>
        <message>
            <source>proved by {checks}</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>prouvé par {checks}</translation>
        </message>
        <message>
            <source>not proved by {checks}</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>non prouvé par {checks}</translation>
        </message>
        <message>
            <source>The switch lead is sound</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Le fil de masse est sain</translation>
        </message>
        <message>
            <source>{magneto}: switch lead sound</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>{magneto} : fil de masse sain</translation>
        </message>
        <message>
            <source>Marks were painted first.</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Des repères ont été peints d'abord.</translation>
        </message>
        <message>
            <source>It was taken apart with no marks painted across it.</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Démonté sans repères peints en travers.</translation>
        </message>
        <message>
            <source>lock screw tight</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>vis de blocage serrée</translation>
        </message>
        <message>
            <source>clamp screws tight</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>vis de serrage serrées</translation>
        </message>
        <message>
            <source>Everything is closed up.</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Tout est refermé.</translation>
        </message>
        <message>
            <source>Not so: {missing}.</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Non : {missing}.</translation>
        </message>
        <message>
            <source>checked by lamp and straightedge, looked at square, after the last change</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>vérifié à la lampe et au réglet, visé d'équerre, après le dernier changement</translation>
        </message>
        <message>
            <source>checked only with the eye to one side of the straightedge</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>vérifié seulement avec l'œil d'un côté du réglet</translation>
        </message>
        <message>
            <source>never checked by lamp and straightedge, looked at square</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>jamais vérifié à la lampe et au réglet, visé d'équerre</translation>
        </message>
        <message>
            <source>{magneto}: largest gap within limits on every lobe</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>{magneto} : écartement maximal dans les limites à chaque bossage</translation>
        </message>
        <message>
            <source>{magneto}: largest gap within limits</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>{magneto} : écartement maximal dans les limites</translation>
        </message>
        <message>
            <source>the disc's zero was never found by the stop from both sides</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>le zéro du disque n'a jamais été trouvé par la butée des deux côtés</translation>
        </message>
        <message>
            <source>checked by lamp and disc, approached with rotation, after the last change</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>vérifié à la lampe et au disque, approchés dans le sens de rotation, après le dernier changement</translation>
        </message>
        <message>
            <source>checked only approached against rotation, with the play on the wrong side</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>vérifié seulement en approchant en sens inverse, avec le jeu du mauvais côté</translation>
        </message>
        <message>
            <source>never checked by lamp and disc, approached with rotation</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>jamais vérifié à la lampe et au disque, approchés dans le sens de rotation</translation>
        </message>
        <message>
            <source>the lamp lighting</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>la lampe qui s'allume</translation>
        </message>
        <message>
            <source>the lamp staying dark with the plug out</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>la lampe qui reste éteinte, fiche débranchée</translation>
        </message>
        <message>
            <source>The coupling was not taken apart and is marked.</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>L'accouplement n'a pas été démonté et il est repéré.</translation>
        </message>
        <message>
            <source>The coupling was not taken apart, and not marked either.</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>L'accouplement n'a pas été démonté, ni repéré non plus.</translation>
        </message>
        <message>
            <source>magneto on the engine</source>
            <extracomment>practice/goals.py, practice/seen.py, ui/class_editor_fields.py</extracomment>
            <translation>magnéto sur le moteur</translation>
        </message>
        <message>
            <source>nuts tight</source>
            <extracomment>practice/goals.py, practice/seen.py</extracomment>
            <translation>écrous serrés</translation>
        </message>
        <message>
            <source>pin out</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>pige ôtée</translation>
        </message>
        <message>
            <source>paper out</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>papier ôté</translation>
        </message>
        <message>
            <source>plug in</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>fiche branchée</translation>
        </message>
        <message>
            <source>piston stop out</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>butée de piston ôtée</translation>
        </message>
        <message>
            <source>not checked again after {why}</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>pas revérifié après ceci : {why}</translation>
        </message>
        <message>
            <source>the primary is shorted inside</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>le primaire est en court-circuit à l'intérieur</translation>
        </message>
        <message>
            <source>{angle}° before the disc's zero</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>{angle}° avant le zéro du disque</translation>
        </message>
        <message>
            <source>{angle}° after the disc's zero</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>{angle}° après le zéro du disque</translation>
        </message>
        <message>
            <source>nearest to No. {cylinder}</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>au plus près du n° {cylinder}</translation>
        </message>
        <message>
            <source>not connected</source>
            <extracomment>practice/instruments.py, ui/debrief_view.py, ui/practice_sight.py</extracomment>
            <translation>non branché</translation>
        </message>
        <message>
            <source>not laid on</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>non posé</translation>
        </message>
        <message>
            <source>no mark near the edge</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>aucun repère près de l'arête</translation>
        </message>
        <message>
            <source>in line with the mark (mark {mark})</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>aligné sur le repère (repère {mark})</translation>
        </message>
        <message>
            <source>in line with the mark</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>aligné sur le repère</translation>
        </message>
        <message>
            <source>{size} {unit} past the mark (mark {mark})</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>{size} {unit} après le repère (repère {mark})</translation>
        </message>
        <message>
            <source>{size} {unit} past the mark</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>{size} {unit} après le repère</translation>
        </message>
        <message>
            <source>{size} {unit} short of the mark (mark {mark})</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>{size} {unit} avant le repère (repère {mark})</translation>
        </message>
        <message>
            <source>{size} {unit} short of the mark</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>{size} {unit} avant le repère</translation>
        </message>
        <message>
            <source>“{kind}” is not a set of blades; there are {known}</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>« {kind} » n'est pas un jeu de jauges ; il y a {known}</translation>
        </message>
        <message>
            <source>{blades} blades cannot be held together; take 1 to {most}</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>{blades} jauges ne peuvent se tenir ensemble ; en prendre 1 à {most}</translation>
        </message>
        <message>
            <source>no-go</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>ne passe pas</translation>
        </message>
        <message>
            <source>drag</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>frotte</translation>
        </message>
        <message>
            <source>go</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>passe</translation>
        </message>
        <message>
            <source>a pip stands on one contact, a pit in the other</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>un picot est sur un contact, un creux dans l'autre</translation>
        </message>
        <message>
            <source>no disc on the crank</source>
            <extracomment>practice/instruments.py, ui/debrief_view.py</extracomment>
            <translation>pas de disque sur le vilebrequin</translation>
        </message>
        <message>
            <source>with the plug in, the meter sees lead and coil at once: pull the plug first</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>fiche branchée, l'ohmmètre voit le fil et la bobine à la fois : débrancher d'abord la fiche</translation>
        </message>
        <message>
            <source>no distributor on the bench</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>pas de distributeur au banc</translation>
        </message>
        <message>
            <source>the spark plug is in its hole: take the plugs out first</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>la bougie est dans son trou : déposer d'abord les bougies</translation>
        </message>
        <message>
            <source>pressure: No. 1 is on compression</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>pression : le n° 1 est en compression</translation>
        </message>
        <message>
            <source>no pressure</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>pas de pression</translation>
        </message>
        <message>
            <source>light</source>
            <extracomment>practice/instruments.py, ui/practice_sight.py</extracomment>
            <translation>allumée</translation>
        </message>
        <message>
            <source>dark</source>
            <extracomment>practice/instruments.py, ui/practice_sight.py</extracomment>
            <translation>éteinte</translation>
        </message>
        <message>
            <source>the {kind} set has no blade {blade} left to take</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>le jeu {kind} n'a plus de jauge {blade} à prendre</translation>
        </message>
        <message>
            <source>a lesson is not handed in</source>
            <extracomment>practice/lesson.py</extracomment>
            <translation>une leçon ne se remet pas</translation>
        </message>
        <message>
            <source>what is {what}; for {that} it must be {known}</source>
            <extracomment>practice/lesson.py</extracomment>
            <translation>what vaut {what} ; pour {that}, ce doit être {known}</translation>
        </message>
        <message>
            <source>{name} is missing, which {that} needs</source>
            <extracomment>practice/lesson.py</extracomment>
            <translation>{name} manque, dont {that} a besoin</translation>
        </message>
        <message>
            <source>{name} is not for {that}</source>
            <extracomment>practice/lesson.py</extracomment>
            <translation>{name} n'est pas pour {that}</translation>
        </message>
        <message>
            <source>the lamp light</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>la lampe allumée</translation>
        </message>
        <message>
            <source>the lamp dark</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>la lampe éteinte</translation>
        </message>
        <message>
            <source>the lamp not connected</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>la lampe non branchée</translation>
        </message>
        <message>
            <source>the rotor at neutral</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>le rotor au neutre</translation>
        </message>
        <message>
            <source>the rotor at full register</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>le rotor au plein alignement</translation>
        </message>
        <message>
            <source>the rotor at the E-gap</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>le rotor à l'E-gap</translation>
        </message>
        <message>
            <source>the contacts widest open</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>les contacts au plus ouvert</translation>
        </message>
        <message>
            <source>the contact screw turned {angle}° closer or more</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>la vis de contact tournée de {angle}° ou plus en rapprochant</translation>
        </message>
        <message>
            <source>the contact screw turned {angle}° wider or more</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>la vis de contact tournée de {angle}° ou plus en écartant</translation>
        </message>
        <message>
            <source>the backplate turned {angle}° with rotation or more</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>le plateau tourné de {angle}° ou plus dans le sens de rotation</translation>
        </message>
        <message>
            <source>the backplate turned {angle}° against rotation or more</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>le plateau tourné de {angle}° ou plus en sens inverse de la rotation</translation>
        </message>
        <message>
            <source>what an instrument says</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>ce que dit un instrument</translation>
        </message>
        <message>
            <source>the rotor to be let go</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>le rotor lâché</translation>
        </message>
        <message>
            <source>the lamp across the contacts</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>la lampe aux bornes des contacts</translation>
        </message>
        <message>
            <source>the lamp taken off</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>la lampe retirée</translation>
        </message>
        <message>
            <source>the lamp to go from dark to light while you turn with rotation</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>la lampe passant d'éteinte à allumée en tournant dans le sens de rotation</translation>
        </message>
        <message>
            <source>the straightedge laid on and looked at square</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>le réglet posé et visé d'équerre</translation>
        </message>
        <message>
            <source>the eye away from square</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>l'œil hors de l'équerre</translation>
        </message>
        <message>
            <source>the lock screw tight</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>la vis de blocage serrée</translation>
        </message>
        <message>
            <source>the lock screw slack</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>la vis de blocage desserrée</translation>
        </message>
        <message>
            <source>the clamp screws tight</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>les vis de serrage serrées</translation>
        </message>
        <message>
            <source>the clamp screws slack</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>les vis de serrage desserrées</translation>
        </message>
        <message>
            <source>the contacts to open at the mark</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>les contacts ouvrant au repère</translation>
        </message>
        <message>
            <source>the largest gap within its limits</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>l'écartement maximal dans ses limites</translation>
        </message>
        <message>
            <source>the switch on</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>le contacteur sur marche</translation>
        </message>
        <message>
            <source>the switch off</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>le contacteur sur arrêt</translation>
        </message>
        <message>
            <source>the plug pulled out</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>la fiche débranchée</translation>
        </message>
        <message>
            <source>the plug in</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>la fiche branchée</translation>
        </message>
        <message>
            <source>chocks at the wheels</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>les cales aux roues</translation>
        </message>
        <message>
            <source>the chocks away</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>les cales ôtées</translation>
        </message>
        <message>
            <source>the spark plugs out</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>les bougies déposées</translation>
        </message>
        <message>
            <source>the spark plugs in</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>les bougies en place</translation>
        </message>
        <message>
            <source>the lead proved: meter, plug out, switch off</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>le fil prouvé : ohmmètre, fiche débranchée, contacteur sur arrêt</translation>
        </message>
        <message>
            <source>the piston stop in</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>la butée de piston en place</translation>
        </message>
        <message>
            <source>the piston stop out</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>la butée de piston ôtée</translation>
        </message>
        <message>
            <source>the disc to read zero at top dead centre</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>le disque lisant zéro au point mort haut</translation>
        </message>
        <message>
            <source>marks painted across the coupling</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>des repères peints en travers de l'accouplement</translation>
        </message>
        <message>
            <source>the nuts tight</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>les écrous serrés</translation>
        </message>
        <message>
            <source>the nuts off</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>les écrous ôtés</translation>
        </message>
        <message>
            <source>the magneto on the engine</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>la magnéto sur le moteur</translation>
        </message>
        <message>
            <source>the magneto off the engine</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>la magnéto déposée du moteur</translation>
        </message>
        <message>
            <source>it to fire where it should</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>l'allumage où il se doit</translation>
        </message>
        <message>
            <source>the answer “{answer}”</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>la réponse « {answer} »</translation>
        </message>
        <message>
            <source>the lamp to be watched all the way round</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>que la lampe soit observée sur tout le tour</translation>
        </message>
        <message>
            <source>what the meter says</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>ce que dit l'ohmmètre</translation>
        </message>
        <message>
            <source>That is the {part}; to click on it does nothing here. The step waits for {wanted}.</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>C'est : {part} ; cliquer dessus ne fait rien ici. L'étape attend : {wanted}.</translation>
        </message>
        <message>
            <source>That is the {part}. The step waits for {wanted}.</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>C'est : {part}. L'étape attend : {wanted}.</translation>
        </message>
        <message>
            <source>That undid {undone}. The step waits for {wanted}.</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>Cela a défait : {undone}. L'étape attend : {wanted}.</translation>
        </message>
        <message>
            <source>Not yet. The step waits for {wanted}.</source>
            <extracomment>practice/lesson_words.py, ui/lesson_view.py</extracomment>
            <translation>Pas encore. L'étape attend : {wanted}.</translation>
        </message>
        <message>
            <source>Step {step}: so already.</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>Étape {step} : déjà ainsi.</translation>
        </message>
        <message>
            <source>Step {step}: done.</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>Étape {step} : faite.</translation>
        </message>
        <message>
            <source>the {part} to be pointed at</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>cette pièce à montrer : {part}</translation>
        </message>
        <message>
            <source>this to be done: {act}</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>ceci à faire : {act}</translation>
        </message>
        <message>
            <source>the crank {value}° before top dead centre</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>le vilebrequin à {value}° avant le point mort haut</translation>
        </message>
        <message>
            <source>a line in the notebook: {act}</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>une ligne au carnet : {act}</translation>
        </message>
        <message>
            <source>the piston to meet the stop with rotation</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>le piston touchant la butée dans le sens de rotation</translation>
        </message>
        <message>
            <source>the piston to meet the stop against rotation</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>le piston touchant la butée en sens inverse de la rotation</translation>
        </message>
        <message>
            <source>“{name}” is neither a file nor one of the shipped exercises: {known}</source>
            <extracomment>practice/library.py</extracomment>
            <translation>« {name} » n'est ni un fichier ni l'un des exercices fournis : {known}</translation>
        </message>
        <message>
            <source>“{name}” is neither a file nor one of the shipped lessons: {known}</source>
            <extracomment>practice/library.py</extracomment>
            <translation>« {name} » n'est ni un fichier ni l'une des leçons fournies : {known}</translation>
        </message>
        <message>
            <source>{file}: {field} is “{given}”; it must be a file's path or one of {known}</source>
            <extracomment>practice/library.py</extracomment>
            <translation>{file} : {field} vaut « {given} » ; ce doit être le chemin d'un fichier ou l'un de {known}</translation>
        </message>
        <message>
            <source>handed in with the lock screw slack</source>
            <extracomment>practice/marking.py</extracomment>
            <translation>remise avec la vis de blocage desserrée</translation>
        </message>
        <message>
            <source>handed in with the clamp screws slack</source>
            <extracomment>practice/marking.py</extracomment>
            <translation>remise avec les vis de serrage desserrées</translation>
        </message>
        <message>
            <source>handed in with the nuts slack</source>
            <extracomment>practice/marking.py</extracomment>
            <translation>remise avec les écrous desserrés</translation>
        </message>
        <message>
            <source>handed in with the lock screw and the clamp screws slack</source>
            <extracomment>practice/marking.py</extracomment>
            <translation>remise avec la vis de blocage et les vis de serrage desserrées</translation>
        </message>
        <message>
            <source>handed in with the lock screw and the nuts slack</source>
            <extracomment>practice/marking.py</extracomment>
            <translation>remise avec la vis de blocage et les écrous desserrés</translation>
        </message>
        <message>
            <source>handed in with the clamp screws and the nuts slack</source>
            <extracomment>practice/marking.py</extracomment>
            <translation>remise avec les vis de serrage et les écrous desserrés</translation>
        </message>
        <message>
            <source>handed in with the lock screw and the clamp screws and the nuts slack</source>
            <extracomment>practice/marking.py</extracomment>
            <translation>remise avec la vis de blocage, les vis de serrage et les écrous desserrés</translation>
        </message>
        <message>
            <source>Not passed: {danger}.</source>
            <extracomment>practice/marking.py</extracomment>
            <translation>Non réussi : {danger}.</translation>
        </message>
        <message>
            <source>Not passed: {percent} % of the marks, and {pass_percent} % are needed.</source>
            <extracomment>practice/marking.py</extracomment>
            <translation>Non réussi : {percent} % de la note, et {pass_percent} % sont exigés.</translation>
        </message>
        <message>
            <source>Passed with {percent} %.</source>
            <extracomment>practice/marking.py</extracomment>
            <translation>Réussi avec {percent} %.</translation>
        </message>
        <message>
            <source>the rotor is held at the E-gap, the straightedge on it and looked at square</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>le rotor est tenu à l'E-gap, le réglet posé et visé d'équerre</translation>
        </message>
        <message>
            <source>the contacts open at the mark, seen by lamp and straightedge</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>les contacts s'ouvrent au repère, vu à la lampe et au réglet</translation>
        </message>
        <message>
            <source>the largest gap is within its limits, measured with blades</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>l'écartement maximal est dans ses limites, mesuré aux jauges</translation>
        </message>
        <message>
            <source>the contacts are clean and flat, and were looked at</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>les contacts sont propres et plans, et ont été examinés</translation>
        </message>
        <message>
            <source>the disc reads zero at No. 1's top dead centre, found from both sides</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>le disque lit zéro au point mort haut du n° 1, trouvé des deux côtés</translation>
        </message>
        <message>
            <source>it fires where it should, read by lamp and disc with rotation</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>elle allume où elle doit, lu à la lampe et au disque dans le sens de rotation</translation>
        </message>
        <message>
            <source>both magnetos fire together within what is allowed</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>les deux magnétos allument ensemble, dans ce qui est permis</translation>
        </message>
        <message>
            <source>the switch lead is sound and proved</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>le fil de masse est sain et prouvé</translation>
        </message>
        <message>
            <source>the coupling was marked before it was taken apart</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>l'accouplement a été repéré avant démontage</translation>
        </message>
        <message>
            <source>every screw and nut is tight, the plug in, the switch off</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>chaque vis et écrou est serré, la fiche branchée, le contacteur sur arrêt</translation>
        </message>
        <message>
            <source>the rotor is held at the E-gap, the straightedge on it and looked at square, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>le rotor est tenu à l'E-gap, le réglet posé et visé d'équerre, à chaque bossage</translation>
        </message>
        <message>
            <source>the contacts open at the mark, seen by lamp and straightedge, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>les contacts s'ouvrent au repère, vu à la lampe et au réglet, à chaque bossage</translation>
        </message>
        <message>
            <source>the largest gap is within its limits, measured with blades, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>l'écartement maximal est dans ses limites, mesuré aux jauges, à chaque bossage</translation>
        </message>
        <message>
            <source>the contacts are clean and flat, and were looked at, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>les contacts sont propres et plans, et ont été examinés, à chaque bossage</translation>
        </message>
        <message>
            <source>the disc reads zero at No. 1's top dead centre, found from both sides, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>le disque lit zéro au point mort haut du n° 1, trouvé des deux côtés, à chaque bossage</translation>
        </message>
        <message>
            <source>it fires where it should, read by lamp and disc with rotation, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>elle allume où elle doit, lu à la lampe et au disque dans le sens de rotation, à chaque bossage</translation>
        </message>
        <message>
            <source>both magnetos fire together within what is allowed, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>les deux magnétos allument ensemble, dans ce qui est permis, à chaque bossage</translation>
        </message>
        <message>
            <source>the switch lead is sound and proved, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>le fil de masse est sain et prouvé, à chaque bossage</translation>
        </message>
        <message>
            <source>the coupling was marked before it was taken apart, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>l'accouplement a été repéré avant démontage, à chaque bossage</translation>
        </message>
        <message>
            <source>every screw and nut is tight, the plug in, the switch off, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>chaque vis et écrou est serré, la fiche branchée, le contacteur sur arrêt, à chaque bossage</translation>
        </message>
        <message>
            <source>written down: how far past the mark the contacts open</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>noté : de combien après le repère les contacts s'ouvrent</translation>
        </message>
        <message>
            <source>written down: the largest gap</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>noté : l'écartement maximal</translation>
        </message>
        <message>
            <source>written down: where it fires before top dead centre</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>noté : où elle allume avant le point mort haut</translation>
        </message>
        <message>
            <source>written down: what the disc reads at top dead centre</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>noté : ce que le disque lit au point mort haut</translation>
        </message>
        <message>
            <source>written down: what the switch lead suffers from</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>noté : de quoi souffre le fil de masse</translation>
        </message>
        <message>
            <source>eccentric, {size} mm throw; clockwise brings the contacts closer</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>à excentrique, excentricité {size} mm ; le sens horaire rapproche les contacts</translation>
        </message>
        <message>
            <source>eccentric, {size} mm throw; anticlockwise brings the contacts closer</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>à excentrique, excentricité {size} mm ; le sens antihoraire rapproche les contacts</translation>
        </message>
        <message>
            <source>threaded, {size} mm a turn; clockwise brings the contacts closer</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>filetée, {size} mm par tour ; le sens horaire rapproche les contacts</translation>
        </message>
        <message>
            <source>threaded, {size} mm a turn; anticlockwise brings the contacts closer</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>filetée, {size} mm par tour ; le sens antihoraire rapproche les contacts</translation>
        </message>
        <message>
            <source>{goal}, left magneto</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{goal}, magnéto gauche</translation>
        </message>
        <message>
            <source>{goal}, right magneto</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{goal}, magnéto droite</translation>
        </message>
        <message>
            <source>{angle}° (left)</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{angle}° (gauche)</translation>
        </message>
        <message>
            <source>{angle}° (right)</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{angle}° (droite)</translation>
        </message>
        <message>
            <source>{reading}, within {within}</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{reading}, à {within} près</translation>
        </message>
        <message>
            <source>{e_gap}° of rotor past neutral</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{e_gap}° de rotor après le neutre</translation>
        </message>
        <message>
            <source>Rim mark</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>Repère du bord</translation>
        </message>
        <message>
            <source>within {tolerance} mm, at {radius} mm radius</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>à {tolerance} mm près, à {radius} mm de rayon</translation>
        </message>
        <message>
            <source>{name}; No. 1 fires {fires} before top dead centre</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{name} ; le n° 1 allume {fires} avant le point mort haut</translation>
        </message>
        <message>
            <source>Allowed</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>Permis</translation>
        </message>
        <message>
            <source>{tolerance}° of crank</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{tolerance}° de vilebrequin</translation>
        </message>
        <message>
            <source>Coupling</source>
            <extracomment>practice/paper.py, ui/plot_coupling.py, ui/plot_pane.py</extracomment>
            <translation>Accouplement</translation>
        </message>
        <message>
            <source>{magneto_teeth} teeth at the magneto, {drive_teeth} at the drive</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{magneto_teeth} dents côté magnéto, {drive_teeth} côté entraînement</translation>
        </message>
        <message>
            <source>Rotor</source>
            <extracomment>practice/paper.py, ui/lift_dialog.py, ui/setting_panel.py</extracomment>
            <translation>Rotor</translation>
        </message>
        <message>
            <source>{turns} turns a turn of the crank</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{turns} tours par tour de vilebrequin</translation>
        </message>
        <message>
            <source>clockwise seen from the breaker end</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>horaire vu côté rupteur</translation>
        </message>
        <message>
            <source>anticlockwise seen from the breaker end</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>antihoraire vu côté rupteur</translation>
        </message>
        <message>
            <source>{lobes}, unequally spaced</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{lobes}, inégalement espacés</translation>
        </message>
        <message>
            <source>Together</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>Ensemble</translation>
        </message>
        <message>
            <source>within {tolerance}° of one another</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>à {tolerance}° l'une de l'autre</translation>
        </message>
        <message>
            <source>“{name}” is no predicate</source>
            <extracomment>practice/predicates.py</extracomment>
            <translation>« {name} » n'est pas un prédicat</translation>
        </message>
        <message>
            <source>Written: {value} {unit}; true: {truth}; {within} {unit} are allowed; {how}.</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>Noté : {value} {unit} ; vrai : {truth} ; {within} {unit} sont permis ; {how}.</translation>
        </message>
        <message>
            <source>Where the contacts open, as read, {magneto}</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>Où les contacts s'ouvrent, tel que lu, {magneto}</translation>
        </message>
        <message>
            <source>Largest gap, as read, {magneto}</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>Écartement maximal, tel que lu, {magneto}</translation>
        </message>
        <message>
            <source>Firing, as read, {magneto}</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>Allumage, tel que lu, {magneto}</translation>
        </message>
        <message>
            <source>The disc's zero, as read</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>Zéro du disque, tel que lu</translation>
        </message>
        <message>
            <source>What the switch lead suffers from, {magneto}</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>De quoi souffre le fil de masse, {magneto}</translation>
        </message>
        <message>
            <source>read with lamp and straightedge, looked at square before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>lu à la lampe et au réglet, visé d'équerre, avant d'être noté</translation>
        </message>
        <message>
            <source>not read with lamp and straightedge, looked at square before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>non lu à la lampe et au réglet, visé d'équerre, avant d'être noté</translation>
        </message>
        <message>
            <source>read with blades before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>lu aux jauges avant d'être noté</translation>
        </message>
        <message>
            <source>not read with blades before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>non lu aux jauges avant d'être noté</translation>
        </message>
        <message>
            <source>read with lamp, and a disc whose zero was found before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>lu à la lampe et à un disque au zéro trouvé avant d'être noté</translation>
        </message>
        <message>
            <source>not read with lamp, and a disc whose zero was found before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>non lu à la lampe et à un disque au zéro trouvé avant d'être noté</translation>
        </message>
        <message>
            <source>read with the stop from both sides before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>lu à la butée des deux côtés avant d'être noté</translation>
        </message>
        <message>
            <source>not read with the stop from both sides before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>non lu à la butée des deux côtés avant d'être noté</translation>
        </message>
        <message>
            <source>read with meter and lamp before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>lu à l'ohmmètre et à la lampe avant d'être noté</translation>
        </message>
        <message>
            <source>not read with meter and lamp before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>non lu à l'ohmmètre et à la lampe avant d'être noté</translation>
        </message>
        <message>
            <source>read with nothing before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>lu avec rien avant d'être noté</translation>
        </message>
        <message>
            <source>not read with nothing before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>non lu avec rien avant d'être noté</translation>
        </message>
        <message>
            <source>It was not written down.</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>Cela n'a pas été noté.</translation>
        </message>
        <message>
            <source>Written: {text}; true: {truth}; {how}.</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>Noté : {text} ; vrai : {truth} ; {how}.</translation>
        </message>
        <message>
            <source>There was nothing to read: the contacts never open; {how}.</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>Il n'y avait rien à lire : les contacts ne s'ouvrent jamais ; {how}.</translation>
        </message>
        <message>
            <source>Code {seed}, {time} minutes.</source>
            <extracomment>practice/report.py</extracomment>
            <translation>Code {seed}, {time} minutes.</translation>
        </message>
        <message>
            <source>Dangerous acts</source>
            <extracomment>practice/report.py</extracomment>
            <translation>Actions dangereuses</translation>
        </message>
        <message>
            <source>Marks</source>
            <extracomment>practice/report.py, ui/class_plots.py, ui/debrief_view.py, lessons/a-full-job.json</extracomment>
            <translation>Notes</translation>
        </message>
        <message>
            <source>True values</source>
            <extracomment>practice/report.py, ui/debrief_view.py</extracomment>
            <translation>Valeurs vraies</translation>
        </message>
        <message>
            <source>Own readings</source>
            <extracomment>practice/report.py, ui/debrief_view.py</extracomment>
            <translation>Propres lectures</translation>
        </message>
        <message>
            <source>Time line</source>
            <extracomment>practice/report.py, ui/debrief_view.py</extracomment>
            <translation>Chronologie</translation>
        </message>
        <message>
            <source>An efficient path</source>
            <extracomment>practice/report.py, ui/debrief_view.py</extracomment>
            <translation>Un chemin efficace</translation>
        </message>
        <message>
            <source>When</source>
            <extracomment>practice/report.py</extracomment>
            <translation>Quand</translation>
        </message>
        <message>
            <source>Times</source>
            <extracomment>practice/report.py</extracomment>
            <translation>Fois</translation>
        </message>
        <message>
            <source>Weight</source>
            <extracomment>practice/report.py</extracomment>
            <translation>Poids</translation>
        </message>
        <message>
            <source>Got</source>
            <extracomment>practice/report.py</extracomment>
            <translation>Obtenu</translation>
        </message>
        <message>
            <source>Why</source>
            <extracomment>practice/report.py</extracomment>
            <translation>Pourquoi</translation>
        </message>
        <message>
            <source>Written</source>
            <extracomment>practice/report.py</extracomment>
            <translation>Noté</translation>
        </message>
        <message>
            <source>True then</source>
            <extracomment>practice/report.py</extracomment>
            <translation>Vrai alors</translation>
        </message>
        <message>
            <source>Danger</source>
            <extracomment>practice/report.py, ui/job_bars.py</extracomment>
            <translation>Danger</translation>
        </message>
        <message>
            <source>lock screw tight, clamp screws tight</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>vis de blocage serrée, vis de serrage serrées</translation>
        </message>
        <message>
            <source>lock screw tight, clamp screws slack</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>vis de blocage serrée, vis de serrage desserrées</translation>
        </message>
        <message>
            <source>lock screw slack, clamp screws tight</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>vis de blocage desserrée, vis de serrage serrées</translation>
        </message>
        <message>
            <source>lock screw slack, clamp screws slack</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>vis de blocage desserrée, vis de serrage desserrées</translation>
        </message>
        <message>
            <source>plug in, paper under the spring tab; switch on</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>fiche branchée, papier sous la languette ressort ; contacteur sur marche</translation>
        </message>
        <message>
            <source>plug in, paper under the spring tab; switch off</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>fiche branchée, papier sous la languette ressort ; contacteur sur arrêt</translation>
        </message>
        <message>
            <source>plug in; switch on</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>fiche branchée ; contacteur sur marche</translation>
        </message>
        <message>
            <source>plug in; switch off</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>fiche branchée ; contacteur sur arrêt</translation>
        </message>
        <message>
            <source>plug pulled, paper under the spring tab; switch on</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>fiche débranchée, papier sous la languette ressort ; contacteur sur marche</translation>
        </message>
        <message>
            <source>plug pulled, paper under the spring tab; switch off</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>fiche débranchée, papier sous la languette ressort ; contacteur sur arrêt</translation>
        </message>
        <message>
            <source>plug pulled; switch on</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>fiche débranchée ; contacteur sur marche</translation>
        </message>
        <message>
            <source>plug pulled; switch off</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>fiche débranchée ; contacteur sur arrêt</translation>
        </message>
        <message>
            <source>turned {angle}° since you came</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>rotation de {angle}° depuis votre arrivée</translation>
        </message>
        <message>
            <source>turned {angle}° since you came (with rotation)</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>rotation de {angle}° depuis votre arrivée (dans le sens de rotation)</translation>
        </message>
        <message>
            <source>turned {angle}° since you came (against rotation)</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>rotation de {angle}° depuis votre arrivée (en sens inverse de la rotation)</translation>
        </message>
        <message>
            <source>turned {angle}° since you came (closer)</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>rotation de {angle}° depuis votre arrivée (plus près)</translation>
        </message>
        <message>
            <source>turned {angle}° since you came (wider)</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>rotation de {angle}° depuis votre arrivée (plus écartés)</translation>
        </message>
        <message>
            <source>from {eye}° behind against rotation</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>de {eye}° en arrière, en sens inverse de la rotation</translation>
        </message>
        <message>
            <source>square over the edge</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>d'équerre au-dessus de l'arête</translation>
        </message>
        <message>
            <source>from {eye}° ahead with rotation</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>de {eye}° en avant, dans le sens de rotation</translation>
        </message>
        <message>
            <source>no marks to count by</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>pas de repères pour compter</translation>
        </message>
        <message>
            <source>by the marks: magneto flange {i}, disc {j} teeth</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>d'après les repères : bride de la magnéto {i}, disque {j} dents</translation>
        </message>
        <message>
            <source>the marks stand in line</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>les repères sont alignés</translation>
        </message>
        <message>
            <source>wheels chocked</source>
            <extracomment>practice/seen.py, ui/class_editor_fields.py</extracomment>
            <translation>roues calées</translation>
        </message>
        <message>
            <source>no chocks</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>pas de cales</translation>
        </message>
        <message>
            <source>spark plugs in</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>bougies en place</translation>
        </message>
        <message>
            <source>magneto off the engine</source>
            <extracomment>practice/seen.py, ui/drive_view.py</extracomment>
            <translation>magnéto déposée du moteur</translation>
        </message>
        <message>
            <source>nuts off</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>écrous ôtés</translation>
        </message>
        <message>
            <source>coupling marked</source>
            <extracomment>practice/seen.py, ui/class_editor_fields.py</extracomment>
            <translation>accouplement repéré</translation>
        </message>
        <message>
            <source>no marks on the coupling</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>pas de repères sur l'accouplement</translation>
        </message>
        <message>
            <source>piston stop in No. 1</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>butée de piston dans le n° 1</translation>
        </message>
        <message>
            <source>rotor pinned</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>rotor pigé</translation>
        </message>
        <message>
            <source>lamp</source>
            <extracomment>practice/state.py</extracomment>
            <translation>lampe</translation>
        </message>
        <message>
            <source>blades</source>
            <extracomment>practice/state.py</extracomment>
            <translation>jauges</translation>
        </message>
        <message>
            <source>meter</source>
            <extracomment>practice/state.py</extracomment>
            <translation>ohmmètre</translation>
        </message>
        <message>
            <source>finger</source>
            <extracomment>practice/state.py</extracomment>
            <translation>doigt</translation>
        </message>
        <message>
            <source>thumb</source>
            <extracomment>practice/state.py</extracomment>
            <translation>pouce</translation>
        </message>
        <message>
            <source>stop</source>
            <extracomment>practice/state.py</extracomment>
            <translation>butée</translation>
        </message>
        <message>
            <source>hand</source>
            <extracomment>practice/state.py</extracomment>
            <translation>main</translation>
        </message>
        <message>
            <source>“{what}” is nothing to turn to: lamp, mark, widest or stop</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>« {what} » n'est rien vers quoi tourner : lamp, mark, widest ou stop</translation>
        </message>
        <message>
            <source>the magneto is on the engine: turn the propeller, or lift it off</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>la magnéto est sur le moteur : tourner l'hélice, ou la déposer</translation>
        </message>
        <message>
            <source>the rotor is pinned: take the pin out first</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>le rotor est pigé : ôter d'abord la pige</translation>
        </message>
        <message>
            <source>there is no engine here: turn the rotor</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>il n'y a pas de moteur ici : tourner le rotor</translation>
        </message>
        <message>
            <source>there is no disc on the crank to read</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>il n'y a pas de disque à lire sur le vilebrequin</translation>
        </message>
        <message>
            <source>{value} is not a move a hand makes; it must lie within ±{most}</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>{value} n'est pas un mouvement fait à la main ; il doit être dans ±{most}</translation>
        </message>
        <message>
            <source>no piston stop is fitted</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>aucune butée de piston n'est posée</translation>
        </message>
        <message>
            <source>clip the lamp across the contacts first</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>pincer d'abord la lampe aux bornes des contacts</translation>
        </message>
        <message>
            <source>lay the straightedge along the cam's step first</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>poser d'abord le réglet le long de l'épaulement de la came</translation>
        </message>
        <message>
            <source>a magneto is drawn back from its drive: tighten its nuts before turning the propeller</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>une magnéto est reculée de son entraînement : serrer ses écrous avant de tourner l'hélice</translation>
        </message>
        <message>
            <source>a pin holds a magneto's rotor: take it out before turning the propeller</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>une pige tient le rotor d'une magnéto : l'ôter avant de tourner l'hélice</translation>
        </message>
        <message>
            <source>light all the way round</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>allumée sur tout le tour</translation>
        </message>
        <message>
            <source>dark all the way round</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>éteinte sur tout le tour</translation>
        </message>
        <message>
            <source>the piston meets the stop</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>le piston touche la butée</translation>
        </message>
        <message>
            <source>turn the propeller with rotation until the lamp changes</source>
            <extracomment>practice/words.py</extracomment>
            <translation>tourner l'hélice dans le sens de rotation jusqu'au changement de la lampe</translation>
        </message>
        <message>
            <source>turn the propeller against rotation until the lamp changes</source>
            <extracomment>practice/words.py</extracomment>
            <translation>tourner l'hélice en sens inverse jusqu'au changement de la lampe</translation>
        </message>
        <message>
            <source>turn the rotor with rotation until the lamp changes</source>
            <extracomment>practice/words.py</extracomment>
            <translation>tourner le rotor dans le sens de rotation jusqu'au changement de la lampe</translation>
        </message>
        <message>
            <source>turn the rotor against rotation until the lamp changes</source>
            <extracomment>practice/words.py</extracomment>
            <translation>tourner le rotor en sens inverse jusqu'au changement de la lampe</translation>
        </message>
        <message>
            <source>turn the propeller with rotation until the straightedge comes in line</source>
            <extracomment>practice/words.py</extracomment>
            <translation>tourner l'hélice dans le sens de rotation jusqu'à aligner le réglet</translation>
        </message>
        <message>
            <source>turn the propeller against rotation until the straightedge comes in line</source>
            <extracomment>practice/words.py</extracomment>
            <translation>tourner l'hélice en sens inverse jusqu'à aligner le réglet</translation>
        </message>
        <message>
            <source>turn the rotor with rotation until the straightedge comes in line</source>
            <extracomment>practice/words.py</extracomment>
            <translation>tourner le rotor dans le sens de rotation jusqu'à aligner le réglet</translation>
        </message>
        <message>
            <source>turn the rotor against rotation until the straightedge comes in line</source>
            <extracomment>practice/words.py</extracomment>
            <translation>tourner le rotor en sens inverse jusqu'à aligner le réglet</translation>
        </message>
        <message>
            <source>turn the propeller with rotation until the contacts stand widest open</source>
            <extracomment>practice/words.py</extracomment>
            <translation>tourner l'hélice dans le sens de rotation jusqu'aux contacts au plus ouvert</translation>
        </message>
        <message>
            <source>turn the propeller against rotation until the contacts stand widest open</source>
            <extracomment>practice/words.py</extracomment>
            <translation>tourner l'hélice en sens inverse jusqu'aux contacts au plus ouvert</translation>
        </message>
        <message>
            <source>turn the rotor with rotation until the contacts stand widest open</source>
            <extracomment>practice/words.py</extracomment>
            <translation>tourner le rotor dans le sens de rotation jusqu'aux contacts au plus ouvert</translation>
        </message>
        <message>
            <source>turn the rotor against rotation until the contacts stand widest open</source>
            <extracomment>practice/words.py</extracomment>
            <translation>tourner le rotor en sens inverse jusqu'aux contacts au plus ouvert</translation>
        </message>
        <message>
            <source>turn the propeller with rotation until the piston meets the stop</source>
            <extracomment>practice/words.py</extracomment>
            <translation>tourner l'hélice dans le sens de rotation jusqu'à ce que le piston touche la butée</translation>
        </message>
        <message>
            <source>turn the propeller against rotation until the piston meets the stop</source>
            <extracomment>practice/words.py</extracomment>
            <translation>tourner l'hélice en sens inverse jusqu'à ce que le piston touche la butée</translation>
        </message>
        <message>
            <source>turn the rotor with rotation until the piston meets the stop</source>
            <extracomment>practice/words.py</extracomment>
            <translation>tourner le rotor dans le sens de rotation jusqu'à ce que le piston touche la butée</translation>
        </message>
        <message>
            <source>turn the rotor against rotation until the piston meets the stop</source>
            <extracomment>practice/words.py</extracomment>
            <translation>tourner le rotor en sens inverse jusqu'à ce que le piston touche la butée</translation>
        </message>
        <message>
            <source>the left magneto</source>
            <extracomment>practice/words.py</extracomment>
            <translation>la magnéto gauche</translation>
        </message>
        <message>
            <source>the right magneto</source>
            <extracomment>practice/words.py</extracomment>
            <translation>la magnéto droite</translation>
        </message>
        <message>
            <source>put in a new lead</source>
            <extracomment>practice/words.py</extracomment>
            <translation>poser un fil neuf</translation>
        </message>
        <message>
            <source>put in a new tab</source>
            <extracomment>practice/words.py</extracomment>
            <translation>poser une languette neuve</translation>
        </message>
        <message>
            <source>renew the insulation inside</source>
            <extracomment>practice/words.py</extracomment>
            <translation>remplacer l'isolation intérieure</translation>
        </message>
        <message>
            <source>move the magneto flange on the disc 1 tooth with rotation</source>
            <extracomment>practice/words.py</extracomment>
            <translation>déplacer la bride de la magnéto sur le disque d'1 dent dans le sens de rotation</translation>
        </message>
        <message>
            <source>move the magneto flange on the disc 1 tooth against rotation</source>
            <extracomment>practice/words.py</extracomment>
            <translation>déplacer la bride de la magnéto sur le disque d'1 dent en sens inverse</translation>
        </message>
        <message>
            <source>move the disc on the drive flange 1 tooth with rotation</source>
            <extracomment>practice/words.py</extracomment>
            <translation>déplacer le disque sur la bride d'entraînement d'1 dent dans le sens de rotation</translation>
        </message>
        <message>
            <source>move the disc on the drive flange 1 tooth against rotation</source>
            <extracomment>practice/words.py</extracomment>
            <translation>déplacer le disque sur la bride d'entraînement d'1 dent en sens inverse</translation>
        </message>
        <message>
            <source>straightedge past the mark as the contacts open</source>
            <extracomment>practice/words.py</extracomment>
            <translation>réglet après le repère à l'ouverture des contacts</translation>
        </message>
        <message>
            <source>largest gap</source>
            <extracomment>practice/words.py</extracomment>
            <translation>écartement maximal</translation>
        </message>
        <message>
            <source>fires before top dead centre</source>
            <extracomment>practice/words.py</extracomment>
            <translation>allume avant le point mort haut</translation>
        </message>
        <message>
            <source>disc reads at top dead centre</source>
            <extracomment>practice/words.py</extracomment>
            <translation>lecture du disque au point mort haut</translation>
        </message>
        <message>
            <source>note</source>
            <extracomment>practice/words.py</extracomment>
            <translation>note</translation>
        </message>
        <message>
            <source>broken</source>
            <extracomment>practice/words.py, ui/class_editor_rows.py</extracomment>
            <translation>coupé</translation>
        </message>
        <message>
            <source>shorted</source>
            <extracomment>practice/words.py, ui/class_editor_rows.py</extracomment>
            <translation>en court-circuit</translation>
        </message>
        <message>
            <source>tab</source>
            <extracomment>practice/words.py, spec/lift_table.py, ui/class_editor_rows.py</extracomment>
            <translation>languette</translation>
        </message>
        <message>
            <source>thumb over No. 1's plug hole</source>
            <extracomment>practice/words.py</extracomment>
            <translation>pouce sur le trou de bougie du n° 1</translation>
        </message>
        <message>
            <source>the magneto</source>
            <extracomment>practice/words.py</extracomment>
            <translation>la magnéto</translation>
        </message>
        <message>
            <source>largest gap, lobe {lobe}</source>
            <extracomment>practice/words.py</extracomment>
            <translation>écartement maximal, bossage {lobe}</translation>
        </message>
        <message>
            <source>point at {part}</source>
            <extracomment>practice/words.py</extracomment>
            <translation>montrer : {part}</translation>
        </message>
        <message>
            <source>write down – {note}</source>
            <extracomment>practice/words.py</extracomment>
            <translation>noter – {note}</translation>
        </message>
        <message>
            <source>hand in</source>
            <extracomment>practice/words.py</extracomment>
            <translation>remettre</translation>
        </message>
        <message>
            <source>look at the contacts</source>
            <extracomment>practice/words.py</extracomment>
            <translation>examiner les contacts</translation>
        </message>
        <message>
            <source>dress the contacts</source>
            <extracomment>practice/words.py</extracomment>
            <translation>rectifier les contacts</translation>
        </message>
        <message>
            <source>try {blades} {unit}</source>
            <extracomment>practice/words.py</extracomment>
            <translation>essayer {blades} {unit}</translation>
        </message>
        <message>
            <source>meter from the lead's plug to the case</source>
            <extracomment>practice/words.py</extracomment>
            <translation>ohmmètre de la fiche du fil au carter</translation>
        </message>
        <message>
            <source>lift the magneto off</source>
            <extracomment>practice/words.py</extracomment>
            <translation>déposer la magnéto</translation>
        </message>
        <message>
            <source>paint marks across the coupling</source>
            <extracomment>practice/words.py</extracomment>
            <translation>peindre des repères en travers de l'accouplement</translation>
        </message>
        <message>
            <source>turn the propeller {angle}° with rotation</source>
            <extracomment>practice/words.py</extracomment>
            <translation>tourner l'hélice de {angle}° dans le sens de rotation</translation>
        </message>
        <message>
            <source>turn the propeller {angle}° against rotation</source>
            <extracomment>practice/words.py</extracomment>
            <translation>tourner l'hélice de {angle}° en sens inverse</translation>
        </message>
        <message>
            <source>turn the propeller with rotation to {reading}° on the disc</source>
            <extracomment>practice/words.py</extracomment>
            <translation>tourner l'hélice dans le sens de rotation jusqu'à {reading}° au disque</translation>
        </message>
        <message>
            <source>turn the propeller against rotation to {reading}° on the disc</source>
            <extracomment>practice/words.py</extracomment>
            <translation>tourner l'hélice en sens inverse jusqu'à {reading}° au disque</translation>
        </message>
        <message>
            <source>lay the straightedge on</source>
            <extracomment>practice/words.py</extracomment>
            <translation>poser le réglet</translation>
        </message>
        <message>
            <source>take the straightedge away</source>
            <extracomment>practice/words.py</extracomment>
            <translation>ôter le réglet</translation>
        </message>
        <message>
            <source>look square over the straightedge</source>
            <extracomment>practice/words.py</extracomment>
            <translation>viser d'équerre par-dessus le réglet</translation>
        </message>
        <message>
            <source>look from {eye}° to the side</source>
            <extracomment>practice/words.py</extracomment>
            <translation>regarder de {eye}° de côté</translation>
        </message>
        <message>
            <source>clip the lamp across the contacts</source>
            <extracomment>practice/words.py</extracomment>
            <translation>pincer la lampe aux bornes des contacts</translation>
        </message>
        <message>
            <source>take the lamp off</source>
            <extracomment>practice/words.py</extracomment>
            <translation>retirer la lampe</translation>
        </message>
        <message>
            <source>screw the piston stop in</source>
            <extracomment>practice/words.py</extracomment>
            <translation>visser la butée de piston</translation>
        </message>
        <message>
            <source>take the piston stop out</source>
            <extracomment>practice/words.py</extracomment>
            <translation>ôter la butée de piston</translation>
        </message>
        <message>
            <source>turn the disc on the crank {by}° earlier</source>
            <extracomment>practice/words.py</extracomment>
            <translation>tourner le disque du vilebrequin de {by}° plus tôt</translation>
        </message>
        <message>
            <source>turn the disc on the crank {by}° later</source>
            <extracomment>practice/words.py</extracomment>
            <translation>tourner le disque du vilebrequin de {by}° plus tard</translation>
        </message>
        <message>
            <source>slip paper under the spring tab</source>
            <extracomment>practice/words.py</extracomment>
            <translation>glisser un papier sous la languette ressort</translation>
        </message>
        <message>
            <source>take the paper from the spring tab</source>
            <extracomment>practice/words.py</extracomment>
            <translation>ôter le papier de la languette ressort</translation>
        </message>
        <message>
            <source>chock the wheels</source>
            <extracomment>practice/words.py</extracomment>
            <translation>caler les roues</translation>
        </message>
        <message>
            <source>take the chocks away</source>
            <extracomment>practice/words.py</extracomment>
            <translation>ôter les cales</translation>
        </message>
        <message>
            <source>take the spark plugs out</source>
            <extracomment>practice/words.py</extracomment>
            <translation>déposer les bougies</translation>
        </message>
        <message>
            <source>put the spark plugs in</source>
            <extracomment>practice/words.py</extracomment>
            <translation>remettre les bougies</translation>
        </message>
        <message>
            <source>tighten the magneto's nuts</source>
            <extracomment>practice/words.py</extracomment>
            <translation>serrer les écrous de la magnéto</translation>
        </message>
        <message>
            <source>take the nuts off and draw the magneto back</source>
            <extracomment>practice/words.py</extracomment>
            <translation>ôter les écrous et reculer la magnéto</translation>
        </message>
        <message>
            <source>pin the rotor</source>
            <extracomment>practice/words.py</extracomment>
            <translation>piger le rotor</translation>
        </message>
        <message>
            <source>take the pin out</source>
            <extracomment>practice/words.py</extracomment>
            <translation>ôter la pige</translation>
        </message>
        <message>
            <source>refit the magneto as its rotor stands</source>
            <extracomment>practice/words.py</extracomment>
            <translation>remonter la magnéto selon son rotor</translation>
        </message>
        <message>
            <source>go to the left magneto</source>
            <extracomment>practice/words.py</extracomment>
            <translation>aller à la magnéto gauche</translation>
        </message>
        <message>
            <source>go to the right magneto</source>
            <extracomment>practice/words.py</extracomment>
            <translation>aller à la magnéto droite</translation>
        </message>
        <message>
            <source>firing_order is {order}; it must name each cylinder from 1 to {n} once</source>
            <extracomment>spec/engine.py</extracomment>
            <translation>firing_order vaut {order} ; il doit nommer chaque cylindre de 1 à {n} une fois</translation>
        </message>
        <message>
            <source>firing_order begins with {first}; it must begin with cylinder 1</source>
            <extracomment>spec/engine.py</extracomment>
            <translation>firing_order commence par {first} ; il doit commencer par le cylindre 1</translation>
        </message>
        <message>
            <source>rod_mm is {rod:g}; it must be longer than half the stroke, {crank:g} mm</source>
            <extracomment>spec/engine.py</extracomment>
            <translation>rod_mm vaut {rod:g} ; il doit être plus long que la demi-course, {crank:g} mm</translation>
        </message>
        <message>
            <source>articulation is for a radial engine; this one is {arrangement}</source>
            <extracomment>spec/engine.py</extracomment>
            <translation>articulation est pour un moteur en étoile ; celui-ci est {arrangement}</translation>
        </message>
        <message>
            <source>articulation.master_cylinder is {master_cylinder}; the engine has {cylinders} cylinders</source>
            <extracomment>spec/engine.py</extracomment>
            <translation>articulation.master_cylinder vaut {master_cylinder} ; le moteur a {cylinders} cylindres</translation>
        </message>
        <message>
            <source>articulation.knuckle_angles_deg has {count} values; it must have one for each of the {cylinders} cylinders</source>
            <extracomment>spec/engine.py</extracomment>
            <translation>articulation.knuckle_angles_deg a {count} valeurs ; il en faut une pour chacun des {cylinders} cylindres</translation>
        </message>
        <message>
            <source>articulation.link_rod_mm is {rod:g}; it must be longer than half the stroke and the knuckle radius together, {reach:g} mm</source>
            <extracomment>spec/engine.py</extracomment>
            <translation>articulation.link_rod_mm vaut {rod:g} ; il doit être plus long que la demi-course et le rayon des axes de biellette réunis, {reach:g} mm</translation>
        </message>
        <message>
            <source>not a number (NaN)</source>
            <extracomment>spec/files.py</extracomment>
            <translation>pas un nombre (NaN)</translation>
        </message>
        <message>
            <source>infinite</source>
            <extracomment>spec/files.py</extracomment>
            <translation>infini</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be at least {ge:g}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} vaut {found} ; ce doit être au moins {ge:g}</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be above {gt:g}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} vaut {found} ; ce doit être plus de {gt:g}</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be at most {le:g}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} vaut {found} ; ce doit être au plus {le:g}</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be below {lt:g}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} vaut {found} ; ce doit être moins de {lt:g}</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be a multiple of {multiple_of:g}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} vaut {found} ; ce doit être un multiple de {multiple_of:g}</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be a whole number</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} vaut {found} ; ce doit être un nombre entier</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be text</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} vaut {found} ; ce doit être du texte</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be text without broken characters</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} vaut {found} ; ce doit être du texte sans caractères corrompus</translation>
        </message>
        <message>
            <source>{field} is {found}; it must have at least {min_length} characters</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} vaut {found} ; il faut au moins {min_length} caractères</translation>
        </message>
        <message>
            <source>{field} is {found}; it must have at most {max_length} characters</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} vaut {found} ; il faut au plus {max_length} caractères</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be one line of text</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} vaut {found} ; ce doit être une ligne de texte</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be true or false</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} vaut {found} ; ce doit être true ou false</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be {expected}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} vaut {found} ; ce doit être {expected}</translation>
        </message>
        <message>
            <source>{field} is {found}; it must have at least {min_length} values</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} vaut {found} ; il faut au moins {min_length} valeurs</translation>
        </message>
        <message>
            <source>{field} is {found}; it must have at most {max_length} values</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} vaut {found} ; il faut au plus {max_length} valeurs</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be a list</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} vaut {found} ; ce doit être une liste</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be an object in braces</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} vaut {found} ; ce doit être un objet entre accolades</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be a finite number of millimetres</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} vaut {found} ; ce doit être un nombre fini de millimètres</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be a finite number of degrees</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} vaut {found} ; ce doit être un nombre fini de degrés</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be a finite number of newton metres</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} vaut {found} ; ce doit être un nombre fini de newtons-mètres</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be a finite number of ohms</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} vaut {found} ; ce doit être un nombre fini d'ohms</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be a finite number</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} vaut {found} ; ce doit être un nombre fini</translation>
        </message>
        <message>
            <source>{field} is missing</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} manque</translation>
        </message>
        <message>
            <source>{field} is not a known name (known here: {known})</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} n'est pas un nom connu (connus ici : {known})</translation>
        </message>
        <message>
            <source>{field} is {found}; it must {rule}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} vaut {found} ; il doit {rule}</translation>
        </message>
        <message>
            <source>{file}: is larger than {most:g} MB, the most that is read</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{file} : dépasse {most:g} MB, le maximum qui se lit</translation>
        </message>
        <message>
            <source>“{repeated}” is given twice in one place; give it once</source>
            <extracomment>spec/files.py</extracomment>
            <translation>« {repeated} » est donné deux fois au même endroit ; le donner une fois</translation>
        </message>
        <message>
            <source>{source}: holds no {kind} object; it must be one JSON object in braces</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{source} : ne contient pas d'objet {kind} ; ce doit être un objet JSON entre accolades</translation>
        </message>
        <message>
            <source>{source}: format is missing; it must be "{wanted}"</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{source} : format manque ; ce doit être "{wanted}"</translation>
        </message>
        <message>
            <source>{field} is not a known name (did you mean {close}?)</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} n'est pas un nom connu (vouliez-vous dire {close} ?)</translation>
        </message>
        <message>
            <source>{field}.kind is {found}; it must be {tags}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field}.kind vaut {found} ; ce doit être {tags}</translation>
        </message>
        <message>
            <source>{field}.kind is missing; it must be {tags}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field}.kind manque ; ce doit être {tags}</translation>
        </message>
        <message>
            <source>it is not a file</source>
            <extracomment>spec/files.py</extracomment>
            <translation>ce n'est pas un fichier</translation>
        </message>
        <message>
            <source>{file}: cannot be read: {reason}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{file} : est illisible : {reason}</translation>
        </message>
        <message>
            <source>{file}: is not a text file (byte {byte} is not UTF-8)</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{file} : n'est pas un fichier texte (l'octet {byte} n'est pas de l'UTF-8)</translation>
        </message>
        <message>
            <source>{file}: line {line}, column {column}: not JSON: {reason}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{file} : ligne {line}, colonne {column} : pas du JSON : {reason}</translation>
        </message>
        <message>
            <source>{file}: is nested too deeply</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{file} : est imbriqué trop profondément</translation>
        </message>
        <message>
            <source>holds a list of {count} values; at most {most} are read</source>
            <extracomment>spec/files.py</extracomment>
            <translation>contient une liste de {count} valeurs ; {most} au plus se lisent</translation>
        </message>
        <message>
            <source>{file}: cannot be written: {reason}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{file} : écriture impossible : {reason}</translation>
        </message>
        <message>
            <source>Magneto on its engine</source>
            <extracomment>spec/formats.py</extracomment>
            <translation>Magnéto sur son moteur</translation>
        </message>
        <message>
            <source>Lesson</source>
            <extracomment>spec/formats.py</extracomment>
            <translation>Leçon</translation>
        </message>
        <message>
            <source>Attempt at an exercise</source>
            <extracomment>spec/formats.py</extracomment>
            <translation>Tentative d'exercice</translation>
        </message>
        <message>
            <source>Set of exercises for a class</source>
            <extracomment>spec/formats.py</extracomment>
            <translation>Série d'exercices pour une classe</translation>
        </message>
        <message>
            <source>Job sheet of a magneto</source>
            <extracomment>spec/formats.py</extracomment>
            <translation>Fiche de travail d'une magnéto</translation>
        </message>
        <message>
            <source>{file}: is not a file of this program; its format must be one of {known}</source>
            <extracomment>spec/formats.py</extracomment>
            <translation>{file} : n'est pas un fichier de ce programme ; son format doit être l'un de {known}</translation>
        </message>
        <message>
            <source>{others} or {last}</source>
            <extracomment>spec/language.py</extracomment>
            <translation>{others} ou {last}</translation>
        </message>
        <message>
            <source>{first} or {other}</source>
            <extracomment>spec/language.py</extracomment>
            <translation>{first} ou {other}</translation>
        </message>
        <message>
            <source>{first} and {other}</source>
            <extracomment>spec/language.py</extracomment>
            <translation>{first} et {other}</translation>
        </message>
        <message>
            <source>“{name}” is neither a file nor one of the shipped magnetos: {known}</source>
            <extracomment>spec/library.py</extracomment>
            <translation>« {name} » n'est ni un fichier ni l'une des magnétos fournies : {known}</translation>
        </message>
        <message>
            <source>“{name}” is neither a file nor one of the shipped engines: {known}</source>
            <extracomment>spec/library.py</extracomment>
            <translation>« {name} » n'est ni un fichier ni l'un des moteurs fournis : {known}</translation>
        </message>
        <message>
            <source>“{name}” is neither a file nor one of the shipped installations: {known}</source>
            <extracomment>spec/library.py</extracomment>
            <translation>« {name} » n'est ni un fichier ni l'une des installations fournies : {known}</translation>
        </message>
        <message>
            <source>{where} has no angle in column {column} (columns separated by {separator})</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{where} n'a pas d'angle en colonne {column} (colonnes séparées par {separator})</translation>
        </message>
        <message>
            <source>{where} has no reading in column {column} (columns separated by {separator})</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{where} n'a pas de lecture en colonne {column} (colonnes séparées par {separator})</translation>
        </message>
        <message>
            <source>semicolon</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>point-virgule</translation>
        </message>
        <message>
            <source>comma</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>virgule</translation>
        </message>
        <message>
            <source>space</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>espace</translation>
        </message>
        <message>
            <source>the table</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>la table</translation>
        </message>
        <message>
            <source>{source}: its commas may be decimal signs or stand between columns: say which, or save it with semicolons between columns</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{source} : ses virgules peuvent être décimales ou séparer les colonnes : le préciser, ou l'enregistrer avec des points-virgules entre colonnes</translation>
        </message>
        <message>
            <source>{source}: is longer than {most:g} million characters, the most that is read</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{source} : dépasse {most:g} millions de caractères, le maximum qui se lit</translation>
        </message>
        <message>
            <source>{source}: the decimal sign must be a point or a comma, the columns two of the first hundred</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{source} : le signe décimal doit être un point ou une virgule, les colonnes deux des cent premières</translation>
        </message>
        <message>
            <source>{source}: has {count} rows of numbers; it must have at least {least} (“{numbered}” is none: write numbers alone, without their units)</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{source} : a {count} lignes de nombres ; il en faut au moins {least} (« {numbered} » n'en est pas : écrire les nombres seuls, sans leurs unités)</translation>
        </message>
        <message>
            <source>{where}: “{field}” is not a number (columns separated by {separator}, decimal sign “{decimal}”)</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{where} : « {field} » n'est pas un nombre (colonnes séparées par {separator}, signe décimal « {decimal} »)</translation>
        </message>
        <message>
            <source>{where}: {field} is too large; at most {most:g} is read</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{where} : {field} est trop grand ; {most:g} au plus se lit</translation>
        </message>
        <message>
            <source>{source}: line {line}</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{source} : ligne {line}</translation>
        </message>
        <message>
            <source>{source}: has more than {most} rows, the most that are read</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{source} : a plus de {most} lignes, le maximum qui se lit</translation>
        </message>
        <message>
            <source>{source}: has no row of numbers in its first 100 lines</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{source} : n'a pas de ligne de nombres dans ses 100 premières lignes</translation>
        </message>
        <message>
            <source>{source}: has {count} rows of numbers; it must have at least {least}</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{source} : a {count} lignes de nombres ; il en faut au moins {least}</translation>
        </message>
        <message>
            <source>{source}: line {line}: “{row}” is not a row of numbers</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{source} : ligne {line} : « {row} » n'est pas une ligne de nombres</translation>
        </message>
        <message>
            <source>{source}: has both points and commas in its numbers: say which is the decimal sign</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{source} : a des points et des virgules dans ses nombres : préciser le signe décimal</translation>
        </message>
        <message>
            <source>{field} is [{low:g}, {high:g}]; the first must be below the second</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>{field} vaut [{low:g}, {high:g}] ; le premier doit être inférieur au second</translation>
        </message>
        <message>
            <source>lobes {lobe} and {next} overlap: their tops are {apart:g}° apart and a lobe is {width:g}° wide</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>les bossages {lobe} et {next} se chevauchent : leurs sommets sont à {apart:g}° l'un de l'autre et un bossage est large de {width:g}°</translation>
        </message>
        <message>
            <source>angle_deg has {angles} values and contact_lift_mm {lifts}; they must be as many</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>angle_deg a {angles} valeurs et contact_lift_mm {lifts} ; il en faut autant</translation>
        </message>
        <message>
            <source>contact_lift_mm must begin and end with 0 (the heel off the lobe)</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>contact_lift_mm doit commencer et finir par 0 (toucheau hors du bossage)</translation>
        </message>
        <message>
            <source>contact_lift_mm never rises; the top must be at least 0.001</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>contact_lift_mm ne monte jamais ; le sommet doit être d'au moins 0.001</translation>
        </message>
        <message>
            <source>the top of contact_lift_mm is at {angle:g}°; angle_deg counts from it</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>le sommet de contact_lift_mm est à {angle:g}° ; angle_deg compte depuis lui</translation>
        </message>
        <message>
            <source>contact_lift_mm must rise to one top and fall again, without steps or dips</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>contact_lift_mm doit monter à un sommet et redescendre, sans marches ni creux</translation>
        </message>
        <message>
            <source>lobe_peaks_deg begins with {first:g}; it must begin with 0 (lobe 1)</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>lobe_peaks_deg commence par {first:g} ; il doit commencer par 0 (bossage 1)</translation>
        </message>
        <message>
            <source>lobe_peaks_deg: {overlap}</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>lobe_peaks_deg : {overlap}</translation>
        </message>
        <message>
            <source>e_gap_deg is {e_gap:g}; with {poles} poles it must be below {most:g}, where full register lies</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>e_gap_deg vaut {e_gap:g} ; avec {poles} pôles, ce doit être moins de {most:g}, où est le plein alignement</translation>
        </message>
        <message>
            <source>contact_screw.range_deg is [{low:g}, {high:g}]; it must contain 0</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>contact_screw.range_deg vaut [{low:g}, {high:g}] ; il doit contenir 0</translation>
        </message>
        <message>
            <source>designed_setting.backplate_deg is {backplate:g}; it must lie in backplate.range_deg, [{low:g}, {high:g}]</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>designed_setting.backplate_deg vaut {backplate:g} ; il doit être dans backplate.range_deg, [{low:g}, {high:g}]</translation>
        </message>
        <message>
            <source>breaker.pivot_distance_mm is {distance:g}; the pivot must stand outside the lobe's top, {top:g} mm from the cam's centre</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>breaker.pivot_distance_mm vaut {distance:g} ; le pivot doit être hors du sommet du bossage, à {top:g} mm du centre de la came</translation>
        </message>
        <message>
            <source>designed_setting.gap_mm is {gap:g}; it must be below the contact lift at the top of the lobe, {top_lift:.4g} mm</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>designed_setting.gap_mm vaut {gap:g} ; il doit être inférieur à la levée des contacts au sommet du bossage, {top_lift:.4g} mm</translation>
        </message>
        <message>
            <source>angle_deg goes from {before:g} to {after:g}; it must increase</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>angle_deg va de {before:g} à {after:g} ; il doit croître</translation>
        </message>
        <message>
            <source>lobe_peaks_deg goes from {before:g} to {after:g}; it must increase</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>lobe_peaks_deg va de {before:g} à {after:g} ; il doit croître</translation>
        </message>
        <message>
            <source>condition.heel_wear_mm needs breaker.heel_arm_mm, to know what wear does</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>condition.heel_wear_mm demande breaker.heel_arm_mm, pour savoir l'effet de l'usure</translation>
        </message>
        <message>
            <source>breaker.{field} is missing; only a measured profile can do without it</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>breaker.{field} manque ; seul un profil mesuré peut s'en passer</translation>
        </message>
        <message>
            <source>breaker.heel_arm_mm is {arm:g}; with it the heel reaches from {near:g} to {far:g} mm of the cam's centre, and must reach {radius:g} mm</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>breaker.heel_arm_mm vaut {arm:g} ; avec lui, le toucheau va de {near:g} à {far:g} mm du centre de la came, et doit atteindre {radius:g} mm</translation>
        </message>
        <message>
            <source>condition.{field} has {count} values; it must have one for each of the {lobes} lobes</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>condition.{field} a {count} valeurs ; il en faut une pour chacun des {lobes} bossages</translation>
        </message>
        <message>
            <source>condition.lobe_lift_error_mm takes {error:g} mm off lobe {lobe}, which has only {top_lift:.4g} mm of contact lift</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>condition.lobe_lift_error_mm ôte {error:g} mm au bossage {lobe}, qui n'a que {top_lift:.4g} mm de levée des contacts</translation>
        </message>
        <message>
            <source>condition.lobe_angle_error_deg: {overlap}</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>condition.lobe_angle_error_deg : {overlap}</translation>
        </message>
        <message>
            <source>sources[{i}].field is “{field}”; it must be the name of a field of this file, such as “{such}”</source>
            <extracomment>spec/sources.py</extracomment>
            <translation>sources[{i}].field est « {field} » ; ce doit être le nom d'un champ de ce fichier, par exemple « {such} »</translation>
        </message>
        <message>
            <source>sources[{i}].field is “{field}”, which has a source already; give it one</source>
            <extracomment>spec/sources.py</extracomment>
            <translation>sources[{i}].field est « {field} », qui a déjà une source ; en donner une seule</translation>
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
            <translation>« {unit} » n'est pas une unité de longueur : utiliser {known}</translation>
        </message>
        <message>
            <source>“{text}” is not an angle: write a number and a unit, such as 1.5°</source>
            <extracomment>spec/units.py</extracomment>
            <translation>« {text} » n'est pas un angle : écrire un nombre et une unité, par exemple 1.5°</translation>
        </message>
        <message>
            <source>“{text}” has no unit: write one, such as 1.5°</source>
            <extracomment>spec/units.py</extracomment>
            <translation>« {text} » n'a pas d'unité : en écrire une, par exemple 1.5°</translation>
        </message>
        <message>
            <source>“{unit}” is not a unit of angle: use {known}</source>
            <extracomment>spec/units.py</extracomment>
            <translation>« {unit} » n'est pas une unité d'angle : utiliser {known}</translation>
        </message>
        <message>
            <source>“{text}” has a minus and a side of top dead centre: write one or the other</source>
            <extracomment>spec/units.py</extracomment>
            <translation>« {text} » a un moins et un côté du point mort haut : écrire l'un ou l'autre</translation>
        </message>
        <message>
            <source>{length} in</source>
            <extracomment>spec/units.py</extracomment>
            <translation>{length} in</translation>
        </message>
        <message>
            <source>“{text}” is too large</source>
            <extracomment>spec/units.py</extracomment>
            <translation>« {text} » est trop grand</translation>
        </message>
        <message>
            <source>BTDC</source>
            <extracomment>spec/units.py</extracomment>
            <translation>avant PMH</translation>
        </message>
        <message>
            <source>ATDC</source>
            <extracomment>spec/units.py</extracomment>
            <translation>après PMH</translation>
        </message>
        <message>
            <source>“{text}” is not a number: write one such as {example}</source>
            <extracomment>spec/units.py</extracomment>
            <translation>« {text} » n'est pas un nombre : en écrire un comme {example}</translation>
        </message>
        <message>
            <source>The program had not been closed as it should; the bench is as you left it.</source>
            <extracomment>ui/app.py</extracomment>
            <translation>Le programme n'avait pas été fermé normalement ; le banc est tel que vous l'avez laissé.</translation>
        </message>
        <message>
            <source>Your work is not kept for after a crash: {reason}</source>
            <extracomment>ui/app.py</extracomment>
            <translation>Votre travail n'est pas conservé en cas de plantage : {reason}</translation>
        </message>
        <message>
            <source>Drafts of a magneto of your own wait for you: File, A magneto of your own…</source>
            <extracomment>ui/app.py</extracomment>
            <translation>Des brouillons d'une magnéto à vous vous attendent : Fichier, Une magnéto à soi…</translation>
        </message>
        <message>
            <source>SVG (*.svg);;PDF (*.pdf);;PNG (*.png)</source>
            <extracomment>ui/asking.py</extracomment>
            <translation>SVG (*.svg);;PDF (*.pdf);;PNG (*.png)</translation>
        </message>
        <message>
            <source>Save the picture</source>
            <extracomment>ui/asking.py</extracomment>
            <translation>Enregistrer l'image</translation>
        </message>
        <message>
            <source>In hand: {part}.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>En main : {part}.</translation>
        </message>
        <message>
            <source>Rotor and pole shoes are diagrammatic; cam, arm, contacts and marks are to scale.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Rotor et pièces polaires sont schématiques ; came, levier, contacts et repères sont à l'échelle.</translation>
        </message>
        <message>
            <source>Breaker end of the magneto</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Côté rupteur de la magnéto</translation>
        </message>
        <message>
            <source>Seen from the drive end, through the magneto, rotation {way}.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Vu côté entraînement, à travers la magnéto, rotation {way}.</translation>
        </message>
        <message>
            <source>Seen from the breaker end, rotation {way}.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Vu côté rupteur, rotation {way}.</translation>
        </message>
        <message>
            <source>Rotor {rotor} past neutral, held; backplate {backplate}, contact screw {screw}; {contacts}.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Rotor {rotor} après le neutre, tenu ; plateau {backplate}, vis de contact {screw} ; {contacts}.</translation>
        </message>
        <message>
            <source>Rotor {rotor} past neutral, let go; backplate {backplate}, contact screw {screw}; {contacts}.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Rotor {rotor} après le neutre, lâché ; plateau {backplate}, vis de contact {screw} ; {contacts}.</translation>
        </message>
        <message>
            <source>The gap is drawn {factor} times its size, the arm lifted with it off the cam.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>L'écartement est dessiné {factor} fois sa taille, le levier levé avec lui hors de la came.</translation>
        </message>
        <message>
            <source>Arm and heel in plain proportions: this magneto's file gives only the measured lift.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Levier et toucheau en proportions simples : le fichier de cette magnéto ne donne que la levée mesurée.</translation>
        </message>
        <message>
            <source>Cam on the distributor shaft, {ratio} turn a rotor turn; drawn on the rotor's axis.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Came sur l'arbre du distributeur, {ratio} tour par tour de rotor ; dessinée sur l'axe du rotor.</translation>
        </message>
        <message>
            <source>contacts closed</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>contacts fermés</translation>
        </message>
        <message>
            <source>contacts open {gap}</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>contacts ouverts {gap}</translation>
        </message>
        <message>
            <source>Seen through from the drive end</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Vu à travers, côté entraînement</translation>
        </message>
        <message>
            <source>gap drawn {factor}×</source>
            <extracomment>ui/breaker_view.py, ui/contact_view.py</extracomment>
            <translation>écartement dessiné {factor}×</translation>
        </message>
        <message>
            <source>at: {place}</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>à : {place}</translation>
        </message>
        <message>
            <source>rotor let go, but the engine holds it</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>rotor lâché, mais le moteur le tient</translation>
        </message>
        <message>
            <source>rotor free</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>rotor libre</translation>
        </message>
        <message>
            <source>what is there ({part}) stays: drag the rotor, the backplate or the contact screw</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>ce qui est là ({part}) ne bouge pas : faire glisser le rotor, le plateau ou la vis de contact</translation>
        </message>
        <message>
            <source>Rotor held.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Rotor tenu.</translation>
        </message>
        <message>
            <source>Rotor let go.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Rotor lâché.</translation>
        </message>
        <message>
            <source>Kept on this machine, and tried again every {seconds} seconds: {why}</source>
            <extracomment>ui/class_delivery.py</extracomment>
            <translation>Conservée sur cette machine, et retentée toutes les {seconds} secondes : {why}</translation>
        </message>
        <message>
            <source>Handed in: {file} stands in {folder}.</source>
            <extracomment>ui/class_delivery.py</extracomment>
            <translation>Remise : {file} est dans {folder}.</translation>
        </message>
        <message>
            <source>Exercises of the class</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Exercices de la classe</translation>
        </message>
        <message>
            <source>&amp;Begin</source>
            <extracomment>ui/class_desk.py, ui/practice_choice.py</extracomment>
            <translation>Co&amp;mmencer</translation>
        </message>
        <message>
            <source>Hand in a &amp;saved attempt…</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Remettre une tentative &amp;enregistrée…</translation>
        </message>
        <message>
            <source>&amp;Try again now</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Réessa&amp;yer maintenant</translation>
        </message>
        <message>
            <source>Deliver to &amp;another folder…</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Livrer dans un &amp;autre dossier…</translation>
        </message>
        <message>
            <source>as the instructor gives it; capitals and hyphens do not matter</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>tel que l'instructeur le donne ; majuscules et tirets n'importent pas</translation>
        </message>
        <message>
            <source>Name or number</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Nom ou numéro</translation>
        </message>
        <message>
            <source>the folder the whole class hands in to</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>le dossier où remet toute la classe</translation>
        </message>
        <message>
            <source>&amp;Code</source>
            <extracomment>ui/class_desk.py, ui/class_paper_dialog.py, ui/practice_choice.py</extracomment>
            <translation>&amp;Code</translation>
        </message>
        <message>
            <source>&amp;Name or number</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>&amp;Nom ou numéro</translation>
        </message>
        <message>
            <source>&amp;Hand in to</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>&amp;Remettre à</translation>
        </message>
        <message>
            <source>Open a class's file</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Ouvrir le fichier d'une classe</translation>
        </message>
        <message>
            <source>Class sets (*.json);;All files (*)</source>
            <extracomment>ui/class_desk.py, ui/class_gather.py, ui/class_maker.py</extracomment>
            <translation>Séries de classe (*.json);;Tous les fichiers (*)</translation>
        </message>
        <message>
            <source>{number}. {name} (about {minutes} minutes)</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>{number}. {name} (environ {minutes} minutes)</translation>
        </message>
        <message>
            <source>under way</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>en cours</translation>
        </message>
        <message>
            <source>Hand in a saved attempt</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Remettre une tentative enregistrée</translation>
        </message>
        <message>
            <source>{count} delivered.</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>{count} livrées.</translation>
        </message>
        <message>
            <source>Hand in to</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Remettre à</translation>
        </message>
        <message>
            <source>Deliver to another folder</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Livrer dans un autre dossier</translation>
        </message>
        <message>
            <source>How it stands</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>État</translation>
        </message>
        <message>
            <source>&amp;Open file…</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>&amp;Ouvrir un fichier…</translation>
        </message>
        <message>
            <source>Choose &amp;folder…</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Choisir un &amp;dossier…</translation>
        </message>
        <message>
            <source>Type the class's code, or open its file; then your name, and begin.</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Saisissez le code de la classe, ou ouvrez son fichier ; puis votre nom, et commencez.</translation>
        </message>
        <message>
            <source>Everyone has a fault of their own: it hangs on the name as you type it.</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Chacun a son propre défaut : il dépend du nom tel que saisi.</translation>
        </message>
        <message>
            <source>Everyone has the same fault.</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Tous ont le même défaut.</translation>
        </message>
        <message>
            <source>Hints are not given.</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Les indices ne sont pas donnés.</translation>
        </message>
        <message>
            <source>not begun</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>non commencé</translation>
        </message>
        <message>
            <source>Type your name or number first: the attempt is handed in under it</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Saisissez d'abord votre nom ou numéro : la tentative est remise sous ce nom</translation>
        </message>
        <message>
            <source>Choose the folder to hand in to first; your instructor knows it</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Choisissez d'abord le dossier de remise ; votre instructeur le connaît</translation>
        </message>
        <message>
            <source>{count} attempts wait on this machine to be delivered.</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>{count} tentatives attendent sur cette machine d'être livrées.</translation>
        </message>
        <message>
            <source>Type the class's code first</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Saisissez d'abord le code de la classe</translation>
        </message>
        <message>
            <source>{count} still wait: {why}</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>{count} attendent encore : {why}</translation>
        </message>
        <message>
            <source>closed without handing in</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>fermée sans être remise</translation>
        </message>
        <message>
            <source>Exercises (*.json);;All files (*)</source>
            <extracomment>ui/class_editor.py, ui/class_maker.py</extracomment>
            <translation>Exercices (*.json);;Tous les fichiers (*)</translation>
        </message>
        <message>
            <source>Exercise editor</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Éditeur d'exercice</translation>
        </message>
        <message>
            <source>Whether the exercise is valid</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Validité de l'exercice</translation>
        </message>
        <message>
            <source>&amp;Preview of seed</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>A&amp;perçu de la graine</translation>
        </message>
        <message>
            <source>Preview</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Aperçu</translation>
        </message>
        <message>
            <source>Begin from a shipped exercise</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Partir d'un exercice fourni</translation>
        </message>
        <message>
            <source>Begin from a shipped one…</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Partir d'un fourni…</translation>
        </message>
        <message>
            <source>Save &amp;as…</source>
            <extracomment>ui/class_editor.py, ui/job_bars.py, ui/job_menus.py, ui/own_menus.py</extracomment>
            <translation>Enregistrer &amp;sous…</translation>
        </message>
        <message>
            <source>Into the class's &amp;set</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Dans &amp;la série de la classe</translation>
        </message>
        <message>
            <source>Tr&amp;y it</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>L'essa&amp;yer</translation>
        </message>
        <message>
            <source>Open an exercise</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Ouvrir un exercice</translation>
        </message>
        <message>
            <source>Magneto or installation</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Magnéto ou installation</translation>
        </message>
        <message>
            <source>JSON (*.json);;All files (*)</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>JSON (*.json);;Tous les fichiers (*)</translation>
        </message>
        <message>
            <source>Save the exercise</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Enregistrer l'exercice</translation>
        </message>
        <message>
            <source>Saved {file}.</source>
            <extracomment>ui/class_editor.py, ui/class_gather.py, ui/class_maker.py, ui/class_plots.py, ui/own_files_work.py, ui/report_dialog.py</extracomment>
            <translation>Enregistré {file}.</translation>
        </message>
        <message>
            <source>This exercise has not been saved.</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Cet exercice n'a pas été enregistré.</translation>
        </message>
        <message>
            <source>&amp;Open…</source>
            <extracomment>ui/class_editor.py, ui/class_gather.py</extracomment>
            <translation>&amp;Ouvrir…</translation>
        </message>
        <message>
            <source>this exercise</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>cet exercice</translation>
        </message>
        <message>
            <source>An exercise that is not valid yet is not saved</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Un exercice pas encore valide ne s'enregistre pas</translation>
        </message>
        <message>
            <source>&amp;Save…</source>
            <extracomment>ui/class_editor.py, ui/practice_window.py</extracomment>
            <translation>&amp;Enregistrer…</translation>
        </message>
        <message>
            <source>Go on &amp;without saving</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Continuer &amp;sans enregistrer</translation>
        </message>
        <message>
            <source>&amp;Back to the editor</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Reto&amp;ur à l'éditeur</translation>
        </message>
        <message>
            <source>Not valid yet: {why}.</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Pas encore valide : {why}.</translation>
        </message>
        <message>
            <source>Valid. {advice}</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Valide. {advice}</translation>
        </message>
        <message>
            <source>Valid.</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Valide.</translation>
        </message>
        <message>
            <source>&amp;Add a fault</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>&amp;Ajouter un défaut</translation>
        </message>
        <message>
            <source>A&amp;dd a goal</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>A&amp;jouter un objectif</translation>
        </message>
        <message>
            <source>&amp;Name</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>&amp;Nom</translation>
        </message>
        <message>
            <source>&amp;Level, 1 to 5</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>Ni&amp;veau, 1 à 5</translation>
        </message>
        <message>
            <source>M&amp;inutes, a guide</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>M&amp;inutes, indicatif</translation>
        </message>
        <message>
            <source>Marks &amp;needed</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>Note exi&amp;gée</translation>
        </message>
        <message>
            <source>&amp;Story: what is told of the case</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>&amp;Histoire : ce qui est dit du cas</translation>
        </message>
        <message>
            <source>Tas&amp;k: what is to be done</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>&amp;Tâche : ce qui est à faire</translation>
        </message>
        <message>
            <source>&amp;Hints, one a line</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>Indi&amp;ces, un par ligne</translation>
        </message>
        <message>
            <source>Magneto, alone or on its engine</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>Magnéto, seule ou sur son moteur</translation>
        </message>
        <message>
            <source>From a fil&amp;e…</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>D'un fic&amp;hier…</translation>
        </message>
        <message>
            <source>Magnet&amp;o</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>Magnét&amp;o</translation>
        </message>
        <message>
            <source>&amp;Both magnetos of the engine</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>Les &amp;deux magnétos du moteur</translation>
        </message>
        <message>
            <source>&amp;Rotor, off the engine</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>&amp;Rotor, hors du moteur</translation>
        </message>
        <message>
            <source>As it is found</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>Tel que trouvé</translation>
        </message>
        <message>
            <source>screws slack</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>vis desserrées</translation>
        </message>
        <message>
            <source>switch lead proved</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>fil de masse prouvé</translation>
        </message>
        <message>
            <source>disc at zero</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>disque à zéro</translation>
        </message>
        <message>
            <source>On the tray</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>Dans le bac</translation>
        </message>
        <message>
            <source>Crank disc, read to</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>Disque du vilebrequin, lu à</translation>
        </message>
        <message>
            <source>{magneto}, on {engine} ({position})</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>{magneto}, sur {engine} ({position})</translation>
        </message>
        <message>
            <source>&amp;Text</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>Te&amp;xte</translation>
        </message>
        <message>
            <source>&amp;Magneto and tray</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>&amp;Magnéto et bac</translation>
        </message>
        <message>
            <source>&amp;Faults</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>Dé&amp;fauts</translation>
        </message>
        <message>
            <source>&amp;Goals</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>O&amp;bjectifs</translation>
        </message>
        <message>
            <source>blades in inches</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>jauges en pouces</translation>
        </message>
        <message>
            <source>metric blades</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>jauges métriques</translation>
        </message>
        <message>
            <source>piston stop</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>butée de piston</translation>
        </message>
        <message>
            <source>meter for the switch lead</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>ohmmètre pour le fil de masse</translation>
        </message>
        <message>
            <source>at neutral</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>au neutre</translation>
        </message>
        <message>
            <source>anywhere</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>n'importe où</translation>
        </message>
        <message>
            <source>at the E-gap</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>à l'E-gap</translation>
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
            <translation>dents</translation>
        </message>
        <message>
            <source>steps</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>pas</translation>
        </message>
        <message>
            <source>crank °</source>
            <extracomment>ui/class_editor_rows.py, ui/job_kinds.py</extracomment>
            <translation>° vilebrequin</translation>
        </message>
        <message>
            <source>late</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>en retard</translation>
        </message>
        <message>
            <source>early</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>en avance</translation>
        </message>
        <message>
            <source>too wide</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>trop grand</translation>
        </message>
        <message>
            <source>too narrow</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>trop petit</translation>
        </message>
        <message>
            <source>with cam rotation</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>dans le sens de la came</translation>
        </message>
        <message>
            <source>against cam rotation</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>en sens inverse de la came</translation>
        </message>
        <message>
            <source>closer</source>
            <extracomment>ui/class_editor_rows.py, ui/practice_work.py</extracomment>
            <translation>rapprocher</translation>
        </message>
        <message>
            <source>wider</source>
            <extracomment>ui/class_editor_rows.py, ui/practice_work.py</extracomment>
            <translation>écarter</translation>
        </message>
        <message>
            <source>plus</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>plus</translation>
        </message>
        <message>
            <source>minus</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>moins</translation>
        </message>
        <message>
            <source>Remove this row</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>Retirer cette ligne</translation>
        </message>
        <message>
            <source>each magneto</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>chaque magnéto</translation>
        </message>
        <message>
            <source>On which magneto</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>Sur quelle magnéto</translation>
        </message>
        <message>
            <source>Size from</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>Taille de</translation>
        </message>
        <message>
            <source>Size to</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>Taille à</translation>
        </message>
        <message>
            <source>Which way</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>Dans quel sens</translation>
        </message>
        <message>
            <source>any lobe</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>tout bossage</translation>
        </message>
        <message>
            <source>lobe </source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>bossage </translation>
        </message>
        <message>
            <source>Which lobe</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>Quel bossage</translation>
        </message>
        <message>
            <source>How likely it is there [%]</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>Probabilité de sa présence [%]</translation>
        </message>
        <message>
            <source>What counts</source>
            <extracomment>ui/class_editor_rows.py, ui/practice_task.py</extracomment>
            <translation>Ce qui compte</translation>
        </message>
        <message>
            <source>Weight among the marks</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>Poids dans la note</translation>
        </message>
        <message>
            <source>on every lobe</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>à chaque bossage</translation>
        </message>
        <message>
            <source>How near to the truth it must be</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>À quel point ce doit être vrai</translation>
        </message>
        <message>
            <source>% likely</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>% probable</translation>
        </message>
        <message>
            <source>Size to, at most {most} {unit}</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>Taille à, au plus {most} {unit}</translation>
        </message>
        <message>
            <source>weight</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>poids</translation>
        </message>
        <message>
            <source>{unit} allowed</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>{unit} permis</translation>
        </message>
        <message>
            <source>either</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>l'une ou l'autre</translation>
        </message>
        <message>
            <source>Marks, dangers, and faults found and missed are worked out here from the acts in each file. Names and times are believed as the pupils' machines wrote them.</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Notes, dangers et défauts trouvés ou manqués sont établis ici d'après les gestes de chaque fichier. Les noms et les heures sont crus tels que les machines des élèves les ont écrits.</translation>
        </message>
        <message>
            <source>Class gathered</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Classe réunie</translation>
        </message>
        <message>
            <source>the folder the class hands in to</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>le dossier où la classe remet</translation>
        </message>
        <message>
            <source>Progress</source>
            <extracomment>ui/class_gather.py, ui/job_bars.py</extracomment>
            <translation>Progression</translation>
        </message>
        <message>
            <source>&amp;Folder</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>&amp;Dossier</translation>
        </message>
        <message>
            <source>Se&amp;t</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Sér&amp;ie</translation>
        </message>
        <message>
            <source>Steps</source>
            <extracomment>ui/class_gather.py, ui/lesson_view.py</extracomment>
            <translation>Étapes</translation>
        </message>
        <message>
            <source>P&amp;lots</source>
            <extracomment>ui/class_gather.py, ui/menus.py</extracomment>
            <translation>&amp;Graphiques</translation>
        </message>
        <message>
            <source>&amp;Replay</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Re&amp;jouer</translation>
        </message>
        <message>
            <source>The debrief of the attempt that is chosen, with its replay</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Le bilan de la tentative choisie, avec sa relecture</translation>
        </message>
        <message>
            <source>Save as CS&amp;V…</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Enregistrer en CS&amp;V…</translation>
        </message>
        <message>
            <source>Cancelled. What was marked so far is kept for the next time.</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Annulé. Ce qui a été noté jusqu'ici est gardé pour la prochaine fois.</translation>
        </message>
        <message>
            <source>{pupil}, {exercise}: {percent} % in {minutes} minutes. Replay shows how.</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>{pupil}, {exercise} : {percent} % en {minutes} minutes. Rejouer montre comment.</translation>
        </message>
        <message>
            <source>The class's folder</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Dossier de la classe</translation>
        </message>
        <message>
            <source>Open a set</source>
            <extracomment>ui/class_gather.py, ui/class_maker.py</extracomment>
            <translation>Ouvrir une série</translation>
        </message>
        <message>
            <source>Save the attempts</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Enregistrer les tentatives</translation>
        </message>
        <message>
            <source>Tables (*.csv)</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Tables (*.csv)</translation>
        </message>
        <message>
            <source>the set made in this session</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>la série faite dans cette session</translation>
        </message>
        <message>
            <source>a code, or a set's file; may be left out</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>un code, ou le fichier d'une série ; facultatif</translation>
        </message>
        <message>
            <source>&amp;Gather</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Réuni&amp;r</translation>
        </message>
        <message>
            <source>C&amp;ancel</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>&amp;Annuler</translation>
        </message>
        <message>
            <source>&amp;Pupils</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>É&amp;lèves</translation>
        </message>
        <message>
            <source>Atte&amp;mpts</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>&amp;Tentatives</translation>
        </message>
        <message>
            <source>&amp;Steps</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Éta&amp;pes</translation>
        </message>
        <message>
            <source>&amp;What goes wrong</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>&amp;Ce qui échoue</translation>
        </message>
        <message>
            <source>Choose the folder the class hands in to first</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Choisissez d'abord le dossier où la classe remet</translation>
        </message>
        <message>
            <source>{count} were passed over; the table of attempts says why.</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>{count} ont été ignorées ; la table des tentatives dit pourquoi.</translation>
        </message>
        <message>
            <source>Nothing from: {names}.</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Rien de : {names}.</translation>
        </message>
        <message>
            <source>Choose an attempt first</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Choisissez d'abord une tentative</translation>
        </message>
        <message>
            <source>&amp;Choose…</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>C&amp;hoisir…</translation>
        </message>
        <message>
            <source>there is nothing to replay</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>il n'y a rien à rejouer</translation>
        </message>
        <message>
            <source>Text (*.txt);;Table (*.csv)</source>
            <extracomment>ui/class_maker.py, ui/practice_window.py</extracomment>
            <translation>Texte (*.txt);;Table (*.csv)</translation>
        </message>
        <message>
            <source>Class set</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Série de classe</translation>
        </message>
        <message>
            <source>&amp;Set</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>&amp;Série</translation>
        </message>
        <message>
            <source>Answer &amp;key</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>&amp;Corrigé</translation>
        </message>
        <message>
            <source>Class code</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Code de classe</translation>
        </message>
        <message>
            <source>Co&amp;py</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Co&amp;pier</translation>
        </message>
        <message>
            <source>&amp;Gather…</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Ré&amp;unir…</translation>
        </message>
        <message>
            <source>Exercise from a file</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Exercice d'un fichier</translation>
        </message>
        <message>
            <source>this set</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>cette série</translation>
        </message>
        <message>
            <source>Title and pupils are not in the code; they travel in the set's file.</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Titre et élèves ne sont pas dans le code ; ils voyagent dans le fichier de la série.</translation>
        </message>
        <message>
            <source>The key is being made…</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Le corrigé est en préparation…</translation>
        </message>
        <message>
            <source>The code is on the clipboard.</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Le code est dans le presse-papiers.</translation>
        </message>
        <message>
            <source>Save the set</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Enregistrer la série</translation>
        </message>
        <message>
            <source>Class sets (*.json)</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Séries de classe (*.json)</translation>
        </message>
        <message>
            <source>Save the answer key</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Enregistrer le corrigé</translation>
        </message>
        <message>
            <source>Save set &amp;as…</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Enregistrer la s&amp;érie sous…</translation>
        </message>
        <message>
            <source>&amp;Open set…</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>&amp;Ouvrir une série…</translation>
        </message>
        <message>
            <source>For the instructor: it tells every hidden fault.</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Pour l'instructeur : il dit chaque défaut caché.</translation>
        </message>
        <message>
            <source>Save &amp;key…</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Enregistrer le &amp;corrigé…</translation>
        </message>
        <message>
            <source>There is no set yet.</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Il n'y a pas encore de série.</translation>
        </message>
        <message>
            <source>Exercises there are</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>Exercices disponibles</translation>
        </message>
        <message>
            <source>Exercises of the set, in order</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>Exercices de la série, dans l'ordre</translation>
        </message>
        <message>
            <source>A&amp;dd ▶</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>A&amp;jouter ▶</translation>
        </message>
        <message>
            <source>From a &amp;file…</source>
            <extracomment>ui/class_maker_fields.py, ui/class_paper_dialog.py, ui/practice_choice.py</extracomment>
            <translation>D'un &amp;fichier…</translation>
        </message>
        <message>
            <source>&amp;Write one…</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>En é&amp;crire un…</translation>
        </message>
        <message>
            <source>&amp;Remove</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>&amp;Retirer</translation>
        </message>
        <message>
            <source>Settings</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>Réglages</translation>
        </message>
        <message>
            <source>&amp;Hints may be asked for</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>Les &amp;indices peuvent être demandés</translation>
        </message>
        <message>
            <source>A straightedge of this unit, and blades of it beside the exercise's own</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>Un réglet de cette unité, et des jauges de celle-ci en plus de celles de l'exercice</translation>
        </message>
        <message>
            <source>as the exercise says</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>comme le dit l'exercice</translation>
        </message>
        <message>
            <source>Shown to the pupils as a guide; time is not marked</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>Montré aux élèves à titre indicatif ; le temps n'est pas noté</translation>
        </message>
        <message>
            <source>The same number draws the same faults</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>Le même nombre tire les mêmes défauts</translation>
        </message>
        <message>
            <source>one name or number a line</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>un nom ou numéro par ligne</translation>
        </message>
        <message>
            <source>&amp;Title</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>&amp;Titre</translation>
        </message>
        <message>
            <source>Fau&amp;lts</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>Défau&amp;ts</translation>
        </message>
        <message>
            <source>&amp;Blades, edge</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>Jauges, ré&amp;glet</translation>
        </message>
        <message>
            <source>&amp;Minutes</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>&amp;Minutes</translation>
        </message>
        <message>
            <source>&amp;Number</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>&amp;Nombre</translation>
        </message>
        <message>
            <source>Level {level} · {name}</source>
            <extracomment>ui/class_maker_fields.py, ui/class_paper_dialog.py, ui/practice_choice.py</extracomment>
            <translation>Niveau {level} · {name}</translation>
        </message>
        <message>
            <source>&amp;Up</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>&amp;Monter</translation>
        </message>
        <message>
            <source>Do&amp;wn</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>&amp;Descendre</translation>
        </message>
        <message>
            <source>&amp;Exercises</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>&amp;Exercices</translation>
        </message>
        <message>
            <source>&amp;In this set, in order</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>&amp;Dans cette série, dans l'ordre</translation>
        </message>
        <message>
            <source>the same for everyone</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>les mêmes pour tous</translation>
        </message>
        <message>
            <source>one of their own for each pupil</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>un propre à chaque élève</translation>
        </message>
        <message>
            <source>as the exercise has them</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>comme l'exercice les a</translation>
        </message>
        <message>
            <source>metric, too</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>métriques aussi</translation>
        </message>
        <message>
            <source>in inches, too</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>en pouces aussi</translation>
        </message>
        <message>
            <source>Pu&amp;pils (not in the code; for the key, and to see who is missing)</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>É&amp;lèves (pas dans le code ; pour le corrigé, et voir qui manque)</translation>
        </message>
        <message>
            <source>Draw ane&amp;w</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>Tirer de nou&amp;veau</translation>
        </message>
        <message>
            <source>Add an exercise: a set has one at least</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>Ajoutez un exercice : une série en a au moins un</translation>
        </message>
        <message>
            <source>Worksheet of an exercise</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Fiche d'un exercice</translation>
        </message>
        <message>
            <source>Answer key of an exercise</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Corrigé d'un exercice</translation>
        </message>
        <message>
            <source>Name the parts: sheet</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Nommer les pièces : fiche</translation>
        </message>
        <message>
            <source>Pictures of the bench as it stands</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Images du banc tel qu'il est</translation>
        </message>
        <message>
            <source>Names</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Noms</translation>
        </message>
        <message>
            <source>Numbers, with lines to write on</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Numéros, avec lignes à remplir</translation>
        </message>
        <message>
            <source>Numbers, filled in</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Numéros, remplis</translation>
        </message>
        <message>
            <source>Nothing</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Rien</translation>
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
            <translation>Enregistré {file} : 1 page.</translation>
        </message>
        <message>
            <source>JSON files (*.json);;All files (*)</source>
            <extracomment>ui/class_paper_dialog.py, ui/practice_choice.py</extracomment>
            <translation>Fichiers JSON (*.json);;Tous les fichiers (*)</translation>
        </message>
        <message>
            <source>Paper for a class</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Papier pour une classe</translation>
        </message>
        <message>
            <source>With the exercise's &amp;hints</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Avec les &amp;indices de l'exercice</translation>
        </message>
        <message>
            <source>With pictures whose &amp;parts are to be named</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Avec des images dont les &amp;pièces sont à nommer</translation>
        </message>
        <message>
            <source>With what there is to sa&amp;y of each part</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Avec ce qu'il y a à &amp;dire de chaque pièce</translation>
        </message>
        <message>
            <source>&amp;What</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>&amp;Quoi</translation>
        </message>
        <message>
            <source>&amp;Exercise</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>&amp;Exercice</translation>
        </message>
        <message>
            <source>Beside the &amp;parts</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>&amp;Près des pièces</translation>
        </message>
        <message>
            <source>Paper si&amp;ze</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>&amp;Format de papier</translation>
        </message>
        <message>
            <source>&amp;Save as PDF…</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Enregi&amp;strer en PDF…</translation>
        </message>
        <message>
            <source>Close</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Fermer</translation>
        </message>
        <message>
            <source>PDF (*.pdf)</source>
            <extracomment>ui/class_paper_dialog.py, ui/doors.py, ui/job_reports.py</extracomment>
            <translation>PDF (*.pdf)</translation>
        </message>
        <message>
            <source>A code is a whole number, such as 4711.</source>
            <extracomment>ui/class_paper_dialog.py, ui/practice_choice.py</extracomment>
            <translation>Un code est un nombre entier, par exemple 4711.</translation>
        </message>
        <message>
            <source>Saved {file}: {pages} pages.</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Enregistré {file} : {pages} pages.</translation>
        </message>
        <message>
            <source>Pictures</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Images</translation>
        </message>
        <message>
            <source>Choose at least one picture.</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Choisissez au moins une image.</translation>
        </message>
        <message>
            <source>Plots of the class</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>Graphiques de la classe</translation>
        </message>
        <message>
            <source>Save plots…</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>Enregistrer les graphiques…</translation>
        </message>
        <message>
            <source>{count} attempts of {pupils} pupils count; {passed} passed. ● passed, × not passed.</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>{count} tentatives de {pupils} élèves comptent ; {passed} réussies. ● réussi, × non réussi.</translation>
        </message>
        <message>
            <source>marks [%]</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>note [%]</translation>
        </message>
        <message>
            <source>attempts</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>tentatives</translation>
        </message>
        <message>
            <source>minutes, by the pupils' clocks</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>minutes, aux horloges des élèves</translation>
        </message>
        <message>
            <source>Marks against time</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>Note selon le temps</translation>
        </message>
        <message>
            <source>mean marks [%]</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>note moyenne [%]</translation>
        </message>
        <message>
            <source>Steps, the weakest above</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>Étapes, les plus faibles en haut</translation>
        </message>
        <message>
            <source>missed (hatched), then found</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>manqués (hachurés), puis trouvés</translation>
        </message>
        <message>
            <source>Faults</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>Défauts</translation>
        </message>
        <message>
            <source>Save the plots</source>
            <extracomment>ui/class_plots.py, ui/plot_sheet.py</extracomment>
            <translation>Enregistrer les graphiques</translation>
        </message>
        <message>
            <source>Contacts, magnified</source>
            <extracomment>ui/contact_view.py</extracomment>
            <translation>Contacts, agrandis</translation>
        </message>
        <message>
            <source>Contacts closed.</source>
            <extracomment>ui/contact_view.py</extracomment>
            <translation>Contacts fermés.</translation>
        </message>
        <message>
            <source>Contacts open {gap}.</source>
            <extracomment>ui/contact_view.py</extracomment>
            <translation>Contacts ouverts {gap}.</translation>
        </message>
        <message>
            <source>Contacts open {gap}</source>
            <extracomment>ui/contact_view.py</extracomment>
            <translation>Contacts ouverts {gap}</translation>
        </message>
        <message>
            <source>breaker end, magnified</source>
            <extracomment>ui/contact_view.py</extracomment>
            <translation>côté rupteur, agrandi</translation>
        </message>
        <message>
            <source>No measure in practice: try blades.</source>
            <extracomment>ui/contact_view.py</extracomment>
            <translation>Pas de mesure en exercice : essayer les jauges.</translation>
        </message>
        <message>
            <source>Contacts</source>
            <extracomment>ui/contact_view.py, ui/practice_work.py</extracomment>
            <translation>Contacts</translation>
        </message>
        <message>
            <source>on its intake stroke</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>en temps d'admission</translation>
        </message>
        <message>
            <source>on its compression stroke</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>en temps de compression</translation>
        </message>
        <message>
            <source>on its power stroke</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>en temps de détente</translation>
        </message>
        <message>
            <source>on its exhaust stroke</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>en temps d'échappement</translation>
        </message>
        <message>
            <source>intake stroke</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>temps d'admission</translation>
        </message>
        <message>
            <source>compression stroke</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>temps de compression</translation>
        </message>
        <message>
            <source>power stroke</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>temps de détente</translation>
        </message>
        <message>
            <source>exhaust stroke</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>temps d'échappement</translation>
        </message>
        <message>
            <source>No. 1 {stroke}, {where}, piston {drop} down.</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>N° 1 {stroke}, {where}, piston {drop} plus bas.</translation>
        </message>
        <message>
            <source>No. 1: {stroke}, {where}, piston {drop} down</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>N° 1 : {stroke}, {where}, piston {drop} plus bas</translation>
        </message>
        <message>
            <source>Seen from the propeller end. No. 1 cut open; its stroke is felt at the plug hole.</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>Vu côté hélice. N° 1 en coupe ; son temps se sent au trou de bougie.</translation>
        </message>
        <message>
            <source>{degrees}° before top dead centre</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>{degrees}° avant le point mort haut</translation>
        </message>
        <message>
            <source>{degrees}° after top dead centre</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>{degrees}° après le point mort haut</translation>
        </message>
        <message>
            <source>{degrees}° BTDC</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>{degrees}° avant PMH</translation>
        </message>
        <message>
            <source>{degrees}° ATDC</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>{degrees}° après PMH</translation>
        </message>
        <message>
            <source>No. 1: {stroke}, {where}</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>N° 1 : {stroke}, {where}</translation>
        </message>
        <message>
            <source>No engine</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>Pas de moteur</translation>
        </message>
        <message>
            <source>Approached against rotation, play of {play}° of rotor not taken up</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>Approché en sens inverse de la rotation, jeu de {play}° de rotor non rattrapé</translation>
        </message>
        <message>
            <source>Against rotation: play of {play}° not taken up</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>En sens inverse : jeu de {play}° non rattrapé</translation>
        </message>
        <message>
            <source>No engine.</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>Pas de moteur.</translation>
        </message>
        <message>
            <source>Propeller end</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>Côté hélice</translation>
        </message>
        <message>
            <source>No. 1 cut open. Its stroke is felt at the plug hole.</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>N° 1 en coupe. Son temps se sent au trou de bougie.</translation>
        </message>
        <message>
            <source>rod drawn on the crank pin</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>bielle dessinée sur le maneton</translation>
        </message>
        <message>
            <source>wanted</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>voulu</translation>
        </message>
        <message>
            <source>opens</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>ouvre</translation>
        </message>
        <message>
            <source>Mar&amp;ks</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>&amp;Notes</translation>
        </message>
        <message>
            <source>Tr&amp;uth</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>&amp;Vérité</translation>
        </message>
        <message>
            <source>&amp;Readings</source>
            <extracomment>ui/debrief_view.py, ui/own_pictures.py</extracomment>
            <translation>&amp;Lectures</translation>
        </message>
        <message>
            <source>&amp;Time line</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>Chronolo&amp;gie</translation>
        </message>
        <message>
            <source>P&amp;ath</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>C&amp;hemin</translation>
        </message>
        <message>
            <source>&amp;Play</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>&amp;Jouer</translation>
        </message>
        <message>
            <source>Moment of the attempt</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>Moment de la tentative</translation>
        </message>
        <message>
            <source>Choose a line to see that moment</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>Choisir une ligne pour voir ce moment</translation>
        </message>
        <message>
            <source>&amp;Pause</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>&amp;Pause</translation>
        </message>
        <message>
            <source>lamp {lamp}</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>lampe {lamp}</translation>
        </message>
        <message>
            <source>disc {disc}</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>disque {disc}</translation>
        </message>
        <message>
            <source>{danger} ({times} times)</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>{danger} ({times} fois)</translation>
        </message>
        <message>
            <source>Magneto and installation files (*.json);;All files (*)</source>
            <extracomment>ui/doors.py</extracomment>
            <translation>Fichiers de magnéto et d'installation (*.json);;Tous les fichiers (*)</translation>
        </message>
        <message>
            <source>Tables (*.csv *.tsv *.txt);;All files (*)</source>
            <extracomment>ui/doors.py</extracomment>
            <translation>Tables (*.csv *.tsv *.txt);;Tous les fichiers (*)</translation>
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
            <translation>Imprimer le plan du décalage de dents en PDF</translation>
        </message>
        <message>
            <source>magview {version}: a training and planning aid; the maker's current manual governs.</source>
            <extracomment>ui/doors.py</extracomment>
            <translation>magview {version} : une aide à la formation et à la préparation ; le manuel en vigueur du constructeur fait foi.</translation>
        </message>
        <message>
            <source>Keys and cautions</source>
            <extracomment>ui/doors.py, ui/job_reports.py, ui/practice_menus.py</extracomment>
            <translation>Touches et mises en garde</translation>
        </message>
        <message>
            <source>Open a magneto or an installation</source>
            <extracomment>ui/doors.py</extracomment>
            <translation>Ouvrir une magnéto ou une installation</translation>
        </message>
        <message>
            <source>Open a table of the lift</source>
            <extracomment>ui/doors.py, ui/own_files_work.py</extracomment>
            <translation>Ouvrir une table de la levée</translation>
        </message>
        <message>
            <source>Save the magneto</source>
            <extracomment>ui/doors.py, ui/lift_dialog.py</extracomment>
            <translation>Enregistrer la magnéto</translation>
        </message>
        <message>
            <source>Saved {name}.</source>
            <extracomment>ui/doors.py, ui/lift_dialog.py, ui/plot_sheet.py, ui/practice_window.py</extracomment>
            <translation>Enregistré {name}.</translation>
        </message>
        <message>
            <source>✓ Printed 1 page to {file}.</source>
            <extracomment>ui/doors.py, ui/job_reports.py</extracomment>
            <translation>✓ Imprimé 1 page dans {file}.</translation>
        </message>
        <message>
            <source>✓ Printed {count} pages to {file}.</source>
            <extracomment>ui/doors.py, ui/job_reports.py</extracomment>
            <translation>✓ Imprimé {count} pages dans {file}.</translation>
        </message>
        <message>
            <source>Both faces of the disc: drive flange outside, magneto flange inside.</source>
            <extracomment>ui/drive_view.py</extracomment>
            <translation>Les deux faces du disque : bride d'entraînement à l'extérieur, bride de la magnéto à l'intérieur.</translation>
        </message>
        <message>
            <source>Drive end of the magneto: the toothed coupling</source>
            <extracomment>ui/drive_view.py</extracomment>
            <translation>Côté entraînement de la magnéto : l'accouplement denté</translation>
        </message>
        <message>
            <source>No marks on it.</source>
            <extracomment>ui/drive_view.py</extracomment>
            <translation>Pas de repères dessus.</translation>
        </message>
        <message>
            <source>Drive end</source>
            <extracomment>ui/drive_view.py</extracomment>
            <translation>Côté entraînement</translation>
        </message>
        <message>
            <source>This magneto is not on an engine.</source>
            <extracomment>ui/drive_view.py</extracomment>
            <translation>Cette magnéto n'est pas sur un moteur.</translation>
        </message>
        <message>
            <source>Left magneto, drive end</source>
            <extracomment>ui/drive_view.py</extracomment>
            <translation>Magnéto gauche, côté entraînement</translation>
        </message>
        <message>
            <source>Right magneto, drive end</source>
            <extracomment>ui/drive_view.py</extracomment>
            <translation>Magnéto droite, côté entraînement</translation>
        </message>
        <message>
            <source>This magneto is not on an engine. Open an installation to time it to one.</source>
            <extracomment>ui/drive_view.py, ui/timing_panel.py</extracomment>
            <translation>Cette magnéto n'est pas sur un moteur. Ouvrir une installation pour la caler sur un moteur.</translation>
        </message>
        <message>
            <source>after</source>
            <extracomment>ui/drive_view.py</extracomment>
            <translation>après</translation>
        </message>
        <message>
            <source>{name}: a picture's name must end in {kinds}</source>
            <extracomment>ui/export.py</extracomment>
            <translation>{name} : un nom d'image doit finir par {kinds}</translation>
        </message>
        <message>
            <source>there are no fonts to print with; on Debian or Ubuntu fonts-dejavu-core has some</source>
            <extracomment>ui/export.py</extracomment>
            <translation>il n'y a pas de polices pour imprimer ; sous Debian ou Ubuntu, fonts-dejavu-core en fournit</translation>
        </message>
        <message>
            <source>{name}: cannot be written: {reason}</source>
            <extracomment>ui/export.py</extracomment>
            <translation>{name} : écriture impossible : {reason}</translation>
        </message>
        <message>
            <source>the picture could not be saved</source>
            <extracomment>ui/export.py</extracomment>
            <translation>l'image n'a pu être enregistrée</translation>
        </message>
        <message>
            <source>Find in this page</source>
            <extracomment>ui/guide_find.py</extracomment>
            <translation>Chercher dans cette page</translation>
        </message>
        <message>
            <source>Match &amp;case</source>
            <extracomment>ui/guide_find.py</extracomment>
            <translation>Respecter la &amp;casse</translation>
        </message>
        <message>
            <source>&amp;Previous</source>
            <extracomment>ui/guide_find.py</extracomment>
            <translation>&amp;Précédent</translation>
        </message>
        <message>
            <source>Ne&amp;xt</source>
            <extracomment>ui/guide_find.py</extracomment>
            <translation>&amp;Suivant</translation>
        </message>
        <message>
            <source>C&amp;lose</source>
            <extracomment>ui/guide_find.py</extracomment>
            <translation>&amp;Fermer</translation>
        </message>
        <message>
            <source>From the other end</source>
            <extracomment>ui/guide_find.py</extracomment>
            <translation>Depuis l'autre bout</translation>
        </message>
        <message>
            <source>Not on this page</source>
            <extracomment>ui/guide_find.py</extracomment>
            <translation>Pas sur cette page</translation>
        </message>
        <message>
            <source>Page of the guide</source>
            <extracomment>ui/guide_page.py</extracomment>
            <translation>Page du guide</translation>
        </message>
        <message>
            <source>Guide – magview</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Guide – magview</translation>
        </message>
        <message>
            <source>Search the guide</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Chercher dans le guide</translation>
        </message>
        <message>
            <source>Contents of the guide</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Sommaire du guide</translation>
        </message>
        <message>
            <source>What was found</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Ce qui a été trouvé</translation>
        </message>
        <message>
            <source>Guide</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Guide</translation>
        </message>
        <message>
            <source>◀ Back</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>◀ Retour</translation>
        </message>
        <message>
            <source>Forward ▶</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Suite ▶</translation>
        </message>
        <message>
            <source>Contents</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Sommaire</translation>
        </message>
        <message>
            <source>Search</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Chercher</translation>
        </message>
        <message>
            <source>Find in page</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Chercher dans la page</translation>
        </message>
        <message>
            <source>Smaller</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Plus petit</translation>
        </message>
        <message>
            <source>Larger</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Plus grand</translation>
        </message>
        <message>
            <source>Usual size</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Taille normale</translation>
        </message>
        <message>
            <source>Find next</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Suivant</translation>
        </message>
        <message>
            <source>Find previous</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Précédent</translation>
        </message>
        <message>
            <source>End searching, or close</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Finir la recherche, ou fermer</translation>
        </message>
        <message>
            <source>Close the guide</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Fermer le guide</translation>
        </message>
        <message>
            <source>{page} – guide – magview</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>{page} – guide – magview</translation>
        </message>
        <message>
            <source>{percent} %</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>{percent} %</translation>
        </message>
        <message>
            <source>Nothing found.</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Rien trouvé.</translation>
        </message>
        <message>
            <source>One section found.</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Une section trouvée.</translation>
        </message>
        <message>
            <source>{count} sections found.</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>{count} sections trouvées.</translation>
        </message>
        <message>
            <source>Nothing found. Try fewer words, or the beginning of one.</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Rien trouvé. Essayez moins de mots, ou le début d'un mot.</translation>
        </message>
        <message>
            <source>{text} is outside {low} to {high}: {taken} is taken</source>
            <extracomment>ui/inputs.py</extracomment>
            <translation>{text} est hors de {low} à {high} : {taken} est pris</translation>
        </message>
        <message>
            <source>{angle} before TDC</source>
            <extracomment>ui/inputs.py</extracomment>
            <translation>{angle} avant PMH</translation>
        </message>
        <message>
            <source>{angle} after TDC</source>
            <extracomment>ui/inputs.py</extracomment>
            <translation>{angle} après PMH</translation>
        </message>
        <message>
            <source>{field}: {text} is refused, it must be {low} to {high}; {kept} is kept</source>
            <extracomment>ui/inputs.py</extracomment>
            <translation>{field} : {text} est refusé, il faut de {low} à {high} ; {kept} est gardé</translation>
        </message>
        <message>
            <source>Aircraft, engine, magneto</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>Aéronef, moteur, magnéto</translation>
        </message>
        <message>
            <source>Next check, signature</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>Prochain contrôle, signature</translation>
        </message>
        <message>
            <source>Earlier sheets</source>
            <extracomment>ui/job_bars.py, ui/job_history.py</extracomment>
            <translation>Fiches antérieures</translation>
        </message>
        <message>
            <source>As printed</source>
            <extracomment>ui/job_bars.py, ui/job_preview.py</extracomment>
            <translation>Tel qu'imprimé</translation>
        </message>
        <message>
            <source>→ skipped: {reason}</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>→ sauté : {reason}</translation>
        </message>
        <message>
            <source>○ not begun</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>○ non commencé</translation>
        </message>
        <message>
            <source>✗ begun; out of limits</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✗ commencé ; hors limites</translation>
        </message>
        <message>
            <source>◐ begun; {count} missing</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>◐ commencé ; il manque {count}</translation>
        </message>
        <message>
            <source>◐ nothing missing; not marked done</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>◐ rien ne manque ; non marqué fait</translation>
        </message>
        <message>
            <source>✗ done, but {what}</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✗ fait, mais {what}</translation>
        </message>
        <message>
            <source>△ done; {what}</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>△ fait ; {what}</translation>
        </message>
        <message>
            <source>✓ done</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✓ fait</translation>
        </message>
        <message>
            <source>Stages done or skipped</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>Étapes faites ou sautées</translation>
        </message>
        <message>
            <source>Stages of the job</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>Étapes du travail</translation>
        </message>
        <message>
            <source>○ not signed</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>○ non signé</translation>
        </message>
        <message>
            <source>{come} of {count} stages done or skipped</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>{come} étapes sur {count} faites ou sautées</translation>
        </message>
        <message>
            <source>✓ Nothing is missing.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✓ Rien ne manque.</translation>
        </message>
        <message>
            <source>✓ Done.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✓ Fait.</translation>
        </message>
        <message>
            <source>State of the file</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>État du fichier</translation>
        </message>
        <message>
            <source>&amp;Reload</source>
            <extracomment>ui/job_bars.py, ui/job_window.py</extracomment>
            <translation>&amp;Recharger</translation>
        </message>
        <message>
            <source>✗ Not saved: {sentence}.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✗ Non enregistré : {sentence}.</translation>
        </message>
        <message>
            <source>✓ signed</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✓ signé</translation>
        </message>
        <message>
            <source>✗ changed since signed</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✗ modifié depuis la signature</translation>
        </message>
        <message>
            <source>missing in {count}</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>il manque {count}</translation>
        </message>
        <message>
            <source>Still missing</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>Manque encore</translation>
        </message>
        <message>
            <source>Mark as &amp;done</source>
            <extracomment>ui/job_bars.py, ui/job_menus.py</extracomment>
            <translation>Marquer &amp;fait</translation>
        </message>
        <message>
            <source>S&amp;kip…</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>Sa&amp;uter…</translation>
        </message>
        <message>
            <source>Open a&amp;gain</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>Rou&amp;vrir</translation>
        </message>
        <message>
            <source>Ne&amp;xt page</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>Page suivan&amp;te</translation>
        </message>
        <message>
            <source>✗ {stage} is marked as done, with {what}.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✗ {stage} est marqué comme fait, avec {what}.</translation>
        </message>
        <message>
            <source>✗ Nothing is missing, but {what}.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✗ Rien ne manque, mais {what}.</translation>
        </message>
        <message>
            <source>✗ Done, but {what}.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✗ Fait, mais {what}.</translation>
        </message>
        <message>
            <source>✓ Nothing is missing; {what}.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✓ Rien ne manque ; {what}.</translation>
        </message>
        <message>
            <source>△ Done; {what}.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>△ Fait ; {what}.</translation>
        </message>
        <message>
            <source>&amp;Try again</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>R&amp;éessayer</translation>
        </message>
        <message>
            <source>Read only: {sentence}.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>Lecture seule : {sentence}.</translation>
        </message>
        <message>
            <source>1 reading out</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>1 lecture hors limites</translation>
        </message>
        <message>
            <source>{count} readings out</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>{count} lectures hors limites</translation>
        </message>
        <message>
            <source>✓ Done: {stage}; {what}.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✓ Fait : {stage} ; {what}.</translation>
        </message>
        <message>
            <source>✓ Done: {stage}.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✓ Fait : {stage}.</translation>
        </message>
        <message>
            <source>{file} was changed by another program while it was open here; reload it, or save elsewhere.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>{file} a été modifié par un autre programme pendant qu'il était ouvert ici ; le recharger, ou enregistrer ailleurs.</translation>
        </message>
        <message>
            <source>Still missing: {what}.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>Manque encore : {what}.</translation>
        </message>
        <message>
            <source>at {hours} h: gap {value}, between {low} and {high} 95 times in 100</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>à {hours} h : écartement {value}, entre {low} et {high} 95 fois sur 100</translation>
        </message>
        <message>
            <source>at {hours} h: opening {value}, between {low} and {high} 95 times in 100</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>à {hours} h : ouverture {value}, entre {low} et {high} 95 fois sur 100</translation>
        </message>
        <message>
            <source>at {hours} h: fires {value} before top dead centre, between {low} and {high} 95 times in 100</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>à {hours} h : allume {value} avant le point mort haut, entre {low} et {high} 95 fois sur 100</translation>
        </message>
        <message>
            <source>Drift of gap and timing</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>Dérive de l'écartement et du calage</translation>
        </message>
        <message>
            <source>largest gap [mm]</source>
            <extracomment>ui/job_drift_sheet.py, ui/plot_lift.py, ui/plot_trials.py, ui/plot_wear.py</extracomment>
            <translation>écartement max. [mm]</translation>
        </message>
        <message>
            <source>opens late [rotor deg]</source>
            <extracomment>ui/job_drift_sheet.py, ui/plot_coil.py, ui/plot_lift.py, ui/plot_wear.py</extracomment>
            <translation>retard d'ouverture [° rotor]</translation>
        </message>
        <message>
            <source>fires BTDC [crank deg]</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>allumage avant PMH [° vil.]</translation>
        </message>
        <message>
            <source>largest gap [{unit}]</source>
            <extracomment>ui/job_drift_sheet.py, ui/plot_lift.py, ui/plot_trials.py, ui/plot_wear.py</extracomment>
            <translation>écartement max. [{unit}]</translation>
        </message>
        <message>
            <source>largest gap found [mm]</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>écartement max. trouvé [mm]</translation>
        </message>
        <message>
            <source>largest gap left [mm]</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>écartement max. laissé [mm]</translation>
        </message>
        <message>
            <source>opening found [rotor deg]</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>ouverture trouvée [° rotor]</translation>
        </message>
        <message>
            <source>opening left [rotor deg]</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>ouverture laissée [° rotor]</translation>
        </message>
        <message>
            <source>fires found [crank deg BTDC]</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>allumage trouvé [° vilebrequin avant PMH]</translation>
        </message>
        <message>
            <source>fires left [crank deg BTDC]</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>allumage laissé [° vilebrequin avant PMH]</translation>
        </message>
        <message>
            <source>found</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>trouvé</translation>
        </message>
        <message>
            <source>predicted</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>prédit</translation>
        </message>
        <message>
            <source>interval</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>intervalle</translation>
        </message>
        <message>
            <source>year-month-day</source>
            <extracomment>ui/job_edits.py</extracomment>
            <translation>année-mois-jour</translation>
        </message>
        <message>
            <source>Today</source>
            <extracomment>ui/job_edits.py</extracomment>
            <translation>Aujourd'hui</translation>
        </message>
        <message>
            <source>Missing in {what}.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Manque dans {what}.</translation>
        </message>
        <message>
            <source>To be cleared up: see {stage}.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>À éclaircir : voir {stage}.</translation>
        </message>
        <message>
            <source>Not done yet: {stages}.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Pas encore fait : {stages}.</translation>
        </message>
        <message>
            <source>Out of limits, or not as it must be: see {stage}.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Hors limites, ou pas comme il se doit : voir {stage}.</translation>
        </message>
        <message>
            <source>Not signed.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Non signé.</translation>
        </message>
        <message>
            <source>What is missing, next check, signature</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Ce qui manque, prochain contrôle, signature</translation>
        </message>
        <message>
            <source>What is missing</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Ce qui manque</translation>
        </message>
        <message>
            <source>Not judged</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Non jugé</translation>
        </message>
        <message>
            <source>Signed by {who}</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Signé par {who}</translation>
        </message>
        <message>
            <source>Signature taken back</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Signature retirée</translation>
        </message>
        <message>
            <source>Changed since it was signed: the signature does not cover this sheet; sign again.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Modifiée depuis la signature : la signature ne couvre pas cette fiche ; signer de nouveau.</translation>
        </message>
        <message>
            <source>Sign the sheet</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Signer la fiche</translation>
        </message>
        <message>
            <source>Take the signature back</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Retirer la signature</translation>
        </message>
        <message>
            <source>✓ Finished: every stage is done or skipped, in limits as left, and signed.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>✓ Terminée : chaque étape est faite ou sautée, dans les limites telle que laissée, et signée.</translation>
        </message>
        <message>
            <source>✓ Signed; the sheet is as it was signed.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>✓ Signée ; la fiche est telle que signée.</translation>
        </message>
        <message>
            <source>✗ Changed since it was signed.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>✗ Modifiée depuis la signature.</translation>
        </message>
        <message>
            <source>{mark} {verdict} ({limits})</source>
            <extracomment>ui/job_form.py</extracomment>
            <translation>{mark} {verdict} ({limits})</translation>
        </message>
        <message>
            <source>{value} ± {spread} (k = {k}, {probability}); {odds} likely within {low} to {high}; what matters most: {most}</source>
            <extracomment>ui/job_form.py</extracomment>
            <translation>{value} ± {spread} (k = {k}, {probability}) ; {odds} de chances d'être entre {low} et {high} ; ce qui compte le plus : {most}</translation>
        </message>
        <message>
            <source>{typed} is outside {low} to {high} and was not taken</source>
            <extracomment>ui/job_form.py</extracomment>
            <translation>{typed} est hors de {low} à {high} et n'a pas été pris</translation>
        </message>
        <message>
            <source>Strike out the uncertainty</source>
            <extracomment>ui/job_form.py</extracomment>
            <translation>Rayer l'incertitude</translation>
        </message>
        <message>
            <source>Verdict: {field}</source>
            <extracomment>ui/job_form.py</extracomment>
            <translation>Verdict : {field}</translation>
        </message>
        <message>
            <source>{field} [{unit}]</source>
            <extracomment>ui/job_form.py, ui/job_table.py</extracomment>
            <translation>{field} [{unit}]</translation>
        </message>
        <message>
            <source>{field}: {sentence}</source>
            <extracomment>ui/job_form.py</extracomment>
            <translation>{field} : {sentence}</translation>
        </message>
        <message>
            <source>To be cleared up</source>
            <extracomment>ui/job_form.py</extracomment>
            <translation>À éclaircir</translation>
        </message>
        <message>
            <source>How sure: {quantity}</source>
            <extracomment>ui/job_form.py</extracomment>
            <translation>Sûreté : {quantity}</translation>
        </message>
        <message>
            <source>not read</source>
            <extracomment>ui/job_form.py, ui/job_kinds.py</extracomment>
            <translation>non lu</translation>
        </message>
        <message>
            <source>none given</source>
            <extracomment>ui/job_form.py</extracomment>
            <translation>aucun donné</translation>
        </message>
        <message>
            <source>Earlier sheets of the same magneto</source>
            <extracomment>ui/job_history.py</extracomment>
            <translation>Fiches antérieures de la même magnéto</translation>
        </message>
        <message>
            <source>Double-click, or Return, opens a sheet</source>
            <extracomment>ui/job_history.py</extracomment>
            <translation>Un double-clic, ou Entrée, ouvre une fiche</translation>
        </message>
        <message>
            <source>Looking in {folder}…</source>
            <extracomment>ui/job_history.py</extracomment>
            <translation>Recherche dans {folder}…</translation>
        </message>
        <message>
            <source>{count} earlier sheets of this magneto in {folder}.</source>
            <extracomment>ui/job_history.py</extracomment>
            <translation>{count} fiches antérieures de cette magnéto dans {folder}.</translation>
        </message>
        <message>
            <source>Another folder…</source>
            <extracomment>ui/job_history.py</extracomment>
            <translation>Autre dossier…</translation>
        </message>
        <message>
            <source>Look again</source>
            <extracomment>ui/job_history.py</extracomment>
            <translation>Revoir</translation>
        </message>
        <message>
            <source>Passed over: {sentence}.</source>
            <extracomment>ui/job_history.py</extracomment>
            <translation>Ignoré : {sentence}.</translation>
        </message>
        <message>
            <source>Title</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>Titre</translation>
        </message>
        <message>
            <source>Note</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>Note</translation>
        </message>
        <message>
            <source>Done by</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>Fait par</translation>
        </message>
        <message>
            <source>in</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>in</translation>
        </message>
        <message>
            <source>crank ° before top dead centre</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>° vilebrequin avant le point mort haut</translation>
        </message>
        <message>
            <source>°, + late</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>°, + en retard</translation>
        </message>
        <message>
            <source>°, + with rotation</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>°, + dans le sens de rotation</translation>
        </message>
        <message>
            <source>°, + closer</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>°, + en rapprochant</translation>
        </message>
        <message>
            <source>rpm</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>tr/min</translation>
        </message>
        <message>
            <source>h</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>h</translation>
        </message>
        <message>
            <source>teeth, + with rotation</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>dents, + dans le sens de rotation</translation>
        </message>
        <message>
            <source>in, + late</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>in, + en retard</translation>
        </message>
        <message>
            <source>mm, + late</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>mm, + en retard</translation>
        </message>
        <message>
            <source>&amp;New job sheet…</source>
            <extracomment>ui/job_menus.py, ui/menus.py</extracomment>
            <translation>&amp;Nouvelle fiche de travail…</translation>
        </message>
        <message>
            <source>&amp;Open job sheet…</source>
            <extracomment>ui/job_menus.py, ui/menus.py</extracomment>
            <translation>&amp;Ouvrir une fiche de travail…</translation>
        </message>
        <message>
            <source>&amp;Try again to save</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Réessayer d'&amp;enregistrer</translation>
        </message>
        <message>
            <source>&amp;Reload from the file</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>&amp;Recharger du fichier</translation>
        </message>
        <message>
            <source>&amp;Close</source>
            <extracomment>ui/job_menus.py, ui/lift_dialog.py, ui/own_menus.py, ui/practice_menus.py, ui/report_dialog.py</extracomment>
            <translation>&amp;Fermer</translation>
        </message>
        <message>
            <source>&amp;Undo</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/own_menus.py</extracomment>
            <translation>&amp;Annuler</translation>
        </message>
        <message>
            <source>&amp;Redo</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/own_menus.py</extracomment>
            <translation>&amp;Rétablir</translation>
        </message>
        <message>
            <source>&amp;Steps taken…</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Étapes fran&amp;chies…</translation>
        </message>
        <message>
            <source>&amp;Skip for a reason…</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>&amp;Sauter avec raison…</translation>
        </message>
        <message>
            <source>&amp;Open again</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>&amp;Rouvrir</translation>
        </message>
        <message>
            <source>&amp;Next page</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Page &amp;suivante</translation>
        </message>
        <message>
            <source>&amp;Previous page</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Page &amp;précédente</translation>
        </message>
        <message>
            <source>Print to PDF, &amp;A4…</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/plan_box.py</extracomment>
            <translation>Imprimer en PDF, &amp;A4…</translation>
        </message>
        <message>
            <source>Print to PDF, &amp;Letter…</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/plan_box.py</extracomment>
            <translation>Imprimer en PDF, &amp;Letter…</translation>
        </message>
        <message>
            <source>Save as &amp;HTML…</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Enregistrer en &amp;HTML…</translation>
        </message>
        <message>
            <source>Save readings as &amp;CSV…</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Enregistrer les lectures en &amp;CSV…</translation>
        </message>
        <message>
            <source>Save readings as &amp;JSON…</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Enregistrer les lectures en &amp;JSON…</translation>
        </message>
        <message>
            <source>With &amp;earlier sheets of this magneto</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Avec les fiches ant&amp;érieures de cette magnéto</translation>
        </message>
        <message>
            <source>Lengths in &amp;inches</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Longueurs en &amp;pouces</translation>
        </message>
        <message>
            <source>&amp;Keys and cautions</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/practice_menus.py</extracomment>
            <translation>&amp;Touches et mises en garde</translation>
        </message>
        <message>
            <source>Steps taken</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Étapes franchies</translation>
        </message>
        <message>
            <source>&amp;Text size</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/practice_menus.py</extracomment>
            <translation>Taille du te&amp;xte</translation>
        </message>
        <message>
            <source>&amp;Undo: {step}</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/own_menus.py</extracomment>
            <translation>&amp;Annuler : {step}</translation>
        </message>
        <message>
            <source>&amp;Redo: {step}</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/own_menus.py</extracomment>
            <translation>&amp;Rétablir : {step}</translation>
        </message>
        <message>
            <source>No step has been taken yet.</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Aucune étape n'a encore été faite.</translation>
        </message>
        <message>
            <source>&amp;Job</source>
            <extracomment>ui/job_menus.py, ui/menus.py</extracomment>
            <translation>&amp;Fiche</translation>
        </message>
        <message>
            <source>&amp;Edit</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/own_menus.py</extracomment>
            <translation>&amp;Édition</translation>
        </message>
        <message>
            <source>&amp;Stage</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>É&amp;tape</translation>
        </message>
        <message>
            <source>&amp;Note on the job sheet</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>&amp;Note sur la fiche de travail</translation>
        </message>
        <message>
            <source>&amp;Report</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>&amp;Rapport</translation>
        </message>
        <message>
            <source>&amp;View</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/practice_menus.py</extracomment>
            <translation>&amp;Affichage</translation>
        </message>
        <message>
            <source>&amp;Help</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/own_menus.py, ui/practice_menus.py</extracomment>
            <translation>A&amp;ide</translation>
        </message>
        <message>
            <source>{n} %</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>{n} %</translation>
        </message>
        <message>
            <source>Not taken yet: {what}. Correct it, or press Escape in its field to put back what was there.</source>
            <extracomment>ui/job_model.py</extracomment>
            <translation>Pas encore pris : {what}. Corriger, ou appuyer sur Échap dans son champ pour remettre ce qui y était.</translation>
        </message>
        <message>
            <source>Job sheet</source>
            <extracomment>ui/job_model.py</extracomment>
            <translation>Fiche de travail</translation>
        </message>
        <message>
            <source>{part}: {field}</source>
            <extracomment>ui/job_model.py</extracomment>
            <translation>{part} : {field}</translation>
        </message>
        <message>
            <source>{stage}: skipped</source>
            <extracomment>ui/job_model.py</extracomment>
            <translation>{stage} : sauté</translation>
        </message>
        <message>
            <source>{stage}: done</source>
            <extracomment>ui/job_model.py</extracomment>
            <translation>{stage} : fait</translation>
        </message>
        <message>
            <source>{stage}: opened again</source>
            <extracomment>ui/job_model.py</extracomment>
            <translation>{stage} : rouvert</translation>
        </message>
        <message>
            <source>Cautions</source>
            <extracomment>ui/job_page.py</extracomment>
            <translation>Mises en garde</translation>
        </message>
        <message>
            <source>Note from the bench: {what}</source>
            <extracomment>ui/job_page.py</extracomment>
            <translation>Note du banc : {what}</translation>
        </message>
        <message>
            <source>Aircraft, engine, magneto and limits</source>
            <extracomment>ui/job_page.py</extracomment>
            <translation>Aéronef, moteur, magnéto et limites</translation>
        </message>
        <message>
            <source>The sheet does not say yet which magneto the bench worked with; without it there are no drawings, and limits are as entered from the maker's manual.</source>
            <extracomment>ui/job_page.py</extracomment>
            <translation>La fiche ne dit pas encore avec quelle magnéto le banc a travaillé ; sans elle, il n'y a pas de dessins, et les limites sont celles saisies d'après le manuel du constructeur.</translation>
        </message>
        <message>
            <source>Note from the bench:</source>
            <extracomment>ui/job_page.py</extracomment>
            <translation>Note du banc :</translation>
        </message>
        <message>
            <source>On the bench: {magneto}, on {engine}.</source>
            <extracomment>ui/job_page.py</extracomment>
            <translation>Au banc : {magneto}, sur {engine}.</translation>
        </message>
        <message>
            <source>On the bench: {magneto}.</source>
            <extracomment>ui/job_page.py</extracomment>
            <translation>Au banc : {magneto}.</translation>
        </message>
        <message>
            <source>Page {number} of {count}</source>
            <extracomment>ui/job_preview.py</extracomment>
            <translation>Page {number} sur {count}</translation>
        </message>
        <message>
            <source>Paper</source>
            <extracomment>ui/job_preview.py</extracomment>
            <translation>Papier</translation>
        </message>
        <message>
            <source>Print to PDF…</source>
            <extracomment>ui/job_preview.py</extracomment>
            <translation>Imprimer en PDF…</translation>
        </message>
        <message>
            <source>1 page</source>
            <extracomment>ui/job_preview.py</extracomment>
            <translation>1 page</translation>
        </message>
        <message>
            <source>{count} pages</source>
            <extracomment>ui/job_preview.py</extracomment>
            <translation>{count} pages</translation>
        </message>
        <message>
            <source>Ctrl+Page Down and Ctrl+Page Up turn the pages, Ctrl+Return marks a stage as done. Every change is in the file at once; Ctrl+Z takes the last one back, also after the sheet was closed and opened again, and Ctrl+Shift+Z does it again. Numbers take a decimal point or comma and their unit: 13 thou, 0,33 mm. Escape puts back what stood in a field; an empty one was not read.</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Print the job sheet to PDF</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation>Imprimer la fiche de travail en PDF</translation>
        </message>
        <message>
            <source>Save the job sheet as HTML</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation>Enregistrer la fiche de travail en HTML</translation>
        </message>
        <message>
            <source>HTML (*.html)</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation>HTML (*.html)</translation>
        </message>
        <message>
            <source>Save the readings</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation>Enregistrer les lectures</translation>
        </message>
        <message>
            <source>Table (*.csv)</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation>Table (*.csv)</translation>
        </message>
        <message>
            <source>Readings (*.json)</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation>Lectures (*.json)</translation>
        </message>
        <message>
            <source>✓ Saved {file}.</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation>✓ Enregistré {file}.</translation>
        </message>
        <message>
            <source>{file} is the job sheet itself; choose another name</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation>{file} est la fiche de travail elle-même ; choisir un autre nom</translation>
        </message>
        <message>
            <source>this sheet ships with the program and stays as it is; save it under a name of your own to work on it</source>
            <extracomment>ui/job_room.py</extracomment>
            <translation>cette fiche est fournie avec le programme et reste telle quelle ; l'enregistrer sous un nom à vous pour y travailler</translation>
        </message>
        <message>
            <source>Where is the new job sheet to be kept?</source>
            <extracomment>ui/job_room.py</extracomment>
            <translation>Où conserver la nouvelle fiche de travail ?</translation>
        </message>
        <message>
            <source>Job sheets (*.json)</source>
            <extracomment>ui/job_room.py, ui/job_window.py</extracomment>
            <translation>Fiches de travail (*.json)</translation>
        </message>
        <message>
            <source>Open a job sheet</source>
            <extracomment>ui/job_room.py</extracomment>
            <translation>Ouvrir une fiche de travail</translation>
        </message>
        <message>
            <source>Job sheets (*.json);;All files (*)</source>
            <extracomment>ui/job_room.py</extracomment>
            <translation>Fiches de travail (*.json);;Tous les fichiers (*)</translation>
        </message>
        <message>
            <source>No job sheet is open: open one, or begin a new one, from the Job menu.</source>
            <extracomment>ui/job_room.py</extracomment>
            <translation>Aucune fiche de travail n'est ouverte : en ouvrir une, ou en commencer une, par le menu Fiche.</translation>
        </message>
        <message>
            <source>the bench still has the setting it began with, which nobody has read: set plate and screw as they are first</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>le banc a encore le réglage du début, que personne n'a lu : régler d'abord plateau et vis tels qu'ils sont</translation>
        </message>
        <message>
            <source>Magneto, engine and limits</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Magnéto, moteur et limites</translation>
        </message>
        <message>
            <source>What is on the bench, and the limits its files give</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Ce qui est au banc, et les limites de ses fichiers</translation>
        </message>
        <message>
            <source>Switch lead as it stands</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Fil de masse tel qu'il est</translation>
        </message>
        <message>
            <source>What meter and lamp say on the bench with plug and switch as they are now</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Ce que disent ohmmètre et lampe au banc, fiche et contacteur tels quels</translation>
        </message>
        <message>
            <source>Stop readings</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Lectures à la butée</translation>
        </message>
        <message>
            <source>The two stop readings of the Engine page</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Les deux lectures à la butée de la page Moteur</translation>
        </message>
        <message>
            <source>Stroke of No. 1 now</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Temps actuel du n° 1</translation>
        </message>
        <message>
            <source>Set the crank before No. 1 fires: its stroke there is noted</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Mettre le vilebrequin avant l'allumage du n° 1 : son temps y est noté</translation>
        </message>
        <message>
            <source>Setting as it was put on the bench, timing as the lamp was read</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Réglage tel que mis au banc, calage tel que lu à la lampe</translation>
        </message>
        <message>
            <source>As found, by instruments</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Tel que trouvé, aux instruments</translation>
        </message>
        <message>
            <source>As the instruments chosen on the Uncertainty page read it</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Tel que le lisent les instruments choisis à la page Incertitude</translation>
        </message>
        <message>
            <source>Wear and pips</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Usure et picots</translation>
        </message>
        <message>
            <source>As they were set on the bench</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Tels que réglés au banc</translation>
        </message>
        <message>
            <source>Trials made</source>
            <extracomment>ui/job_sources.py, ui/trials_panel.py</extracomment>
            <translation>Essais faits</translation>
        </message>
        <message>
            <source>All trials on the bench's list</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Tous les essais de la liste du banc</translation>
        </message>
        <message>
            <source>Setting planned</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Réglage prévu</translation>
        </message>
        <message>
            <source>Where backplate and screw belong for the gap wanted on the Internal page</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Où mettre plateau et vis pour l'écartement voulu à la page Interne</translation>
        </message>
        <message>
            <source>The setting as the bench has it now</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Le réglage tel qu'au banc maintenant</translation>
        </message>
        <message>
            <source>As left, by instruments</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Tel que laissé, aux instruments</translation>
        </message>
        <message>
            <source>How sure the setting is</source>
            <extracomment>ui/job_sources.py, ui/panes.py</extracomment>
            <translation>Sûreté du réglage</translation>
        </message>
        <message>
            <source>What the Uncertainty page shows of internal timing</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Ce que la page Incertitude montre du calage interne</translation>
        </message>
        <message>
            <source>Opening, gap and dwell of each lobe</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Ouverture, écartement et fermeture de chaque bossage</translation>
        </message>
        <message>
            <source>Marks as painted</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Repères tels que peints</translation>
        </message>
        <message>
            <source>How the coupling's marks stand apart</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Écart entre les repères de l'accouplement</translation>
        </message>
        <message>
            <source>Tooth shift planned</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Décalage de dents prévu</translation>
        </message>
        <message>
            <source>Reading as found, timing wanted, and the move chosen in the planner, or its first</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Lecture trouvée, calage voulu, et le déplacement choisi au plan, ou son premier</translation>
        </message>
        <message>
            <source>Tooth shift made</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Décalage de dents fait</translation>
        </message>
        <message>
            <source>Teeth moved; where it fires then, the lamp has to tell</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Dents déplacées ; où l'allumage se fait ensuite, c'est à la lampe de le dire</translation>
        </message>
        <message>
            <source>Where the lamp was read to say that the magnetos fire</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Où la lampe, lue, dit que les magnétos allument</translation>
        </message>
        <message>
            <source>How sure the timing is</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Sûreté du calage</translation>
        </message>
        <message>
            <source>What the Uncertainty page shows of timing to the engine</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Ce que la page Incertitude montre du calage sur moteur</translation>
        </message>
        <message>
            <source>the bench has “{bench}” on it and this sheet is of “{sheet}”: put that one on the bench, or take over magneto and limits anew</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>le banc porte « {bench} » et cette fiche est de « {sheet} » : mettre celle-ci au banc, ou reprendre magnéto et limites</translation>
        </message>
        <message>
            <source>this magneto is not on an engine: open an installation on the bench first</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>cette magnéto n'est pas sur un moteur : ouvrir d'abord une installation au banc</translation>
        </message>
        <message>
            <source>neither plug nor switch has been moved on the bench yet: the lead has not been tried</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>ni la fiche ni le contact n'ont encore été manœuvrés au banc : le fil n'a pas été essayé</translation>
        </message>
        <message>
            <source>no stop readings were entered yet; they belong on the Engine page of the bench</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>aucune lecture à la butée n'a encore été saisie ; leur place est à la page Moteur du banc</translation>
        </message>
        <message>
            <source>the crank has not been turned on the bench yet: set it as the engine's stands first</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>le vilebrequin n'a pas encore été tourné au banc : le mettre d'abord comme est celui du moteur</translation>
        </message>
        <message>
            <source>no trial has been made on the bench yet; they are noted on its Trials page</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>aucun essai n'a encore été fait au banc ; ils se notent à sa page Essais</translation>
        </message>
        <message>
            <source>the bench's Uncertainty page does not show internal timing; choose it there first</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>la page Incertitude du banc ne montre pas le calage interne ; l'y choisir d'abord</translation>
        </message>
        <message>
            <source>the bench's Uncertainty page does not show timing to the engine; choose it there first</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>la page Incertitude du banc ne montre pas le calage sur moteur ; l'y choisir d'abord</translation>
        </message>
        <message>
            <source>Add a trial</source>
            <extracomment>ui/job_table.py</extracomment>
            <translation>Ajouter un essai</translation>
        </message>
        <message>
            <source>Add a lobe</source>
            <extracomment>ui/job_table.py</extracomment>
            <translation>Ajouter un bossage</translation>
        </message>
        <message>
            <source>Strike out the chosen trial</source>
            <extracomment>ui/job_table.py</extracomment>
            <translation>Rayer l'essai choisi</translation>
        </message>
        <message>
            <source>Strike out the chosen lobe</source>
            <extracomment>ui/job_table.py</extracomment>
            <translation>Rayer le bossage choisi</translation>
        </message>
        <message>
            <source>{row} {number} waits for: {field}</source>
            <extracomment>ui/job_table.py</extracomment>
            <translation>{row} {number} attend : {field}</translation>
        </message>
        <message>
            <source>{row} {number}, {field}: outside {low} to {high}, not taken</source>
            <extracomment>ui/job_table.py</extracomment>
            <translation>{row} {number}, {field} : hors de {low} à {high}, non pris</translation>
        </message>
        <message>
            <source>{what}, from the bench</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>{what}, du banc</translation>
        </message>
        <message>
            <source>{name} – job sheet – magview</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>{name} – fiche de travail – magview</translation>
        </message>
        <message>
            <source>{count} found</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>{count} trouvés</translation>
        </message>
        <message>
            <source>Skip a stage</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Sauter une étape</translation>
        </message>
        <message>
            <source>Why is “{stage}” skipped?</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Pourquoi sauter « {stage} » ?</translation>
        </message>
        <message>
            <source>Skip it</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Sauter</translation>
        </message>
        <message>
            <source>Save the job sheet as</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Enregistrer la fiche de travail sous</translation>
        </message>
        <message>
            <source>Reload the sheet from its file?</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Recharger la fiche de son fichier ?</translation>
        </message>
        <message>
            <source>Not saved: {sentence}.</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Non enregistré : {sentence}.</translation>
        </message>
        <message>
            <source>Read only: {file}</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Lecture seule : {file}</translation>
        </message>
        <message>
            <source>✓ Noted from the bench: {what}.</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>✓ Noté du banc : {what}.</translation>
        </message>
        <message>
            <source>Undone: {step}.</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Annulé : {step}.</translation>
        </message>
        <message>
            <source>Done again: {step}.</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Rétabli : {step}.</translation>
        </message>
        <message>
            <source>Skipped: {stage}.</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Sauté : {stage}.</translation>
        </message>
        <message>
            <source>Opened again; its readings stand.</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Rouvert ; ses lectures restent.</translation>
        </message>
        <message>
            <source>Saved; from now on in {file}.</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Enregistré ; désormais dans {file}.</translation>
        </message>
        <message>
            <source>&amp;Keep what is here</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>&amp;Garder ce qui est ici</translation>
        </message>
        <message>
            <source>What was entered here and is not in the file is given up; save it elsewhere first.</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Ce qui a été saisi ici et n'est pas dans le fichier est abandonné ; l'enregistrer d'abord ailleurs.</translation>
        </message>
        <message>
            <source>&amp;Save as…</source>
            <extracomment>ui/job_window.py, ui/report_dialog.py</extracomment>
            <translation>Enregistrer &amp;sous…</translation>
        </message>
        <message>
            <source>Close &amp;without saving</source>
            <extracomment>ui/job_window.py, ui/practice_window.py</extracomment>
            <translation>Fermer sans &amp;enregistrer</translation>
        </message>
        <message>
            <source>&amp;Go on</source>
            <extracomment>ui/job_window.py, ui/practice_window.py</extracomment>
            <translation>&amp;Continuer</translation>
        </message>
        <message>
            <source>✗ Not saved</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>✗ Non enregistré</translation>
        </message>
        <message>
            <source>✓ Saved in {file}</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>✓ Enregistré dans {file}</translation>
        </message>
        <message>
            <source>{crank}° of crank early = {rotor}° of rotor = {piston} of piston travel.</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>{crank}° de vilebrequin en avance = {rotor}° de rotor = {piston} de course du piston.</translation>
        </message>
        <message>
            <source>{crank}° of crank late = {rotor}° of rotor = {piston} of piston travel.</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>{crank}° de vilebrequin en retard = {rotor}° de rotor = {piston} de course du piston.</translation>
        </message>
        <message>
            <source>Left</source>
            <extracomment>ui/lamp_box.py, ui/practice_sight.py</extracomment>
            <translation>Gauche</translation>
        </message>
        <message>
            <source>Right</source>
            <extracomment>ui/lamp_box.py, ui/practice_sight.py</extracomment>
            <translation>Droite</translation>
        </message>
        <message>
            <source>Left: its lamp was read before the contacts were set anew. With this internal setting it would now read {found}; read it again.</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Gauche : sa lampe a été lue avant le nouveau réglage des contacts. Avec ce réglage interne, elle lirait maintenant {found} ; la relire.</translation>
        </message>
        <message>
            <source>Right: its lamp was read before the contacts were set anew. With this internal setting it would now read {found}; read it again.</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Droite : sa lampe a été lue avant le nouveau réglage des contacts. Avec ce réglage interne, elle lirait maintenant {found} ; la relire.</translation>
        </message>
        <message>
            <source>Left: {line}</source>
            <extracomment>ui/lamp_box.py, ui/practice_notebook.py</extracomment>
            <translation>Gauche : {line}</translation>
        </message>
        <message>
            <source>Right: {line}</source>
            <extracomment>ui/lamp_box.py, ui/practice_notebook.py</extracomment>
            <translation>Droite : {line}</translation>
        </message>
        <message>
            <source>Where it fires, crank degrees before top dead centre</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Où elle allume, degrés de vilebrequin avant le point mort haut</translation>
        </message>
        <message>
            <source>Crank from No. 1's firing top dead centre, positive the way the engine turns</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Vilebrequin depuis le point mort haut d'allumage du n° 1, positif dans le sens du moteur</translation>
        </message>
        <message>
            <source>Cran&amp;k</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>&amp;Vilebrequin</translation>
        </message>
        <message>
            <source>Tolerance ±{tolerance}° of crank.</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Tolérance ±{tolerance}° de vilebrequin.</translation>
        </message>
        <message>
            <source>Fires now</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Allume à présent</translation>
        </message>
        <message>
            <source>Show this magneto's coupling</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Montrer l'accouplement de cette magnéto</translation>
        </message>
        <message>
            <source>To firing</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>À l'allumage</translation>
        </message>
        <message>
            <source>To TDC</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Au PMH</translation>
        </message>
        <message>
            <source>The magneto is off the engine: all this holds once it is refitted by its marks.</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>La magnéto est déposée du moteur : tout ceci vaut une fois qu'elle est remontée selon ses repères.</translation>
        </message>
        <message>
            <source>The contacts were set anew since the lamp was read: with the teeth as found it would now read {found}. Both magnetos are shown with this one's internal setting.</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Les contacts ont été réglés de nouveau depuis la lecture de la lampe : avec les dents trouvées, elle lirait maintenant {found}. Les deux magnétos sont montrées avec le réglage interne de celle-ci.</translation>
        </message>
        <message>
            <source>With this setting the contacts never open and close: there is no timing to read.</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Avec ce réglage, les contacts ne s'ouvrent et ne se ferment jamais : il n'y a pas de calage à lire.</translation>
        </message>
        <message>
            <source>left magneto, lamp reads</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>magnéto gauche, la lampe lit</translation>
        </message>
        <message>
            <source>right magneto, lamp reads</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>magnéto droite, la lampe lit</translation>
        </message>
        <message>
            <source>left magneto, wanted</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>magnéto gauche, voulu</translation>
        </message>
        <message>
            <source>right magneto, wanted</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>magnéto droite, voulu</translation>
        </message>
        <message>
            <source>left magneto fires now</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>la magnéto gauche allume à présent</translation>
        </message>
        <message>
            <source>right magneto fires now</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>la magnéto droite allume à présent</translation>
        </message>
        <message>
            <source>Single</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Unique</translation>
        </message>
        <message>
            <source>At the timing wanted.</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Au calage voulu.</translation>
        </message>
        <message>
            <source>Prove the lead before touching the propeller: plug out, meter from the lead's plug to the case: ground with the switch off, none with it on. A lead that shows no ground with the switch off leaves the magneto live. Treat the propeller as live all the same.</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation>Prouver le fil avant de toucher l'hélice : fiche débranchée, ohmmètre de la fiche du fil au carter : masse avec contacteur sur arrêt, aucune sur marche. Un fil sans masse, contacteur sur arrêt, laisse la magnéto active. Traiter l'hélice comme active malgré tout.</translation>
        </message>
        <message>
            <source>Switch lead, drawn as a circuit</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation>Fil de masse, dessiné en circuit</translation>
        </message>
        <message>
            <source>Lamp: open</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation>Lampe : ouvert</translation>
        </message>
        <message>
            <source>Lamp: closed</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation>Lampe : fermé</translation>
        </message>
        <message>
            <source>Ignition switch &amp;on</source>
            <extracomment>ui/lead_panel.py, ui/practice_work.py</extracomment>
            <translation>Contacteur d'allumage sur &amp;marche</translation>
        </message>
        <message>
            <source>Plug o&amp;ut of the magneto</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation>Fiche débranchée de la magn&amp;éto</translation>
        </message>
        <message>
            <source>Lead &amp;broken inside</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation>Fil &amp;coupé à l'intérieur</translation>
        </message>
        <message>
            <source>&amp;Short inside the magneto</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation>Cour&amp;t-circuit dans la magnéto</translation>
        </message>
        <message>
            <source>Spring tab bent clear of the c&amp;ase</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation>L&amp;anguette ressort écartée du carter</translation>
        </message>
        <message>
            <source>Hands on</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation>Manipuler</translation>
        </message>
        <message>
            <source>Faults to try</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation>Défauts à essayer</translation>
        </message>
        <message>
            <source>What it needs is on the tabs {tabs}.</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation>Ce qu'il faut est sous les onglets {tabs}.</translation>
        </message>
        <message>
            <source>“{tab}”</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation>« {tab} »</translation>
        </message>
        <message>
            <source>What it needs is on the tab {tab}.</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation>Ce qu'il faut est sous l'onglet {tab}.</translation>
        </message>
        <message>
            <source>A hint</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation>Un indice</translation>
        </message>
        <message>
            <source>What came of it</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation>Ce qui en est résulté</translation>
        </message>
        <message>
            <source>{name}: done</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation>{name} : fait</translation>
        </message>
        <message>
            <source>Step {step} of {steps} – {title}</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation>Étape {step} sur {steps} – {title}</translation>
        </message>
        <message>
            <source>What you have learnt: {told}</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation>Ce que vous avez appris : {told}</translation>
        </message>
        <message>
            <source>All steps are done.</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation>Toutes les étapes sont faites.</translation>
        </message>
        <message>
            <source>Hint: {hint}</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation>Indice : {hint}</translation>
        </message>
        <message>
            <source>Lift of the contacts</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Levée des contacts</translation>
        </message>
        <message>
            <source>Gap between the contacts</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Écartement entre les contacts</translation>
        </message>
        <message>
            <source>Dial at the heel</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Comparateur au toucheau</translation>
        </message>
        <message>
            <source>found out</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>détecté</translation>
        </message>
        <message>
            <source>point: 0.25</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>point : 0.25</translation>
        </message>
        <message>
            <source>comma: 0,25</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>virgule : 0,25</translation>
        </message>
        <message>
            <source>Lift from {name}</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Levée de {name}</translation>
        </message>
        <message>
            <source>What comes of the table</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Ce qui résulte de la table</translation>
        </message>
        <message>
            <source>grow with rotation</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>croissent dans le sens de rotation</translation>
        </message>
        <message>
            <source>falls as the contacts lift</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>baisse quand les contacts se lèvent</translation>
        </message>
        <message>
            <source>Contact lift at which the contacts just touch: needed where gaps were read</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Levée où les contacts se touchent juste : nécessaire si des écartements ont été lus</translation>
        </message>
        <message>
            <source>Contact arm over heel arm: what the contacts lift for a millimetre at the heel</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Bras du contact sur bras du toucheau : ce que lèvent les contacts pour un millimètre au toucheau</translation>
        </message>
        <message>
            <source>Readings and the smooth lift through them</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Lectures et la levée lisse qui les traverse</translation>
        </message>
        <message>
            <source>{readings} readings; the contacts lift {top} mm; scatter {noise} mm.</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>{readings} lectures ; les contacts lèvent de {top} mm ; dispersion {noise} mm.</translation>
        </message>
        <message>
            <source>Magneto (*.json)</source>
            <extracomment>ui/lift_dialog.py, ui/trials_panel.py</extracomment>
            <translation>Magnéto (*.json)</translation>
        </message>
        <message>
            <source>Put on the &amp;bench</source>
            <extracomment>ui/lift_dialog.py, ui/own_menus.py</extracomment>
            <translation>Mettre au &amp;banc</translation>
        </message>
        <message>
            <source>&amp;Save as magneto…</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Enregistrer en &amp;magnéto…</translation>
        </message>
        <message>
            <source>Cam</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Came</translation>
        </message>
        <message>
            <source>choose…</source>
            <extracomment>ui/lift_dialog.py, ui/own_field.py</extracomment>
            <translation>choisir…</translation>
        </message>
        <message>
            <source>Angles of the</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Angles de</translation>
        </message>
        <message>
            <source>Readings are</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Les lectures sont</translation>
        </message>
        <message>
            <source>Their &amp;unit</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Leur &amp;unité</translation>
        </message>
        <message>
            <source>Contacts touch at</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Contact à</translation>
        </message>
        <message>
            <source>Contact arm / heel arm</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Bras du contact / bras du toucheau</translation>
        </message>
        <message>
            <source>Decimal sign</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Signe décimal</translation>
        </message>
        <message>
            <source>Column of angles</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Colonne des angles</translation>
        </message>
        <message>
            <source>Column of readings</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Colonne des lectures</translation>
        </message>
        <message>
            <source>cam past the top [deg]</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>came après le sommet [°]</translation>
        </message>
        <message>
            <source>contact lift [mm]</source>
            <extracomment>ui/lift_dialog.py, ui/plot_lift.py</extracomment>
            <translation>levée des contacts [mm]</translation>
        </message>
        <message>
            <source>The magneto with the measured lift is on the bench.</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>La magnéto à levée mesurée est au banc.</translation>
        </message>
        <message>
            <source>say in which unit the readings are</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>indiquer l'unité des lectures</translation>
        </message>
        <message>
            <source>Light colours</source>
            <extracomment>ui/menu_maker.py</extracomment>
            <translation>Couleurs claires</translation>
        </message>
        <message>
            <source>Dark colours</source>
            <extracomment>ui/menu_maker.py</extracomment>
            <translation>Couleurs sombres</translation>
        </message>
        <message>
            <source>High contrast colours</source>
            <extracomment>ui/menu_maker.py</extracomment>
            <translation>Couleurs à fort contraste</translation>
        </message>
        <message>
            <source>&amp;Guide</source>
            <extracomment>ui/menu_maker.py</extracomment>
            <translation>&amp;Guide</translation>
        </message>
        <message>
            <source>Zoom &amp;in</source>
            <extracomment>ui/menu_maker.py</extracomment>
            <translation>&amp;Zoom avant</translation>
        </message>
        <message>
            <source>Zoom &amp;out</source>
            <extracomment>ui/menu_maker.py</extracomment>
            <translation>Zoom a&amp;rrière</translation>
        </message>
        <message>
            <source>&amp;Whole picture</source>
            <extracomment>ui/menu_maker.py</extracomment>
            <translation>I&amp;mage entière</translation>
        </message>
        <message>
            <source>&amp;Open magneto or installation…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Ouvrir magnéto ou installation…</translation>
        </message>
        <message>
            <source>&amp;Save magneto as…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Enregistrer la magnéto sous…</translation>
        </message>
        <message>
            <source>A magneto of &amp;your own…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Une magnéto à &amp;soi…</translation>
        </message>
        <message>
            <source>Lift from &amp;measurements…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Levée d'après mesures…</translation>
        </message>
        <message>
            <source>Print the &amp;tooth-shift plan</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Imprimer le plan du &amp;décalage de dents</translation>
        </message>
        <message>
            <source>&amp;Paper for a class…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Papier pour une classe…</translation>
        </message>
        <message>
            <source>&amp;Quit</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Quitter</translation>
        </message>
        <message>
            <source>&amp;Hold the rotor</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Tenir le rotor</translation>
        </message>
        <message>
            <source>Magneto on the &amp;engine</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Magnéto sur le &amp;moteur</translation>
        </message>
        <message>
            <source>&amp;Snap to openings, lobes and marks</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Aimanter aux &amp;ouvertures, bossages et repères</translation>
        </message>
        <message>
            <source>&amp;Reduced motion</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Mouvement &amp;réduit</translation>
        </message>
        <message>
            <source>New &amp;exercise…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Nouvel &amp;exercice…</translation>
        </message>
        <message>
            <source>&amp;Lessons…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Leçons…</translation>
        </message>
        <message>
            <source>&amp;Open attempt…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Ouvrir une tentative…</translation>
        </message>
        <message>
            <source>&amp;Join a class…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Re&amp;joindre une classe…</translation>
        </message>
        <message>
            <source>&amp;Make a class set…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Faire une série de classe…</translation>
        </message>
        <message>
            <source>&amp;Gather a class…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Réu&amp;nir une classe…</translation>
        </message>
        <message>
            <source>Exercise e&amp;ditor…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Éditeur d'e&amp;xercice…</translation>
        </message>
        <message>
            <source>Look at the &amp;shipped job sheet</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Voir la fiche de travail f&amp;ournie</translation>
        </message>
        <message>
            <source>&amp;Names of parts</source>
            <extracomment>ui/menus.py, ui/practice_menus.py</extracomment>
            <translation>&amp;Noms des pièces</translation>
        </message>
        <message>
            <source>See the breaker from the &amp;drive end</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Voir le rupteur côté &amp;entraînement</translation>
        </message>
        <message>
            <source>Draw the &amp;gap 5× its size</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Dessiner l'é&amp;cartement 5×</translation>
        </message>
        <message>
            <source>&amp;Follow the contacts when zoomed</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Suivre les contacts au zoom</translation>
        </message>
        <message>
            <source>&amp;Projector mode</source>
            <extracomment>ui/menus.py, ui/practice_menus.py</extracomment>
            <translation>Mode &amp;projecteur</translation>
        </message>
        <message>
            <source>L&amp;anguage</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Langue</translation>
        </message>
        <message>
            <source>P&amp;resent to a class</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Pré&amp;senter à une classe</translation>
        </message>
        <message>
            <source>&amp;Fault reports…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Rapports d'&amp;erreur…</translation>
        </message>
        <message>
            <source>Bench</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Banc</translation>
        </message>
        <message>
            <source>Magneto on the bench</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Magnéto au banc</translation>
        </message>
        <message>
            <source>Unit of length</source>
            <extracomment>ui/menus.py, ui/own_window.py</extracomment>
            <translation>Unité de longueur</translation>
        </message>
        <message>
            <source>As the &amp;desktop</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Comme le &amp;bureau</translation>
        </message>
        <message>
            <source>Save picture of the breaker end…</source>
            <extracomment>ui/menus.py, ui/practice_menus.py</extracomment>
            <translation>Enregistrer l'image du côté rupteur…</translation>
        </message>
        <message>
            <source>Save picture of the drive end…</source>
            <extracomment>ui/menus.py, ui/practice_menus.py</extracomment>
            <translation>Enregistrer l'image du côté entraînement…</translation>
        </message>
        <message>
            <source>Save picture of the crank…</source>
            <extracomment>ui/menus.py, ui/practice_menus.py</extracomment>
            <translation>Enregistrer l'image du vilebrequin…</translation>
        </message>
        <message>
            <source>No&amp;te on the job sheet</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Note sur la fiche de travail</translation>
        </message>
        <message>
            <source>&amp;Recent job sheets</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Fiches de travail &amp;récentes</translation>
        </message>
        <message>
            <source>Millimetres</source>
            <extracomment>ui/menus.py, ui/own_window.py, ui/practice_tray.py</extracomment>
            <translation>Millimètres</translation>
        </message>
        <message>
            <source>Inches</source>
            <extracomment>ui/menus.py, ui/own_window.py</extracomment>
            <translation>Pouces</translation>
        </message>
        <message>
            <source>Lengths in</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Longueurs en</translation>
        </message>
        <message>
            <source>&amp;File</source>
            <extracomment>ui/menus.py, ui/own_menus.py</extracomment>
            <translation>&amp;Fichier</translation>
        </message>
        <message>
            <source>Ben&amp;ch</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Banc</translation>
        </message>
        <message>
            <source>&amp;Practice</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>E&amp;xercice</translation>
        </message>
        <message>
            <source>something in the program went wrong; look whether what you did last is done. A report was kept: Help, Fault reports</source>
            <extracomment>ui/mishaps.py</extracomment>
            <translation>un problème s'est produit dans le programme ; vérifier que la dernière action est faite. Un rapport a été conservé : Aide, Rapports d'erreur</translation>
        </message>
        <message>
            <source>magview: a report of a fault in the program was kept: {file}</source>
            <extracomment>ui/mishaps.py</extracomment>
            <translation>magview : un rapport d'erreur du programme a été conservé : {file}</translation>
        </message>
        <message>
            <source>something in the program went wrong; look whether what you did last is done. No report of it could be kept: {reason}</source>
            <extracomment>ui/mishaps.py</extracomment>
            <translation>un problème s'est produit dans le programme ; vérifier que la dernière action est faite. Aucun rapport n'a pu être conservé : {reason}</translation>
        </message>
        <message>
            <source>with this setting there is no “{place}” to run to</source>
            <extracomment>ui/model.py</extracomment>
            <translation>avec ce réglage, il n'y a pas de « {place} » où aller</translation>
        </message>
        <message>
            <source>{file} is an engine, and the bench holds a magneto: open an installation, which has both, or see the engine with `magview engine {file}`</source>
            <extracomment>ui/opening.py</extracomment>
            <translation>{file} est un moteur, et le banc porte une magnéto : ouvrir une installation, qui a les deux, ou voir le moteur par `magview engine {file}`</translation>
        </message>
        <message>
            <source>{file} is a bench that the program keeps for itself and finds again after a crash; it is not to be opened</source>
            <extracomment>ui/opening.py</extracomment>
            <translation>{file} est un banc que le programme conserve pour lui-même et retrouve après un plantage ; il ne s'ouvre pas</translation>
        </message>
        <message>
            <source>the magneto in this window</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>la magnéto de cette fenêtre</translation>
        </message>
        <message>
            <source>the engine in this window</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>le moteur de cette fenêtre</translation>
        </message>
        <message>
            <source>where from?</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>d'où ?</translation>
        </message>
        <message>
            <source>Source of: {field}</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>Source : {field}</translation>
        </message>
        <message>
            <source>page, instrument, who</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>page, instrument, qui</translation>
        </message>
        <message>
            <source>Note on the source of: {field}</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>Note sur la source : {field}</translation>
        </message>
        <message>
            <source>Work it out</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>Calculer</translation>
        </message>
        <message>
            <source>Refused: {sentence}</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>Refusé : {sentence}</translation>
        </message>
        <message>
            <source>a file…</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>un fichier…</translation>
        </message>
        <message>
            <source>May be left out.</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>Facultatif.</translation>
        </message>
        <message>
            <source>⚠ {sentence}.</source>
            <extracomment>ui/own_field.py, ui/own_pictures.py</extracomment>
            <translation>⚠ {sentence}.</translation>
        </message>
        <message>
            <source>{field} – still needed</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>{field} – encore nécessaire</translation>
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
            <translation>nouveau départ</translation>
        </message>
        <message>
            <source>Open a file of your own</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>Ouvrir un fichier à soi</translation>
        </message>
        <message>
            <source>{file} is open.</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>{file} est ouvert.</translation>
        </message>
        <message>
            <source>Save</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>Enregistrer</translation>
        </message>
        <message>
            <source>{file} is there already, and holds something else. Replace it?</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>{file} existe déjà, et contient autre chose. Le remplacer ?</translation>
        </message>
        <message>
            <source>&amp;Use this lift</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>&amp;Utiliser cette levée</translation>
        </message>
        <message>
            <source>the bench's trials</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>les essais du banc</translation>
        </message>
        <message>
            <source>Lift, rise and setting are filled in from the trials, marked measured.</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>Levée, montée et réglage sont remplis d'après les essais, marqués mesurés.</translation>
        </message>
        <message>
            <source>working out</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>calcul en cours</translation>
        </message>
        <message>
            <source>opening {file}</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>ouverture de {file}</translation>
        </message>
        <message>
            <source>&amp;Replace it</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>&amp;Remplacer</translation>
        </message>
        <message>
            <source>&amp;Leave it</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>&amp;Laisser</translation>
        </message>
        <message>
            <source>table {file}</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>table {file}</translation>
        </message>
        <message>
            <source>there is no engine on the bench: open an installation there first</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>il n'y a pas de moteur au banc : y ouvrir d'abord une installation</translation>
        </message>
        <message>
            <source>the lift from a table</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>la levée d'une table</translation>
        </message>
        <message>
            <source>The lift is filled in from {file}, marked measured.</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>La levée est remplie d'après {file}, marquée mesurée.</translation>
        </message>
        <message>
            <source>&amp;Open magneto, engine or installation…</source>
            <extracomment>ui/own_menus.py</extracomment>
            <translation>&amp;Ouvrir magnéto, moteur ou installation…</translation>
        </message>
        <message>
            <source>&amp;Save</source>
            <extracomment>ui/own_menus.py</extracomment>
            <translation>&amp;Enregistrer</translation>
        </message>
        <message>
            <source>Undo</source>
            <extracomment>ui/own_menus.py</extracomment>
            <translation>Annuler</translation>
        </message>
        <message>
            <source>Redo</source>
            <extracomment>ui/own_menus.py</extracomment>
            <translation>Rétablir</translation>
        </message>
        <message>
            <source>An engine comes to the bench with an installation</source>
            <extracomment>ui/own_menus.py</extracomment>
            <translation>Un moteur vient au banc avec une installation</translation>
        </message>
        <message>
            <source>Put on the bench</source>
            <extracomment>ui/own_menus.py</extracomment>
            <translation>Mettre au banc</translation>
        </message>
        <message>
            <source>a source</source>
            <extracomment>ui/own_model.py</extracomment>
            <translation>une source</translation>
        </message>
        <message>
            <source>Lift from a &amp;table…</source>
            <extracomment>ui/own_page.py</extracomment>
            <translation>Levée d'une &amp;table…</translation>
        </message>
        <message>
            <source>Lift from the t&amp;rials</source>
            <extracomment>ui/own_page.py</extracomment>
            <translation>Levée des &amp;essais</translation>
        </message>
        <message>
            <source>Angles and dial readings of one lobe become its lift, marked measured</source>
            <extracomment>ui/own_page.py</extracomment>
            <translation>Angles et lectures du comparateur d'un bossage deviennent sa levée, marqués mesurés</translation>
        </message>
        <message>
            <source>Lift, rise and setting as the trials noted on the bench tell them, marked measured</source>
            <extracomment>ui/own_page.py</extracomment>
            <translation>Levée, montée et réglage d'après les essais notés au banc, marqués mesurés</translation>
        </message>
        <message>
            <source>Dra&amp;wn</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>&amp;Dessin</translation>
        </message>
        <message>
            <source>&amp;Compared</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>&amp;Comparé</translation>
        </message>
        <message>
            <source>What the draft comes to</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>Ce que donne le brouillon</translation>
        </message>
        <message>
            <source>Shipped file to compare with</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>Fichier fourni à comparer</translation>
        </message>
        <message>
            <source>Fields that differ</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>Champs qui diffèrent</translation>
        </message>
        <message>
            <source>Readings that differ</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>Lectures qui diffèrent</translation>
        </message>
        <message>
            <source>✓ Complete: drawn as designed to be set.</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>✓ Complète : dessinée au réglage prévu.</translation>
        </message>
        <message>
            <source>Compared with “{name}”. Fields that differ: {differ}; given so far: {given} of {all}.</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>Comparé à « {name} ». Champs qui diffèrent : {differ} ; donnés jusqu'ici : {given} sur {all}.</translation>
        </message>
        <message>
            <source>Reading as designed</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>Lecture au réglage prévu</translation>
        </message>
        <message>
            <source>comes to</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>donne</translation>
        </message>
        <message>
            <source>Field</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>Champ</translation>
        </message>
        <message>
            <source>yours</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>à vous</translation>
        </message>
        <message>
            <source>shipped</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>fourni</translation>
        </message>
        <message>
            <source>The nearest shipped file</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>Le fichier fourni le plus proche</translation>
        </message>
        <message>
            <source>Drawn as it last was complete; what is missing or refused is marked at its field.</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>Dessinée dans son dernier état complet ; ce qui manque ou est refusé est marqué à son champ.</translation>
        </message>
        <message>
            <source>Nothing to draw yet: it is drawn once everything needed is there.</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>Rien à dessiner encore : le dessin vient quand tout le nécessaire est là.</translation>
        </message>
        <message>
            <source>Nothing to compare yet.</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>Rien à comparer encore.</translation>
        </message>
        <message>
            <source>What you drafted is on the bench; Undo brings the former back.</source>
            <extracomment>ui/own_room.py</extracomment>
            <translation>Votre brouillon est au banc ; Annuler ramène le précédent.</translation>
        </message>
        <message>
            <source>The drafts are as you left them.</source>
            <extracomment>ui/own_room.py</extracomment>
            <translation>Les brouillons sont tels que vous les avez laissés.</translation>
        </message>
        <message>
            <source>The drafts cannot be kept for after a crash: {reason}</source>
            <extracomment>ui/own_room.py</extracomment>
            <translation>Les brouillons ne peuvent être conservés en cas de plantage : {reason}</translation>
        </message>
        <message>
            <source>&amp;1 Magneto</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>&amp;1 Magnéto</translation>
        </message>
        <message>
            <source>&amp;2 Engine</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>&amp;2 Moteur</translation>
        </message>
        <message>
            <source>&amp;3 Installation</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>&amp;3 Installation</translation>
        </message>
        <message>
            <source>A magneto of your own – magview</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Une magnéto à soi – magview</translation>
        </message>
        <message>
            <source>What is drafted</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Ce qui est ébauché</translation>
        </message>
        <message>
            <source>Pages</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Pages</translation>
        </message>
        <message>
            <source>How far it has come</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Avancement</translation>
        </message>
        <message>
            <source>Next o&amp;pen field</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Champ o&amp;uvert suivant</translation>
        </message>
        <message>
            <source>Go to the next field that is still needed, or refused</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Aller au champ suivant encore nécessaire, ou refusé</translation>
        </message>
        <message>
            <source>Drafts</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Brouillons</translation>
        </message>
        <message>
            <source>Begin from</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Partir de</translation>
        </message>
        <message>
            <source>B&amp;egin</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>&amp;Partir</translation>
        </message>
        <message>
            <source>The draft becomes this one; Undo brings the former back</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Le brouillon devient celui-ci ; Annuler ramène le précédent</translation>
        </message>
        <message>
            <source>What is on the bench</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Ce qui est au banc</translation>
        </message>
        <message>
            <source>Nothing: empty fields</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Rien : champs vides</translation>
        </message>
        <message>
            <source>Still needed: {missing}
Refused: {refused}
Without a source: {bare}</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Encore nécessaire : {missing}
Refusé : {refused}
Sans source : {bare}</translation>
        </message>
        <message>
            <source>◂ &amp;Back</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>◂ &amp;Retour</translation>
        </message>
        <message>
            <source>&amp;Next ▸</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>&amp;Suivant ▸</translation>
        </message>
        <message>
            <source>  Begin from </source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>  Partir de </translation>
        </message>
        <message>
            <source>   Lengths in </source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>   Longueurs en </translation>
        </message>
        <message>
            <source>{magneto}, mounted {side}</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>{magneto}, montée {side}</translation>
        </message>
        <message>
            <source>⚠ {page}: {count} refused</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>⚠ {page} : {count} refusés</translation>
        </message>
        <message>
            <source>{page}: {count} needed</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>{page} : {count} nécessaires</translation>
        </message>
        <message>
            <source>✓ {page}</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>✓ {page}</translation>
        </message>
        <message>
            <source>&amp;Internal</source>
            <extracomment>ui/panes.py</extracomment>
            <translation>&amp;Interne</translation>
        </message>
        <message>
            <source>Internal timing</source>
            <extracomment>ui/panes.py, ui/uncertainty_panel.py</extracomment>
            <translation>Calage interne</translation>
        </message>
        <message>
            <source>En&amp;gine</source>
            <extracomment>ui/panes.py</extracomment>
            <translation>&amp;Moteur</translation>
        </message>
        <message>
            <source>&amp;Lead</source>
            <extracomment>ui/panes.py</extracomment>
            <translation>Fi&amp;l</translation>
        </message>
        <message>
            <source>&amp;Trials</source>
            <extracomment>ui/panes.py</extracomment>
            <translation>&amp;Essais</translation>
        </message>
        <message>
            <source>Trials, and what to try next</source>
            <extracomment>ui/panes.py</extracomment>
            <translation>Essais, et quoi essayer ensuite</translation>
        </message>
        <message>
            <source>Unce&amp;rtainty</source>
            <extracomment>ui/panes.py</extracomment>
            <translation>Ince&amp;rtitude</translation>
        </message>
        <message>
            <source>&amp;Wear</source>
            <extracomment>ui/panes.py</extracomment>
            <translation>&amp;Usure</translation>
        </message>
        <message>
            <source>Wear and drift</source>
            <extracomment>ui/panes.py</extracomment>
            <translation>Usure et dérive</translation>
        </message>
        <message>
            <source>Point at a move to see where it brings the marks; choose one to step through it.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Pointer un déplacement pour voir où il mène les repères ; en choisir un pour le suivre pas à pas.</translation>
        </message>
        <message>
            <source>The move is made. Check the marks, tighten, and read the lamp again, approaching with rotation; enter what it says as the new reading.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Le déplacement est fait. Vérifier les repères, serrer, et relire la lampe en approchant dans le sens de rotation ; saisir ce qu'elle dit comme nouvelle lecture.</translation>
        </message>
        <message>
            <source>1 single step to go.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Reste 1 pas.</translation>
        </message>
        <message>
            <source>{steps} single steps to go.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Restent {steps} pas.</translation>
        </message>
        <message>
            <source>Moves that would put it right, best first</source>
            <extracomment>ui/plan_box.py, ui/timing_panel.py</extracomment>
            <translation>Déplacements qui corrigeraient, le meilleur d'abord</translation>
        </message>
        <message>
            <source>Moves of the coupling, best first</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Déplacements de l'accouplement, le meilleur d'abord</translation>
        </message>
        <message>
            <source>Move the ne&amp;xt tooth</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Déplacer la dent s&amp;uivante</translation>
        </message>
        <message>
            <source>Pri&amp;nt the plan</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Im&amp;primer le plan</translation>
        </message>
        <message>
            <source>The chosen move, or the first, on one page: drawings, single steps to be ticked</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Le déplacement choisi, ou le premier, sur une page : dessins, pas à cocher un à un</translation>
        </message>
        <message>
            <source>Teeth of the magneto flange on the disc, and of the disc on the drive flange, from as found; with rotation is {along}, against is {against} seen from the drive end.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Dents de la bride de la magnéto sur le disque, et du disque sur la bride d'entraînement, depuis l'état trouvé ; le sens de rotation est {along}, l'inverse {against}, vu côté entraînement.</translation>
        </message>
        <message>
            <source>Flange</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Bride</translation>
        </message>
        <message>
            <source>Fires at</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Allume à</translation>
        </message>
        <message>
            <source>There is no reading to plan from.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Il n'y a pas de lecture d'où partir.</translation>
        </message>
        <message>
            <source>{first} or {second}</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>{first} ou {second}</translation>
        </message>
        <message>
            <source>✗ Nothing reaches it within tolerance: {outside}. The nearest two: {nearest}.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>✗ Rien ne l'atteint dans la tolérance : {outside}. Les deux plus proches : {nearest}.</translation>
        </message>
        <message>
            <source>Magneto flange {teeth}</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Bride de la magnéto {teeth}</translation>
        </message>
        <message>
            <source>✓ The first is within ±{tolerance}° of crank.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>✓ Le premier est à ±{tolerance}° de vilebrequin près.</translation>
        </message>
        <message>
            <source>By the present reading the first would come within ±{tolerance}° of crank; set the contacts first, read the lamp again, then plan.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>D'après la lecture actuelle, le premier arriverait à ±{tolerance}° de vilebrequin près ; régler d'abord les contacts, relire la lampe, puis prévoir.</translation>
        </message>
        <message>
            <source>Uncertainty budget</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation>Bilan d'incertitude</translation>
        </message>
        <message>
            <source>{name}: {share} of the variance; {source}</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation>{name} : {share} de la variance ; {source}</translation>
        </message>
        <message>
            <source>share of the variance [%]</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation>part de la variance [%]</translation>
        </message>
        <message>
            <source>how often, per unit</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation>fréquence, par unité</translation>
        </message>
        <message>
            <source>Quantity whose budget is shown</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation>Grandeur dont le bilan est montré</translation>
        </message>
        <message>
            <source>Nothing is judged yet.</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation>Rien n'est encore jugé.</translation>
        </message>
        <message>
            <source>Choose readings and instruments on the Uncertainty page.</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation>Choisir lectures et instruments à la page Incertitude.</translation>
        </message>
        <message>
            <source>linear</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation>linéaire</translation>
        </message>
        <message>
            <source>Monte Carlo</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation>Monte-Carlo</translation>
        </message>
        <message>
            <source>&amp;Quantity</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation>&amp;Grandeur</translation>
        </message>
        <message>
            <source>rotor {rotor}: {torque} N m with rotation</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>rotor {rotor} : {torque} N m dans le sens de rotation</translation>
        </message>
        <message>
            <source>rotor {rotor}: {torque} N m against rotation</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>rotor {rotor} : {torque} N m en sens inverse de la rotation</translation>
        </message>
        <message>
            <source>Let go, the rotor swings on, with rotation, {angle} to neutral.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Lâché, le rotor continue, dans le sens de rotation, de {angle} jusqu'au neutre.</translation>
        </message>
        <message>
            <source>Let go, the rotor swings back, against rotation, {angle} to neutral.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Lâché, le rotor revient, en sens inverse de la rotation, de {angle} jusqu'au neutre.</translation>
        </message>
        <message>
            <source>Let go, off the engine, the rotor swings on, with rotation, {angle} to neutral.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Lâché, hors du moteur, le rotor continue, dans le sens de rotation, de {angle} jusqu'au neutre.</translation>
        </message>
        <message>
            <source>Let go, off the engine, the rotor swings back, against rotation, {angle} to neutral.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Lâché, hors du moteur, le rotor revient, en sens inverse de la rotation, de {angle} jusqu'au neutre.</translation>
        </message>
        <message>
            <source>rotor past neutral [deg]</source>
            <extracomment>ui/plot_coil.py, ui/plot_lift.py</extracomment>
            <translation>rotor après le neutre [°]</translation>
        </message>
        <message>
            <source>rotor {rotor}: flux {flux} mWb (static {static}), current {current} A</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>rotor {rotor} : flux {flux} mWb (statique {static}), courant {current} A</translation>
        </message>
        <message>
            <source>At {rpm} turns a minute the present opening leaves {now} mJ, the E-gap {at} mJ.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>À {rpm} tours par minute, l'ouverture actuelle laisse {now} mJ, l'E-gap {at} mJ.</translation>
        </message>
        <message>
            <source>core flux [mWb]</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>flux du noyau [mWb]</translation>
        </message>
        <message>
            <source>primary current [A]</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>courant primaire [A]</translation>
        </message>
        <message>
            <source>energy at opening [mJ]</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>énergie à l'ouverture [mJ]</translation>
        </message>
        <message>
            <source>best here</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>meilleur ici</translation>
        </message>
        <message>
            <source>Speed of the rotor</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Vitesse du rotor</translation>
        </message>
        <message>
            <source>From turning by hand to full speed</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>De la rotation à la main au plein régime</translation>
        </message>
        <message>
            <source>opening {angle} from the E-gap leaves {energy} mJ</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>une ouverture à {angle} de l'E-gap laisse {energy} mJ</translation>
        </message>
        <message>
            <source>There is no coil to show, or the contacts never work.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Il n'y a pas de bobine à montrer, ou les contacts ne travaillent jamais.</translation>
        </message>
        <message>
            <source>torque with rotation [N m]</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>couple dans le sens de rotation [N m]</translation>
        </message>
        <message>
            <source>This magneto's file gives no pull.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Le fichier de cette magnéto ne donne pas d'attraction.</translation>
        </message>
        <message>
            <source>The rotor stands at neutral: it stays there by itself.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Le rotor est au neutre : il y reste de lui-même.</translation>
        </message>
        <message>
            <source>This magneto's file gives no coil.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Le fichier de cette magnéto ne donne pas de bobine.</translation>
        </message>
        <message>
            <source>resultant</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>résultant</translation>
        </message>
        <message>
            <source>static</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>statique</translation>
        </message>
        <message>
            <source>Rotor speed</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Vitesse rotor</translation>
        </message>
        <message>
            <source>now {energy} mJ</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>maintenant {energy} mJ</translation>
        </message>
        <message>
            <source>rests: neutral</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>repos : neutre</translation>
        </message>
        <message>
            <source>balances but does not rest: full register</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>équilibre sans repos : plein alignement</translation>
        </message>
        <message>
            <source>{fires} BTDC, {off} early: magneto flange {magneto}, disc {disc}</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>{fires} avant PMH, {off} d'avance : bride de la magnéto {magneto}, disque {disc}</translation>
        </message>
        <message>
            <source>{fires} BTDC, {off} late: magneto flange {magneto}, disc {disc}</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>{fires} avant PMH, {off} de retard : bride de la magnéto {magneto}, disque {disc}</translation>
        </message>
        <message>
            <source>{moves} timings near the wanted one; the nearest: {nearest}.</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>{moves} calages proches du voulu ; le plus proche : {nearest}.</translation>
        </message>
        <message>
            <source>fires [crank deg BTDC], earlier to the right</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>allumage [° vilebrequin avant PMH], plus tôt à droite</translation>
        </message>
        <message>
            <source>teeth moved, both faces</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>dents déplacées, deux faces</translation>
        </message>
        <message>
            <source>now</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>actuel</translation>
        </message>
        <message>
            <source>wanted {wanted} ± {tolerance}°</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>voulu {wanted} ± {tolerance}°</translation>
        </message>
        <message>
            <source>No timing can be planned.</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>Aucun calage ne peut être prévu.</translation>
        </message>
        <message>
            <source>What if the disc had other teeth: the installation stays as it is</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>Et si le disque avait d'autres dents : l'installation reste telle quelle</translation>
        </message>
        <message>
            <source>This magneto is not on an engine: open an installation.</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>Cette magnéto n'est pas sur un moteur : ouvrir une installation.</translation>
        </message>
        <message>
            <source>The contacts never open and close: there is no timing to plan from.</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>Les contacts ne s'ouvrent et ne se ferment jamais : il n'y a pas de calage d'où partir.</translation>
        </message>
        <message>
            <source>nearest</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>le plus proche</translation>
        </message>
        <message>
            <source>Teeth at the magneto, what if</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>Dents côté magnéto, essai</translation>
        </message>
        <message>
            <source>Teeth at the drive, what if</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>Dents côté entraînement, essai</translation>
        </message>
        <message>
            <source>now, nearest</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>actuel, le plus proche</translation>
        </message>
        <message>
            <source>Teeth: magneto</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>Dents : magnéto</translation>
        </message>
        <message>
            <source>drive</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>entraînement</translation>
        </message>
        <message>
            <source>present</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>actuel</translation>
        </message>
        <message>
            <source>designed</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>prévu</translation>
        </message>
        <message>
            <source>before</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>avant</translation>
        </message>
        <message>
            <source>Lift and gap</source>
            <extracomment>ui/plot_lift.py, ui/plot_pane.py</extracomment>
            <translation>Levée et écartement</translation>
        </message>
        <message>
            <source>rotor {rotor}: lift {lift}, {what}</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>rotor {rotor} : levée {lift}, {what}</translation>
        </message>
        <message>
            <source>Contacts open at {opens} and close at {closes} of rotor; largest gap {max_gap}.</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>Les contacts s'ouvrent à {opens} et se ferment à {closes} de rotor ; écartement max. {max_gap}.</translation>
        </message>
        <message>
            <source>lobe {lobe}: {opens}, largest gap {max_gap}</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>bossage {lobe} : {opens}, écartement max. {max_gap}</translation>
        </message>
        <message>
            <source>{good} of {lobes} lobes have their largest gap within limits.</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>{good} bossages sur {lobes} ont leur écartement maximal dans les limites.</translation>
        </message>
        <message>
            <source>gap [mm]</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>écartement [mm]</translation>
        </message>
        <message>
            <source>contact lift [{unit}]</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>levée des contacts [{unit}]</translation>
        </message>
        <message>
            <source>gap [{unit}]</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>écartement [{unit}]</translation>
        </message>
        <message>
            <source>stop: contacts touch</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>butée : contacts jointifs</translation>
        </message>
        <message>
            <source>limits of the largest gap</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>limites de l'écartement max.</translation>
        </message>
        <message>
            <source>gap {gap}</source>
            <extracomment>ui/plot_lift.py, ui/plot_window.py</extracomment>
            <translation>écartement {gap}</translation>
        </message>
        <message>
            <source>closed</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>fermés</translation>
        </message>
        <message>
            <source>at the mark: judged on lobe 1</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>au repère : jugé au bossage 1</translation>
        </message>
        <message>
            <source>at the mark</source>
            <extracomment>ui/plot_lift.py, ui/trials_panel.py</extracomment>
            <translation>au repère</translation>
        </message>
        <message>
            <source>limits</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>limites</translation>
        </message>
        <message>
            <source>never works the contacts</source>
            <extracomment>ui/plot_lift.py, ui/plot_window.py</extracomment>
            <translation>n'actionne jamais les contacts</translation>
        </message>
        <message>
            <source>{error} from its place</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>{error} de sa place</translation>
        </message>
        <message>
            <source>The contacts never open on lobe 1.</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>Les contacts ne s'ouvrent jamais au bossage 1.</translation>
        </message>
        <message>
            <source>The contacts never close.</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>Les contacts ne se ferment jamais.</translation>
        </message>
        <message>
            <source>lobe, in firing order</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>bossage, dans l'ordre d'allumage</translation>
        </message>
        <message>
            <source>Window</source>
            <extracomment>ui/plot_pane.py</extracomment>
            <translation>Fenêtre</translation>
        </message>
        <message>
            <source>Magnet</source>
            <extracomment>ui/plot_pane.py</extracomment>
            <translation>Aimant</translation>
        </message>
        <message>
            <source>Wear</source>
            <extracomment>ui/plot_pane.py, ui/plot_wear.py</extracomment>
            <translation>Usure</translation>
        </message>
        <message>
            <source>The plots are coming…</source>
            <extracomment>ui/plot_pane.py</extracomment>
            <translation>Les graphiques arrivent…</translation>
        </message>
        <message>
            <source>SVG (*.svg);;PNG (*.png);;Values as CSV (*.csv)</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation>SVG (*.svg);;PNG (*.png);;Valeurs en CSV (*.csv)</translation>
        </message>
        <message>
            <source>Values under the pointer</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation>Valeurs sous le pointeur</translation>
        </message>
        <message>
            <source>Copy the plots as a picture</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation>Copier les graphiques en image</translation>
        </message>
        <message>
            <source>Save the plots as SVG or PNG, or their values as CSV</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation>Enregistrer les graphiques en SVG ou PNG, ou leurs valeurs en CSV</translation>
        </message>
        <message>
            <source>The plots are copied.</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation>Les graphiques sont copiés.</translation>
        </message>
        <message>
            <source>Cop&amp;y</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation>&amp;Copier</translation>
        </message>
        <message>
            <source>Save…</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation>Enregistrer…</translation>
        </message>
        <message>
            <source>there are no values to save here</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation>il n'y a pas de valeurs à enregistrer ici</translation>
        </message>
        <message>
            <source>{name}: plots are saved as .svg or .png, their values as .csv</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation>{name} : les graphiques s'enregistrent en .svg ou .png, leurs valeurs en .csv</translation>
        </message>
        <message>
            <source>{name}: the picture could not be saved</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation>{name} : l'image n'a pu être enregistrée</translation>
        </message>
        <message>
            <source>plate {plate}: expect {gap}, 19 times in 20 between {low} and {high}</source>
            <extracomment>ui/plot_trials.py</extracomment>
            <translation>plateau {plate} : attendre {gap}, 19 fois sur 20 entre {low} et {high}</translation>
        </message>
        <message>
            <source>backplate, positive with rotation [deg]</source>
            <extracomment>ui/plot_trials.py, ui/plot_window.py</extracomment>
            <translation>plateau, positif dans le sens de rotation [°]</translation>
        </message>
        <message>
            <source>here: done</source>
            <extracomment>ui/plot_trials.py</extracomment>
            <translation>ici : terminé</translation>
        </message>
        <message>
            <source>next</source>
            <extracomment>ui/plot_trials.py</extracomment>
            <translation>suivant</translation>
        </message>
        <message>
            <source>through the trials</source>
            <extracomment>ui/plot_trials.py</extracomment>
            <translation>d'après les essais</translation>
        </message>
        <message>
            <source>as the file has it</source>
            <extracomment>ui/plot_trials.py</extracomment>
            <translation>d'après le fichier</translation>
        </message>
        <message>
            <source>19 times in 20</source>
            <extracomment>ui/plot_trials.py</extracomment>
            <translation>19 fois sur 20</translation>
        </message>
        <message>
            <source>running hours from now [h]</source>
            <extracomment>ui/plot_wear.py</extracomment>
            <translation>heures de marche à partir de maintenant [h]</translation>
        </message>
        <message>
            <source>next inspection</source>
            <extracomment>ui/plot_wear.py</extracomment>
            <translation>prochaine visite</translation>
        </message>
        <message>
            <source>true gap</source>
            <extracomment>ui/plot_wear.py</extracomment>
            <translation>vrai écartement</translation>
        </message>
        <message>
            <source>what a blade finds</source>
            <extracomment>ui/plot_wear.py</extracomment>
            <translation>ce que trouve une jauge</translation>
        </message>
        <message>
            <source>Adjustment window</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation>Fenêtre de réglage</translation>
        </message>
        <message>
            <source>plate {plate}, screw {screw}: {opens}, largest gap {gap}</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation>plateau {plate}, vis {screw} : {opens}, écartement max. {gap}</translation>
        </message>
        <message>
            <source>You are at {place}.</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation>Vous êtes à {place}.</translation>
        </message>
        <message>
            <source>contact screw [deg]</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation>vis de contact [°]</translation>
        </message>
        <message>
            <source>Heel wear</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation>Usure du toucheau</translation>
        </message>
        <message>
            <source>Wear the heel and see the window move: what is set now opens later, with a smaller gap</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation>User le toucheau et voir la fenêtre se déplacer : le réglage actuel ouvre plus tard, avec un écartement plus petit</translation>
        </message>
        <message>
            <source>(no heel arm in the file)</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation>(pas de bras du toucheau dans le fichier)</translation>
        </message>
        <message>
            <source>opens {off} late</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation>ouvre {off} en retard</translation>
        </message>
        <message>
            <source>opens {off} early</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation>ouvre {off} en avance</translation>
        </message>
        <message>
            <source>Heel worn</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation>Toucheau usé</translation>
        </message>
        <message>
            <source>kept in the attempt's file</source>
            <extracomment>ui/practice_choice.py</extracomment>
            <translation>conservé dans le fichier de la tentative</translation>
        </message>
        <message>
            <source>left empty: drawn at random; the same code gives the same faults</source>
            <extracomment>ui/practice_choice.py</extracomment>
            <translation>laissé vide : tiré au sort ; le même code donne les mêmes défauts</translation>
        </message>
        <message>
            <source>Lessons</source>
            <extracomment>ui/practice_choice.py</extracomment>
            <translation>Leçons</translation>
        </message>
        <message>
            <source>New exercise</source>
            <extracomment>ui/practice_choice.py</extracomment>
            <translation>Nouvel exercice</translation>
        </message>
        <message>
            <source>&amp;Trainee</source>
            <extracomment>ui/practice_choice.py</extracomment>
            <translation>&amp;Stagiaire</translation>
        </message>
        <message>
            <source>{steps} steps.</source>
            <extracomment>ui/practice_choice.py</extracomment>
            <translation>{steps} étapes.</translation>
        </message>
        <message>
            <source>About {minutes} minutes.</source>
            <extracomment>ui/practice_choice.py</extracomment>
            <translation>Environ {minutes} minutes.</translation>
        </message>
        <message>
            <source>&amp;2 Tray</source>
            <extracomment>ui/practice_controls.py</extracomment>
            <translation>&amp;2 Bac</translation>
        </message>
        <message>
            <source>&amp;3 Work</source>
            <extracomment>ui/practice_controls.py</extracomment>
            <translation>&amp;3 Travail</translation>
        </message>
        <message>
            <source>&amp;4 Notebook</source>
            <extracomment>ui/practice_controls.py</extracomment>
            <translation>&amp;4 Carnet</translation>
        </message>
        <message>
            <source>{part}: by how much</source>
            <extracomment>ui/practice_controls.py</extracomment>
            <translation>{part} : de combien</translation>
        </message>
        <message>
            <source>With Shift a tenth of the amount, with Alt ten times</source>
            <extracomment>ui/practice_controls.py</extracomment>
            <translation>Avec Maj, un dixième ; avec Alt, dix fois</translation>
        </message>
        <message>
            <source>Drag rotor, backplate and contact screw in the picture, or take one in hand with 1, 2, 3 and turn it with the arrow keys or the wheel: finer with Shift. Everything else is a button at the right; Alt and the underlined letter reaches it, Alt with 1 to 4 the tabs. Nothing here shows a true value: read the instruments. There is no undo.</source>
            <extracomment>ui/practice_menus.py</extracomment>
            <translation>Faire glisser rotor, plateau et vis de contact dans l'image, ou en prendre un en main avec 1, 2, 3 et le tourner aux flèches ou à la molette : plus fin avec Maj. Tout le reste est un bouton à droite ; Alt et la lettre soulignée l'atteignent, Alt avec 1 à 4 les onglets. Rien ici ne montre de valeur vraie : lire les instruments. Il n'y a pas d'annulation.</translation>
        </message>
        <message>
            <source>Save picture of the contacts…</source>
            <extracomment>ui/practice_menus.py</extracomment>
            <translation>Enregistrer l'image des contacts…</translation>
        </message>
        <message>
            <source>&amp;Save attempt as…</source>
            <extracomment>ui/practice_menus.py</extracomment>
            <translation>&amp;Enregistrer la tentative sous…</translation>
        </message>
        <message>
            <source>&amp;Hand in…</source>
            <extracomment>ui/practice_menus.py</extracomment>
            <translation>&amp;Remettre…</translation>
        </message>
        <message>
            <source>Save &amp;debrief…</source>
            <extracomment>ui/practice_menus.py</extracomment>
            <translation>Enregistrer le &amp;bilan…</translation>
        </message>
        <message>
            <source>Practice</source>
            <extracomment>ui/practice_menus.py</extracomment>
            <translation>Exercice</translation>
        </message>
        <message>
            <source>Atte&amp;mpt</source>
            <extracomment>ui/practice_menus.py</extracomment>
            <translation>&amp;Tentative</translation>
        </message>
        <message>
            <source>put a hand on the propeller first, and treat it as live: nobody else in its arc</source>
            <extracomment>ui/practice_model.py</extracomment>
            <translation>mettez d'abord une main à l'hélice, et traitez-la comme active : personne d'autre dans son champ</translation>
        </message>
        <message>
            <source>this is a replay: nothing in it can be changed</source>
            <extracomment>ui/practice_model.py</extracomment>
            <translation>ceci est une relecture : rien n'y peut être changé</translation>
        </message>
        <message>
            <source>Straightedge past the mark as the contacts open</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>Réglet après le repère à l'ouverture des contacts</translation>
        </message>
        <message>
            <source>Disc reads at top dead centre</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>Lecture du disque au point mort haut</translation>
        </message>
        <message>
            <source>Remark</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>Remarque</translation>
        </message>
        <message>
            <source>short inside the magneto</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>court-circuit dans la magnéto</translation>
        </message>
        <message>
            <source>spring tab does not touch</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>languette ressort sans contact</translation>
        </message>
        <message>
            <source>such as 0.8 mm or −30 thou; short of it: with a minus</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>par exemple 0.8 mm ou −30 thou ; avant lui : avec un moins</translation>
        </message>
        <message>
            <source>such as 0.33 mm or 13 thou</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>such as 25.5°</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>par exemple 25.5°</translation>
        </message>
        <message>
            <source>such as −3.25°; after the zero: with a minus</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>par exemple −3.25° ; après le zéro : avec un moins</translation>
        </message>
        <message>
            <source>one line</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>une ligne</translation>
        </message>
        <message>
            <source>Write down</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>Noter</translation>
        </message>
        <message>
            <source>What is wrong with the entry</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>Ce qui ne va pas dans la saisie</translation>
        </message>
        <message>
            <source>Writ&amp;e it down</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>&amp;Noter</translation>
        </message>
        <message>
            <source>Wha&amp;t</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>&amp;Quoi</translation>
        </message>
        <message>
            <source>Ma&amp;gneto</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>Ma&amp;gnéto</translation>
        </message>
        <message>
            <source>Lo&amp;be</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>&amp;Bossage</translation>
        </message>
        <message>
            <source>&amp;Reading</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>&amp;Lecture</translation>
        </message>
        <message>
            <source>&amp;Finding</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>&amp;Constat</translation>
        </message>
        <message>
            <source>Notebook</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>Carnet</translation>
        </message>
        <message>
            <source>“{text}” is not a lobe: write a whole number from 1 to {lobes} here, and the reading below</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>« {text} » n'est pas un bossage : écrire ici un nombre entier de 1 à {lobes}, et le relevé en dessous</translation>
        </message>
        <message>
            <source>Left magneto</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>Magnéto gauche</translation>
        </message>
        <message>
            <source>Right magneto</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>Magnéto droite</translation>
        </message>
        <message>
            <source>there is nothing to write down yet</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>il n'y a encore rien à noter</translation>
        </message>
        <message>
            <source>Attempts (*.json);;All files (*)</source>
            <extracomment>ui/practice_room.py</extracomment>
            <translation>Tentatives (*.json);;Tous les fichiers (*)</translation>
        </message>
        <message>
            <source>Open an attempt</source>
            <extracomment>ui/practice_room.py</extracomment>
            <translation>Ouvrir une tentative</translation>
        </message>
        <message>
            <source>An attempt at “{name}” was under way when the program ended.</source>
            <extracomment>ui/practice_room.py</extracomment>
            <translation>Une tentative de « {name} » était en cours quand le programme s'est arrêté.</translation>
        </message>
        <message>
            <source>&amp;Go on with it</source>
            <extracomment>ui/practice_room.py</extracomment>
            <translation>&amp;Continuer</translation>
        </message>
        <message>
            <source>&amp;Discard it</source>
            <extracomment>ui/practice_room.py</extracomment>
            <translation>&amp;Abandonner</translation>
        </message>
        <message>
            <source>Treat the propeller as live: switch off and its lead proved, plugs out, wheels chocked, nobody in its arc.</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Traiter l'hélice comme active : contacteur sur arrêt et son fil prouvé, bougies déposées, roues calées, personne dans son champ.</translation>
        </message>
        <message>
            <source>by so much</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>d'autant</translation>
        </message>
        <message>
            <source>until lamp changes</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>au changement de lampe</translation>
        </message>
        <message>
            <source>until edge in line</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>à l'arête alignée</translation>
        </message>
        <message>
            <source>until widest open</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>au plus ouvert</translation>
        </message>
        <message>
            <source>until piston stops</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>à la butée du piston</translation>
        </message>
        <message>
            <source>to a disc reading</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>à une lecture du disque</translation>
        </message>
        <message>
            <source>propeller by so much</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>hélice d'autant</translation>
        </message>
        <message>
            <source>Timing lamp</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Lampe de calage</translation>
        </message>
        <message>
            <source>What you see</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Ce que vous voyez</translation>
        </message>
        <message>
            <source>Turning</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Rotation</translation>
        </message>
        <message>
            <source>Hol&amp;d the rotor</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>&amp;Tenir le rotor</translation>
        </message>
        <message>
            <source>How far to turn</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>De combien tourner</translation>
        </message>
        <message>
            <source>By how many degrees, or to which reading before the disc's zero</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>De combien de degrés, ou jusqu'à quelle lecture avant le zéro du disque</translation>
        </message>
        <message>
            <source>Hand on the &amp;propeller</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Main sur l'&amp;hélice</translation>
        </message>
        <message>
            <source>Lamp</source>
            <extracomment>ui/practice_sight.py, lessons/a-full-job.json</extracomment>
            <translation>Lampe</translation>
        </message>
        <message>
            <source>Finger</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Doigt</translation>
        </message>
        <message>
            <source>Magneto in view</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Magnéto affichée</translation>
        </message>
        <message>
            <source>◀ &amp;Against</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>◀ In&amp;verse</translation>
        </message>
        <message>
            <source>&amp;With ▶</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>&amp;Sens ▶</translation>
        </message>
        <message>
            <source>Turn against rotation</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Tourner en sens inverse de la rotation</translation>
        </message>
        <message>
            <source>Turn with rotation</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Tourner dans le sens de rotation</translation>
        </message>
        <message>
            <source>{way}; by so much: with Shift a tenth of it, with Alt ten times</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>{way} ; d'autant : avec Maj un dixième, avec Alt dix fois</translation>
        </message>
        <message>
            <source>Turning the propeller</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Rotation de l'hélice</translation>
        </message>
        <message>
            <source>About {minutes} minutes. Time is a guide and is not marked.</source>
            <extracomment>ui/practice_task.py</extracomment>
            <translation>Environ {minutes} minutes. Le temps est indicatif et n'est pas noté.</translation>
        </message>
        <message>
            <source>No more hints</source>
            <extracomment>ui/practice_task.py</extracomment>
            <translation>Plus d'indices</translation>
        </message>
        <message>
            <source>A hi&amp;nt ({left} left)</source>
            <extracomment>ui/practice_task.py</extracomment>
            <translation>Un i&amp;ndice (reste {left})</translation>
        </message>
        <message>
            <source>Another hi&amp;nt ({left} left)</source>
            <extracomment>ui/practice_task.py</extracomment>
            <translation>Autre i&amp;ndice (reste {left})</translation>
        </message>
        <message>
            <source>{percent} % are needed, and no dangerous act. Right, and proved by instruments since the last act that could have changed it, counts whole; right but not proved, half.</source>
            <extracomment>ui/practice_task.py</extracomment>
            <translation>{percent} % sont exigés, et aucune action dangereuse. Juste, et prouvé aux instruments depuis la dernière action qui aurait pu le changer, compte entier ; juste mais non prouvé, la moitié.</translation>
        </message>
        <message>
            <source>Set of blades</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Jeu de jauges</translation>
        </message>
        <message>
            <source>Straightedge, marks of {divisions}</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Réglet, repères de {divisions}</translation>
        </message>
        <message>
            <source>Laid along the &amp;step</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Posé le long de l'é&amp;paulement</translation>
        </message>
        <message>
            <source>Look s&amp;quare over it</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Viser d'é&amp;querre</translation>
        </message>
        <message>
            <source>From where the eye looks over the straightedge</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>D'où l'œil vise par-dessus le réglet</translation>
        </message>
        <message>
            <source>Behind, square over the edge, ahead</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>En arrière, d'équerre sur l'arête, en avant</translation>
        </message>
        <message>
            <source>Electrical</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Électrique</translation>
        </message>
        <message>
            <source>Crank</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Vilebrequin</translation>
        </message>
        <message>
            <source>Th&amp;umb over No. 1's plug hole</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Po&amp;uce sur le trou de bougie du n° 1</translation>
        </message>
        <message>
            <source>&amp;Try them</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>&amp;Essayer</translation>
        </message>
        <message>
            <source>Put &amp;back</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Repo&amp;ser</translation>
        </message>
        <message>
            <source>Blade {blade}</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Jauge {blade}</translation>
        </message>
        <message>
            <source>In hand: {blades}</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>En main : {blades}</translation>
        </message>
        <message>
            <source>Pick up to three</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>En prendre jusqu'à trois</translation>
        </message>
        <message>
            <source>Lamp a&amp;cross the contacts</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Lampe &amp;aux bornes des contacts</translation>
        </message>
        <message>
            <source>Meter the &amp;lead to the case</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Ohmmètre, fi&amp;l au carter</translation>
        </message>
        <message>
            <source>From the pulled plug of the switch lead to the case</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>De la fiche débranchée du fil de masse au carter</translation>
        </message>
        <message>
            <source>Disc on the cra&amp;nk</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Disque sur le &amp;vilebrequin</translation>
        </message>
        <message>
            <source>Turn the disc on the crank, so that it reads earlier or later under its pointer</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Tourner le disque sur le vilebrequin, pour qu'il lise plus tôt ou plus tard sous son index</translation>
        </message>
        <message>
            <source>Piston st&amp;op in No. 1</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>&amp;Butée de piston au n° 1</translation>
        </message>
        <message>
            <source>Thousandths of an inch</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Millièmes de pouce</translation>
        </message>
        <message>
            <source>There is nothing on the tray: eyes and hands are enough here.</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Il n'y a rien dans le bac : les yeux et les mains suffisent ici.</translation>
        </message>
        <message>
            <source>behind</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>en arrière</translation>
        </message>
        <message>
            <source>ahead</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>en avant</translation>
        </message>
        <message>
            <source>reads later</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>lit plus tard</translation>
        </message>
        <message>
            <source>reads earlier</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>lit plus tôt</translation>
        </message>
        <message>
            <source>magview {version}: a training aid.</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>magview {version} : une aide à la formation.</translation>
        </message>
        <message>
            <source>Hand &amp;in…</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>&amp;Remettre…</translation>
        </message>
        <message>
            <source>Hand in now?</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>Remettre maintenant ?</translation>
        </message>
        <message>
            <source>Hand in</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>Remettre</translation>
        </message>
        <message>
            <source>Save the attempt</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>Enregistrer la tentative</translation>
        </message>
        <message>
            <source>Attempts (*.json)</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>Tentatives (*.json)</translation>
        </message>
        <message>
            <source>Save the debrief</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>Enregistrer le bilan</translation>
        </message>
        <message>
            <source>This attempt has not been saved.</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>Cette tentative n'a pas été enregistrée.</translation>
        </message>
        <message>
            <source>&amp;1 Lesson</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>&amp;1 Leçon</translation>
        </message>
        <message>
            <source>&amp;1 Task</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>&amp;1 Tâche</translation>
        </message>
        <message>
            <source>&amp;Hand in</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>&amp;Remettre</translation>
        </message>
        <message>
            <source>&amp;Go on working</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>&amp;Continuer</translation>
        </message>
        <message>
            <source>Then the true values are shown, and nothing more can be done.</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>Les valeurs vraies sont alors montrées, et rien de plus ne peut être fait.</translation>
        </message>
        <message>
            <source>practice</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>exercice</translation>
        </message>
        <message>
            <source>The attempt cannot be kept for after a crash: {error}</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>La tentative ne peut être conservée en cas de plantage : {error}</translation>
        </message>
        <message>
            <source>Loc&amp;k screw tight</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Vis de bloca&amp;ge serrée</translation>
        </message>
        <message>
            <source>C&amp;lamp screws tight</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Vis de se&amp;rrage serrées</translation>
        </message>
        <message>
            <source>Contact &amp;screw</source>
            <extracomment>ui/practice_work.py, ui/setting_panel.py</extracomment>
            <translation>&amp;Vis de contact</translation>
        </message>
        <message>
            <source>&amp;Backplate</source>
            <extracomment>ui/practice_work.py, ui/setting_panel.py</extracomment>
            <translation>&amp;Plateau</translation>
        </message>
        <message>
            <source>Look at the &amp;contacts</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>E&amp;xaminer les contacts</translation>
        </message>
        <message>
            <source>D&amp;ress them</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Rectif&amp;ier</translation>
        </message>
        <message>
            <source>Plu&amp;g pulled out</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Fic&amp;he débranchée</translation>
        </message>
        <message>
            <source>Paper under the spring tab</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Papier sous la languette ressort</translation>
        </message>
        <message>
            <source>Engine and magneto</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Moteur et magnéto</translation>
        </message>
        <message>
            <source>Wh&amp;eels chocked</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Roues &amp;calées</translation>
        </message>
        <message>
            <source>Spark plugs o&amp;ut</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>&amp;Bougies déposées</translation>
        </message>
        <message>
            <source>&amp;Nuts tight</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>É&amp;crous serrés</translation>
        </message>
        <message>
            <source>Rotor pinned</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Rotor pigé</translation>
        </message>
        <message>
            <source>Lift the magneto o&amp;ff</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>&amp;Déposer la magnéto</translation>
        </message>
        <message>
            <source>Refit by its marks</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Remonter selon ses repères</translation>
        </message>
        <message>
            <source>Refit as the rotor stands</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Remonter selon le rotor</translation>
        </message>
        <message>
            <source>Coupling, one tooth at a time</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Accouplement, une dent à la fois</translation>
        </message>
        <message>
            <source>Paint marks across i&amp;t</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Peindre des repères en &amp;travers</translation>
        </message>
        <message>
            <source>Screw {screw}; plate {plate}.</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Vis {screw} ; plateau {plate}.</translation>
        </message>
        <message>
            <source>◀ against</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>◀ inverse</translation>
        </message>
        <message>
            <source>with ▶</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>sens ▶</translation>
        </message>
        <message>
            <source>New lead</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Fil neuf</translation>
        </message>
        <message>
            <source>New spring tab</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Languette ressort neuve</translation>
        </message>
        <message>
            <source>New insulation</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Isolation neuve</translation>
        </message>
        <message>
            <source>Magneto flange</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Bride de la magnéto</translation>
        </message>
        <message>
            <source>Present</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Présenter</translation>
        </message>
        <message>
            <source>◀ Previous</source>
            <extracomment>ui/present.py</extracomment>
            <translation>◀ Précédent</translation>
        </message>
        <message>
            <source>Name the part before</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Nommer la pièce d'avant</translation>
        </message>
        <message>
            <source>Next ▶</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Suivant ▶</translation>
        </message>
        <message>
            <source>Name the next part; or click a part</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Nommer la pièce suivante ; ou cliquer sur une pièce</translation>
        </message>
        <message>
            <source>Spotlight</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Projecteur</translation>
        </message>
        <message>
            <source>Dim all but the part that is named</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Assombrir tout sauf la pièce nommée</translation>
        </message>
        <message>
            <source>Freeze</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Figer</translation>
        </message>
        <message>
            <source>The picture stands; the bench moves on</source>
            <extracomment>ui/present.py</extracomment>
            <translation>L'image reste ; le banc continue</translation>
        </message>
        <message>
            <source>Hide numbers</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Cacher les nombres</translation>
        </message>
        <message>
            <source>No numbers until they are asked for</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Pas de nombres tant qu'on ne les demande pas</translation>
        </message>
        <message>
            <source>Keep this moment</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Garder cet instant</translation>
        </message>
        <message>
            <source>Remember the bench as it is</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Retenir le banc tel qu'il est</translation>
        </message>
        <message>
            <source>Before and after</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Avant et après</translation>
        </message>
        <message>
            <source>The kept moment beside now</source>
            <extracomment>ui/present.py</extracomment>
            <translation>L'instant gardé à côté du présent</translation>
        </message>
        <message>
            <source>End</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Fin</translation>
        </message>
        <message>
            <source>Put away what is shown, then end</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Ranger ce qui est montré, puis finir</translation>
        </message>
        <message>
            <source>  {number} of {count}  </source>
            <extracomment>ui/present.py</extracomment>
            <translation>  {number} sur {count}  </translation>
        </message>
        <message>
            <source>{part}: {told}</source>
            <extracomment>ui/present.py</extracomment>
            <translation>{part} : {told}</translation>
        </message>
        <message>
            <source>No part is named yet</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Aucune pièce n'est encore nommée</translation>
        </message>
        <message>
            <source>This moment is kept: “Before and after” shows it beside the bench.</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Cet instant est gardé : « Avant et après » le montre à côté du banc.</translation>
        </message>
        <message>
            <source>FROZEN · the bench has moved on</source>
            <extracomment>ui/present_covers.py</extracomment>
            <translation>FIGÉ · le banc a continué</translation>
        </message>
        <message>
            <source>FROZEN · as on the bench</source>
            <extracomment>ui/present_covers.py</extracomment>
            <translation>FIGÉ · comme au banc</translation>
        </message>
        <message>
            <source>This is the moment that was kept: it does not move.</source>
            <extracomment>ui/present_covers.py</extracomment>
            <translation>C'est l'instant gardé : il ne bouge pas.</translation>
        </message>
        <message>
            <source>Before</source>
            <extracomment>ui/present_covers.py</extracomment>
            <translation>Avant</translation>
        </message>
        <message>
            <source>Now</source>
            <extracomment>ui/present_covers.py</extracomment>
            <translation>Maintenant</translation>
        </message>
        <message>
            <source>{title}: breaker end of the magneto</source>
            <extracomment>ui/present_covers.py</extracomment>
            <translation>{title} : côté rupteur de la magnéto</translation>
        </message>
        <message>
            <source>Nothing has changed.</source>
            <extracomment>ui/present_covers.py</extracomment>
            <translation>Rien n'a changé.</translation>
        </message>
        <message>
            <source>{title} · magview {version} · page {number} of {count}</source>
            <extracomment>ui/print_guide.py</extracomment>
            <translation>{title} · magview {version} · page {number} sur {count}</translation>
        </message>
        <message>
            <source>page {page} of {pages}</source>
            <extracomment>ui/print_pdf.py</extracomment>
            <translation>page {page} sur {pages}</translation>
        </message>
        <message>
            <source>{language} from the next start: other windows are open now.</source>
            <extracomment>ui/renewal.py</extracomment>
            <translation>{language} au prochain démarrage : d'autres fenêtres sont ouvertes.</translation>
        </message>
        <message>
            <source>Reports stay on this computer and are sent nowhere; they hold no names and no words you typed. Whoever looks after the program can make use of one: save it, and hand it on if you wish.</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>Les rapports restent sur cet ordinateur et ne sont envoyés nulle part ; ils ne contiennent ni noms ni mots saisis. Qui s'occupe du programme peut s'en servir : en enregistrer un et le transmettre si vous le souhaitez.</translation>
        </message>
        <message>
            <source>Fault reports</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>Rapports d'erreur</translation>
        </message>
        <message>
            <source>When the program ran last, something in it went wrong. A report of it was kept.</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>À la dernière exécution du programme, un problème s'y est produit. Un rapport en a été conservé.</translation>
        </message>
        <message>
            <source>What went wrong in the program itself.</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>Ce qui s'est mal passé dans le programme lui-même.</translation>
        </message>
        <message>
            <source>Report</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>Rapport</translation>
        </message>
        <message>
            <source>What the report says</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>Ce que dit le rapport</translation>
        </message>
        <message>
            <source>&amp;Delete</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>&amp;Supprimer</translation>
        </message>
        <message>
            <source>Save the report</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>Enregistrer le rapport</translation>
        </message>
        <message>
            <source>Deleted.</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>Supprimé.</translation>
        </message>
        <message>
            <source>There is no report.</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>Il n'y a pas de rapport.</translation>
        </message>
        <message>
            <source>{file}: cannot be deleted: {reason}</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>{file} : suppression impossible : {reason}</translation>
        </message>
        <message>
            <source>Training and planning aid with invented magnetos. Treat the propeller as live: switch off, switch lead grounded and proved, plugs out, wheels chocked. The maker's current manual and local rules govern; work on a certified aircraft is done or released by a licensed person.</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Aide à la formation et à la préparation, avec des magnétos inventées. Traiter l'hélice comme active : contacteur sur arrêt, fil de masse à la masse et prouvé, bougies déposées, roues calées. Le manuel en vigueur du constructeur et les règles locales font foi ; le travail sur un aéronef certifié est fait ou libéré par une personne licenciée.</translation>
        </message>
        <message>
            <source>just open</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>s'ouvrent</translation>
        </message>
        <message>
            <source>just close</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>se ferment</translation>
        </message>
        <message>
            <source>Setting</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Réglage</translation>
        </message>
        <message>
            <source>From the neutral before No. 1 fires, positive as it turns in service</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Depuis le neutre avant l'allumage du n° 1, positif dans le sens de service</translation>
        </message>
        <message>
            <source>Positive with cam rotation; it stops at the end of its slot</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Positif dans le sens de la came ; s'arrête au bout de sa lumière</translation>
        </message>
        <message>
            <source>Positive brings the contacts closer. Dragged in the picture it follows one to one from 40 pixels out; at its head about a sixth, for fine setting</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Positif rapproche les contacts. Tirée dans l'image, elle suit un pour un à partir de 40 pixels ; sur sa tête environ un sixième, pour le réglage fin</translation>
        </message>
        <message>
            <source>Hol&amp;d</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>&amp;Tenir</translation>
        </message>
        <message>
            <source>Let go, and the magnet pulls the rotor to where it wants it</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Lâché, l'aimant tire le rotor où il veut</translation>
        </message>
        <message>
            <source>To the E-gap</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>À l'E-gap</translation>
        </message>
        <message>
            <source>To &amp;opening</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>À l'&amp;ouverture</translation>
        </message>
        <message>
            <source>Clamp screws of the backplate tight</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Vis de serrage du plateau serrées</translation>
        </message>
        <message>
            <source>Clamp screws: the plate turns only while they are slack</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Vis de serrage : le plateau ne tourne que lorsqu'elles sont desserrées</translation>
        </message>
        <message>
            <source>Lock screw of the contact screw tight</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Vis de blocage de la vis de contact serrée</translation>
        </message>
        <message>
            <source>Lock screw: the contact screw turns only while it is slack; tightening can shift it</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Vis de blocage : la vis de contact ne tourne que lorsqu'elle est desserrée ; le serrage peut la décaler</translation>
        </message>
        <message>
            <source>Tight</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Serrées</translation>
        </message>
        <message>
            <source>Go</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Aller</translation>
        </message>
        <message>
            <source>Turn</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Tourner</translation>
        </message>
        <message>
            <source>Run until</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Tourner jusqu'à</translation>
        </message>
        <message>
            <source>on and on</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>sans fin</translation>
        </message>
        <message>
            <source>Speed of the run</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Vitesse de marche</translation>
        </message>
        <message>
            <source>Ru&amp;n</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>&amp;Marche</translation>
        </message>
        <message>
            <source>Readings, lobe 1</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Lectures, bossage 1</translation>
        </message>
        <message>
            <source>What would put it right</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Ce qui le corrigerait</translation>
        </message>
        <message>
            <source>For a l&amp;argest gap of</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Pour un écartement m&amp;aximal de</translation>
        </message>
        <message>
            <source>Set it so</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Régler ainsi</translation>
        </message>
        <message>
            <source>Every lobe, in firing order</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Chaque bossage, dans l'ordre d'allumage</translation>
        </message>
        <message>
            <source>Rotor degrees; the gap is the largest, at the top of the lobe</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Degrés de rotor ; l'écartement est le maximal, au sommet du bossage</translation>
        </message>
        <message>
            <source>Readings of every lobe</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Lectures de chaque bossage</translation>
        </message>
        <message>
            <source>{gap} (blade {blade})</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>{gap} (jauge {blade})</translation>
        </message>
        <message>
            <source>clamp screws</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>vis de serrage</translation>
        </message>
        <message>
            <source>Opens</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Ouvre</translation>
        </message>
        <message>
            <source>Error</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Erreur</translation>
        </message>
        <message>
            <source>Closes</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Ferme</translation>
        </message>
        <message>
            <source>Dwell</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Dwell</translation>
        </message>
        <message>
            <source>Gap</source>
            <extracomment>ui/setting_panel.py, ui/trials_panel.py</extracomment>
            <translation>Écart</translation>
        </message>
        <message>
            <source>{low}° to {high}°</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>{low}° à {high}°</translation>
        </message>
        <message>
            <source>{opens} of rotor</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>{opens} de rotor</translation>
        </message>
        <message>
            <source>✗ Out of limits: {faults}</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>✗ Hors limites : {faults}</translation>
        </message>
        <message>
            <source>✓ Within limits</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>✓ Dans les limites</translation>
        </message>
        <message>
            <source>within limits, {limit}</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>dans les limites, {limit}</translation>
        </message>
        <message>
            <source>out of limits, {limit}</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>hors limites, {limit}</translation>
        </message>
        <message>
            <source>Stop</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Arrêt</translation>
        </message>
        <message>
            <source>With this setting lobe 1 never opens or never closes the contacts.</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Avec ce réglage, le bossage 1 n'ouvre ou ne ferme jamais les contacts.</translation>
        </message>
        <message>
            <source>Contacts open at</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Ouverture des contacts</translation>
        </message>
        <message>
            <source>From the E-gap</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Depuis l'E-gap</translation>
        </message>
        <message>
            <source>Straightedge off mark</source>
            <extracomment>ui/setting_panel.py, ui/uncertainty_panel.py</extracomment>
            <translation>Réglet hors repère</translation>
        </message>
        <message>
            <source>Closed for (dwell)</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Fermés (dwell)</translation>
        </message>
        <message>
            <source>at it</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>juste dessus</translation>
        </message>
        <message>
            <source>Top dead centre from two stop readings</source>
            <extracomment>ui/stop_box.py</extracomment>
            <translation>Point mort haut d'après deux lectures à la butée</translation>
        </message>
        <message>
            <source>Top dead centre on the disc</source>
            <extracomment>ui/stop_box.py</extracomment>
            <translation>Point mort haut au disque</translation>
        </message>
        <message>
            <source>True top dead centre is at {middle}° on the disc; set the pointer to zero there. (Disc numbered 0 to 360°, or to both sides with what is before zero negative. If the stop was met about bottom dead centre, the top is at {opposite}°. Exact for a rod on the crank pin: use the master rod's.)</source>
            <extracomment>ui/stop_box.py</extracomment>
            <translation>Le vrai point mort haut est à {middle}° au disque ; y mettre l'index à zéro. (Disque numéroté de 0 à 360°, ou des deux côtés, négatif avant zéro. Si la butée a été touchée autour du point mort bas, le haut est à {opposite}°. Exact pour une bielle sur le maneton : prendre celle de la bielle maîtresse.)</translation>
        </message>
        <message>
            <source>First</source>
            <extracomment>ui/stop_box.py</extracomment>
            <translation>Première</translation>
        </message>
        <message>
            <source>Second</source>
            <extracomment>ui/stop_box.py</extracomment>
            <translation>Seconde</translation>
        </message>
        <message>
            <source>With rotation is {way} seen from the drive end.</source>
            <extracomment>ui/teeth_box.py</extracomment>
            <translation>Le sens de rotation est {way}, vu côté entraînement.</translation>
        </message>
        <message>
            <source>Teeth moved from as found</source>
            <extracomment>ui/teeth_box.py, ui/timing_panel.py</extracomment>
            <translation>Dents déplacées depuis l'état trouvé</translation>
        </message>
        <message>
            <source>&amp;As found</source>
            <extracomment>ui/teeth_box.py</extracomment>
            <translation>&amp;Tel que trouvé</translation>
        </message>
        <message>
            <source>Paint new &amp;marks</source>
            <extracomment>ui/teeth_box.py</extracomment>
            <translation>Nouveaux re&amp;pères</translation>
        </message>
        <message>
            <source>Marks in line across drive flange, disc and magneto flange, as they stand now</source>
            <extracomment>ui/teeth_box.py</extracomment>
            <translation>Repères en ligne en travers de la bride d'entraînement, du disque et de la bride de la magnéto, dans leur état actuel</translation>
        </message>
        <message>
            <source>{name}: one tooth against rotation</source>
            <extracomment>ui/teeth_box.py</extracomment>
            <translation>{name} : une dent en sens inverse de la rotation</translation>
        </message>
        <message>
            <source>{name}: one tooth with rotation</source>
            <extracomment>ui/teeth_box.py</extracomment>
            <translation>{name} : une dent dans le sens de rotation</translation>
        </message>
        <message>
            <source>Disc on the drive</source>
            <extracomment>ui/teeth_box.py</extracomment>
            <translation>Disque sur l'entraînement</translation>
        </message>
        <message>
            <source>Before turning the crank: switch off, switch lead grounded and proved, plugs out, wheels chocked, nobody in the propeller's arc. Paint marks on disc, both flanges and engine before taking anything apart; move one tooth at a time; approach every reading in the direction of rotation, so that backlash is taken up. The maker's current manual and local rules govern.</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>Avant de tourner le vilebrequin : contacteur sur arrêt, fil de masse à la masse et prouvé, bougies déposées, roues calées, personne dans le champ de l'hélice. Peindre des repères sur le disque, les deux brides et le moteur avant tout démontage ; déplacer une dent à la fois ; approcher chaque lecture dans le sens de rotation, pour rattraper le jeu. Le manuel en vigueur du constructeur et les règles locales font foi.</translation>
        </message>
        <message>
            <source>Teeth moved from as found, left magneto</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>Dents déplacées depuis l'état trouvé, magnéto gauche</translation>
        </message>
        <message>
            <source>Moves that would put it right, best first, left magneto</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>Déplacements qui corrigeraient, le meilleur d'abord, magnéto gauche</translation>
        </message>
        <message>
            <source>Teeth moved from as found, right magneto</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>Dents déplacées depuis l'état trouvé, magnéto droite</translation>
        </message>
        <message>
            <source>Moves that would put it right, best first, right magneto</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>Déplacements qui corrigeraient, le meilleur d'abord, magnéto droite</translation>
        </message>
        <message>
            <source>Left fires {left}°, right {right}° before top dead centre: {apart}. Wanted: {wanted}. That is {difference}° from it, {tolerance}° allowed.</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>Gauche allume à {left}°, droite à {right}° avant le point mort haut : {apart}. Voulu : {wanted}. L'écart est de {difference}°, {tolerance}° permis.</translation>
        </message>
        <message>
            <source>both together</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>les deux ensemble</translation>
        </message>
        <message>
            <source>left {angle}° earlier</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>gauche {angle}° plus tôt</translation>
        </message>
        <message>
            <source>right {angle}° earlier</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>droite {angle}° plus tôt</translation>
        </message>
        <message>
            <source>⚠ Treat the propeller as live: switch off, lead proved, plugs out, wheels chocked.</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>⚠ Traiter l'hélice comme active : contacteur sur arrêt, fil prouvé, bougies déposées, roues calées.</translation>
        </message>
        <message>
            <source>Take care: {mismatch}.</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>Attention : {mismatch}.</translation>
        </message>
        <message>
            <source>Plate</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Plateau</translation>
        </message>
        <message>
            <source>Opened</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Ouvre à</translation>
        </message>
        <message>
            <source>Degrees</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Degrés</translation>
        </message>
        <message>
            <source>Millimetres along the slot</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Millimètres le long de la lumière</translation>
        </message>
        <message>
            <source>Scale marks</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Traits de graduation</translation>
        </message>
        <message>
            <source>A trial: set to open at the E-gap</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Un essai : réglé pour ouvrir à l'E-gap</translation>
        </message>
        <message>
            <source>The thickest blade that passes at the top of lobe 1; 0 if none does</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>La jauge la plus épaisse qui passe au sommet du bossage 1 ; 0 si aucune</translation>
        </message>
        <message>
            <source>The thinnest blade that does not pass; 0 if every blade did</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>La jauge la plus fine qui ne passe pas ; 0 si toutes passaient</translation>
        </message>
        <message>
            <source>How far past the E-gap the contacts opened, if the straightedge showed it</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>De combien après l'E-gap les contacts s'ouvraient, si le réglet l'a montré</translation>
        </message>
        <message>
            <source>Plate rea&amp;d in</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Plateau l&amp;u en</translation>
        </message>
        <message>
            <source>The plate as it stands, and what blades in steps of a thousandth of an inch would find</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Le plateau tel qu'il est, et ce que trouveraient des jauges par millième de pouce</translation>
        </message>
        <message>
            <source>Stri&amp;ke out</source>
            <extracomment>ui/trials_panel.py, ui/wear_panel.py</extracomment>
            <translation>Ra&amp;yer</translation>
        </message>
        <message>
            <source>Strike out the trial that is chosen, or the last</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Rayer l'essai choisi, ou le dernier</translation>
        </message>
        <message>
            <source>What to do next</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Que faire ensuite</translation>
        </message>
        <message>
            <source>T&amp;urn the plate there</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>&amp;Y tourner le plateau</translation>
        </message>
        <message>
            <source>&amp;Save what was found…</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Enregi&amp;strer le résultat…</translation>
        </message>
        <message>
            <source>Turn the plate on the bench; then set the contacts to open at the E-gap again</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Tourner le plateau au banc ; puis remettre l'ouverture des contacts à l'E-gap</translation>
        </message>
        <message>
            <source>Save a magneto file of your own, with lift, rise and index as the trials tell</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Enregistrer un fichier de magnéto à soi, avec levée, montée et repère d'après les essais</translation>
        </message>
        <message>
            <source>Save what was found</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Enregistrer le résultat</translation>
        </message>
        <message>
            <source>Saved {name}: open it from the File menu.</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Enregistré {name} : l'ouvrir par le menu Fichier.</translation>
        </message>
        <message>
            <source>Plate, with rotation +</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Plateau, sens de rotation +</translation>
        </message>
        <message>
            <source>Along the slot</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Le long de la lumière</translation>
        </message>
        <message>
            <source>Slot's radius</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Rayon de la lumière</translation>
        </message>
        <message>
            <source>Marks, with rotation +</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Repères, sens de rotation +</translation>
        </message>
        <message>
            <source>Between two marks</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Entre deux repères</translation>
        </message>
        <message>
            <source>&amp;Blade that passes</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Jauge &amp;qui passe</translation>
        </message>
        <message>
            <source>Blade that does n&amp;ot</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Jauge qui ne &amp;passe pas</translation>
        </message>
        <message>
            <source>Opened late by</source>
            <extracomment>ui/trials_panel.py, ui/wear_panel.py</extracomment>
            <translation>Retard d'ouverture</translation>
        </message>
        <message>
            <source>Fro&amp;m the bench</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Pris du &amp;banc</translation>
        </message>
        <message>
            <source>&amp;Note the trial</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>&amp;Noter l'essai</translation>
        </message>
        <message>
            <source>the blade that passes must be thinner than the one that does not</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>la jauge qui passe doit être plus fine que celle qui ne passe pas</translation>
        </message>
        <message>
            <source>No advice: {refusal}.</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Pas de conseil : {refusal}.</translation>
        </message>
        <message>
            <source>over {low}</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>plus de {low}</translation>
        </message>
        <message>
            <source>✓ Done</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>✓ Terminé</translation>
        </message>
        <message>
            <source>{chance} % likely within limits there</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>{chance} % de chances d'y être dans les limites</translation>
        </message>
        <message>
            <source>Comes to</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Donne</translation>
        </message>
        <message>
            <source>Share</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Part</translation>
        </message>
        <message>
            <source>What was read</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Ce qui a été lu</translation>
        </message>
        <message>
            <source>&amp;Measurement</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>&amp;Mesure</translation>
        </message>
        <message>
            <source>Straightedge from the rim mark, positive past it: the contacts open late</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Réglet au repère du bord, positif après lui : les contacts s'ouvrent en retard</translation>
        </message>
        <message>
            <source>The thickest blade that passes the widest gap</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>La jauge la plus épaisse qui passe l'écartement maximal</translation>
        </message>
        <message>
            <source>Take from the &amp;bench</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Prendre du &amp;banc</translation>
        </message>
        <message>
            <source>What these instruments would read of the bench as it stands</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Ce que ces instruments liraient au banc tel qu'il est</translation>
        </message>
        <message>
            <source>With what</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Avec quoi</translation>
        </message>
        <message>
            <source>How sure it is</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Degré de sûreté</translation>
        </message>
        <message>
            <source>Number of Monte Carlo draws</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Nombre de tirages Monte-Carlo</translation>
        </message>
        <message>
            <source>Draw every reading at random within what its instrument allows, and count</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Tirer au sort chaque lecture dans ce que permet son instrument, et compter</translation>
        </message>
        <message>
            <source>Progress of the Monte Carlo</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Progression du Monte-Carlo</translation>
        </message>
        <message>
            <source>Uncertainty budget of the least sure quantity</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Bilan d'incertitude de la grandeur la moins sûre</translation>
        </message>
        <message>
            <source>by Monte Carlo</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>par Monte-Carlo</translation>
        </message>
        <message>
            <source>{name}, the least sure of them</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>{name}, la moins sûre de toutes</translation>
        </message>
        <message>
            <source>by linear propagation</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>par propagation linéaire</translation>
        </message>
        <message>
            <source>{chance} likely within limits ({how})</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>{chance} de chances d'être dans les limites ({how})</translation>
        </message>
        <message>
            <source>Blade that passes</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Jauge qui passe</translation>
        </message>
        <message>
            <source>Disc at the first stop</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Disque à la première butée</translation>
        </message>
        <message>
            <source>Disc at the second stop</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Disque à la seconde butée</translation>
        </message>
        <message>
            <source>Disc, left opens</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Disque, gauche ouvre</translation>
        </message>
        <message>
            <source>Disc, right opens</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Disque, droite ouvre</translation>
        </message>
        <message>
            <source>M&amp;onte Carlo</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>M&amp;onte-Carlo</translation>
        </message>
        <message>
            <source>Ca&amp;ncel</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>A&amp;nnuler</translation>
        </message>
        <message>
            <source>where they disagree, go by the Monte Carlo</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>s'ils divergent, suivre le Monte-Carlo</translation>
        </message>
        <message>
            <source>Linear propagation (JCGM 100); the Monte Carlo (JCGM 101) checks it.</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Propagation linéaire (JCGM 100) ; le Monte-Carlo (JCGM 101) la vérifie.</translation>
        </message>
        <message>
            <source>Next to improve: {name}.</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>À améliorer ensuite : {name}.</translation>
        </message>
        <message>
            <source>No finer instrument on the list would help.</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Aucun instrument plus fin de la liste n'aiderait.</translation>
        </message>
        <message>
            <source>Blade gap</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Écartement à la jauge</translation>
        </message>
        <message>
            <source>Opens late</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Ouvre en retard</translation>
        </message>
        <message>
            <source>Wear from now on</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Usure à partir de maintenant</translation>
        </message>
        <message>
            <source>Off the heel of the breaker arm in 100 running hours: it opens later, the gap closes</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Perdu par le toucheau du levier du rupteur en 100 heures de marche : il ouvre plus tard, l'écartement se ferme</translation>
        </message>
        <message>
            <source>A pip on one contact in 100 running hours: the blade finds less than the true gap</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Un picot sur un contact en 100 heures de marche : la jauge trouve moins que le vrai écartement</translation>
        </message>
        <message>
            <source>Heel, i&amp;n 100 h</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Toucheau, e&amp;n 100 h</translation>
        </message>
        <message>
            <source>Pip, in 100 h</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Picot, en 100 h</translation>
        </message>
        <message>
            <source>Next inspection &amp;after</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Prochaine visite &amp;après</translation>
        </message>
        <message>
            <source>Wear the bench by the&amp;se hours</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>U&amp;ser le banc de ces heures</translation>
        </message>
        <message>
            <source>See on the bench what those hours would do to it</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Voir au banc ce que ces heures lui feraient</translation>
        </message>
        <message>
            <source>Inspections of this setting</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Visites de ce réglage</translation>
        </message>
        <message>
            <source>Inspections</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Visites</translation>
        </message>
        <message>
            <source>The thickest blade that passed, and half a step more</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>La jauge la plus épaisse qui a passé, et un demi-pas de plus</translation>
        </message>
        <message>
            <source>How far past the E-gap it opened, in degrees of rotor</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>De combien après l'E-gap elle s'ouvrait, en degrés de rotor</translation>
        </message>
        <message>
            <source>At, since it was set</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>À, depuis le réglage</translation>
        </message>
        <message>
            <source>Gap by blades</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Écartement aux jauges</translation>
        </message>
        <message>
            <source>✗ Plate or screw was turned since: what was read before tells nothing of this setting; strike it out.</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>✗ Le plateau ou la vis a été tourné depuis : ce qui fut lu avant ne dit rien de ce réglage ; à rayer.</translation>
        </message>
        <message>
            <source>&amp;Use these rates</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>&amp;Utiliser ces taux</translation>
        </message>
        <message>
            <source>From the &amp;bench</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Pris du &amp;banc</translation>
        </message>
        <message>
            <source>N&amp;ote</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>N&amp;oter</translation>
        </message>
        <message>
            <source>Two inspections at different hours give rates.</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Deux visites à des heures différentes donnent des taux.</translation>
        </message>
        <message>
            <source>Read of another setting than the present one</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Lu sur un autre réglage que l'actuel</translation>
        </message>
        <message>
            <source>The bench cannot be kept for after a crash: {error}</source>
            <extracomment>ui/window.py</extracomment>
            <translation>Le banc ne peut être conservé en cas de plantage : {error}</translation>
        </message>
        <message>
            <source>{file}: cannot be changed: {reason}</source>
            <extracomment>upkeep/desktop.py</extracomment>
            <translation>{file} : modification impossible : {reason}</translation>
        </message>
        <message>
            <source>nothing can be kept in {folder}: {reason}</source>
            <extracomment>upkeep/places.py, upkeep/reports.py</extracomment>
            <translation>rien ne peut être conservé dans {folder} : {reason}</translation>
        </message>
        <message>
            <source>not known: the system ended the program at once</source>
            <extracomment>upkeep/reports.py</extracomment>
            <translation>inconnu : le système a mis fin au programme sur-le-champ</translation>
        </message>
        <message>
            <source>nothing</source>
            <extracomment>upkeep/reports.py</extracomment>
            <translation>rien</translation>
        </message>
        <message>
            <source>magview: report of a fault</source>
            <extracomment>upkeep/reports.py</extracomment>
            <translation>magview : rapport d'erreur</translation>
        </message>
        <message>
            <source>Kept on this computer; nothing is sent anywhere by itself.</source>
            <extracomment>upkeep/reports.py</extracomment>
            <translation>Conservé sur cet ordinateur ; rien n'est envoyé nulle part de soi-même.</translation>
        </message>
        <message>
            <source>When: {when}</source>
            <extracomment>upkeep/reports.py</extracomment>
            <translation>Quand : {when}</translation>
        </message>
        <message>
            <source>Versions:</source>
            <extracomment>upkeep/reports.py</extracomment>
            <translation>Versions :</translation>
        </message>
        <message>
            <source>What and where:</source>
            <extracomment>upkeep/reports.py</extracomment>
            <translation>Quoi et où :</translation>
        </message>
        <message>
            <source>What was done last:</source>
            <extracomment>upkeep/reports.py</extracomment>
            <translation>Dernières actions :</translation>
        </message>
        <message>
            <source>Four-cylinder practice magneto</source>
            <extracomment>magnetos/four-opposed.json</extracomment>
            <translation>Magnéto d'exercice à quatre cylindres</translation>
        </message>
        <message>
            <source>Invented for practice, all of it: dimensions, limits, angles and electrical values; no real magneto has them. Two poles, two lobes, threaded contact screw.</source>
            <extracomment>magnetos/four-opposed.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Nine-cylinder practice magneto</source>
            <extracomment>magnetos/nine-radial.json</extracomment>
            <translation>Magnéto d'exercice à neuf cylindres</translation>
        </message>
        <message>
            <source>Invented for practice, all of it: dimensions, limits, angles and electrical values; no real magneto has them. Four poles; compensated cam, one lobe per cylinder, on the distributor shaft at half crank speed. Its lobes are spaced for the shipped nine-cylinder engine.</source>
            <extracomment>magnetos/nine-radial.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Seven-cylinder practice magneto</source>
            <extracomment>magnetos/seven-radial.json</extracomment>
            <translation>Magnéto d'exercice à sept cylindres</translation>
        </message>
        <message>
            <source>Invented for practice, all of it: dimensions, limits, angles and electrical values; no real magneto has them. Four poles, one lobe per spark of a rotor turn (uncompensated cam on the rotor shaft).</source>
            <extracomment>magnetos/seven-radial.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Six-cylinder practice magneto, traced lift</source>
            <extracomment>magnetos/traced-six.json</extracomment>
            <translation>Magnéto d'exercice à six cylindres, levée relevée</translation>
        </message>
        <message>
            <source>Invented for practice, all of it: dimensions, limits, angles and electrical values; no real magneto has them. Two poles, two lobes; the lift was traced at the contacts with a dial gauge every 2°, so the arm's other dimensions are not known.</source>
            <extracomment>magnetos/traced-six.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Four-cylinder practice engine</source>
            <extracomment>engines/four-opposed.json</extracomment>
            <translation>Moteur d'exercice à quatre cylindres</translation>
        </message>
        <message>
            <source>Nine-cylinder practice engine</source>
            <extracomment>engines/nine-radial.json</extracomment>
            <translation>Moteur d'exercice à neuf cylindres</translation>
        </message>
        <message>
            <source>Seven-cylinder practice engine</source>
            <extracomment>engines/seven-radial.json</extracomment>
            <translation>Moteur d'exercice à sept cylindres</translation>
        </message>
        <message>
            <source>Six-cylinder practice engine</source>
            <extracomment>engines/six-inline.json</extracomment>
            <translation>Moteur d'exercice à six cylindres</translation>
        </message>
        <message>
            <source>A vernier step or two out</source>
            <extracomment>exercises/a-step-or-two-out.json</extracomment>
            <translation>Un pas de vernier ou deux de décalage</translation>
        </message>
        <message>
            <source>The magneto came back from overhaul and was refitted by eye. Inside it is right.</source>
            <extracomment>exercises/a-step-or-two-out.json</extracomment>
            <translation>La magnéto est revenue de révision et a été remontée à l'œil. À l'intérieur, elle est juste.</translation>
        </message>
        <message>
            <source>Time it to the engine at its toothed coupling.</source>
            <extracomment>exercises/a-step-or-two-out.json</extracomment>
            <translation>La caler sur le moteur par son accouplement denté.</translation>
        </message>
        <message>
            <source>With the switch off a sound lead keeps the lamp dark whatever the contacts do: wheels chocked and spark plugs out first, then switch on.</source>
            <extracomment>exercises/a-step-or-two-out.json, exercises/both-everything-wrong.json, exercises/fitted-at-neutral.json, exercises/left-and-right-apart.json, exercises/one-magneto-all-wrong.json, exercises/several-teeth-out.json, exercises/wrong-stroke.json</extracomment>
            <translation>Contacteur sur arrêt, un fil de masse sain laisse la lampe éteinte quoi que fassent les contacts : d'abord roues calées et bougies déposées, puis contacteur sur marche.</translation>
        </message>
        <message>
            <source>Paint marks across the coupling before you draw the magneto back.</source>
            <extracomment>exercises/a-step-or-two-out.json</extracomment>
            <translation>Peindre des repères en travers de l'accouplement avant de reculer la magnéto.</translation>
        </message>
        <message>
            <source>Read the timing with lamp and disc, turning with rotation only.</source>
            <extracomment>exercises/a-step-or-two-out.json</extracomment>
            <translation>Lire le calage à la lampe et au disque, en tournant seulement dans le sens de rotation.</translation>
        </message>
        <message>
            <source>One tooth with rotation at the magneto and one against it at the disc is the finest step.</source>
            <extracomment>exercises/a-step-or-two-out.json</extracomment>
            <translation>Une dent dans le sens de rotation à la magnéto et une en sens inverse au disque est le pas le plus fin.</translation>
        </message>
        <message>
            <source>Both magnetos, everything wrong</source>
            <extracomment>exercises/both-everything-wrong.json</extracomment>
            <translation>Les deux magnétos, tout est faux</translation>
        </message>
        <message>
            <source>Two magnetos, two people, two opinions, and an engine that has not run since.</source>
            <extracomment>exercises/both-everything-wrong.json</extracomment>
            <translation>Deux magnétos, deux personnes, deux avis, et un moteur qui n'a pas tourné depuis.</translation>
        </message>
        <message>
            <source>Make both safe, set both inside, time both to the engine and to one another, and close up.</source>
            <extracomment>exercises/both-everything-wrong.json</extracomment>
            <translation>Mettre les deux en sécurité, régler l'intérieur des deux, caler les deux sur le moteur et entre elles, et refermer.</translation>
        </message>
        <message>
            <source>Work to one order on each: safe, contacts, gap, lock screw, opening; then the engine.</source>
            <extracomment>exercises/both-everything-wrong.json</extracomment>
            <translation>Travailler dans un même ordre sur chacune : sécurité, contacts, écartement, vis de blocage, ouverture ; puis le moteur.</translation>
        </message>
        <message>
            <source>The switch of one magneto says nothing of the other.</source>
            <extracomment>exercises/both-everything-wrong.json</extracomment>
            <translation>Le contacteur d'une magnéto ne dit rien de l'autre.</translation>
        </message>
        <message>
            <source>Teeth last, for both together.</source>
            <extracomment>exercises/both-everything-wrong.json</extracomment>
            <translation>Les dents en dernier, pour les deux ensemble.</translation>
        </message>
        <message>
            <source>A lock screw that carries along</source>
            <extracomment>exercises/creeping-screw.json</extracomment>
            <translation>Une vis de blocage qui entraîne</translation>
        </message>
        <message>
            <source>Whoever sets this magneto finds it out of adjustment the next day, and swears it was right.</source>
            <extracomment>exercises/creeping-screw.json</extracomment>
            <translation>Qui règle cette magnéto la trouve déréglée le lendemain, et jure qu'elle était juste.</translation>
        </message>
        <message>
            <source>Set gap and opening so that they are right with every screw tight.</source>
            <extracomment>exercises/creeping-screw.json</extracomment>
            <translation>Régler écartement et ouverture pour qu'ils soient justes, toutes vis serrées.</translation>
        </message>
        <message>
            <source>The lamp tells of the contacts only while nothing else grounds the coil: leave the plug in and the switch on. With the switch off it stays dark, and with the plug pulled too, but for paper under the spring tab.</source>
            <extracomment>exercises/creeping-screw.json, exercises/gap-wrong.json, exercises/one-lobe-low.json, exercises/opens-early-or-late.json, exercises/pips.json</extracomment>
            <translation>La lampe ne parle des contacts que si rien d'autre ne met la bobine à la masse : laisser la fiche en place et le contacteur sur marche. Contacteur sur arrêt, elle reste éteinte ; fiche débranchée aussi, sauf avec un papier sous la languette ressort.</translation>
        </message>
        <message>
            <source>Measure, tighten the lock screw, measure again.</source>
            <extracomment>exercises/creeping-screw.json</extracomment>
            <translation>Mesurer, serrer la vis de blocage, mesurer de nouveau.</translation>
        </message>
        <message>
            <source>The lock screw carries the contact screw along by the same amount each time: lead it by as much.</source>
            <extracomment>exercises/creeping-screw.json</extracomment>
            <translation>La vis de blocage entraîne la vis de contact d'autant à chaque fois : l'anticiper d'autant.</translation>
        </message>
        <message>
            <source>Set the gap first, lock it, then bring the opening to the mark with the plate.</source>
            <extracomment>exercises/creeping-screw.json</extracomment>
            <translation>Régler d'abord l'écartement, le bloquer, puis amener l'ouverture au repère par le plateau.</translation>
        </message>
        <message>
            <source>Find the E-gap</source>
            <extracomment>exercises/find-the-e-gap.json</extracomment>
            <translation>Trouver l'E-gap</translation>
        </message>
        <message>
            <source>A magneto stands on the bench with its breaker cover off. Left alone, the magnet keeps the rotor at neutral.</source>
            <extracomment>exercises/find-the-e-gap.json</extracomment>
            <translation>Une magnéto est au banc, capot du rupteur ôté. Laissé seul, le rotor est retenu au neutre par l'aimant.</translation>
        </message>
        <message>
            <source>Turn the rotor to the E-gap and hold it there: the straightedge along the cam's step in line with a mark on the rim.</source>
            <extracomment>exercises/find-the-e-gap.json</extracomment>
            <translation>Tourner le rotor à l'E-gap et l'y tenir : le réglet le long de l'épaulement de la came aligné sur un repère du bord.</translation>
        </message>
        <message>
            <source>Turn the rotor with rotation; it pulls back as soon as you let go.</source>
            <extracomment>exercises/find-the-e-gap.json</extracomment>
            <translation>Tourner le rotor dans le sens de rotation ; il revient dès qu'on le lâche.</translation>
        </message>
        <message>
            <source>Lay the straightedge on and look square over it: from the side it seems to stand elsewhere.</source>
            <extracomment>exercises/find-the-e-gap.json</extracomment>
            <translation>Poser le réglet et viser d'équerre par-dessus : de côté, il semble être ailleurs.</translation>
        </message>
        <message>
            <source>Leave the straightedge where it is when you hand in; it is your proof.</source>
            <extracomment>exercises/find-the-e-gap.json</extracomment>
            <translation>Laisser le réglet en place à la remise ; c'est votre preuve.</translation>
        </message>
        <message>
            <source>Fitted with the rotor at neutral</source>
            <extracomment>exercises/fitted-at-neutral.json</extracomment>
            <translation>Montée avec le rotor au neutre</translation>
        </message>
        <message>
            <source>The magneto was fitted with No. 1 at its firing point, as it should be – but with the rotor left where the magnet holds it.</source>
            <extracomment>exercises/fitted-at-neutral.json</extracomment>
            <translation>La magnéto a été montée avec le n° 1 à son point d'allumage, comme il se doit – mais avec le rotor laissé où l'aimant le retient.</translation>
        </message>
        <message>
            <source>Find how far it is out and time it.</source>
            <extracomment>exercises/fitted-at-neutral.json</extracomment>
            <translation>Trouver de combien elle est décalée et la caler.</translation>
        </message>
        <message>
            <source>The rotor at neutral is short of the E-gap: what does that make the timing, early or late?</source>
            <extracomment>exercises/fitted-at-neutral.json</extracomment>
            <translation>Le rotor au neutre est avant l'E-gap : que devient alors le calage, avance ou retard ?</translation>
        </message>
        <message>
            <source>Paint marks first; the way back is counted in teeth.</source>
            <extracomment>exercises/fitted-at-neutral.json</extracomment>
            <translation>Peindre d'abord des repères ; le retour se compte en dents.</translation>
        </message>
        <message>
            <source>The gap is wrong</source>
            <extracomment>exercises/gap-wrong.json</extracomment>
            <translation>L'écartement est faux</translation>
        </message>
        <message>
            <source>After new contacts were fitted nobody set them: the gap is far out, and with it the place where they open.</source>
            <extracomment>exercises/gap-wrong.json</extracomment>
            <translation>Après la pose de contacts neufs, nul ne les a réglés : l'écartement est très faux, et avec lui le point d'ouverture.</translation>
        </message>
        <message>
            <source>Bring the largest gap within its limits and the opening to the mark.</source>
            <extracomment>exercises/gap-wrong.json</extracomment>
            <translation>Amener l'écartement maximal dans ses limites et l'ouverture au repère.</translation>
        </message>
        <message>
            <source>The contact screw moves gap and opening; the backplate moves the opening alone. Begin with the screw.</source>
            <extracomment>exercises/gap-wrong.json</extracomment>
            <translation>La vis de contact déplace écartement et ouverture ; le plateau, l'ouverture seule. Commencer par la vis.</translation>
        </message>
        <message>
            <source>Wider contacts open earlier.</source>
            <extracomment>exercises/gap-wrong.json</extracomment>
            <translation>Des contacts plus écartés s'ouvrent plus tôt.</translation>
        </message>
        <message>
            <source>Measure the gap where the contacts stand widest open.</source>
            <extracomment>exercises/gap-wrong.json</extracomment>
            <translation>Mesurer l'écartement où les contacts sont au plus ouvert.</translation>
        </message>
        <message>
            <source>Left and right apart</source>
            <extracomment>exercises/left-and-right-apart.json</extracomment>
            <translation>Gauche et droite en désaccord</translation>
        </message>
        <message>
            <source>The drop on one magneto is larger than on the other. Both are right inside.</source>
            <extracomment>exercises/left-and-right-apart.json</extracomment>
            <translation>La chute sur une magnéto est plus forte que sur l'autre. À l'intérieur, les deux sont justes.</translation>
        </message>
        <message>
            <source>Time both magnetos, and bring them together.</source>
            <extracomment>exercises/left-and-right-apart.json</extracomment>
            <translation>Caler les deux magnétos, et les mettre d'accord.</translation>
        </message>
        <message>
            <source>Find the disc's zero once and keep it: both are read by the same disc.</source>
            <extracomment>exercises/left-and-right-apart.json</extracomment>
            <translation>Trouver une fois le zéro du disque et le garder : les deux se lisent au même disque.</translation>
        </message>
        <message>
            <source>Two readings that are each within limits may still be too far apart.</source>
            <extracomment>exercises/left-and-right-apart.json</extracomment>
            <translation>Deux lectures chacune dans les limites peuvent encore être trop éloignées.</translation>
        </message>
        <message>
            <source>Choose the moves of both together.</source>
            <extracomment>exercises/left-and-right-apart.json</extracomment>
            <translation>Choisir ensemble les déplacements des deux.</translation>
        </message>
        <message>
            <source>Measure the gap</source>
            <extracomment>exercises/measure-the-gap.json</extracomment>
            <translation>Mesurer l'écartement</translation>
        </message>
        <message>
            <source>The work card asks for the largest gap between the contacts, and for nothing else.</source>
            <extracomment>exercises/measure-the-gap.json</extracomment>
            <translation>La carte de travail demande l'écartement maximal entre les contacts, et rien d'autre.</translation>
        </message>
        <message>
            <source>Turn the rotor until lobe 1 holds the contacts widest open, measure the gap with blades, and write it down.</source>
            <extracomment>exercises/measure-the-gap.json</extracomment>
            <translation>Tourner le rotor jusqu'à ce que le bossage 1 tienne les contacts au plus ouvert, mesurer l'écartement aux jauges, et le noter.</translation>
        </message>
        <message>
            <source>A blade that goes and the next that does not go stand on both sides of the gap.</source>
            <extracomment>exercises/measure-the-gap.json</extracomment>
            <translation>Une jauge qui passe et la suivante qui ne passe pas encadrent l'écartement.</translation>
        </message>
        <message>
            <source>A blade that drags is within a hundredth of a millimetre of it.</source>
            <extracomment>exercises/measure-the-gap.json</extracomment>
            <translation>Une jauge qui frotte est à un centième de millimètre près de lui.</translation>
        </message>
        <message>
            <source>Two blades held together fill the steps between single ones.</source>
            <extracomment>exercises/measure-the-gap.json</extracomment>
            <translation>Deux jauges tenues ensemble comblent les pas entre les simples.</translation>
        </message>
        <message>
            <source>One lobe is low</source>
            <extracomment>exercises/one-lobe-low.json</extracomment>
            <translation>Un bossage est bas</translation>
        </message>
        <message>
            <source>One cylinder of this engine misses now and then. The cam has worn, but not beyond use if it is set with care.</source>
            <extracomment>exercises/one-lobe-low.json</extracomment>
            <translation>Un cylindre de ce moteur a parfois des ratés. La came s'est usée, mais reste utilisable si elle est réglée avec soin.</translation>
        </message>
        <message>
            <source>Set the contacts so that the gap is within limits on every lobe, and the opening at the mark on every lobe.</source>
            <extracomment>exercises/one-lobe-low.json</extracomment>
            <translation>Régler les contacts pour que l'écartement soit dans les limites à chaque bossage, et l'ouverture au repère à chaque bossage.</translation>
        </message>
        <message>
            <source>Measure every lobe before you turn anything.</source>
            <extracomment>exercises/one-lobe-low.json</extracomment>
            <translation>Mesurer chaque bossage avant de tourner quoi que ce soit.</translation>
        </message>
        <message>
            <source>Put the middle between the widest and the closest lobe in the middle of the limits.</source>
            <extracomment>exercises/one-lobe-low.json</extracomment>
            <translation>Mettre le milieu entre le bossage le plus écarté et le plus serré au milieu des limites.</translation>
        </message>
        <message>
            <source>Check every lobe again when all is tight.</source>
            <extracomment>exercises/one-lobe-low.json</extracomment>
            <translation>Revérifier chaque bossage quand tout est serré.</translation>
        </message>
        <message>
            <source>One magneto, everything wrong</source>
            <extracomment>exercises/one-magneto-all-wrong.json</extracomment>
            <translation>Une magnéto, tout est faux</translation>
        </message>
        <message>
            <source>Bought as it stood. The logbook is silent on the ignition.</source>
            <extracomment>exercises/one-magneto-all-wrong.json</extracomment>
            <translation>Achetée telle quelle. Le livret est muet sur l'allumage.</translation>
        </message>
        <message>
            <source>Make it safe, set it inside, time it to the engine, and close it up.</source>
            <extracomment>exercises/one-magneto-all-wrong.json</extracomment>
            <translation>La mettre en sécurité, régler l'intérieur, la caler sur le moteur, et la refermer.</translation>
        </message>
        <message>
            <source>Safe first, then inside, then the engine: what is set inside moves the timing.</source>
            <extracomment>exercises/one-magneto-all-wrong.json</extracomment>
            <translation>D'abord la sécurité, puis l'intérieur, puis le moteur : le réglage intérieur déplace le calage.</translation>
        </message>
        <message>
            <source>Contacts, gap, lock screw, opening: in this order.</source>
            <extracomment>exercises/one-magneto-all-wrong.json</extracomment>
            <translation>Contacts, écartement, vis de blocage, ouverture : dans cet ordre.</translation>
        </message>
        <message>
            <source>Dead centre by the stop before anything is read from the disc.</source>
            <extracomment>exercises/one-magneto-all-wrong.json</extracomment>
            <translation>Le point mort par la butée avant de lire quoi que ce soit au disque.</translation>
        </message>
        <message>
            <source>Opens early or late</source>
            <extracomment>exercises/opens-early-or-late.json</extracomment>
            <translation>Ouvre en avance ou en retard</translation>
        </message>
        <message>
            <source>The gap of this magneto is right, but its backplate has been moved.</source>
            <extracomment>exercises/opens-early-or-late.json</extracomment>
            <translation>L'écartement de cette magnéto est juste, mais son plateau a été déplacé.</translation>
        </message>
        <message>
            <source>Set the backplate so that the contacts open at the mark, close everything up, and check again.</source>
            <extracomment>exercises/opens-early-or-late.json</extracomment>
            <translation>Régler le plateau pour que les contacts s'ouvrent au repère, tout refermer, et revérifier.</translation>
        </message>
        <message>
            <source>Slacken the clamp screws, not the lock screw: the gap is not the trouble.</source>
            <extracomment>exercises/opens-early-or-late.json</extracomment>
            <translation>Desserrer les vis de serrage, pas la vis de blocage : l'écartement n'est pas en cause.</translation>
        </message>
        <message>
            <source>Turning the plate with rotation makes the contacts open later.</source>
            <extracomment>exercises/opens-early-or-late.json</extracomment>
            <translation>Tourner le plateau dans le sens de rotation fait ouvrir les contacts plus tard.</translation>
        </message>
        <message>
            <source>What was checked before a screw was tightened has to be checked again after.</source>
            <extracomment>exercises/opens-early-or-late.json</extracomment>
            <translation>Ce qui a été vérifié avant de serrer une vis doit être revérifié après.</translation>
        </message>
        <message>
            <source>Pips on the contacts</source>
            <extracomment>exercises/pips.json</extracomment>
            <translation>Des picots sur les contacts</translation>
        </message>
        <message>
            <source>This magneto has run for a long time on the same contacts. The last one to set it measured the gap and found it right.</source>
            <extracomment>exercises/pips.json</extracomment>
            <translation>Cette magnéto a longtemps tourné sur les mêmes contacts. Le dernier à la régler a mesuré l'écartement et l'a trouvé juste.</translation>
        </message>
        <message>
            <source>See to the contacts, then set gap and opening.</source>
            <extracomment>exercises/pips.json</extracomment>
            <translation>S'occuper des contacts, puis régler écartement et ouverture.</translation>
        </message>
        <message>
            <source>A blade lies on the pip, not on the contact: the true gap is larger than it says.</source>
            <extracomment>exercises/pips.json</extracomment>
            <translation>Une jauge porte sur le picot, pas sur le contact : le vrai écartement est plus grand qu'elle ne dit.</translation>
        </message>
        <message>
            <source>Dress the contacts before you measure anything.</source>
            <extracomment>exercises/pips.json</extracomment>
            <translation>Rectifier les contacts avant de mesurer quoi que ce soit.</translation>
        </message>
        <message>
            <source>Several teeth out, and a loose coupling</source>
            <extracomment>exercises/several-teeth-out.json</extracomment>
            <translation>Plusieurs dents de décalage, et un accouplement lâche</translation>
        </message>
        <message>
            <source>Starts badly, kicks back. The coupling rattles, and the crank disc has been put on by eye.</source>
            <extracomment>exercises/several-teeth-out.json</extracomment>
            <translation>Démarre mal, donne des retours. L'accouplement cliquette, et le disque du vilebrequin a été posé à l'œil.</translation>
        </message>
        <message>
            <source>Find the disc's zero, read the timing as found and write it down, and time the magneto.</source>
            <extracomment>exercises/several-teeth-out.json</extracomment>
            <translation>Trouver le zéro du disque, lire le calage tel que trouvé et le noter, et caler la magnéto.</translation>
        </message>
        <message>
            <source>With play in the coupling a reading is true only when approached with rotation.</source>
            <extracomment>exercises/several-teeth-out.json</extracomment>
            <translation>Avec du jeu dans l'accouplement, une lecture n'est vraie qu'approchée dans le sens de rotation.</translation>
        </message>
        <message>
            <source>If it fires after dead centre there is no pressure to feel: go by the finger.</source>
            <extracomment>exercises/several-teeth-out.json</extracomment>
            <translation>Si elle allume après le point mort, il n'y a pas de pression à sentir : se fier au doigt.</translation>
        </message>
        <message>
            <source>Plan the move with the fewest teeth that comes within limits, and move one tooth at a time.</source>
            <extracomment>exercises/several-teeth-out.json</extracomment>
            <translation>Prévoir le déplacement au moins de dents qui arrive dans les limites, et déplacer une dent à la fois.</translation>
        </message>
        <message>
            <source>Is it safe?</source>
            <extracomment>exercises/switch-lead.json</extracomment>
            <translation>Est-ce sûr ?</translation>
        </message>
        <message>
            <source>A note in the cockpit says: switch check doubtful. Nobody has touched the aircraft since.</source>
            <extracomment>exercises/switch-lead.json</extracomment>
            <translation>Une note au poste de pilotage dit : contrôle du contacteur douteux. Personne n'a touché l'aéronef depuis.</translation>
        </message>
        <message>
            <source>Find out what the switch lead of this magneto suffers from, if anything, write down your finding, put it right, and prove it.</source>
            <extracomment>exercises/switch-lead.json</extracomment>
            <translation>Trouver de quoi souffre, le cas échéant, le fil de masse de cette magnéto, noter votre constat, le corriger, et le prouver.</translation>
        </message>
        <message>
            <source>Until you know better the propeller is live: chocks, and spark plugs out, before it is turned.</source>
            <extracomment>exercises/switch-lead.json</extracomment>
            <translation>Tant qu'on n'en sait pas plus, l'hélice est active : cales, et bougies déposées, avant de la tourner.</translation>
        </message>
        <message>
            <source>Plug pulled, the meter must see ground with the switch off, and none with it on.</source>
            <extracomment>exercises/switch-lead.json</extracomment>
            <translation>Fiche débranchée, l'ohmmètre doit voir la masse avec contacteur sur arrêt, et aucune sur marche.</translation>
        </message>
        <message>
            <source>With the switch on the lamp must light as the contacts open; with the plug pulled the spring tab must keep it dark.</source>
            <extracomment>exercises/switch-lead.json</extracomment>
            <translation>Contacteur sur marche, la lampe doit s'allumer à l'ouverture des contacts ; fiche débranchée, la languette ressort doit la tenir éteinte.</translation>
        </message>
        <message>
            <source>True dead centre</source>
            <extracomment>exercises/true-dead-centre.json</extracomment>
            <translation>Vrai point mort</translation>
        </message>
        <message>
            <source>The disc on the crank was put on by eye. Before anything is timed by it, its zero has to be found.</source>
            <extracomment>exercises/true-dead-centre.json</extracomment>
            <translation>Le disque du vilebrequin a été posé à l'œil. Avant tout calage d'après lui, son zéro est à trouver.</translation>
        </message>
        <message>
            <source>Find what the disc reads at the top dead centre of No. 1, write it down (after the zero: with a minus), and set the disc to zero.</source>
            <extracomment>exercises/true-dead-centre.json</extracomment>
            <translation>Trouver ce que le disque lit au point mort haut du n° 1, le noter (après le zéro : avec un moins), et mettre le disque à zéro.</translation>
        </message>
        <message>
            <source>Chocks first, switch off, spark plugs out; then the propeller may be turned.</source>
            <extracomment>exercises/true-dead-centre.json</extracomment>
            <translation>D'abord les cales, contacteur sur arrêt, bougies déposées ; alors l'hélice peut être tournée.</translation>
        </message>
        <message>
            <source>With the stop fitted, turn gently until the piston meets it, read the disc; turn back until it meets it from the other side, read again.</source>
            <extracomment>exercises/true-dead-centre.json</extracomment>
            <translation>Butée posée, tourner en douceur jusqu'à ce que le piston la touche, lire le disque ; revenir jusqu'à ce qu'il la touche de l'autre côté, relire.</translation>
        </message>
        <message>
            <source>Half-way between the two readings is top dead centre.</source>
            <extracomment>exercises/true-dead-centre.json</extracomment>
            <translation>À mi-chemin des deux lectures est le point mort haut.</translation>
        </message>
        <message>
            <source>When do the contacts open?</source>
            <extracomment>exercises/when-do-they-open.json</extracomment>
            <translation>Quand les contacts s'ouvrent-ils ?</translation>
        </message>
        <message>
            <source>Somebody has set this magneto and left it closed up. Nothing is to be changed yet: first you want to know.</source>
            <extracomment>exercises/when-do-they-open.json</extracomment>
            <translation>Quelqu'un a réglé cette magnéto et l'a laissée refermée. Rien n'est encore à changer : il faut d'abord savoir.</translation>
        </message>
        <message>
            <source>Find where lobe 1 opens the contacts, by lamp and straightedge, and write down how far past the mark that is (short of it: with a minus).</source>
            <extracomment>exercises/when-do-they-open.json</extracomment>
            <translation>Trouver où le bossage 1 ouvre les contacts, à la lampe et au réglet, et noter de combien après le repère (avant lui : avec un moins).</translation>
        </message>
        <message>
            <source>If the lamp stays dark whatever you do, something grounds the primary: look at the switch.</source>
            <extracomment>exercises/when-do-they-open.json</extracomment>
            <translation>Si la lampe reste éteinte quoi qu'on fasse, quelque chose met le primaire à la masse : regarder le contacteur.</translation>
        </message>
        <message>
            <source>Turn with rotation, slowly, and stop where the lamp lights.</source>
            <extracomment>exercises/when-do-they-open.json</extracomment>
            <translation>Tourner dans le sens de rotation, lentement, et s'arrêter où la lampe s'allume.</translation>
        </message>
        <message>
            <source>The marks on the rim are half a millimetre apart; mark 1 belongs to lobe 1.</source>
            <extracomment>exercises/when-do-they-open.json</extracomment>
            <translation>Les repères du bord sont à un demi-millimètre ; le repère 1 est celui du bossage 1.</translation>
        </message>
        <message>
            <source>The wrong stroke</source>
            <extracomment>exercises/wrong-stroke.json</extracomment>
            <translation>Le mauvais temps</translation>
        </message>
        <message>
            <source>It was timed with care: the lamp lights where it should. The engine spits back through the carburettor and will not run.</source>
            <extracomment>exercises/wrong-stroke.json</extracomment>
            <translation>Elle a été calée avec soin : la lampe s'allume où elle doit. Le moteur crache par le carburateur et ne tourne pas.</translation>
        </message>
        <message>
            <source>Find out why, and put it right.</source>
            <extracomment>exercises/wrong-stroke.json</extracomment>
            <translation>Trouver pourquoi, et le corriger.</translation>
        </message>
        <message>
            <source>A thumb over No. 1's plug hole tells compression from exhaust.</source>
            <extracomment>exercises/wrong-stroke.json</extracomment>
            <translation>Un pouce sur le trou de bougie du n° 1 distingue compression et échappement.</translation>
        </message>
        <message>
            <source>Where does the distributor finger point when No. 1 comes up on compression?</source>
            <extracomment>exercises/wrong-stroke.json</extracomment>
            <translation>Où pointe le doigt du distributeur quand le n° 1 monte en compression ?</translation>
        </message>
        <message>
            <source>Half a turn of the finger cannot be had by teeth: the magneto has to come off. Pull the plug, mark, nuts off.</source>
            <extracomment>exercises/wrong-stroke.json</extracomment>
            <translation>Un demi-tour du doigt ne s'obtient pas par les dents : la magnéto doit être déposée. Débrancher la fiche, repérer, ôter les écrous.</translation>
        </message>
        <message>
            <source>Off the engine a slip of paper under the spring tab lets the lamp see the contacts.</source>
            <extracomment>exercises/wrong-stroke.json</extracomment>
            <translation>Déposée, un papier glissé sous la languette ressort laisse la lampe voir les contacts.</translation>
        </message>
        <message>
            <source>A full job</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Un travail complet</translation>
        </message>
        <message>
            <source>From the chocks to the last nut: safe, inside, dead centre, coupling, closed up.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Des cales au dernier écrou : sécurité, intérieur, point mort, accouplement, refermeture.</translation>
        </message>
        <message>
            <source>A magneto with its plate off, its coupling some fine steps out, and a lead nobody has looked at.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Une magnéto au plateau décalé, à l'accouplement faux de quelques pas fins, et un fil que nul n'a examiné.</translation>
        </message>
        <message>
            <source>Follow the lesson.</source>
            <extracomment>lessons/a-full-job.json, lessons/contacts-and-lamp.json, lessons/measuring-the-gap.json, lessons/neutral-and-e-gap.json, lessons/one-vernier-step.json, lessons/plate-and-screw.json, lessons/the-switch-lead.json, lessons/top-dead-centre.json, lessons/what-the-parts-are.json</extracomment>
            <translation>Suivre la leçon.</translation>
        </message>
        <message>
            <source>Chocks</source>
            <extracomment>lessons/a-full-job.json, lessons/top-dead-centre.json</extracomment>
            <translation>Cales</translation>
        </message>
        <message>
            <source>Put chocks at the wheels.</source>
            <extracomment>lessons/a-full-job.json, lessons/the-switch-lead.json</extracomment>
            <translation>Mettre des cales aux roues.</translation>
        </message>
        <message>
            <source>Prove the lead</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Prouver le fil</translation>
        </message>
        <message>
            <source>Pull the plug, meter, and do what the meter tells you to, until the lead is proved.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Débrancher la fiche, mesurer à l'ohmmètre, et faire ce qu'il dit, jusqu'à ce que le fil soit prouvé.</translation>
        </message>
        <message>
            <source>Broken inside: it had been live.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Coupé à l'intérieur : elle était restée active.</translation>
        </message>
        <message>
            <source>No ground with the switch off: a new lead.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Pas de masse avec contacteur sur arrêt : un fil neuf.</translation>
        </message>
        <message>
            <source>Plug in</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Brancher la fiche</translation>
        </message>
        <message>
            <source>Push the plug in again.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Rebrancher la fiche.</translation>
        </message>
        <message>
            <source>Spark plugs out</source>
            <extracomment>lessons/a-full-job.json, lessons/top-dead-centre.json</extracomment>
            <translation>Bougies déposées</translation>
        </message>
        <message>
            <source>Take the spark plugs out.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Déposer les bougies.</translation>
        </message>
        <message>
            <source>Clip the lamp on and switch on: with the plugs out nothing can fire.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Pincer la lampe et mettre le contacteur sur marche : bougies déposées, rien ne peut allumer.</translation>
        </message>
        <message>
            <source>Where do they open?</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Où s'ouvrent-ils ?</translation>
        </message>
        <message>
            <source>Straightedge on, looked at square; turn the propeller with rotation until the lamp lights.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Réglet posé, visé d'équerre ; tourner l'hélice dans le sens de rotation jusqu'à ce que la lampe s'allume.</translation>
        </message>
        <message>
            <source>Past the mark: the contacts open late.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Après le repère : les contacts s'ouvrent en retard.</translation>
        </message>
        <message>
            <source>The gap</source>
            <extracomment>lessons/a-full-job.json, lessons/measuring-the-gap.json</extracomment>
            <translation>L'écartement</translation>
        </message>
        <message>
            <source>Turn until the contacts stand widest open and try blades: the gap may be right.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Tourner jusqu'aux contacts au plus ouvert et essayer les jauges : l'écartement est peut-être juste.</translation>
        </message>
        <message>
            <source>The plate</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Le plateau</translation>
        </message>
        <message>
            <source>Slacken the clamp screws, bring the opening to the mark with the backplate, and clamp it.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Desserrer les vis de serrage, amener l'ouverture au repère par le plateau, et le serrer.</translation>
        </message>
        <message>
            <source>Late, so against rotation: about 3°.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>En retard, donc en sens inverse : environ 3°.</translation>
        </message>
        <message>
            <source>Check inside</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Vérifier l'intérieur</translation>
        </message>
        <message>
            <source>Turn with rotation until the lamp lights, and look at the straightedge.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Tourner dans le sens de rotation jusqu'à ce que la lampe s'allume, et regarder le réglet.</translation>
        </message>
        <message>
            <source>Dead centre</source>
            <extracomment>lessons/a-full-job.json, lessons/top-dead-centre.json</extracomment>
            <translation>Point mort</translation>
        </message>
        <message>
            <source>Fit the stop, meet it from both sides, set the disc to zero.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Poser la butée, la toucher des deux côtés, mettre le disque à zéro.</translation>
        </message>
        <message>
            <source>Half-way between the two readings, turned the other way.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Le milieu des deux lectures, tourné dans l'autre sens.</translation>
        </message>
        <message>
            <source>Stop out</source>
            <extracomment>lessons/a-full-job.json, lessons/top-dead-centre.json</extracomment>
            <translation>Ôter la butée</translation>
        </message>
        <message>
            <source>Take the stop out.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Ôter la butée.</translation>
        </message>
        <message>
            <source>Read the timing</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Lire le calage</translation>
        </message>
        <message>
            <source>With rotation to the lamp, finger at No. 1; write down what the disc reads.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Dans le sens de rotation jusqu'à la lampe, doigt au n° 1 ; noter ce que lit le disque.</translation>
        </message>
        <message>
            <source>Paint marks across the coupling.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Peindre des repères en travers de l'accouplement.</translation>
        </message>
        <message>
            <source>Nuts off, move tooth by tooth until it fires where it should, nuts on.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Écrous ôtés, déplacer dent par dent jusqu'à ce qu'elle allume où elle doit, écrous remis.</translation>
        </message>
        <message>
            <source>Each pair of teeth, magneto flange against rotation and disc with it, is about 1.1° of crank later.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Chaque paire de dents, bride de la magnéto en sens inverse et disque dans le sens de rotation, retarde d'environ 1.1° de vilebrequin.</translation>
        </message>
        <message>
            <source>Check the timing</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Vérifier le calage</translation>
        </message>
        <message>
            <source>Turn the propeller with rotation until the lamp lights.</source>
            <extracomment>lessons/a-full-job.json, lessons/one-vernier-step.json</extracomment>
            <translation>Tourner l'hélice dans le sens de rotation jusqu'à ce que la lampe s'allume.</translation>
        </message>
        <message>
            <source>Close up</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Refermer</translation>
        </message>
        <message>
            <source>Switch off.</source>
            <extracomment>lessons/a-full-job.json, lessons/one-vernier-step.json</extracomment>
            <translation>Contacteur sur arrêt.</translation>
        </message>
        <message>
            <source>Safe, set, timed, checked, closed. What is written in the log is what was read after the last nut.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Sûre, réglée, calée, vérifiée, refermée. Ce qui est écrit au livret est ce qui a été lu après le dernier écrou.</translation>
        </message>
        <message>
            <source>Contacts and timing lamp</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Contacts et lampe de calage</translation>
        </message>
        <message>
            <source>The lamp tells when the contacts part – if nothing else grounds the coil.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>La lampe dit quand les contacts se séparent – si rien d'autre ne met la bobine à la masse.</translation>
        </message>
        <message>
            <source>Contacts and lamp</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Contacts et lampe</translation>
        </message>
        <message>
            <source>A magneto on the bench, its lead plugged in, the switch off.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Une magnéto au banc, son fil branché, le contacteur sur arrêt.</translation>
        </message>
        <message>
            <source>The lamp</source>
            <extracomment>lessons/contacts-and-lamp.json, lessons/one-vernier-step.json</extracomment>
            <translation>La lampe</translation>
        </message>
        <message>
            <source>Clip the timing lamp across the contacts.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Pincer la lampe de calage aux bornes des contacts.</translation>
        </message>
        <message>
            <source>A grounded coil</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Une bobine à la masse</translation>
        </message>
        <message>
            <source>Turn the rotor right round with the lamp watched (turn until the lamp changes).</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Faire faire un tour entier au rotor en observant la lampe (tourner jusqu'au changement de la lampe).</translation>
        </message>
        <message>
            <source>The contacts opened and closed, and the lamp stayed dark: the switch is off and grounds the coil. A dark lamp proves nothing.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Les contacts se sont ouverts et fermés, et la lampe est restée éteinte : le contacteur est sur arrêt et met la bobine à la masse. Une lampe éteinte ne prouve rien.</translation>
        </message>
        <message>
            <source>Switch on</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Contacteur sur marche</translation>
        </message>
        <message>
            <source>Switch the ignition on. On the bench that harms nobody; on an aircraft the propeller would now be live.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Mettre le contacteur d'allumage sur marche. Au banc, cela ne nuit à personne ; sur un aéronef, l'hélice serait maintenant active.</translation>
        </message>
        <message>
            <source>They open</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Ils s'ouvrent</translation>
        </message>
        <message>
            <source>Turn with rotation until the lamp lights.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Tourner dans le sens de rotation jusqu'à ce que la lampe s'allume.</translation>
        </message>
        <message>
            <source>Here the contacts part.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>C'est ici que les contacts se séparent.</translation>
        </message>
        <message>
            <source>Widest open</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Au plus ouvert</translation>
        </message>
        <message>
            <source>Turn on until the contacts stand widest open.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Continuer jusqu'aux contacts au plus ouvert.</translation>
        </message>
        <message>
            <source>The top of the lobe: here the gap is measured.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Le sommet du bossage : c'est ici que se mesure l'écartement.</translation>
        </message>
        <message>
            <source>They close</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Ils se ferment</translation>
        </message>
        <message>
            <source>Turn on until the lamp goes out.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Continuer jusqu'à ce que la lampe s'éteigne.</translation>
        </message>
        <message>
            <source>Where exactly?</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Où exactement ?</translation>
        </message>
        <message>
            <source>Lay the straightedge on, look square over it, and turn with rotation until the lamp lights.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Poser le réglet, viser d'équerre par-dessus, et tourner dans le sens de rotation jusqu'à ce que la lampe s'allume.</translation>
        </message>
        <message>
            <source>Lamp and straightedge together say how far from the E-gap the contacts open.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Lampe et réglet ensemble disent à quelle distance de l'E-gap s'ouvrent les contacts.</translation>
        </message>
        <message>
            <source>If the lamp is lit already, turn on until it goes out, and then until it lights.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Si la lampe est déjà allumée, continuer jusqu'à ce qu'elle s'éteigne, puis jusqu'à ce qu'elle s'allume.</translation>
        </message>
        <message>
            <source>Measuring the gap</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Mesurer l'écartement</translation>
        </message>
        <message>
            <source>Blades say go, drag or no-go. Between go and no-go lies the gap.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Les jauges disent passe, frotte ou ne passe pas. L'écartement est entre passe et ne passe pas.</translation>
        </message>
        <message>
            <source>A magneto whose gap nobody has measured.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Une magnéto dont nul n'a mesuré l'écartement.</translation>
        </message>
        <message>
            <source>To the top</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Au sommet</translation>
        </message>
        <message>
            <source>Turn the rotor until the contacts stand widest open.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Tourner le rotor jusqu'aux contacts au plus ouvert.</translation>
        </message>
        <message>
            <source>A thin one</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Une fine</translation>
        </message>
        <message>
            <source>Try a blade that surely goes, such as 0.2 mm.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>It goes: the gap is larger.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Elle passe : l'écartement est plus grand.</translation>
        </message>
        <message>
            <source>A thick one</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Une épaisse</translation>
        </message>
        <message>
            <source>Try one that does not go.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>En essayer une qui ne passe pas.</translation>
        </message>
        <message>
            <source>The gap lies between the two. Halve what is left, and halve again.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>L'écartement est entre les deux. Couper le reste en deux, et encore en deux.</translation>
        </message>
        <message>
            <source>Drag</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Frottement</translation>
        </message>
        <message>
            <source>Find the blade or stack that is just gripped.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Trouver la jauge ou l'empilage tout juste pincé.</translation>
        </message>
        <message>
            <source>Within a hundredth of a millimetre. But of what?</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>À un centième de millimètre près. Mais de quoi ?</translation>
        </message>
        <message>
            <source>Try 0.32 mm. Two blades held together fill the steps between single ones.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Look</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Regarder</translation>
        </message>
        <message>
            <source>Look at the faces of the contacts.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Examiner les faces des contacts.</translation>
        </message>
        <message>
            <source>A pip on one, a pit in the other: the blade lay on the pip, and the true gap is larger.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Un picot sur l'un, un creux dans l'autre : la jauge portait sur le picot, et le vrai écartement est plus grand.</translation>
        </message>
        <message>
            <source>Clean</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Propre</translation>
        </message>
        <message>
            <source>Dress the contacts.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Rectifier les contacts.</translation>
        </message>
        <message>
            <source>Once more</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Encore une fois</translation>
        </message>
        <message>
            <source>Measure again until a blade or stack drags, and write the gap down.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Mesurer de nouveau jusqu'à ce qu'une jauge ou un empilage frotte, et noter l'écartement.</translation>
        </message>
        <message>
            <source>The same contacts, another number: only the second is the gap.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Les mêmes contacts, un autre nombre : seul le second est l'écartement.</translation>
        </message>
        <message>
            <source>Neutral, full register, E-gap</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Neutre, plein alignement, E-gap</translation>
        </message>
        <message>
            <source>The rotor by hand: where the magnet wants it, and where it gives the strongest spark.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Le rotor à la main : où l'aimant le veut, et où il donne l'étincelle la plus forte.</translation>
        </message>
        <message>
            <source>The rotor by hand</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Le rotor à la main</translation>
        </message>
        <message>
            <source>A magneto on the bench, its rotor free.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Une magnéto au banc, son rotor libre.</translation>
        </message>
        <message>
            <source>Out of neutral</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Sortir du neutre</translation>
        </message>
        <message>
            <source>The rotor rests at neutral. Turn it with rotation to full register, where a pole stands square under the pole shoe.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Le rotor repose au neutre. Le tourner dans le sens de rotation au plein alignement, où un pôle est d'équerre sous la pièce polaire.</translation>
        </message>
        <message>
            <source>You felt it pull back, and then less and less: at full register the pull is gone.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Vous l'avez senti tirer en arrière, puis de moins en moins : au plein alignement, l'attraction a disparu.</translation>
        </message>
        <message>
            <source>With four poles, full register lies 45° past neutral.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Avec quatre pôles, le plein alignement est à 45° après le neutre.</translation>
        </message>
        <message>
            <source>Let go</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Lâcher</translation>
        </message>
        <message>
            <source>Take your hand off.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Ôter la main.</translation>
        </message>
        <message>
            <source>The magnet took the rotor to a neutral. It always does.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>L'aimant a ramené le rotor à un neutre. C'est toujours ainsi.</translation>
        </message>
        <message>
            <source>The straightedge</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Le réglet</translation>
        </message>
        <message>
            <source>Lay the straightedge along the cam's step, and look square over it.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Poser le réglet le long de l'épaulement de la came, et viser d'équerre par-dessus.</translation>
        </message>
        <message>
            <source>Seen from the side, an edge above the rim seems to stand elsewhere.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Vue de côté, une arête au-dessus du bord semble être ailleurs.</translation>
        </message>
        <message>
            <source>The E-gap</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>L'E-gap</translation>
        </message>
        <message>
            <source>Turn the rotor with rotation until the straightedge is in line with a mark.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Tourner le rotor dans le sens de rotation jusqu'à ce que le réglet soit aligné sur un repère.</translation>
        </message>
        <message>
            <source>A few degrees past neutral: the current in the coil is at its strongest. Contacts that part here give the best spark.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Quelques degrés après le neutre : le courant dans la bobine est au plus fort. Des contacts qui se séparent ici donnent la meilleure étincelle.</translation>
        </message>
        <message>
            <source>It falls back</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Il retombe</translation>
        </message>
        <message>
            <source>Let go of the rotor here.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Lâcher le rotor ici.</translation>
        </message>
        <message>
            <source>Back to neutral. Whoever fits a magneto has to hold the rotor at the E-gap, or pin it.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Retour au neutre. Qui monte une magnéto doit tenir le rotor à l'E-gap, ou le piger.</translation>
        </message>
        <message>
            <source>One step of the vernier</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Un pas du vernier</translation>
        </message>
        <message>
            <source>A disc with one tooth more on one side than on the other: two large steps that make one small one.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Un disque avec une dent de plus d'un côté que de l'autre : deux grands pas qui en font un petit.</translation>
        </message>
        <message>
            <source>The coupling</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>L'accouplement</translation>
        </message>
        <message>
            <source>A magneto timed some fine steps early. The disc on the crank reads true.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Une magnéto calée de quelques pas fins en avance. Le disque du vilebrequin lit juste.</translation>
        </message>
        <message>
            <source>Clip the timing lamp across the contacts. The plugs are out and the wheels chocked.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Pincer la lampe de calage aux bornes des contacts. Les bougies sont déposées et les roues calées.</translation>
        </message>
        <message>
            <source>Read it</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Le lire</translation>
        </message>
        <message>
            <source>Turn the propeller with rotation until the lamp lights with the finger at No. 1, and write down what the disc reads.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Tourner l'hélice dans le sens de rotation jusqu'à ce que la lampe s'allume avec le doigt au n° 1, et noter ce que lit le disque.</translation>
        </message>
        <message>
            <source>Always with rotation: turned back, the play in the coupling lies on the other side.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Toujours dans le sens de rotation : en revenant, le jeu de l'accouplement est de l'autre côté.</translation>
        </message>
        <message>
            <source>The finger comes to No. 1 once in two turns of the propeller.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Le doigt vient au n° 1 une fois en deux tours d'hélice.</translation>
        </message>
        <message>
            <source>Paint marks</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Peindre des repères</translation>
        </message>
        <message>
            <source>Paint marks across drive flange, disc and magneto flange.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Peindre des repères en travers de la bride d'entraînement, du disque et de la bride de la magnéto.</translation>
        </message>
        <message>
            <source>Without marks, a disc that comes away with the magneto is a puzzle.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Sans repères, un disque qui vient avec la magnéto est une énigme.</translation>
        </message>
        <message>
            <source>Nuts off</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Écrous ôtés</translation>
        </message>
        <message>
            <source>Take the nuts off and draw the magneto back.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Ôter les écrous et reculer la magnéto.</translation>
        </message>
        <message>
            <source>Two teeth</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Deux dents</translation>
        </message>
        <message>
            <source>It fires early, so the rotor has to go back. Move the magneto flange against rotation and the disc with rotation, as many times as it takes, one tooth each time.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Elle allume en avance, le rotor doit donc reculer. Déplacer la bride de la magnéto en sens inverse et le disque dans le sens de rotation, autant de fois qu'il faut, une dent à chaque fois.</translation>
        </message>
        <message>
            <source>One tooth is more than 18° of rotor; one each way is less than one.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Une dent fait plus de 18° de rotor ; une dans chaque sens fait moins d'un.</translation>
        </message>
        <message>
            <source>A pair of teeth, −1 and +1, makes it about 1.1° of crank later. It is about 3° early.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Une paire de dents, −1 et +1, retarde d'environ 1.1° de vilebrequin. Elle est à environ 3° d'avance.</translation>
        </message>
        <message>
            <source>Nuts on</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Écrous remis</translation>
        </message>
        <message>
            <source>Push the magneto home and tighten its nuts.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Pousser la magnéto à fond et serrer ses écrous.</translation>
        </message>
        <message>
            <source>Check</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Vérifier</translation>
        </message>
        <message>
            <source>The reading with everything tight is the one that is signed for.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>C'est la lecture tout serré que l'on signe.</translation>
        </message>
        <message>
            <source>Safe</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>En sécurité</translation>
        </message>
        <message>
            <source>Plate and screw</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Plateau et vis</translation>
        </message>
        <message>
            <source>The contact screw moves gap and opening, the backplate the opening alone. In this order they bring both right.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>La vis de contact déplace écartement et ouverture, le plateau l'ouverture seule. Dans cet ordre, ils mettent les deux justes.</translation>
        </message>
        <message>
            <source>Set by somebody in a hurry: gap too wide, opening late.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Réglée par quelqu'un de pressé : écartement trop grand, ouverture en retard.</translation>
        </message>
        <message>
            <source>Slacken the lock screw</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Desserrer la vis de blocage</translation>
        </message>
        <message>
            <source>The gap comes first. Slacken the lock screw.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>L'écartement d'abord. Desserrer la vis de blocage.</translation>
        </message>
        <message>
            <source>Closer</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Rapprocher</translation>
        </message>
        <message>
            <source>Turn the contact screw so that the contacts come closer, 3° at least.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Tourner la vis de contact pour rapprocher les contacts, de 3° au moins.</translation>
        </message>
        <message>
            <source>The gap is smaller now, and the contacts open later still: the screw moves both.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>L'écartement est maintenant plus petit, et les contacts s'ouvrent encore plus tard : la vis déplace les deux.</translation>
        </message>
        <message>
            <source>Tighten and measure</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Serrer et mesurer</translation>
        </message>
        <message>
            <source>Bring the gap within limits with the lock screw tight.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Amener l'écartement dans les limites, vis de blocage serrée.</translation>
        </message>
        <message>
            <source>Did you notice? Tightening carried the screw along. What counts is the gap with everything tight.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>L'avez-vous remarqué ? Le serrage a entraîné la vis. Ce qui compte est l'écartement tout serré.</translation>
        </message>
        <message>
            <source>Limits are 0.30 to 0.36 mm. The lock screw carries the contact screw about 2° closer each time it is tightened.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Blades say so</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Les jauges le disent</translation>
        </message>
        <message>
            <source>Turn until the contacts stand widest open, and try a blade.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Tourner jusqu'aux contacts au plus ouvert, et essayer une jauge.</translation>
        </message>
        <message>
            <source>Slacken the clamps</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Desserrer le plateau</translation>
        </message>
        <message>
            <source>The opening is late. Slacken the clamp screws.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>L'ouverture est en retard. Desserrer les vis de serrage.</translation>
        </message>
        <message>
            <source>Against rotation</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>En sens inverse</translation>
        </message>
        <message>
            <source>Turn the backplate against rotation, a degree at least.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Tourner le plateau en sens inverse de la rotation, d'un degré au moins.</translation>
        </message>
        <message>
            <source>The contacts now open earlier. The gap is what it was.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Les contacts s'ouvrent maintenant plus tôt. L'écartement est ce qu'il était.</translation>
        </message>
        <message>
            <source>To the mark</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Au repère</translation>
        </message>
        <message>
            <source>Bring the opening to the mark, and clamp the plate.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Amener l'ouverture au repère, et serrer le plateau.</translation>
        </message>
        <message>
            <source>Lay the straightedge on, look square over it, and watch the lamp. Half a millimetre at the rim is about 0.8° here.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Check again</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Revérifier</translation>
        </message>
        <message>
            <source>With all tight: turn with rotation until the lamp lights, the straightedge on and looked at square.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Tout serré : tourner dans le sens de rotation jusqu'à ce que la lampe s'allume, réglet posé et visé d'équerre.</translation>
        </message>
        <message>
            <source>Only what was checked after the last screw was tightened is known.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Seul ce qui a été vérifié après le serrage de la dernière vis est connu.</translation>
        </message>
        <message>
            <source>Is the switch lead sound?</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Le fil de masse est-il sain ?</translation>
        </message>
        <message>
            <source>A magneto is live unless it is grounded. The lead that grounds it can be broken where nobody sees it.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Une magnéto est active tant qu'elle n'est pas à la masse. Le fil qui l'y met peut être coupé là où nul ne le voit.</translation>
        </message>
        <message>
            <source>The switch lead</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Le fil de masse</translation>
        </message>
        <message>
            <source>An aircraft back from a long lay-up.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Un aéronef de retour d'un long stockage.</translation>
        </message>
        <message>
            <source>Chocks first</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>D'abord les cales</translation>
        </message>
        <message>
            <source>Pull the plug</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Débrancher la fiche</translation>
        </message>
        <message>
            <source>With the switch off, pull the plug of the switch lead. A spring tab now grounds the magneto – if it touches.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Contacteur sur arrêt, débrancher la fiche du fil de masse. Une languette ressort met alors la magnéto à la masse – si elle touche.</translation>
        </message>
        <message>
            <source>Meter</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Ohmmètre</translation>
        </message>
        <message>
            <source>Meter from the lead's plug to the case, switch off.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Ohmmètre de la fiche du fil au carter, contacteur sur arrêt.</translation>
        </message>
        <message>
            <source>No ground with the switch off: this magneto was live all the time it was thought safe.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Pas de masse avec contacteur sur arrêt : cette magnéto était active tout le temps qu'on la croyait sûre.</translation>
        </message>
        <message>
            <source>A new lead</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Un fil neuf</translation>
        </message>
        <message>
            <source>Put in a new lead.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Poser un fil neuf.</translation>
        </message>
        <message>
            <source>Prove it</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Le prouver</translation>
        </message>
        <message>
            <source>Meter again, switch off.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Ohmmètre de nouveau, contacteur sur arrêt.</translation>
        </message>
        <message>
            <source>Ground. That is half of the proof.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Masse. C'est la moitié de la preuve.</translation>
        </message>
        <message>
            <source>The other half</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>L'autre moitié</translation>
        </message>
        <message>
            <source>Switch on, and meter again.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Contacteur sur marche, et ohmmètre de nouveau.</translation>
        </message>
        <message>
            <source>No ground with the switch on: the switch works both ways.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Pas de masse avec contacteur sur marche : le contacteur agit dans les deux sens.</translation>
        </message>
        <message>
            <source>Leave it safe</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>La laisser sûre</translation>
        </message>
        <message>
            <source>Switch off, and push the plug in.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Contacteur sur arrêt, et brancher la fiche.</translation>
        </message>
        <message>
            <source>Now, and not before, the switch can be trusted – until the next time.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Maintenant, et pas avant, on peut se fier au contacteur – jusqu'à la prochaine fois.</translation>
        </message>
        <message>
            <source>Top dead centre by the stop</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Point mort haut par la butée</translation>
        </message>
        <message>
            <source>Near the top the piston hardly moves: dead centre is found from both sides, not by looking for it.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Près du haut, le piston bouge à peine : le point mort se trouve des deux côtés, non en le cherchant des yeux.</translation>
        </message>
        <message>
            <source>An engine with a disc on its crank, put on by eye.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Un moteur avec un disque au vilebrequin, posé à l'œil.</translation>
        </message>
        <message>
            <source>Put chocks at the wheels. The propeller is treated as live.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Mettre des cales aux roues. L'hélice est traitée comme active.</translation>
        </message>
        <message>
            <source>Take the spark plugs out: nothing can fire, nothing is compressed.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Déposer les bougies : rien ne peut allumer, rien n'est comprimé.</translation>
        </message>
        <message>
            <source>The stop</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>La butée</translation>
        </message>
        <message>
            <source>Fit the piston stop in No. 1. If the piston stands too high, turn the propeller on first.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Poser la butée de piston dans le n° 1. Si le piston est trop haut, faire d'abord avancer l'hélice.</translation>
        </message>
        <message>
            <source>From one side</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>D'un côté</translation>
        </message>
        <message>
            <source>Turn the propeller gently with rotation until the piston meets the stop, and read the disc.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Tourner l'hélice en douceur dans le sens de rotation jusqu'à ce que le piston touche la butée, et lire le disque.</translation>
        </message>
        <message>
            <source>From the other</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>De l'autre</translation>
        </message>
        <message>
            <source>Turn back until it meets the stop from the other side, and read the disc again.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Revenir jusqu'à ce qu'il touche la butée de l'autre côté, et relire le disque.</translation>
        </message>
        <message>
            <source>Dead centre lies half-way between the two readings.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Le point mort est à mi-chemin des deux lectures.</translation>
        </message>
        <message>
            <source>Write it down</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Le noter</translation>
        </message>
        <message>
            <source>Write down what the disc reads at top dead centre.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Noter ce que le disque lit au point mort haut.</translation>
        </message>
        <message>
            <source>Set the disc</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Régler le disque</translation>
        </message>
        <message>
            <source>Turn the disc on the crank so that it reads zero there.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Tourner le disque sur le vilebrequin pour qu'il y lise zéro.</translation>
        </message>
        <message>
            <source>The half-way reading, turned the other way.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>La lecture du milieu, tournée dans l'autre sens.</translation>
        </message>
        <message>
            <source>Take the stop out, or the next turn of the propeller ends at it.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Ôter la butée, sinon le prochain tour d'hélice finit contre elle.</translation>
        </message>
        <message>
            <source>From here the disc tells the truth.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>À partir d'ici, le disque dit vrai.</translation>
        </message>
        <message>
            <source>What the parts are</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Quelles sont les pièces</translation>
        </message>
        <message>
            <source>The breaker end of a magneto, part by part. Point at each part in the picture as it is asked for.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Le côté rupteur d'une magnéto, pièce par pièce. Montrer chaque pièce dans l'image quand elle est demandée.</translation>
        </message>
        <message>
            <source>The parts</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Les pièces</translation>
        </message>
        <message>
            <source>A magneto with its breaker cover off, seen from the breaker end.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Une magnéto, capot du rupteur ôté, vue côté rupteur.</translation>
        </message>
        <message>
            <source>The rotor</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Le rotor</translation>
        </message>
        <message>
            <source>A magnet with north and south poles that alternate round it. The engine turns it. Point at the rotor.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Un aimant dont les pôles nord et sud alternent sur le pourtour. Le moteur le tourne. Montrer le rotor.</translation>
        </message>
        <message>
            <source>Its field runs through the iron of the coil, one way and then the other.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Son champ parcourt le fer de la bobine, dans un sens puis dans l'autre.</translation>
        </message>
        <message>
            <source>The pole shoe</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>La pièce polaire</translation>
        </message>
        <message>
            <source>The iron that leads the magnet's field up to the coil and back. Point at a pole shoe.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Le fer qui mène le champ de l'aimant à la bobine et retour. Montrer une pièce polaire.</translation>
        </message>
        <message>
            <source>Halfway between two poles the field in the iron changes its sense: that place is called neutral.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>À mi-chemin de deux pôles, le champ dans le fer change de sens : cet endroit s'appelle le neutre.</translation>
        </message>
        <message>
            <source>The cam</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>La came</translation>
        </message>
        <message>
            <source>It turns with the rotor and has a lobe for each spark of a turn. Point at the cam.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Elle tourne avec le rotor et a un bossage par étincelle d'un tour. Montrer la came.</translation>
        </message>
        <message>
            <source>Its lobes push the breaker arm outwards.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Ses bossages poussent le levier du rupteur vers l'extérieur.</translation>
        </message>
        <message>
            <source>The heel</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Le toucheau</translation>
        </message>
        <message>
            <source>The block on the breaker arm that rides on the cam. Point at the heel.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Le bloc du levier du rupteur qui suit la came. Montrer le toucheau.</translation>
        </message>
        <message>
            <source>When the heel wears, the contacts open later and less wide.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Quand le toucheau s'use, les contacts s'ouvrent plus tard et moins grand.</translation>
        </message>
        <message>
            <source>The breaker arm</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Le levier du rupteur</translation>
        </message>
        <message>
            <source>It swings about its pivot and carries the moving contact. Point at the breaker arm.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Il bascule autour de son pivot et porte le contact mobile. Montrer le levier du rupteur.</translation>
        </message>
        <message>
            <source>A spring presses it towards the cam.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Un ressort le pousse vers la came.</translation>
        </message>
        <message>
            <source>While they touch, the coil's primary current flows; as they part, it breaks and the spark jumps. Point at the contacts.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Tant qu'ils se touchent, le courant primaire de la bobine passe ; quand ils se séparent, il est coupé et l'étincelle jaillit. Montrer les contacts.</translation>
        </message>
        <message>
            <source>When they part, and how far, is what this program is about.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Quand ils se séparent, et de combien, c'est l'objet de ce programme.</translation>
        </message>
        <message>
            <source>The contact screw</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>La vis de contact</translation>
        </message>
        <message>
            <source>It moves the fixed contact nearer or further off. Point at the contact screw.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Elle rapproche ou éloigne le contact fixe. Montrer la vis de contact.</translation>
        </message>
        <message>
            <source>Nearer: the contacts open later and less wide.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Plus près : les contacts s'ouvrent plus tard et moins grand.</translation>
        </message>
        <message>
            <source>The lock screw</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>La vis de blocage</translation>
        </message>
        <message>
            <source>It holds the contact screw. Point at the lock screw.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Elle tient la vis de contact. Montrer la vis de blocage.</translation>
        </message>
        <message>
            <source>Tightening it can carry the contact screw along: measure again afterwards.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>La serrer peut entraîner la vis de contact : mesurer de nouveau ensuite.</translation>
        </message>
        <message>
            <source>The backplate</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Le plateau</translation>
        </message>
        <message>
            <source>It carries contacts and breaker arm, and can be turned about the cam. Point at the backplate.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Il porte contacts et levier du rupteur, et peut être tourné autour de la came. Montrer le plateau.</translation>
        </message>
        <message>
            <source>With rotation: the contacts open later. The gap does not change.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Dans le sens de rotation : les contacts s'ouvrent plus tard. L'écartement ne change pas.</translation>
        </message>
        <message>
            <source>The clamp screw</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>La vis de serrage</translation>
        </message>
        <message>
            <source>They hold the backplate. Point at a clamp screw.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Elles tiennent le plateau. Montrer une vis de serrage.</translation>
        </message>
        <message>
            <source>A plate that is not clamped will not stay.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Un plateau non serré ne tient pas sa place.</translation>
        </message>
        <message>
            <source>The step</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>L'épaulement</translation>
        </message>
        <message>
            <source>A flat edge on the cam along which a straightedge is laid. Point at the step.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Une arête plane sur la came le long de laquelle on pose un réglet. Montrer l'épaulement.</translation>
        </message>
        <message>
            <source>It turns with the cam and shows where the rotor stands.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Il tourne avec la came et montre où est le rotor.</translation>
        </message>
        <message>
            <source>The rim mark</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Le repère du bord</translation>
        </message>
        <message>
            <source>A mark on the housing's rim: with the step in line, the rotor is at the E-gap. Point at a rim mark.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Un repère sur le bord du carter : l'épaulement aligné dessus, le rotor est à l'E-gap. Montrer un repère du bord.</translation>
        </message>
        <message>
            <source>There the contacts should just begin to open.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>C'est là que les contacts doivent tout juste commencer à s'ouvrir.</translation>
        </message>
    </context>
</TS>
