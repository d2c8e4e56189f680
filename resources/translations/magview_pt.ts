<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="pt" sourcelanguage="en">
    <context>
        <name>magview</name>
        <message>
            <source>Plate and screw both move the opening, only the screw moves the gap: check both again after tightening.</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>Placa e parafuso movem ambos a abertura, só o parafuso move a folga: verificar ambas de novo depois de apertar.</translation>
        </message>
        <message>
            <source>tightening the lock screw carries it on by {creep}° (closer), to {angle}°</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>o aperto do parafuso de fixação leva-o mais {creep}° (mais perto), até {angle}°</translation>
        </message>
        <message>
            <source>tightening the lock screw carries the contact screw along, which would first have to stand at {value}°, {beyond}° beyond the end of its travel ({low}° to {high}°)</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>o aperto do parafuso de fixação arrasta o parafuso de contacto, que teria de estar antes em {value}°, {beyond}° além do fim do percurso ({low}° a {high}°)</translation>
        </message>
        <message>
            <source>A largest gap of {gap} with opening at the E-gap cannot be had: {reason}.</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>Não se consegue uma folga máxima de {gap} com abertura no E-gap: {reason}.</translation>
        </message>
        <message>
            <source>Nothing to turn: {creep}; then the contacts open at the E-gap and the largest gap is {gap}.</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>Nada a rodar: {creep}; então os contactos abrem no E-gap e a folga máxima é {gap}.</translation>
        </message>
        <message>
            <source>tightening the lock screw carries it back by {creep}° (wider), to {angle}°</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>o aperto do parafuso de fixação fá-lo recuar {creep}° (mais abertos), até {angle}°</translation>
        </message>
        <message>
            <source>Nothing: the contacts open at the E-gap and the largest gap is {gap}.</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>Nada: os contactos abrem no E-gap e a folga máxima é {gap}.</translation>
        </message>
        <message>
            <source>slacken the clamp screws and the lock screw</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>aliviar os parafusos de aperto e o parafuso de fixação</translation>
        </message>
        <message>
            <source>{first}, then {then}</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>{first}, depois {then}</translation>
        </message>
        <message>
            <source>{moves}, to {angle}°; {creep}</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>{moves}, até {angle}°; {creep}</translation>
        </message>
        <message>
            <source>{moves}; {creep}</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>{moves}; {creep}</translation>
        </message>
        <message>
            <source>slacken the clamp screws</source>
            <extracomment>bench/advised.py, bench/describe.py</extracomment>
            <translation>aliviar os parafusos de aperto</translation>
        </message>
        <message>
            <source>slacken the lock screw</source>
            <extracomment>bench/advised.py, bench/describe.py</extracomment>
            <translation>aliviar o parafuso de fixação</translation>
        </message>
        <message>
            <source>the backplate's angle is {value}; it must be a finite number of degrees</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>o ângulo da placa de base é {value}; tem de ser um número finito de graus</translation>
        </message>
        <message>
            <source>the contact screw's angle is {value}; it must be a finite number of degrees</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>o ângulo do parafuso de contacto é {value}; tem de ser um número finito de graus</translation>
        </message>
        <message>
            <source>the lamp's reading is {value}; it must be a finite number of degrees</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>a leitura da lâmpada é {value}; tem de ser um número finito de graus</translation>
        </message>
        <message>
            <source>{to} is not a length; wear must be a finite number of millimetres</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>{to} não é um comprimento; o desgaste tem de ser um número finito de milímetros</translation>
        </message>
        <message>
            <source>this magneto's file gives no heel arm, so it cannot be said what a worn heel does</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>o ficheiro deste magneto não dá o braço do calcador, pelo que não se pode dizer o que faz um calcador gasto</translation>
        </message>
        <message>
            <source>the clamp screws are tight: slacken them before turning the backplate</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>os parafusos de aperto estão apertados: aliviá-los antes de rodar a placa de base</translation>
        </message>
        <message>
            <source>the lock screw is tight: slacken it before turning the contact screw</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>o parafuso de fixação está apertado: aliviá-lo antes de rodar o parafuso de contacto</translation>
        </message>
        <message>
            <source>this magneto is not on an engine: open an installation first</source>
            <extracomment>bench/apply.py, bench/sureness.py, ui/uncertainty_panel.py</extracomment>
            <translation>este magneto não está num motor: abrir primeiro uma instalação</translation>
        </message>
        <message>
            <source>with this setting the contacts never open and close, so the lamp tells no timing</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>com esta regulação os contactos nunca abrem e fecham, pelo que a lâmpada não diz o ponto</translation>
        </message>
        <message>
            <source>“{fault}” is not a fault of the switch lead; it is shorted, broken or tab</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>“{fault}” não é um defeito do cabo de massa; é shorted, broken ou tab</translation>
        </message>
        <message>
            <source>the wanted timing is {value}; it must be a finite number of degrees</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>o ponto desejado é {value}; tem de ser um número finito de graus</translation>
        </message>
        <message>
            <source>the rotor's angle is {value}; it must be a finite number of degrees</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>o ângulo do rotor é {value}; tem de ser um número finito de graus</translation>
        </message>
        <message>
            <source>the clock cannot run {steps} steps; it takes 0 to {most} at a time</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>o relógio não pode andar {steps} passos; leva de 0 a {most} de cada vez</translation>
        </message>
        <message>
            <source>the crank's angle is {value}; it must be a finite number of degrees</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>o ângulo da cambota é {value}; tem de ser um número finito de graus</translation>
        </message>
        <message>
            <source>a whole turn of teeth brings the coupling back to where it was, with the finger off</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>uma volta inteira de dentes leva o acoplamento aonde estava, com o rotor distribuidor fora</translation>
        </message>
        <message>
            <source>there are {most} trials already; strike one out first</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>já há {most} ensaios; riscar primeiro um</translation>
        </message>
        <message>
            <source>there is no trial {place}; there are {count}</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>não há ensaio {place}; há {count}</translation>
        </message>
        <message>
            <source>there are {most} inspections already; strike one out first</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>já há {most} inspeções; riscar primeiro uma</translation>
        </message>
        <message>
            <source>there is no inspection {place}; there are {count}</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>não há inspeção {place}; há {count}</translation>
        </message>
        <message>
            <source>{name}: is not a kept bench; its format must be "{wanted}"</source>
            <extracomment>bench/autosave.py</extracomment>
            <translation>{name}: não é uma bancada conservada; o formato tem de ser "{wanted}"</translation>
        </message>
        <message>
            <source>{name}: is damaged: an inspection lacks the setting it was noted at</source>
            <extracomment>bench/autosave.py</extracomment>
            <translation>{name}: está danificado: falta a uma inspeção a regulação em que foi anotada</translation>
        </message>
        <message>
            <source>{name}: is damaged: an angle is not a finite number</source>
            <extracomment>bench/autosave.py</extracomment>
            <translation>{name}: está danificado: um ângulo não é um número finito</translation>
        </message>
        <message>
            <source>{name}: is damaged: {reason}</source>
            <extracomment>bench/autosave.py</extracomment>
            <translation>{name}: está danificado: {reason}</translation>
        </message>
        <message>
            <source>{name}: cannot be used: {reason}</source>
            <extracomment>bench/autosave.py</extracomment>
            <translation>{name}: não pode ser usado: {reason}</translation>
        </message>
        <message>
            <source>Another magneto is on the bench: {magneto}.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Outro magneto está na bancada: {magneto}.</translation>
        </message>
        <message>
            <source>Wear or pips of the magneto are others.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>O desgaste ou os picos do magneto são outros.</translation>
        </message>
        <message>
            <source>The rotor is held.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>O rotor está seguro.</translation>
        </message>
        <message>
            <source>The rotor was let go.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>O rotor foi largado.</translation>
        </message>
        <message>
            <source>The lock screw is tight.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>O parafuso de fixação está apertado.</translation>
        </message>
        <message>
            <source>The lock screw is slack.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>O parafuso de fixação está aliviado.</translation>
        </message>
        <message>
            <source>The clamp screws are tight.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Os parafusos de aperto estão apertados.</translation>
        </message>
        <message>
            <source>The clamp screws are slack.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Os parafusos de aperto estão aliviados.</translation>
        </message>
        <message>
            <source>The switch is on.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>O interruptor está ligado.</translation>
        </message>
        <message>
            <source>The switch is off.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>O interruptor está desligado.</translation>
        </message>
        <message>
            <source>The lead's plug is in.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>A ficha do cabo está metida.</translation>
        </message>
        <message>
            <source>The lead's plug is out.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>A ficha do cabo está tirada.</translation>
        </message>
        <message>
            <source>The switch lead is in another condition.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>O cabo de massa está noutro estado.</translation>
        </message>
        <message>
            <source>The magneto flange stands in other teeth of the disc.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>A flange do magneto está noutros dentes do disco.</translation>
        </message>
        <message>
            <source>The disc stands in other teeth of the drive flange.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>O disco está noutros dentes da flange motriz.</translation>
        </message>
        <message>
            <source>The magneto stands for itself now.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>O magneto está agora por si só.</translation>
        </message>
        <message>
            <source>The magneto is on an engine now.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>O magneto está agora num motor.</translation>
        </message>
        <message>
            <source>The magneto is on the engine.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>O magneto está no motor.</translation>
        </message>
        <message>
            <source>The magneto is off the engine.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>O magneto está fora do motor.</translation>
        </message>
        <message>
            <source>The left magneto is in view.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Vê-se o magneto esquerdo.</translation>
        </message>
        <message>
            <source>The right magneto is in view.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Vê-se o magneto direito.</translation>
        </message>
        <message>
            <source>The contacts open now.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Os contactos agora abrem.</translation>
        </message>
        <message>
            <source>The contacts never open now.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Os contactos agora nunca abrem.</translation>
        </message>
        <message>
            <source>It is within its limits now.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Está agora dentro dos limites.</translation>
        </message>
        <message>
            <source>It is out of its limits now.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Está agora fora dos limites.</translation>
        </message>
        <message>
            <source>The rotor was turned {angle} with rotation.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>O rotor foi rodado {angle} no sentido de rotação.</translation>
        </message>
        <message>
            <source>The rotor was turned {angle} against rotation.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>O rotor foi rodado {angle} contra a rotação.</translation>
        </message>
        <message>
            <source>The rotor was turned with rotation.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>O rotor foi rodado no sentido de rotação.</translation>
        </message>
        <message>
            <source>The rotor was turned against rotation.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>O rotor foi rodado contra a rotação.</translation>
        </message>
        <message>
            <source>The backplate was turned {angle} with rotation.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>A placa de base foi rodada {angle} no sentido de rotação.</translation>
        </message>
        <message>
            <source>The backplate was turned {angle} against rotation.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>A placa de base foi rodada {angle} contra a rotação.</translation>
        </message>
        <message>
            <source>The backplate was turned with rotation.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>A placa de base foi rodada no sentido de rotação.</translation>
        </message>
        <message>
            <source>The backplate was turned against rotation.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>A placa de base foi rodada contra a rotação.</translation>
        </message>
        <message>
            <source>The contact screw was turned {angle}, contacts closer.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>O parafuso de contacto foi rodado {angle}, contactos mais perto.</translation>
        </message>
        <message>
            <source>The contact screw was turned {angle}, contacts wider.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>O parafuso de contacto foi rodado {angle}, contactos mais abertos.</translation>
        </message>
        <message>
            <source>The contact screw was turned, contacts closer.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>O parafuso de contacto foi rodado, contactos mais perto.</translation>
        </message>
        <message>
            <source>The contact screw was turned, contacts wider.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>O parafuso de contacto foi rodado, contactos mais abertos.</translation>
        </message>
        <message>
            <source>The largest gap is {length} wider: {gap}.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>A folga máxima é {length} maior: {gap}.</translation>
        </message>
        <message>
            <source>The largest gap is {length} narrower: {gap}.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>A folga máxima é {length} menor: {gap}.</translation>
        </message>
        <message>
            <source>The largest gap is wider.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>A folga máxima é maior.</translation>
        </message>
        <message>
            <source>The largest gap is narrower.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>A folga máxima é menor.</translation>
        </message>
        <message>
            <source>The contacts open {angle} of rotor later.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Os contactos abrem {angle} de rotor mais tarde.</translation>
        </message>
        <message>
            <source>The contacts open {angle} of rotor earlier.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Os contactos abrem {angle} de rotor mais cedo.</translation>
        </message>
        <message>
            <source>The contacts open later.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Os contactos abrem mais tarde.</translation>
        </message>
        <message>
            <source>The contacts open earlier.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Os contactos abrem mais cedo.</translation>
        </message>
        <message>
            <source>Assumed: constant speed, linear core without losses, contacts that make and break at once, no load on the secondary while they are closed; illustrative unless the file's values are measured. At running speed this model's best opening lies past the E-gap: the maker's E-gap governs.</source>
            <extracomment>bench/curves_coil.py</extracomment>
            <translation>Suposto: velocidade constante, núcleo linear sem perdas, contactos que fecham e abrem de imediato, nenhuma carga no secundário enquanto estão fechados; ilustrativo, salvo se os valores do ficheiro forem medidos. À velocidade de marcha a melhor abertura deste modelo fica depois do E-gap: vale o E-gap do fabricante.</translation>
        </message>
        <message>
            <source>put in a short inside the magneto</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>pôr um curto-circuito dentro do magneto</translation>
        </message>
        <message>
            <source>take away a short inside the magneto</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>tirar um curto-circuito dentro do magneto</translation>
        </message>
        <message>
            <source>put in a break in the switch lead</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>pôr uma rotura no cabo de massa</translation>
        </message>
        <message>
            <source>take away a break in the switch lead</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>tirar uma rotura no cabo de massa</translation>
        </message>
        <message>
            <source>put in a bent spring tab</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>pôr uma lingueta de mola dobrada</translation>
        </message>
        <message>
            <source>take away a bent spring tab</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>tirar uma lingueta de mola dobrada</translation>
        </message>
        <message>
            <source>let go of the rotor</source>
            <extracomment>bench/describe.py, practice/words.py</extracomment>
            <translation>largar o rotor</translation>
        </message>
        <message>
            <source>grow a pip of {pip_height} mm</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>deixar crescer um pico de {pip_height} mm</translation>
        </message>
        <message>
            <source>wear the heel to {heel_wear} mm</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>gastar o calcador até {heel_wear} mm</translation>
        </message>
        <message>
            <source>move teeth</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>mover dentes</translation>
        </message>
        <message>
            <source>move the magneto flange {flange} and the disc {disc}</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>mover a flange do magneto {flange} e o disco {disc}</translation>
        </message>
        <message>
            <source>move the magneto flange {teeth}</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>mover a flange do magneto {teeth}</translation>
        </message>
        <message>
            <source>move the disc {teeth}</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>mover o disco {teeth}</translation>
        </message>
        <message>
            <source>move the coupling</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>mover o acoplamento</translation>
        </message>
        <message>
            <source>place the {magneto}</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>pôr o {magneto}</translation>
        </message>
        <message>
            <source>set backplate and contact screw</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>pôr placa de base e parafuso de contacto</translation>
        </message>
        <message>
            <source>turn the rotor {angle}° against rotation</source>
            <extracomment>bench/describe.py, practice/words.py</extracomment>
            <translation>rodar o rotor {angle}° contra a rotação</translation>
        </message>
        <message>
            <source>hold the rotor</source>
            <extracomment>bench/describe.py, practice/words.py</extracomment>
            <translation>segurar o rotor</translation>
        </message>
        <message>
            <source>wait</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>esperar</translation>
        </message>
        <message>
            <source>note the trial at plate {backplate}°</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>anotar o ensaio com a placa em {backplate}°</translation>
        </message>
        <message>
            <source>note the inspection at {hours} h</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>anotar a inspeção às {hours} h</translation>
        </message>
        <message>
            <source>strike out trial {place}</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>riscar o ensaio {place}</translation>
        </message>
        <message>
            <source>strike out inspection {place}</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>riscar a inspeção {place}</translation>
        </message>
        <message>
            <source>turn the crank {angle}° against rotation</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>rodar a cambota {angle}° contra a rotação</translation>
        </message>
        <message>
            <source>read the lamp: right fires {btdc}° before top dead centre</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>ler a lâmpada: o direito inflama {btdc}° antes do ponto morto superior</translation>
        </message>
        <message>
            <source>want right at {btdc}° before top dead centre</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>querer o direito a {btdc}° antes do ponto morto superior</translation>
        </message>
        <message>
            <source>paint new marks on the coupling</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>pintar marcas novas no acoplamento</translation>
        </message>
        <message>
            <source>tighten the lock screw</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>apertar o parafuso de fixação</translation>
        </message>
        <message>
            <source>tighten the clamp screws</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>apertar os parafusos de aperto</translation>
        </message>
        <message>
            <source>turn the rotor {angle}° with rotation</source>
            <extracomment>bench/describe.py, practice/words.py</extracomment>
            <translation>rodar o rotor {angle}° no sentido de rotação</translation>
        </message>
        <message>
            <source>pull the switch lead's plug</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>tirar a ficha do cabo de massa</translation>
        </message>
        <message>
            <source>push in the switch lead's plug</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>meter a ficha do cabo de massa</translation>
        </message>
        <message>
            <source>switch on</source>
            <extracomment>bench/describe.py, bench/lead_picture.py, ui/class_editor_fields.py</extracomment>
            <translation>ligar</translation>
        </message>
        <message>
            <source>switch off</source>
            <extracomment>bench/describe.py, bench/lead_picture.py, practice/advice.py, practice/goals.py</extracomment>
            <translation>desligar</translation>
        </message>
        <message>
            <source>turn the crank</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>rodar a cambota</translation>
        </message>
        <message>
            <source>turn the crank {angle}° with rotation</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>rodar a cambota {angle}° no sentido de rotação</translation>
        </message>
        <message>
            <source>refit the magneto by its marks</source>
            <extracomment>bench/describe.py, practice/words.py</extracomment>
            <translation>montar de novo o magneto pelas marcas</translation>
        </message>
        <message>
            <source>take the magneto off the engine</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>tirar o magneto do motor</translation>
        </message>
        <message>
            <source>read the lamp: left fires {btdc}° before top dead centre</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>ler a lâmpada: o esquerdo inflama {btdc}° antes do ponto morto superior</translation>
        </message>
        <message>
            <source>want left at {btdc}° before top dead centre</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>querer o esquerdo a {btdc}° antes do ponto morto superior</translation>
        </message>
        <message>
            <source>look at the left magneto</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>olhar para o magneto esquerdo</translation>
        </message>
        <message>
            <source>look at the right magneto</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>olhar para o magneto direito</translation>
        </message>
        <message>
            <source>contacts just open</source>
            <extracomment>bench/events.py</extracomment>
            <translation>contactos a abrir</translation>
        </message>
        <message>
            <source>contacts just close</source>
            <extracomment>bench/events.py</extracomment>
            <translation>contactos a fechar</translation>
        </message>
        <message>
            <source>top of lobe</source>
            <extracomment>bench/events.py</extracomment>
            <translation>topo</translation>
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
            <translation>“{kind}” não é nada onde parar; há {known}</translation>
        </message>
        <message>
            <source>Grounded by the switch, through its lead. No spark; the lamp sees “closed” whatever the contacts do.</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>À massa pelo interruptor, através do cabo. Sem faísca; a lâmpada vê “fechado” façam os contactos o que fizerem.</translation>
        </message>
        <message>
            <source>Grounded by the switch, through its lead. A short inside the magneto grounds it too. No spark; the lamp sees “closed” whatever the contacts do.</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>À massa pelo interruptor, através do cabo. Um curto-circuito dentro do magneto também o põe à massa. Sem faísca; a lâmpada vê “fechado” façam os contactos o que fizerem.</translation>
        </message>
        <message>
            <source>Grounded by the spring tab: the plug is out. No spark; the lamp sees “closed” whatever the contacts do.</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>À massa pela lingueta de mola: a ficha está tirada. Sem faísca; a lâmpada vê “fechado” façam os contactos o que fizerem.</translation>
        </message>
        <message>
            <source>Grounded by the spring tab: the plug is out. A short inside the magneto grounds it too. No spark; the lamp sees “closed” whatever the contacts do.</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>À massa pela lingueta de mola: a ficha está tirada. Um curto-circuito dentro do magneto também o põe à massa. Sem faísca; a lâmpada vê “fechado” façam os contactos o que fizerem.</translation>
        </message>
        <message>
            <source>Meter on the lead: no ground</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>Multímetro no cabo: sem massa</translation>
        </message>
        <message>
            <source>Meter: pull the plug to read the lead</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>Multímetro: tirar a ficha para ler o cabo</translation>
        </message>
        <message>
            <source>Meter on the lead: ground</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>Multímetro no cabo: massa</translation>
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
            <translation>ficha</translation>
        </message>
        <message>
            <source>lead</source>
            <extracomment>bench/lead_picture.py, bench/told.py</extracomment>
            <translation>cabo</translation>
        </message>
        <message>
            <source>spring tab</source>
            <extracomment>bench/lead_picture.py, bench/told.py</extracomment>
            <translation>lingueta de mola</translation>
        </message>
        <message>
            <source>Grounded only by a short inside the magneto, not by the switch: no spark now, but DANGER: without the short it would be live.</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>À massa só por um curto-circuito dentro do magneto, não pelo interruptor: agora sem faísca, mas PERIGO: sem o curto estaria vivo.</translation>
        </message>
        <message>
            <source>DANGER: live with the plug out: its tab does not touch the case. Any turn can fire a plug.</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>PERIGO: vivo com a ficha tirada: a lingueta não toca na carcaça. Qualquer volta pode dar faísca numa vela.</translation>
        </message>
        <message>
            <source>Live: the switch is on. A turn of the propeller can fire a plug.</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>Vivo: o interruptor está ligado. Uma volta da hélice pode dar faísca numa vela.</translation>
        </message>
        <message>
            <source>broken inside</source>
            <extracomment>bench/lead_picture.py, ui/practice_notebook.py</extracomment>
            <translation>partido por dentro</translation>
        </message>
        <message>
            <source>short</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>curto</translation>
        </message>
        <message>
            <source>DANGER: live with the switch off: the lead is broken inside. Any turn can fire a plug.</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>PERIGO: vivo com o interruptor desligado: o cabo está partido por dentro. Qualquer volta pode dar faísca numa vela.</translation>
        </message>
        <message>
            <source>{first} and {second}</source>
            <extracomment>bench/own.py</extracomment>
            <translation>{first} e {second}</translation>
        </message>
        <message>
            <source>“{text}” could not be taken: type it again</source>
            <extracomment>bench/own.py</extracomment>
            <translation>“{text}” não pôde ser aceite: escrever de novo</translation>
        </message>
        <message>
            <source>the magneto in this window is not complete yet: its own pages say what is missing</source>
            <extracomment>bench/own.py</extracomment>
            <translation>o magneto desta janela ainda não está completo: as suas páginas dizem o que falta</translation>
        </message>
        <message>
            <source>the engine in this window is not complete yet: its own pages say what is missing</source>
            <extracomment>bench/own.py</extracomment>
            <translation>o motor desta janela ainda não está completo: as suas páginas dizem o que falta</translation>
        </message>
        <message>
            <source>cannot be had</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>não se consegue</translation>
        </message>
        <message>
            <source>Lobe 1 opens, past neutral</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>O ressalto 1 abre, depois do neutro</translation>
        </message>
        <message>
            <source>Off the E-gap</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Fora do E-gap</translation>
        </message>
        <message>
            <source>Largest gap on lobe 1</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Folga máxima no ressalto 1</translation>
        </message>
        <message>
            <source>Gap of all lobes, least</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Folga de todos os ressaltos, mínima</translation>
        </message>
        <message>
            <source>Gap of all lobes, most</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Folga de todos os ressaltos, máxima</translation>
        </message>
        <message>
            <source>Contacts closed before lobe 1</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Contactos fechados antes do ressalto 1</translation>
        </message>
        <message>
            <source>Contact lift at the top</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Levantamento do contacto no topo</translation>
        </message>
        <message>
            <source>At the rim for 1° late</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>No rebordo por 1° tarde</translation>
        </message>
        <message>
            <source>Plate for the least gap allowed</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Placa para a menor folga permitida</translation>
        </message>
        <message>
            <source>Plate for the most gap allowed</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Placa para a maior folga permitida</translation>
        </message>
        <message>
            <source>Between two sparks</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Entre duas faíscas</translation>
        </message>
        <message>
            <source>Dead centres uneven by up to</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Pontos mortos desiguais até</translation>
        </message>
        <message>
            <source>Left before right</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Esquerdo antes do direito</translation>
        </message>
        <message>
            <source>One tooth, at the crank</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Um dente, na cambota</translation>
        </message>
        <message>
            <source>One vernier step, at the crank</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Um passo do vernier, na cambota</translation>
        </message>
        <message>
            <source>Finest step, at the crank</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Passo mais fino, na cambota</translation>
        </message>
        <message>
            <source>Wanted, before top dead centre</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Desejado, antes do ponto morto superior</translation>
        </message>
        <message>
            <source>E-gap, at the crank</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>E-gap, na cambota</translation>
        </message>
        <message>
            <source>No. 1 down at the left spark</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>N.º 1 descido na faísca esquerda</translation>
        </message>
        <message>
            <source>No. 1 down at the right spark</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>N.º 1 descido na faísca direita</translation>
        </message>
        <message>
            <source>Cylinders and firing order</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Cilindros e ordem de ignição</translation>
        </message>
        <message>
            <source>From the engine's data plate and the maker's manual.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Da chapa do motor e do manual do fabricante.</translation>
        </message>
        <message>
            <source>Timing wanted</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Ponto desejado</translation>
        </message>
        <message>
            <source>From the maker's current manual, which governs.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Do manual atual do fabricante, que prevalece.</translation>
        </message>
        <message>
            <source>Stroke and rod</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Curso e biela</translation>
        </message>
        <message>
            <source>From the manual; they tell how far the piston stands down at the timing.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Do manual; dizem quanto o êmbolo está descido no ponto.</translation>
        </message>
        <message>
            <source>Link rods</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Bielas articuladas</translation>
        </message>
        <message>
            <source>For a radial engine with a master rod. None, or not known? Leave all empty.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Para um motor em estrela com biela mestra. Nenhuma, ou desconhecida? Deixar tudo vazio.</translation>
        </message>
        <message>
            <source>Magneto and engine</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Magneto e motor</translation>
        </message>
        <message>
            <source>The two that belong together: those in this window, shipped ones, or files of yours.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Os dois que pertencem um ao outro: os desta janela, fornecidos, ou ficheiros próprios.</translation>
        </message>
        <message>
            <source>Coupling and drive</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Acoplamento e acionamento</translation>
        </message>
        <message>
            <source>Count the teeth on both faces of the coupling's disc; paint a mark before you begin.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Contar os dentes nas duas faces do disco do acoplamento; pintar uma marca antes de começar.</translation>
        </message>
        <message>
            <source>Name</source>
            <extracomment>bench/own_engine_fields.py, bench/own_magneto_fields.py, classroom/worksheet.py, job/parts.py, job/shift_plan.py</extracomment>
            <translation>Nome</translation>
        </message>
        <message>
            <source>What you call this engine: type, number, aircraft.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Como chama a este motor: tipo, número, avião.</translation>
        </message>
        <message>
            <source>One line of up to 120 characters.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Uma linha de até 120 caracteres.</translation>
        </message>
        <message>
            <source>Cylinders</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Cilindros</translation>
        </message>
        <message>
            <source>How many cylinders the two magnetos fire.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Quantos cilindros os dois magnetos inflamam.</translation>
        </message>
        <message>
            <source>A whole number.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Um número inteiro.</translation>
        </message>
        <message>
            <source>Arrangement</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Disposição</translation>
        </message>
        <message>
            <source>How the cylinders stand round the crank.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Como os cilindros estão à volta da cambota.</translation>
        </message>
        <message>
            <source>Only a radial engine can have link rods on a master rod.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Só um motor em estrela pode ter bielas articuladas numa biela mestra.</translation>
        </message>
        <message>
            <source>Rotation of the crank</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Rotação da cambota</translation>
        </message>
        <message>
            <source>Which way the crank turns, seen from the propeller end.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Para que lado roda a cambota, vista do lado da hélice.</translation>
        </message>
        <message>
            <source>Clockwise or anticlockwise.</source>
            <extracomment>bench/own_engine_fields.py, bench/own_magneto_fields.py</extracomment>
            <translation>No sentido horário ou anti-horário.</translation>
        </message>
        <message>
            <source>Firing order</source>
            <extracomment>bench/own_engine_fields.py, practice/paper.py</extracomment>
            <translation>Ordem de ignição</translation>
        </message>
        <message>
            <source>The cylinders in the order they fire, such as 1-3-5-2-4.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Os cilindros pela ordem em que inflamam, como 1-3-5-2-4.</translation>
        </message>
        <message>
            <source>Begins with 1 and names each cylinder once.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Começa por 1 e nomeia cada cilindro uma vez.</translation>
        </message>
        <message>
            <source>Left magneto fires before top dead centre</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>O magneto esquerdo inflama antes do ponto morto superior</translation>
        </message>
        <message>
            <source>Crank degrees before top dead centre at which the left magneto should fire No. 1.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Graus de cambota antes do ponto morto superior a que o magneto esquerdo deve inflamar o n.º 1.</translation>
        </message>
        <message>
            <source>Larger is earlier; staggered settings, left unlike right, are allowed.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Maior é mais cedo; são permitidas regulações desfasadas, esquerdo diferente do direito.</translation>
        </message>
        <message>
            <source>Right magneto fires before top dead centre</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>O magneto direito inflama antes do ponto morto superior</translation>
        </message>
        <message>
            <source>Crank degrees before top dead centre at which the right magneto should fire No. 1.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Graus de cambota antes do ponto morto superior a que o magneto direito deve inflamar o n.º 1.</translation>
        </message>
        <message>
            <source>An engine with a single magneto has the same figure twice.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Um motor com um só magneto tem duas vezes o mesmo valor.</translation>
        </message>
        <message>
            <source>Timing tolerance</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Tolerância do ponto</translation>
        </message>
        <message>
            <source>How far off the wanted timing either magneto may fire, either way.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Quanto cada magneto pode inflamar fora do ponto desejado, para cada lado.</translation>
        </message>
        <message>
            <source>Above 0: no reading is ever exact.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Acima de 0: nenhuma leitura é exata.</translation>
        </message>
        <message>
            <source>Synchronising tolerance</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Tolerância de sincronização</translation>
        </message>
        <message>
            <source>How far apart the two magnetos may fire, beyond a wanted stagger.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Quanto os dois magnetos podem estar afastados, além de um desfasamento desejado.</translation>
        </message>
        <message>
            <source>Stroke</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Curso</translation>
        </message>
        <message>
            <source>How far the piston travels from one dead centre to the other.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Quanto o êmbolo anda de um ponto morto ao outro.</translation>
        </message>
        <message>
            <source>Above 0, and below twice the rod's length.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Acima de 0, e abaixo do dobro do comprimento da biela.</translation>
        </message>
        <message>
            <source>Connecting rod</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Biela</translation>
        </message>
        <message>
            <source>From the centre of its big end to that of its piston pin; the master rod's in a radial.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Do centro da cabeça ao do cavilhão; num motor em estrela, a mestra.</translation>
        </message>
        <message>
            <source>Longer than half the stroke, or the crank could not turn.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Mais comprida do que meio curso, ou a cambota não rodaria.</translation>
        </message>
        <message>
            <source>Cylinder of the master rod</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Cilindro da biela mestra</translation>
        </message>
        <message>
            <source>The cylinder whose rod carries all others.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>O cilindro cuja biela leva todas as outras.</translation>
        </message>
        <message>
            <source>One of the engine's cylinders.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Um dos cilindros do motor.</translation>
        </message>
        <message>
            <source>Radius of the knuckle pins</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Raio dos pinos articulados</translation>
        </message>
        <message>
            <source>From the crank pin's centre to the pins of the link rods.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Do centro do moente aos pinos das bielas articuladas.</translation>
        </message>
        <message>
            <source>0 or more; 0 gives evenly spaced dead centres.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>0 ou mais; 0 dá pontos mortos igualmente espaçados.</translation>
        </message>
        <message>
            <source>From the knuckle pin's centre to the piston pin's.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Do centro do pino articulado ao do cavilhão.</translation>
        </message>
        <message>
            <source>Longer than half the stroke and the knuckle radius together.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Mais comprida do que meio curso e o raio articulado juntos.</translation>
        </message>
        <message>
            <source>Angles of the knuckle pins</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Ângulos dos pinos articulados</translation>
        </message>
        <message>
            <source>By cylinder number, from the master rod's axis in the direction of rotation.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Por número de cilindro, do eixo da biela mestra no sentido de rotação.</translation>
        </message>
        <message>
            <source>One for each cylinder, or none: then they stand as the cylinders do.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Um por cilindro, ou nenhum: então ficam como os cilindros.</translation>
        </message>
        <message>
            <source>Magneto</source>
            <extracomment>bench/own_engine_fields.py, classroom/key.py, job/document.py, job/parts.py, job/sheet.py, job/shift_plan.py, practice/paper.py, spec/formats.py, ui/lamp_box.py, ui/menus.py</extracomment>
            <translation>Magneto</translation>
        </message>
        <message>
            <source>The magneto that is mounted.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>O magneto que está montado.</translation>
        </message>
        <message>
            <source>A complete magneto: of this window, shipped, or a file.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Um magneto completo: desta janela, fornecido ou um ficheiro.</translation>
        </message>
        <message>
            <source>Engine</source>
            <extracomment>bench/own_engine_fields.py, job/document.py, job/sheet.py, job/shift_plan.py, practice/paper.py, spec/formats.py</extracomment>
            <translation>Motor</translation>
        </message>
        <message>
            <source>The engine that it is mounted on.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>O motor em que está montado.</translation>
        </message>
        <message>
            <source>A complete engine: of this window, shipped, or a file.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Um motor completo: desta janela, fornecido ou um ficheiro.</translation>
        </message>
        <message>
            <source>Mounted</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Montado</translation>
        </message>
        <message>
            <source>Which of the engine's magnetos it is, seen from the pilot's seat.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Qual dos magnetos do motor é, visto do lugar do piloto.</translation>
        </message>
        <message>
            <source>Left or right of two, or the single one.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Esquerdo ou direito de dois, ou o único.</translation>
        </message>
        <message>
            <source>Teeth on the magneto's side</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Dentes do lado do magneto</translation>
        </message>
        <message>
            <source>Teeth of the disc's face that the magneto's flange sits in.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Dentes da face do disco em que assenta a flange do magneto.</translation>
        </message>
        <message>
            <source>A whole number; one more or fewer than the other side makes the finest steps.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Um número inteiro; mais um ou menos um do que o outro lado dá os passos mais finos.</translation>
        </message>
        <message>
            <source>Teeth on the drive's side</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Dentes do lado do acionamento</translation>
        </message>
        <message>
            <source>Teeth of the disc's face that the drive's flange sits in.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Dentes da face do disco em que assenta a flange motriz.</translation>
        </message>
        <message>
            <source>Rotor turns per crank turn</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Voltas do rotor por volta da cambota</translation>
        </message>
        <message>
            <source>How fast the drive turns the rotor; cylinders over twice the poles, for a spark a pole.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>A que velocidade o acionamento roda o rotor; cilindros sobre o dobro dos polos, para uma faísca por polo.</translation>
        </message>
        <message>
            <source>Above 0: count ten turns of the propeller, plugs out, to be sure.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Acima de 0: contar dez voltas da hélice, velas fora, para ter a certeza.</translation>
        </message>
        <message>
            <source>radial</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>em estrela</translation>
        </message>
        <message>
            <source>in line</source>
            <extracomment>bench/own_engine_fields.py, job/words.py</extracomment>
            <translation>em linha</translation>
        </message>
        <message>
            <source>opposed</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>opostos</translation>
        </message>
        <message>
            <source>vee</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>em V</translation>
        </message>
        <message>
            <source>clockwise</source>
            <extracomment>bench/own_engine_fields.py, bench/own_magneto_fields.py, bench/words.py, classroom/drawings.py, ui/crank_view.py</extracomment>
            <translation>no sentido horário</translation>
        </message>
        <message>
            <source>anticlockwise</source>
            <extracomment>bench/own_engine_fields.py, bench/own_magneto_fields.py, bench/words.py, classroom/drawings.py, ui/crank_view.py</extracomment>
            <translation>no sentido anti-horário</translation>
        </message>
        <message>
            <source>left</source>
            <extracomment>bench/own_engine_fields.py, classroom/key.py, job/document.py, job/words.py, ui/class_editor_fields.py, ui/class_editor_rows.py, ui/job_drift_sheet.py, ui/job_kinds.py</extracomment>
            <translation>esquerdo</translation>
        </message>
        <message>
            <source>right</source>
            <extracomment>bench/own_engine_fields.py, classroom/key.py, job/document.py, job/words.py, ui/class_editor_fields.py, ui/class_editor_rows.py, ui/job_kinds.py</extracomment>
            <translation>direito</translation>
        </message>
        <message>
            <source>single</source>
            <extracomment>bench/own_engine_fields.py, job/document.py, ui/class_editor_fields.py, ui/job_kinds.py</extracomment>
            <translation>único</translation>
        </message>
        <message>
            <source>“{piece}” is not one number: separate the values by semicolons, such as 0; 90.5; 180</source>
            <extracomment>bench/own_entry.py</extracomment>
            <translation>“{piece}” não é um só número: separar os valores com ponto e vírgula, como 0; 90.5; 180</translation>
        </message>
        <message>
            <source>maker's manual</source>
            <extracomment>bench/own_fields.py</extracomment>
            <translation>manual do fabricante</translation>
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
            <translation>suposto</translation>
        </message>
        <message>
            <source>from a shipped file</source>
            <extracomment>bench/own_fields.py</extracomment>
            <translation>de um ficheiro fornecido</translation>
        </message>
        <message>
            <source>{file}: is neither a magneto's nor an engine's nor an installation's file</source>
            <extracomment>bench/own_files.py</extracomment>
            <translation>{file}: não é ficheiro de magneto, nem de motor, nem de instalação</translation>
        </message>
        <message>
            <source>this is not complete yet: what is missing or refused is marked at its field</source>
            <extracomment>bench/own_files.py</extracomment>
            <translation>ainda não está completo: o que falta ou é recusado está marcado no seu campo</translation>
        </message>
        <message>
            <source>{file}: holds no drafts; its format must be "{format}"</source>
            <extracomment>bench/own_files.py</extracomment>
            <translation>{file}: não contém rascunhos; o formato tem de ser "{format}"</translation>
        </message>
        <message>
            <source>Allowed: {low} to {high}.</source>
            <extracomment>bench/own_limits.py</extracomment>
            <translation>Permitido: {low} a {high}.</translation>
        </message>
        <message>
            <source>Allowed: between {low} and {high}, neither included.</source>
            <extracomment>bench/own_limits.py</extracomment>
            <translation>Permitido: entre {low} e {high}, exclusive.</translation>
        </message>
        <message>
            <source>Allowed: above {low}, up to {high}.</source>
            <extracomment>bench/own_limits.py</extracomment>
            <translation>Permitido: acima de {low}, até {high}.</translation>
        </message>
        <message>
            <source>Allowed: {low} and more, below {high}.</source>
            <extracomment>bench/own_limits.py</extracomment>
            <translation>Permitido: {low} e mais, abaixo de {high}.</translation>
        </message>
        <message>
            <source>What it is</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>O que é</translation>
        </message>
        <message>
            <source>From the data plate and the maker's manual; no tools yet.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Da chapa e do manual do fabricante; ainda sem ferramentas.</translation>
        </message>
        <message>
            <source>Cam and lobes</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Came e ressaltos</translation>
        </message>
        <message>
            <source>Degree disc on the cam, dial gauge at the heel or at the contacts.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Disco graduado no came, comparador no calcador ou nos contactos.</translation>
        </message>
        <message>
            <source>Breaker arm</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Braço do ruptor</translation>
        </message>
        <message>
            <source>Calliper or rule on the arm, taken out. With a traced lift only the contact arm is needed.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Paquímetro ou régua no braço, desmontado. Com levantamento medido só é preciso o braço do contacto.</translation>
        </message>
        <message>
            <source>Contacts and screw</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Contactos e parafuso</translation>
        </message>
        <message>
            <source>Dial gauge on the fixed contact while the screw is turned, lock screw slack.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Comparador no contacto fixo enquanto se roda o parafuso, parafuso de fixação aliviado.</translation>
        </message>
        <message>
            <source>Plate and setting</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Placa e regulação</translation>
        </message>
        <message>
            <source>The scale on the plate, and the gap by blades when the contacts open exactly at the E-gap.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>A escala da placa, e a folga por lâminas quando os contactos abrem exatamente no E-gap.</translation>
        </message>
        <message>
            <source>E-gap and limits</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>E-gap e limites</translation>
        </message>
        <message>
            <source>From the maker's current manual, which governs; radius of the rim marks by calliper.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Do manual atual do fabricante, que prevalece; raio das marcas do rebordo com paquímetro.</translation>
        </message>
        <message>
            <source>Pull of the magnet</source>
            <extracomment>bench/own_magneto_fields.py, ui/plot_coil.py</extracomment>
            <translation>Atração do íman</translation>
        </message>
        <message>
            <source>Spring balance on an arm at the drive shaft. Not known? Leave all three empty.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Dinamómetro num braço no veio de acionamento. Desconhecido? Deixar os três vazios.</translation>
        </message>
        <message>
            <source>Coil</source>
            <extracomment>bench/own_magneto_fields.py, ui/plot_coil.py, ui/plot_pane.py</extracomment>
            <translation>Bobina</translation>
        </message>
        <message>
            <source>Bridge and ohmmeter at the primary, if you have them. Not known? Leave all five empty.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Ponte e ohmímetro no primário, se os houver. Desconhecido? Deixar os cinco vazios.</translation>
        </message>
        <message>
            <source>Condition</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Estado</translation>
        </message>
        <message>
            <source>What wear and handling have done. New or not known? Leave it empty.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>O que o desgaste e o manuseio fizeram. Novo ou desconhecido? Deixar vazio.</translation>
        </message>
        <message>
            <source>What you call this magneto: type, number, aircraft.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Como chama a este magneto: tipo, número, avião.</translation>
        </message>
        <message>
            <source>One line of up to 120 characters, so that it fits on sheets and titles.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Uma linha de até 120 caracteres, para caber em folhas e títulos.</translation>
        </message>
        <message>
            <source>Notes</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Notas</translation>
        </message>
        <message>
            <source>Anything that the next person should know.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>O que a próxima pessoa deva saber.</translation>
        </message>
        <message>
            <source>Up to 4000 characters.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Até 4000 caracteres.</translation>
        </message>
        <message>
            <source>Rotation</source>
            <extracomment>bench/own_magneto_fields.py, job/shift_plan.py, practice/paper.py</extracomment>
            <translation>Rotação</translation>
        </message>
        <message>
            <source>Which way the rotor turns in service, seen from the drive end.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Para que lado roda o rotor em serviço, visto do lado do acionamento.</translation>
        </message>
        <message>
            <source>Clockwise or anticlockwise; the breaker end sees the mirror image.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>No sentido horário ou anti-horário; o lado do ruptor vê a imagem ao espelho.</translation>
        </message>
        <message>
            <source>Poles of the rotor</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Polos do rotor</translation>
        </message>
        <message>
            <source>How many magnet poles the rotor has: the magnet's pull holds it at as many places a turn.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Quantos polos magnéticos tem o rotor: a atração do íman segura-o noutros tantos lugares por volta.</translation>
        </message>
        <message>
            <source>An even number, as north and south poles take turns.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Um número par, pois polos norte e sul alternam.</translation>
        </message>
        <message>
            <source>Tops of the lobes</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Topos dos ressaltos</translation>
        </message>
        <message>
            <source>How far the cam turns from the top of lobe 1 to each top after it, in firing order.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Quanto o came roda do topo do ressalto 1 a cada topo seguinte, por ordem de ignição.</translation>
        </message>
        <message>
            <source>Begins with 0 and increases below 360°; neighbouring lobes must not overlap.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Começa por 0 e cresce abaixo de 360°; ressaltos vizinhos não podem sobrepor-se.</translation>
        </message>
        <message>
            <source>Cam turns per rotor turn</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Voltas do came por volta do rotor</translation>
        </message>
        <message>
            <source>1 for a cam on the rotor's shaft, less for one on the distributor's shaft.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>1 para um came no veio do rotor, menos para um no veio do distribuidor.</translation>
        </message>
        <message>
            <source>Counted by turning the rotor ten times by hand.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Contadas rodando o rotor dez vezes à mão.</translation>
        </message>
        <message>
            <source>The lift is known as</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>O levantamento conhece-se como</translation>
        </message>
        <message>
            <source>Either a lobe drawn by a law of motion, or a table of lift traced with a gauge.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Ou um ressalto desenhado por uma lei de movimento, ou uma tabela de levantamento medida com comparador.</translation>
        </message>
        <message>
            <source>A traced lift needs fewer sizes of the arm; a drawn one needs fewer readings.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Um levantamento medido precisa de menos medidas do braço; um desenhado, de menos leituras.</translation>
        </message>
        <message>
            <source>Base circle's radius</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Raio do círculo de base</translation>
        </message>
        <message>
            <source>From the cam's centre to its low part: half of what a calliper reads across it.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Do centro do came à parte baixa: metade do que um paquímetro lê através dela.</translation>
        </message>
        <message>
            <source>Above 0; with the heel's radius it must be within the arm's reach.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Acima de 0; com o raio do calcador tem de estar ao alcance do braço.</translation>
        </message>
        <message>
            <source>Height of the lobe</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Altura do ressalto</translation>
        </message>
        <message>
            <source>How much further from the centre the top stands than the low part.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Quanto o topo está mais longe do centro do que a parte baixa.</translation>
        </message>
        <message>
            <source>Its lift at the contacts must exceed the gap, or they would never close.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>O seu levantamento nos contactos tem de exceder a folga, ou nunca fechariam.</translation>
        </message>
        <message>
            <source>Rise</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Subida</translation>
        </message>
        <message>
            <source>Cam degrees from the low part to the top, on the side that meets the heel first.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Graus de came da parte baixa ao topo, no lado que encontra primeiro o calcador.</translation>
        </message>
        <message>
            <source>Rise, dwell and fall together must fit between two tops.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Subida, patamar e descida juntos têm de caber entre dois topos.</translation>
        </message>
        <message>
            <source>Flat at the top</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Patamar no topo</translation>
        </message>
        <message>
            <source>Cam degrees over which the lobe stays at its full height.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Graus de came em que o ressalto fica à altura máxima.</translation>
        </message>
        <message>
            <source>May be 0; rise, dwell and fall together must fit between two tops.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Pode ser 0; subida, patamar e descida juntos têm de caber entre dois topos.</translation>
        </message>
        <message>
            <source>Fall</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Descida</translation>
        </message>
        <message>
            <source>Cam degrees from the top down to the low part again.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Graus de came do topo de novo à parte baixa.</translation>
        </message>
        <message>
            <source>Law of motion</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Lei de movimento</translation>
        </message>
        <message>
            <source>How the lobe's height grows along the rise; take modified sine if nobody knows.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Como a altura do ressalto cresce na subida; tomar seno modificado se ninguém souber.</translation>
        </message>
        <message>
            <source>One of the standard laws: they differ little near the middle of the flank.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Uma das leis normalizadas: pouco diferem perto do meio do flanco.</translation>
        </message>
        <message>
            <source>Angles of the traced lift</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Ângulos do levantamento medido</translation>
        </message>
        <message>
            <source>Cam degrees from the lobe's top, before it below 0, as many as there are lifts.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Graus de came desde o topo do ressalto, antes dele abaixo de 0, tantos quantos os levantamentos.</translation>
        </message>
        <message>
            <source>Five values or more that increase; 0 lies on the top.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Cinco valores ou mais que crescem; 0 está no topo.</translation>
        </message>
        <message>
            <source>Lifts at the contacts</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Levantamentos nos contactos</translation>
        </message>
        <message>
            <source>How far the moving contact is lifted at each of those angles.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Quanto o contacto móvel é levantado em cada um desses ângulos.</translation>
        </message>
        <message>
            <source>Begins and ends with 0, rises to one top and falls again without dips.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Começa e acaba em 0, sobe a um topo e desce de novo sem covas.</translation>
        </message>
        <message>
            <source>Pivot to contact</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Eixo ao contacto</translation>
        </message>
        <message>
            <source>From the pivot's centre to the middle of the moving contact.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Do centro do eixo ao meio do contacto móvel.</translation>
        </message>
        <message>
            <source>Above 0: it tells how much the contacts lift when the heel does.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Acima de 0: diz quanto os contactos levantam quando o calcador levanta.</translation>
        </message>
        <message>
            <source>Pivot to heel</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Eixo ao calcador</translation>
        </message>
        <message>
            <source>From the pivot's centre to the centre of the heel's rounding.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Do centro do eixo ao centro do arredondado do calcador.</translation>
        </message>
        <message>
            <source>Such that the heel reaches the cam, from its low part to the lobe's top.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>De modo que o calcador chegue ao came, da parte baixa ao topo do ressalto.</translation>
        </message>
        <message>
            <source>Pivot to cam</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Eixo ao came</translation>
        </message>
        <message>
            <source>From the pivot's centre to the cam's centre.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Do centro do eixo ao centro do came.</translation>
        </message>
        <message>
            <source>The pivot must stand outside the lobe's top.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>O eixo tem de estar fora do topo do ressalto.</translation>
        </message>
        <message>
            <source>Rounding of the heel</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Arredondado do calcador</translation>
        </message>
        <message>
            <source>Radius of the rubbing face that rides on the cam.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Raio da face de atrito que desliza no came.</translation>
        </message>
        <message>
            <source>Not so large that it would ride over a hollow of the cam.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Não tão grande que passe por cima de uma cova do came.</translation>
        </message>
        <message>
            <source>Pivot stands</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>O eixo está</translation>
        </message>
        <message>
            <source>Behind: the turning cam passes the pivot first and then the heel, which trails.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Atrás: o came a rodar passa primeiro o eixo e depois o calcador, que é arrastado.</translation>
        </message>
        <message>
            <source>Behind or ahead: it decides which way the heel wanders along the cam.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Atrás ou à frente: decide para que lado o calcador anda ao longo do came.</translation>
        </message>
        <message>
            <source>Pivot's place in the drawing</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Lugar do eixo no desenho</translation>
        </message>
        <message>
            <source>Clockwise from the top, seen from the breaker end with the plate at 0.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>No sentido horário desde cima, visto do lado do ruptor com a placa em 0.</translation>
        </message>
        <message>
            <source>Any angle: only the drawing needs it, no reading does.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Qualquer ângulo: só o desenho precisa dele, nenhuma leitura.</translation>
        </message>
        <message>
            <source>Contact screw</source>
            <extracomment>bench/own_magneto_fields.py, job/parts.py, practice/paper.py</extracomment>
            <translation>Parafuso de contacto</translation>
        </message>
        <message>
            <source>What the screw does: turn an eccentric, or drive the contact by its thread.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>O que o parafuso faz: rodar um excêntrico ou levar o contacto pela rosca.</translation>
        </message>
        <message>
            <source>Eccentric or threaded.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Excêntrico ou roscado.</translation>
        </message>
        <message>
            <source>Throw of the eccentric</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Excentricidade</translation>
        </message>
        <message>
            <source>How far the fixed contact moves from the middle when the screw turns a quarter.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Quanto o contacto fixo se move do meio quando o parafuso roda um quarto.</translation>
        </message>
        <message>
            <source>Above 0: half of the whole to and fro.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Acima de 0: metade de todo o vaivém.</translation>
        </message>
        <message>
            <source>Lead of the thread</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Passo da rosca</translation>
        </message>
        <message>
            <source>How far the fixed contact moves in one whole turn of the screw.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Quanto o contacto fixo se move numa volta inteira do parafuso.</translation>
        </message>
        <message>
            <source>Above 0.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Acima de 0.</translation>
        </message>
        <message>
            <source>Screw's travel, towards wider</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Percurso do parafuso, para abrir</translation>
        </message>
        <message>
            <source>How far the screw can be turned from its middle so that the contacts open.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Quanto se pode rodar o parafuso do meio de modo que os contactos abram.</translation>
        </message>
        <message>
            <source>0 or below: the middle, 0, must lie within the travel.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>0 ou abaixo: o meio, 0, tem de ficar no percurso.</translation>
        </message>
        <message>
            <source>Screw's travel, towards closer</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Percurso do parafuso, para fechar</translation>
        </message>
        <message>
            <source>How far the screw can be turned from its middle so that the contacts close.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Quanto se pode rodar o parafuso do meio de modo que os contactos fechem.</translation>
        </message>
        <message>
            <source>0 or above: the middle, 0, must lie within the travel.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>0 ou acima: o meio, 0, tem de ficar no percurso.</translation>
        </message>
        <message>
            <source>Contacts come closer</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Os contactos aproximam-se</translation>
        </message>
        <message>
            <source>Which way the screw is turned to bring them closer, looking at its head.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Para que lado se roda o parafuso para os aproximar, a olhar para a cabeça.</translation>
        </message>
        <message>
            <source>Plate against rotation, to</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Placa contra a rotação, até</translation>
        </message>
        <message>
            <source>How far the slots let the plate turn against the cam's rotation, below 0.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Quanto as ranhuras deixam a placa rodar contra a rotação do came, abaixo de 0.</translation>
        </message>
        <message>
            <source>Below the other end.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Abaixo do outro extremo.</translation>
        </message>
        <message>
            <source>Plate with rotation, to</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Placa no sentido de rotação, até</translation>
        </message>
        <message>
            <source>How far the slots let the plate turn with the cam's rotation, above 0.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Quanto as ranhuras deixam a placa rodar com a rotação do came, acima de 0.</translation>
        </message>
        <message>
            <source>Above the other end.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Acima do outro extremo.</translation>
        </message>
        <message>
            <source>Plate as set</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Placa como regulada</translation>
        </message>
        <message>
            <source>Where the plate stood in a setting that opened exactly at the E-gap, screw at 0.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Onde estava a placa numa regulação que abria exatamente no E-gap, parafuso em 0.</translation>
        </message>
        <message>
            <source>Within the plate's slots.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Dentro das ranhuras da placa.</translation>
        </message>
        <message>
            <source>Gap as set</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Folga como regulada</translation>
        </message>
        <message>
            <source>The largest gap that this setting had, by blades on lobe 1.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>A folga máxima que esta regulação tinha, por lâminas no ressalto 1.</translation>
        </message>
        <message>
            <source>Below the contact lift at the lobe's top, or the contacts would never close.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Abaixo do levantamento do contacto no topo do ressalto, ou os contactos nunca fechariam.</translation>
        </message>
        <message>
            <source>Rotor degrees past neutral at which the contacts should open.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Graus de rotor depois do neutro a que os contactos devem abrir.</translation>
        </message>
        <message>
            <source>Above 0 and short of full register, half of the way to the next neutral.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Acima de 0 e aquém do registo pleno, a meio caminho do neutro seguinte.</translation>
        </message>
        <message>
            <source>Smallest gap allowed</source>
            <extracomment>bench/own_magneto_fields.py, job/parts.py</extracomment>
            <translation>Menor folga permitida</translation>
        </message>
        <message>
            <source>The maker's lower limit of the largest gap.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>O limite inferior do fabricante para a folga máxima.</translation>
        </message>
        <message>
            <source>Below the upper limit.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Abaixo do limite superior.</translation>
        </message>
        <message>
            <source>Largest gap allowed</source>
            <extracomment>bench/own_magneto_fields.py, job/parts.py</extracomment>
            <translation>Maior folga permitida</translation>
        </message>
        <message>
            <source>The maker's upper limit of the largest gap.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>O limite superior do fabricante para a folga máxima.</translation>
        </message>
        <message>
            <source>Above the lower limit.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Acima do limite inferior.</translation>
        </message>
        <message>
            <source>Radius of the rim marks</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Raio das marcas do rebordo</translation>
        </message>
        <message>
            <source>From the cam's centre to the marks that the straightedge is laid against.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Do centro do came às marcas a que se encosta a régua.</translation>
        </message>
        <message>
            <source>Above 0: it turns degrees into what is seen at the rim.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Acima de 0: transforma graus no que se vê no rebordo.</translation>
        </message>
        <message>
            <source>Tolerance at the marks</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Tolerância nas marcas</translation>
        </message>
        <message>
            <source>How far beside the mark the straightedge may point when the contacts open.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Quanto ao lado da marca a régua pode apontar quando os contactos abrem.</translation>
        </message>
        <message>
            <source>Above 0: the maker's figure, or the width of the mark.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Acima de 0: o valor do fabricante, ou a largura da marca.</translation>
        </message>
        <message>
            <source>Greatest pull</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Atração máxima</translation>
        </message>
        <message>
            <source>Torque needed to turn the rotor out of neutral at its worst place.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Binário preciso para tirar o rotor do neutro no pior lugar.</translation>
        </message>
        <message>
            <source>0 or more: force times arm.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>0 ou mais: força vezes braço.</translation>
        </message>
        <message>
            <source>Inertia of the rotor</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Inércia do rotor</translation>
        </message>
        <message>
            <source>How sluggish the rotor is, with what hangs on its shaft.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Quão lento é o rotor, com o que pende do seu veio.</translation>
        </message>
        <message>
            <source>Above 0, or it would swing without end of speed.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Acima de 0, ou oscilaria com velocidade sem fim.</translation>
        </message>
        <message>
            <source>Damping</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Amortecimento</translation>
        </message>
        <message>
            <source>Friction that grows with speed: what brings the swing to rest.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Atrito que cresce com a velocidade: o que faz parar a oscilação.</translation>
        </message>
        <message>
            <source>0 or more; only the swing on the screen needs it.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>0 ou mais; só a oscilação no ecrã precisa dele.</translation>
        </message>
        <message>
            <source>Turns of the primary</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Espiras do primário</translation>
        </message>
        <message>
            <source>How many turns of thick wire the primary winding has.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Quantas espiras de fio grosso tem o enrolamento primário.</translation>
        </message>
        <message>
            <source>1 or more.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>1 ou mais.</translation>
        </message>
        <message>
            <source>Inductance of the primary</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Indutância do primário</translation>
        </message>
        <message>
            <source>Read with a bridge, the rotor at neutral and the contacts held open.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Lida com uma ponte, rotor no neutro e contactos mantidos abertos.</translation>
        </message>
        <message>
            <source>Resistance of the primary</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Resistência do primário</translation>
        </message>
        <message>
            <source>Read with an ohmmeter that resolves hundredths, leads taken off the reading.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Lida com um ohmímetro que resolva centésimos, descontados os fios.</translation>
        </message>
        <message>
            <source>0 or more.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>0 ou mais.</translation>
        </message>
        <message>
            <source>Greatest flux</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Fluxo máximo</translation>
        </message>
        <message>
            <source>Flux through the core at full register.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Fluxo através do núcleo no registo pleno.</translation>
        </message>
        <message>
            <source>0 or more; illustrative unless it was measured.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>0 ou mais; ilustrativo, salvo se foi medido.</translation>
        </message>
        <message>
            <source>Third harmonic of the flux</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Terceira harmónica do fluxo</translation>
        </message>
        <message>
            <source>How far the flux departs from a plain sine: 0 is a plain one.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Quanto o fluxo se afasta de um seno simples: 0 é simples.</translation>
        </message>
        <message>
            <source>Between −1 and 1; illustrative unless it was measured.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Entre −1 e 1; ilustrativo, salvo se foi medido.</translation>
        </message>
        <message>
            <source>Heel worn by</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Calcador gasto de</translation>
        </message>
        <message>
            <source>How much of the rubbing face has gone since new.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Quanto da face de atrito se foi desde nova.</translation>
        </message>
        <message>
            <source>0 or more; needs the length from pivot to heel, to know what wear does.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>0 ou mais; precisa do comprimento do eixo ao calcador, para saber o que o desgaste faz.</translation>
        </message>
        <message>
            <source>Pip on the contacts</source>
            <extracomment>bench/own_magneto_fields.py, job/parts.py, practice/debrief.py</extracomment>
            <translation>Pico nos contactos</translation>
        </message>
        <message>
            <source>How high metal has built up on one contact: a blade feels so much less gap.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Que altura de metal se acumulou num contacto: uma lâmina sente outro tanto menos folga.</translation>
        </message>
        <message>
            <source>Lobes late by</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Ressaltos atrasados de</translation>
        </message>
        <message>
            <source>How far each lobe stands from its place, in cam degrees, late above 0.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Quanto cada ressalto está fora do lugar, em graus de came, atrasado acima de 0.</translation>
        </message>
        <message>
            <source>As many values as there are lobes, or none; lobes must not overlap.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Tantos valores quantos os ressaltos, ou nenhum; os ressaltos não podem sobrepor-se.</translation>
        </message>
        <message>
            <source>Lobes high by</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Ressaltos altos de</translation>
        </message>
        <message>
            <source>How much more than lobe 1 as new each lobe lifts the contacts.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Quanto mais do que o ressalto 1 em novo cada ressalto levanta os contactos.</translation>
        </message>
        <message>
            <source>As many values as there are lobes, or none; some lift must be left.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Tantos valores quantos os ressaltos, ou nenhum; tem de restar algum levantamento.</translation>
        </message>
        <message>
            <source>Screw creeps by</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>O parafuso arrasta de</translation>
        </message>
        <message>
            <source>How far tightening the lock screw carries the contact screw along, closer above 0.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Quanto o aperto do parafuso de fixação arrasta o parafuso de contacto, mais perto acima de 0.</translation>
        </message>
        <message>
            <source>Small: a quarter turn would be a broken screw.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Pequeno: um quarto de volta seria um parafuso partido.</translation>
        </message>
        <message>
            <source>Play of the coupling</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Jogo do acoplamento</translation>
        </message>
        <message>
            <source>How far the rotor can be rocked with the drive held still.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Quanto se pode balançar o rotor com o acionamento parado.</translation>
        </message>
        <message>
            <source>a law of motion</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>uma lei de movimento</translation>
        </message>
        <message>
            <source>a traced table</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>uma tabela medida</translation>
        </message>
        <message>
            <source>harmonic</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>harmónica</translation>
        </message>
        <message>
            <source>cycloidal</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>cicloidal</translation>
        </message>
        <message>
            <source>polynomial 3-4-5</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>polinómio 3-4-5</translation>
        </message>
        <message>
            <source>polynomial 4-5-6-7</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>polinómio 4-5-6-7</translation>
        </message>
        <message>
            <source>modified sine</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>seno modificado</translation>
        </message>
        <message>
            <source>modified trapezoid</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>trapézio modificado</translation>
        </message>
        <message>
            <source>behind the heel</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>atrás do calcador</translation>
        </message>
        <message>
            <source>ahead of the heel</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>à frente do calcador</translation>
        </message>
        <message>
            <source>turns an eccentric</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>roda um excêntrico</translation>
        </message>
        <message>
            <source>is threaded</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>é roscado</translation>
        </message>
        <message>
            <source>evenly spaced, one a spark of the rotor's turns</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>igualmente espaçados, um por faísca das voltas do rotor</translation>
        </message>
        <message>
            <source>poles over lobes, for a spark at every pole</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>polos sobre ressaltos, para uma faísca em cada polo</translation>
        </message>
        <message>
            <source>cylinders over twice the poles</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>cilindros sobre o dobro dos polos</translation>
        </message>
        <message>
            <source>connecting rod less the knuckle pins' radius</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>biela menos o raio dos pinos articulados</translation>
        </message>
        <message>
            <source>one trial on the bench</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>um ensaio na bancada</translation>
        </message>
        <message>
            <source>{count} trials on the bench</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>{count} ensaios na bancada</translation>
        </message>
        <message>
            <source>there are no trials on the bench: note some on its page Trials first</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>não há ensaios na bancada: anotar primeiro alguns na sua página Ensaios</translation>
        </message>
        <message>
            <source>trials correct a complete magneto: begin from a shipped one and fill in what is known</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>os ensaios corrigem um magneto completo: partir de um fornecido e preencher o que se sabe</translation>
        </message>
        <message>
            <source>give the poles of the rotor and the cam's turns per rotor turn first</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>indicar primeiro os polos do rotor e as voltas do came por volta do rotor</translation>
        </message>
        <message>
            <source>poles over the cam's turns per rotor turn is {lobes}; it must be a whole number from 1 to 36</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>polos sobre as voltas do came por volta do rotor é {lobes}; tem de ser um número inteiro de 1 a 36</translation>
        </message>
        <message>
            <source>give the poles of the rotor and the tops of the lobes first</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>indicar primeiro os polos do rotor e os topos dos ressaltos</translation>
        </message>
        <message>
            <source>give the connecting rod and the knuckle pins' radius first</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>indicar primeiro a biela e o raio dos pinos articulados</translation>
        </message>
        <message>
            <source>this magneto is not on an engine</source>
            <extracomment>bench/state.py, job/feeds.py, practice/actions.py</extracomment>
            <translation>este magneto não está num motor</translation>
        </message>
        <message>
            <source>with this setting the contacts never open and close, so there is nothing to read</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>com esta regulação os contactos nunca abrem e fecham, pelo que não há nada para ler</translation>
        </message>
        <message>
            <source>Reading the offset</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>Ler o desvio</translation>
        </message>
        <message>
            <source>Straightedge</source>
            <extracomment>bench/sureness.py, ui/class_editor_fields.py, ui/practice_sight.py</extracomment>
            <translation>Régua</translation>
        </message>
        <message>
            <source>Feeler blades</source>
            <extracomment>bench/sureness.py, ui/practice_tray.py</extracomment>
            <translation>Apalpa-folgas</translation>
        </message>
        <message>
            <source>Drag of the blade</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>Atrito da lâmina</translation>
        </message>
        <message>
            <source>Opening shown by</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>Abertura mostrada por</translation>
        </message>
        <message>
            <source>Turning the rotor</source>
            <extracomment>bench/sureness.py, ui/practice_sight.py</extracomment>
            <translation>Rodar o rotor</translation>
        </message>
        <message>
            <source>Turning the crank</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>Rodar a cambota</translation>
        </message>
        <message>
            <source>Crank disc</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>Disco da cambota</translation>
        </message>
        <message>
            <source>Play</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>Jogo</translation>
        </message>
        <message>
            <source>Tightening</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>Aperto</translation>
        </message>
        <message>
            <source>{name}: {value} ± {spread} (k = {k}); limits {low} to {high}: {percent} likely within them.</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>{name}: {value} ± {spread} (k = {k}); limites {low} a {high}: {percent} de probabilidade dentro.</translation>
        </message>
        <message>
            <source>What matters most: {name}, {share} of the variance ({source}).</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>O que mais pesa: {name}, {share} da variância ({source}).</translation>
        </message>
        <message>
            <source>With {instead} instead of {was}: {after} likely all in limits, now {before}.</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>Com {instead} em vez de {was}: {after} de probabilidade de tudo dentro dos limites, agora {before}.</translation>
        </message>
        <message>
            <source>under 1 %</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>menos de 1 %</translation>
        </message>
        <message>
            <source>over 99 %</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>mais de 99 %</translation>
        </message>
        <message>
            <source>Breaker end</source>
            <extracomment>bench/told.py, ui/breaker_view.py</extracomment>
            <translation>Lado do ruptor</translation>
        </message>
        <message>
            <source>Drive end: the coupling</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Lado do acionamento: o acoplamento</translation>
        </message>
        <message>
            <source>Crank, timing disc and piston of No. 1</source>
            <extracomment>bench/told.py, ui/crank_view.py</extracomment>
            <translation>Cambota, disco de calagem e êmbolo do n.º 1</translation>
        </message>
        <message>
            <source>Switch lead</source>
            <extracomment>bench/told.py, classroom/blanks.py, practice/debrief.py, ui/panes.py, ui/practice_notebook.py, ui/practice_work.py</extracomment>
            <translation>Cabo de massa</translation>
        </message>
        <message>
            <source>rotor</source>
            <extracomment>bench/told.py, bench/words.py, ui/breaker_hands.py</extracomment>
            <translation>rotor</translation>
        </message>
        <message>
            <source>pole shoe</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>sapata polar</translation>
        </message>
        <message>
            <source>cam</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>came</translation>
        </message>
        <message>
            <source>heel</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>calcador</translation>
        </message>
        <message>
            <source>breaker arm</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>braço do ruptor</translation>
        </message>
        <message>
            <source>pivot</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>eixo</translation>
        </message>
        <message>
            <source>spring</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>mola</translation>
        </message>
        <message>
            <source>contact screw</source>
            <extracomment>bench/told.py, bench/words.py, ui/breaker_hands.py</extracomment>
            <translation>parafuso de contacto</translation>
        </message>
        <message>
            <source>lock screw</source>
            <extracomment>bench/told.py, bench/words.py, ui/setting_panel.py</extracomment>
            <translation>parafuso de fixação</translation>
        </message>
        <message>
            <source>backplate</source>
            <extracomment>bench/told.py, bench/words.py, ui/breaker_hands.py</extracomment>
            <translation>placa de base</translation>
        </message>
        <message>
            <source>clamp screw</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>parafuso de aperto</translation>
        </message>
        <message>
            <source>step</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>degrau</translation>
        </message>
        <message>
            <source>rim mark</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>marca do rebordo</translation>
        </message>
        <message>
            <source>A magnet whose poles alternate round it; the engine turns it.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Um íman cujos polos alternam à volta; o motor fá-lo rodar.</translation>
        </message>
        <message>
            <source>Iron that leads the magnet's field through the coil's core and back.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Ferro que leva o campo do íman pelo núcleo da bobina e de volta.</translation>
        </message>
        <message>
            <source>It turns with the rotor, or in a fixed ratio to it, and has a lobe for each spark.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Roda com o rotor, ou numa razão fixa com ele, e tem um ressalto para cada faísca.</translation>
        </message>
        <message>
            <source>The block on the breaker arm that rides on the cam; it wears.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>O bloco do braço do ruptor que desliza no came; gasta-se.</translation>
        </message>
        <message>
            <source>It swings about its pivot and carries the moving contact.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Oscila no seu eixo e leva o contacto móvel.</translation>
        </message>
        <message>
            <source>The pin the breaker arm swings about.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>O pino em que o braço do ruptor oscila.</translation>
        </message>
        <message>
            <source>It presses the arm towards the cam and closes the contacts.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Aperta o braço contra o came e fecha os contactos.</translation>
        </message>
        <message>
            <source>As they part, the primary current breaks and the spark jumps.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Ao separarem-se, a corrente primária interrompe-se e a faísca salta.</translation>
        </message>
        <message>
            <source>It moves the fixed contact: nearer or further off, later or earlier.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Move o contacto fixo: mais perto ou mais longe, mais tarde ou mais cedo.</translation>
        </message>
        <message>
            <source>It holds the contact screw, and may carry it along as it is tightened.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Segura o parafuso de contacto e pode arrastá-lo ao ser apertado.</translation>
        </message>
        <message>
            <source>It carries contacts and arm; turned about the cam it shifts the opening alone.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Leva contactos e braço; rodada à volta do came desloca só a abertura.</translation>
        </message>
        <message>
            <source>The clamp screws hold the backplate in its slots.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Os parafusos de aperto seguram a placa de base nas ranhuras.</translation>
        </message>
        <message>
            <source>An edge on the cam along which a straightedge is laid.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Uma aresta no came ao longo da qual se pousa uma régua.</translation>
        </message>
        <message>
            <source>With the straightedge in line with it, the rotor stands at the E-gap.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Com a régua alinhada com ela, o rotor está no E-gap.</translation>
        </message>
        <message>
            <source>drive flange</source>
            <extracomment>bench/told.py, bench/words.py, job/coupling_picture.py, ui/drive_view.py</extracomment>
            <translation>flange motriz</translation>
        </message>
        <message>
            <source>disc</source>
            <extracomment>bench/told.py, bench/words.py, job/coupling_picture.py, practice/state.py, ui/drive_view.py</extracomment>
            <translation>disco</translation>
        </message>
        <message>
            <source>magneto flange</source>
            <extracomment>bench/told.py, bench/words.py, job/coupling_picture.py, ui/drive_view.py</extracomment>
            <translation>flange do magneto</translation>
        </message>
        <message>
            <source>painted mark</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>marca pintada</translation>
        </message>
        <message>
            <source>The engine turns it; its slots take the disc's outer teeth.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>O motor fá-la rodar; as suas ranhuras recebem os dentes exteriores do disco.</translation>
        </message>
        <message>
            <source>It joins both flanges, with one more tooth or fewer on one face than on the other.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Une as duas flanges, com mais um dente ou menos um numa face do que na outra.</translation>
        </message>
        <message>
            <source>It sits on the rotor's shaft, in the disc's inner teeth.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Assenta no veio do rotor, nos dentes interiores do disco.</translation>
        </message>
        <message>
            <source>Paint across all three before anything is taken apart.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Tinta através das três antes de desmontar seja o que for.</translation>
        </message>
        <message>
            <source>crank</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>cambota</translation>
        </message>
        <message>
            <source>connecting rod</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>biela</translation>
        </message>
        <message>
            <source>piston pin</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>cavilhão</translation>
        </message>
        <message>
            <source>piston</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>êmbolo</translation>
        </message>
        <message>
            <source>cylinder</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>cilindro</translation>
        </message>
        <message>
            <source>timing disc</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>disco de calagem</translation>
        </message>
        <message>
            <source>pointer</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>ponteiro</translation>
        </message>
        <message>
            <source>It turns once for each up and down of the piston.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Roda uma vez por cada subida e descida do êmbolo.</translation>
        </message>
        <message>
            <source>It joins crank and piston.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Une cambota e êmbolo.</translation>
        </message>
        <message>
            <source>The rod swings about it in the piston.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>A biela oscila nele dentro do êmbolo.</translation>
        </message>
        <message>
            <source>About top dead centre it hardly moves while the crank does.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Perto do ponto morto superior quase não se move, enquanto a cambota se move.</translation>
        </message>
        <message>
            <source>No. 1 is the one that the timing is read on.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>O n.º 1 é aquele em que se lê o ponto.</translation>
        </message>
        <message>
            <source>Degrees before and after top dead centre, set to zero by the piston stop.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Graus antes e depois do ponto morto superior, postos a zero pelo batente do êmbolo.</translation>
        </message>
        <message>
            <source>Fixed to the engine: it reads the disc.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Fixo ao motor: lê o disco.</translation>
        </message>
        <message>
            <source>switch</source>
            <extracomment>bench/told.py</extracomment>
            <translation>interruptor</translation>
        </message>
        <message>
            <source>The primary winding, grounded at one end.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>O enrolamento primário, com uma ponta à massa.</translation>
        </message>
        <message>
            <source>Closed, they carry the primary current; open, they break it.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Fechados, levam a corrente primária; abertos, interrompem-na.</translation>
        </message>
        <message>
            <source>It joins the lead to the magneto, and pulled, lets the spring tab touch the case.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Une o cabo ao magneto e, tirada, deixa a lingueta de mola tocar na carcaça.</translation>
        </message>
        <message>
            <source>With the plug out it grounds the coil on the case – if it touches.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Com a ficha tirada põe a bobina à massa na carcaça – se tocar.</translation>
        </message>
        <message>
            <source>The wire to the switch; broken inside, it leaves the magneto live.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>O fio até ao interruptor; partido por dentro, deixa o magneto vivo.</translation>
        </message>
        <message>
            <source>Off, it is closed and grounds the primary: no spark.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Desligado, está fechado e põe o primário à massa: sem faísca.</translation>
        </message>
        <message>
            <source>Check the marks: disc in line with the drive flange's mark, magneto flange in line with the disc's mark.</source>
            <extracomment>bench/tooth_steps.py</extracomment>
            <translation>Verificar as marcas: disco alinhado com a marca da flange motriz, flange do magneto alinhada com a marca do disco.</translation>
        </message>
        <message>
            <source>Check the marks: disc in line with the drive flange's mark, magneto flange {flange} from the disc's mark.</source>
            <extracomment>bench/tooth_steps.py</extracomment>
            <translation>Verificar as marcas: disco alinhado com a marca da flange motriz, flange do magneto {flange} da marca do disco.</translation>
        </message>
        <message>
            <source>Check the marks: disc {disc} from the drive flange's mark, magneto flange in line with the disc's mark.</source>
            <extracomment>bench/tooth_steps.py</extracomment>
            <translation>Verificar as marcas: disco {disc} da marca da flange motriz, flange do magneto alinhada com a marca do disco.</translation>
        </message>
        <message>
            <source>Check the marks: disc {disc} from the drive flange's mark, magneto flange {flange} from the disc's mark.</source>
            <extracomment>bench/tooth_steps.py</extracomment>
            <translation>Verificar as marcas: disco {disc} da marca da flange motriz, flange do magneto {flange} da marca do disco.</translation>
        </message>
        <message>
            <source>One tooth of the magneto flange on the disc is {magneto}; of the disc on the drive flange {disc}; one with rotation at the flange and one against at the disc {both}.</source>
            <extracomment>bench/tooth_steps.py</extracomment>
            <translation>Um dente do flange do magneto no disco são {magneto}; do disco no flange motriz {disc}; um no sentido de rotação no flange e um em sentido contrário no disco {both}.</translation>
        </message>
        <message>
            <source>{magneto_teeth} teeth at the magneto, {drive_teeth} at the drive. The disc's marked tooth sits in magneto slot {magneto_slots} and in drive slot {drive_slots}.</source>
            <extracomment>bench/tooth_steps.py</extracomment>
            <translation>{magneto_teeth} dentes no magneto, {drive_teeth} no acionamento. O dente marcado do disco assenta na ranhura {magneto_slots} do magneto e na ranhura {drive_slots} do acionamento.</translation>
        </message>
        <message>
            <source>Move the magneto flange {teeth} on the disc.</source>
            <extracomment>bench/tooth_steps.py</extracomment>
            <translation>Mover a flange do magneto {teeth} no disco.</translation>
        </message>
        <message>
            <source>Move the disc {teeth} on the drive flange, the magneto flange with it.</source>
            <extracomment>bench/tooth_steps.py</extracomment>
            <translation>Mover o disco {teeth} na flange motriz, e a flange do magneto com ele.</translation>
        </message>
        <message>
            <source>{rotor}° of rotor = {crank}° of crank</source>
            <extracomment>bench/tooth_steps.py</extracomment>
            <translation>{rotor}° de rotor = {crank}° de cambota</translation>
        </message>
        <message>
            <source>compensated cam: the opening is judged on lobe 1</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation>came compensado: a abertura julga-se no ressalto 1</translation>
        </message>
        <message>
            <source>never: they stay open</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation>nunca: ficam abertos</translation>
        </message>
        <message>
            <source>never: they stay closed</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation>nunca: ficam fechados</translation>
        </message>
        <message>
            <source>{offset} past</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation>{offset} depois</translation>
        </message>
        <message>
            <source>{offset} short</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation>{offset} aquém</translation>
        </message>
        <message>
            <source>opening of every lobe</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation>abertura de todos os ressaltos</translation>
        </message>
        <message>
            <source>opening of lobe {lobes}</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation>abertura do ressalto {lobes}</translation>
        </message>
        <message>
            <source>gap of every lobe</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation>folga de todos os ressaltos</translation>
        </message>
        <message>
            <source>gap of lobe {lobes}</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation>folga do ressalto {lobes}</translation>
        </message>
        <message>
            <source>After {hours} h: opens at the E-gap, largest gap {gap}; within limits.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Após {hours} h: abre no E-gap, folga máxima {gap}; dentro dos limites.</translation>
        </message>
        <message>
            <source>After {hours} h: opens at the E-gap, largest gap {gap}; out of limits.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Após {hours} h: abre no E-gap, folga máxima {gap}; fora dos limites.</translation>
        </message>
        <message>
            <source>After {hours} h: opens {angle} late, largest gap {gap}; within limits.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Após {hours} h: abre {angle} tarde, folga máxima {gap}; dentro dos limites.</translation>
        </message>
        <message>
            <source>After {hours} h: opens {angle} late, largest gap {gap}; out of limits.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Após {hours} h: abre {angle} tarde, folga máxima {gap}; fora dos limites.</translation>
        </message>
        <message>
            <source>After {hours} h: opens {angle} early, largest gap {gap}; within limits.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Após {hours} h: abre {angle} cedo, folga máxima {gap}; dentro dos limites.</translation>
        </message>
        <message>
            <source>After {hours} h: opens {angle} early, largest gap {gap}; out of limits.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Após {hours} h: abre {angle} cedo, folga máxima {gap}; fora dos limites.</translation>
        </message>
        <message>
            <source>Leaves its limits: {limits}.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Sai dos limites: {limits}.</translation>
        </message>
        <message>
            <source>The blade gap closes by {rate}.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>A folga da lâmina fecha {rate}.</translation>
        </message>
        <message>
            <source>opens late</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>abre tarde</translation>
        </message>
        <message>
            <source>opens late after {hours} h</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>abre tarde após {hours} h</translation>
        </message>
        <message>
            <source>opens early</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>abre cedo</translation>
        </message>
        <message>
            <source>opens early after {hours} h</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>abre cedo após {hours} h</translation>
        </message>
        <message>
            <source>gap too small</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>folga a menos</translation>
        </message>
        <message>
            <source>gap too small after {hours} h</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>folga a menos após {hours} h</translation>
        </message>
        <message>
            <source>gap too wide</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>folga a mais</translation>
        </message>
        <message>
            <source>gap too wide after {hours} h</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>folga a mais após {hours} h</translation>
        </message>
        <message>
            <source>blade gap too small</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>folga da lâmina a menos</translation>
        </message>
        <message>
            <source>blade gap too small after {hours} h</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>folga da lâmina a menos após {hours} h</translation>
        </message>
        <message>
            <source>never opens</source>
            <extracomment>bench/wear_words.py, classroom/blanks.py, practice/debrief.py, practice/goals.py, practice/readings.py</extracomment>
            <translation>nunca abre</translation>
        </message>
        <message>
            <source>never opens after {hours} h</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>nunca abre após {hours} h</translation>
        </message>
        <message>
            <source>After {hours} h the contacts would not open and close any more.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Após {hours} h os contactos deixariam de abrir e fechar.</translation>
        </message>
        <message>
            <source>A blade would find {gap}: it rides on the pip, {pip} high, and the true gap is wider.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Uma lâmina acharia {gap}: assenta no pico, de {pip} de altura, e a folga verdadeira é maior.</translation>
        </message>
        <message>
            <source>Out of limits already: {limits}. Set it first.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Já fora dos limites: {limits}. Regular primeiro.</translation>
        </message>
        <message>
            <source>At these rates nothing leaves its limits within {hours} h.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>A estas taxas nada sai dos limites em {hours} h.</translation>
        </message>
        <message>
            <source>{value} per 100 h ({low} to {high}, {probability} times in 100)</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>{value} por 100 h ({low} a {high}, {probability} vezes em 100)</translation>
        </message>
        <message>
            <source>Of that the heel wears {heel}, and the pip grows {pip}.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Disso o calcador gasta {heel} e o pico cresce {pip}.</translation>
        </message>
        <message>
            <source>Note where it opened, too, to tell the heel's part from the pip's.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Anotar também onde abriu, para distinguir a parte do calcador da do pico.</translation>
        </message>
        <message>
            <source>turn the backplate {angle}° with rotation (clockwise seen from the breaker end)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>rodar a placa de base {angle}° no sentido de rotação (horário visto do lado do ruptor)</translation>
        </message>
        <message>
            <source>turn the backplate {angle}° with rotation (anticlockwise seen from the breaker end)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>rodar a placa de base {angle}° no sentido de rotação (anti-horário visto do lado do ruptor)</translation>
        </message>
        <message>
            <source>turn the backplate {angle}° against rotation (clockwise seen from the breaker end)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>rodar a placa de base {angle}° contra a rotação (horário visto do lado do ruptor)</translation>
        </message>
        <message>
            <source>turn the backplate {angle}° against rotation (anticlockwise seen from the breaker end)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>rodar a placa de base {angle}° contra a rotação (anti-horário visto do lado do ruptor)</translation>
        </message>
        <message>
            <source>turn the backplate {angle}° against rotation</source>
            <extracomment>bench/words.py</extracomment>
            <translation>rodar a placa de base {angle}° contra a rotação</translation>
        </message>
        <message>
            <source>turn the contact screw {angle}° clockwise (contacts closer)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>rodar o parafuso de contacto {angle}° no sentido horário (contactos mais perto)</translation>
        </message>
        <message>
            <source>turn the contact screw {angle}° clockwise (contacts wider)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>rodar o parafuso de contacto {angle}° no sentido horário (contactos mais abertos)</translation>
        </message>
        <message>
            <source>turn the contact screw {angle}° anticlockwise (contacts closer)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>rodar o parafuso de contacto {angle}° no sentido anti-horário (contactos mais perto)</translation>
        </message>
        <message>
            <source>turn the contact screw {angle}° anticlockwise (contacts wider)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>rodar o parafuso de contacto {angle}° no sentido anti-horário (contactos mais abertos)</translation>
        </message>
        <message>
            <source>{count} teeth against rotation</source>
            <extracomment>bench/words.py</extracomment>
            <translation>{count} dentes contra a rotação</translation>
        </message>
        <message>
            <source>{move} (clockwise seen from the drive end)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>{move} (horário visto do lado do acionamento)</translation>
        </message>
        <message>
            <source>{move} (anticlockwise seen from the drive end)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>{move} (anti-horário visto do lado do acionamento)</translation>
        </message>
        <message>
            <source>{move} (clockwise seen from the breaker end)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>{move} (horário visto do lado do ruptor)</translation>
        </message>
        <message>
            <source>{move} (anticlockwise seen from the breaker end)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>{move} (anti-horário visto do lado do ruptor)</translation>
        </message>
        <message>
            <source>{move} (clockwise)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>{move} (horário)</translation>
        </message>
        <message>
            <source>{move} (anticlockwise)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>{move} (anti-horário)</translation>
        </message>
        <message>
            <source>direction of rotation</source>
            <extracomment>bench/words.py, job/coupling_picture.py</extracomment>
            <translation>sentido de rotação</translation>
        </message>
        <message>
            <source>plate scale</source>
            <extracomment>bench/words.py</extracomment>
            <translation>escala da placa</translation>
        </message>
        <message>
            <source>rim</source>
            <extracomment>bench/words.py</extracomment>
            <translation>rebordo</translation>
        </message>
        <message>
            <source>rotor scale</source>
            <extracomment>bench/words.py</extracomment>
            <translation>escala do rotor</translation>
        </message>
        <message>
            <source>straightedge</source>
            <extracomment>bench/words.py, practice/state.py</extracomment>
            <translation>régua</translation>
        </message>
        <message>
            <source>turn the backplate {angle}° with rotation</source>
            <extracomment>bench/words.py</extracomment>
            <translation>rodar a placa de base {angle}° no sentido de rotação</translation>
        </message>
        <message>
            <source>not moved</source>
            <extracomment>bench/words.py</extracomment>
            <translation>não movido</translation>
        </message>
        <message>
            <source>{count} teeth with rotation</source>
            <extracomment>bench/words.py</extracomment>
            <translation>{count} dentes no sentido de rotação</translation>
        </message>
        <message>
            <source>{count} with</source>
            <extracomment>bench/words.py</extracomment>
            <translation>{count} a favor</translation>
        </message>
        <message>
            <source>{count} against</source>
            <extracomment>bench/words.py</extracomment>
            <translation>{count} contra</translation>
        </message>
        <message>
            <source>“{text}” is not a whole number of teeth: write one such as 3, -3, {ahead} or {back} (rotation)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>“{text}” não é um número inteiro de dentes: escrever um como 3, -3, {ahead} ou {back} (rotação)</translation>
        </message>
        <message>
            <source>1 tooth with rotation</source>
            <extracomment>bench/words.py</extracomment>
            <translation>1 dente no sentido de rotação</translation>
        </message>
        <message>
            <source>1 tooth against rotation</source>
            <extracomment>bench/words.py</extracomment>
            <translation>1 dente contra a rotação</translation>
        </message>
        <message>
            <source>{table}: left magneto</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>{table}: magneto esquerdo</translation>
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
            <translation>fora, e engrenado de novo</translation>
        </message>
        <message>
            <source>{table}: right magneto</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>{table}: magneto direito</translation>
        </message>
        <message>
            <source>sound, and proved</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>bom, e provado</translation>
        </message>
        <message>
            <source>Plug out. A lead without ground while the switch is off leaves the magneto live.</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Ficha tirada. Um cabo sem massa com o interruptor desligado deixa o magneto vivo.</translation>
        </message>
        <message>
            <source>in line, within {length}</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>alinhado, dentro de {length}</translation>
        </message>
        <message>
            <source>The rotor at the E-gap</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>O rotor no E-gap</translation>
        </message>
        <message>
            <source>Held by hand, looked at square over the straightedge, reached with rotation.</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Seguro à mão, visto a direito por cima da régua, alcançado no sentido de rotação.</translation>
        </message>
        <message>
            <source>a pip of {length}</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>um pico de {length}</translation>
        </message>
        <message>
            <source>clean and flat</source>
            <extracomment>classroom/blanks.py, practice/instruments.py</extracomment>
            <translation>limpos e planos</translation>
        </message>
        <message>
            <source>Look before measuring: a blade on a pip reads too small a gap.</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Olhar antes de medir: uma lâmina sobre um pico lê uma folga a menos.</translation>
        </message>
        <message>
            <source>{amount} mm past</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>{amount} mm depois</translation>
        </message>
        <message>
            <source>{amount} mm short</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>{amount} mm aquém</translation>
        </message>
        <message>
            <source>Turn with rotation. Lobe 1 opens for No. 1; the gap is measured with the heel on top of the lobe.</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Rodar no sentido de rotação. O ressalto 1 abre para o n.º 1; a folga mede-se com o calcador no topo do ressalto.</translation>
        </message>
        <message>
            <source>Top dead centre of No. 1</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Ponto morto superior do n.º 1</translation>
        </message>
        <message>
            <source>Bring the piston to the stop gently, by hand, from both sides; readings after zero count as negative.</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Levar o êmbolo ao batente devagar, à mão, dos dois lados; leituras depois do zero contam como negativas.</translation>
        </message>
        <message>
            <source>Fires before top dead centre</source>
            <extracomment>classroom/blanks.py, practice/debrief.py, ui/practice_notebook.py</extracomment>
            <translation>Inflama antes do ponto morto superior</translation>
        </message>
        <message>
            <source>{angle}° within {allowed}°</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>{angle}° dentro de {allowed}°</translation>
        </message>
        <message>
            <source>within {allowed}°</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>dentro de {allowed}°</translation>
        </message>
        <message>
            <source>Timing to the engine</source>
            <extracomment>classroom/blanks.py, ui/panes.py, ui/uncertainty_panel.py</extracomment>
            <translation>Calagem ao motor</translation>
        </message>
        <message>
            <source>Lamp and disc, approached with rotation; teeth as seen from the drive end.</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Lâmpada e disco, alcançados no sentido de rotação; dentes vistos do lado do acionamento.</translation>
        </message>
        <message>
            <source>Magneto flange moved on the disc</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Flange do magneto movida no disco</translation>
        </message>
        <message>
            <source>Disc moved on the drive flange</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Disco movido na flange motriz</translation>
        </message>
        <message>
            <source>never</source>
            <extracomment>classroom/blanks.py, practice/debrief.py</extracomment>
            <translation>nunca</translation>
        </message>
        <message>
            <source>{angle}°, on the wrong stroke</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>{angle}°, no tempo errado</translation>
        </message>
        <message>
            <source>one never fires</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>um nunca inflama</translation>
        </message>
        <message>
            <source>{angle}° and a turn of the crank</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>{angle}° e uma volta da cambota</translation>
        </message>
        <message>
            <source>ground</source>
            <extracomment>classroom/blanks.py, practice/instruments.py</extracomment>
            <translation>massa</translation>
        </message>
        <message>
            <source>no ground</source>
            <extracomment>classroom/blanks.py, practice/instruments.py</extracomment>
            <translation>sem massa</translation>
        </message>
        <message>
            <source>the lead is broken inside</source>
            <extracomment>classroom/blanks.py, practice/goals.py</extracomment>
            <translation>o cabo está partido por dentro</translation>
        </message>
        <message>
            <source>a short inside the magneto grounds it</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>um curto-circuito dentro do magneto põe-no à massa</translation>
        </message>
        <message>
            <source>the spring tab does not touch the case</source>
            <extracomment>classroom/blanks.py, practice/goals.py</extracomment>
            <translation>a lingueta de mola não toca na carcaça</translation>
        </message>
        <message>
            <source>nothing: it is sound</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>de nada: está bom</translation>
        </message>
        <message>
            <source>Reading</source>
            <extracomment>classroom/blanks.py, job/document.py, ui/uncertainty_panel.py</extracomment>
            <translation>Leitura</translation>
        </message>
        <message>
            <source>As found</source>
            <extracomment>classroom/blanks.py, classroom/preview.py, job/document.py, job/sheet.py, practice/report.py, ui/debrief_view.py, ui/job_sources.py</extracomment>
            <translation>Como encontrado</translation>
        </message>
        <message>
            <source>As left</source>
            <extracomment>classroom/blanks.py, job/document.py, practice/report.py, ui/job_sources.py</extracomment>
            <translation>Como deixado</translation>
        </message>
        <message>
            <source>Try</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Experimentar</translation>
        </message>
        <message>
            <source>Straightedge from the rim mark</source>
            <extracomment>classroom/blanks.py, job/parts.py</extracomment>
            <translation>Régua desde a marca do rebordo</translation>
        </message>
        <message>
            <source>Short of it or past it</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Aquém ou depois dela</translation>
        </message>
        <message>
            <source>The contacts</source>
            <extracomment>classroom/blanks.py, lessons/what-the-parts-are.json</extracomment>
            <translation>Os contactos</translation>
        </message>
        <message>
            <source>Looked at</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Vistos</translation>
        </message>
        <message>
            <source>Opening and gap, lobe by lobe</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Abertura e folga, ressalto a ressalto</translation>
        </message>
        <message>
            <source>Lobe</source>
            <extracomment>classroom/blanks.py, job/document.py, ui/job_table.py</extracomment>
            <translation>Ressalto</translation>
        </message>
        <message>
            <source>Disc reads</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>O disco lê</translation>
        </message>
        <message>
            <source>Disc set anew</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Disco acertado de novo</translation>
        </message>
        <message>
            <source>Left magneto flange moved on the disc</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Flange do magneto esquerdo movida no disco</translation>
        </message>
        <message>
            <source>Left disc moved on the drive flange</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Disco esquerdo movido na flange motriz</translation>
        </message>
        <message>
            <source>Meter from plug to case, switch off</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Multímetro da ficha à carcaça, interruptor desligado</translation>
        </message>
        <message>
            <source>Meter from plug to case, switch on</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Multímetro da ficha à carcaça, interruptor ligado</translation>
        </message>
        <message>
            <source>What it suffers from</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>De que sofre</translation>
        </message>
        <message>
            <source>Faces of the contacts</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Faces dos contactos</translation>
        </message>
        <message>
            <source>Opens from the mark, as found</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Abre desde a marca, como encontrado</translation>
        </message>
        <message>
            <source>Largest gap, as found</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Folga máxima, como encontrada</translation>
        </message>
        <message>
            <source>At the stop, turned with rotation</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>No batente, rodado no sentido de rotação</translation>
        </message>
        <message>
            <source>At the stop, turned against rotation</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>No batente, rodado contra a rotação</translation>
        </message>
        <message>
            <source>Half-way between: true top dead centre</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>A meio: ponto morto superior verdadeiro</translation>
        </message>
        <message>
            <source>Left fires before top dead centre</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>O esquerdo inflama antes do ponto morto superior</translation>
        </message>
        <message>
            <source>Right fires before top dead centre</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>O direito inflama antes do ponto morto superior</translation>
        </message>
        <message>
            <source>Apart from one another</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Afastados um do outro</translation>
        </message>
        <message>
            <source>Right magneto flange moved on the disc</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Flange do magneto direito movida no disco</translation>
        </message>
        <message>
            <source>Right disc moved on the drive flange</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Disco direito movido na flange motriz</translation>
        </message>
        <message>
            <source>Opens from the mark, as left</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Abre desde a marca, como deixado</translation>
        </message>
        <message>
            <source>Largest gap, as left</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Folga máxima, como deixada</translation>
        </message>
        <message>
            <source>0°</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>0°</translation>
        </message>
        <message>
            <source>{count} symbols; at most {most} can be checked</source>
            <extracomment>classroom/code.py</extracomment>
            <translation>{count} símbolos; no máximo podem ser verificados {most}</translation>
        </message>
        <message>
            <source>No code was given; it looks like 8K2M-4TXN-0QZ7-5C</source>
            <extracomment>classroom/code.py</extracomment>
            <translation>Não foi dado código; é parecido com 8K2M-4TXN-0QZ7-5C</translation>
        </message>
        <message>
            <source>The code “{code}” was mistyped: its check characters do not fit</source>
            <extracomment>classroom/code.py</extracomment>
            <translation>O código “{code}” foi mal escrito: os caracteres de controlo não batem certo</translation>
        </message>
        <message>
            <source>Character {place} of the code is “{letter}”; codes have digits and letters without U</source>
            <extracomment>classroom/code.py</extracomment>
            <translation>O carácter {place} do código é “{letter}”; os códigos têm algarismos e letras sem U</translation>
        </message>
        <message>
            <source>The code has {count} characters; codes have at most {most}</source>
            <extracomment>classroom/code.py</extracomment>
            <translation>O código tem {count} caracteres; os códigos têm no máximo {most}</translation>
        </message>
        <message>
            <source>The code is cut short: it has {count} characters</source>
            <extracomment>classroom/code.py</extracomment>
            <translation>O código está cortado: tem {count} caracteres</translation>
        </message>
        <message>
            <source>{value} does not fit {bits} bits</source>
            <extracomment>classroom/code.py</extracomment>
            <translation>{value} não cabe em {bits} bits</translation>
        </message>
        <message>
            <source>{left} bits are left, {wanted} are wanted</source>
            <extracomment>classroom/code.py</extracomment>
            <translation>restam {left} bits, são precisos {wanted}</translation>
        </message>
        <message>
            <source>“{exercise}” is not in this set, or was done with other settings</source>
            <extracomment>classroom/desk.py</extracomment>
            <translation>“{exercise}” não está nesta série, ou foi feito com outras definições</translation>
        </message>
        <message>
            <source>turns {way}</source>
            <extracomment>classroom/drawings.py, ui/breaker_view.py, ui/drive_view.py</extracomment>
            <translation>roda {way}</translation>
        </message>
        <message>
            <source>Largest gap</source>
            <extracomment>classroom/drawings.py, job/document.py, job/parts.py, practice/debrief.py, practice/paper.py, ui/practice_notebook.py, ui/setting_panel.py</extracomment>
            <translation>Folga máxima</translation>
        </message>
        <message>
            <source>Straightedge and rim mark</source>
            <extracomment>classroom/drawings.py</extracomment>
            <translation>Régua e marca do rebordo</translation>
        </message>
        <message>
            <source>This magneto is not on an engine: there is no such picture of it</source>
            <extracomment>classroom/drawings.py</extracomment>
            <translation>Este magneto não está num motor: não há tal imagem dele</translation>
        </message>
        <message>
            <source>{magneto}, seen from the breaker end; the rotor turns {way}. Rotor and pole shoes are diagrammatic; cam, arm, contacts and marks are to scale.</source>
            <extracomment>classroom/drawings.py</extracomment>
            <translation>{magneto}, visto do lado do ruptor; o rotor roda {way}. Rotor e sapatas polares são esquemáticos; came, braço, contactos e marcas estão à escala.</translation>
        </message>
        <message>
            <source>{magneto}, seen from the drive end; the rotor turns {way}. Both faces of the disc are drawn, the drive face outside, the magneto face inside.</source>
            <extracomment>classroom/drawings.py</extracomment>
            <translation>{magneto}, visto do lado do acionamento; o rotor roda {way}. Estão desenhadas as duas faces do disco, a do acionamento por fora, a do magneto por dentro.</translation>
        </message>
        <message>
            <source>{engine}, seen from the propeller end; it turns {way}.</source>
            <extracomment>classroom/drawings.py</extracomment>
            <translation>{engine}, visto do lado da hélice; roda {way}.</translation>
        </message>
        <message>
            <source>The primary circuit with its switch lead; the switch is off.</source>
            <extracomment>classroom/drawings.py</extracomment>
            <translation>O circuito primário com o cabo de massa; o interruptor está desligado.</translation>
        </message>
        <message>
            <source>mm</source>
            <extracomment>classroom/drawings.py, ui/class_editor_rows.py, ui/job_kinds.py</extracomment>
            <translation>mm</translation>
        </message>
        <message>
            <source>{folder}: the folder cannot be read: {reason}</source>
            <extracomment>classroom/gather.py</extracomment>
            <translation>{folder}: a pasta não pode ser lida: {reason}</translation>
        </message>
        <message>
            <source>The digest finds damage in copying. It is no protection against a determined cheat: the acts are marked again, but who did them, and when, is believed as written.</source>
            <extracomment>classroom/handed.py</extracomment>
            <translation>A soma de controlo acha danos de cópia. Não protege de um batoteiro decidido: os atos são avaliados de novo, mas quem os fez, e quando, aceita-se como está escrito.</translation>
        </message>
        <message>
            <source>{file}: was changed or damaged after it was handed in: its digest does not fit</source>
            <extracomment>classroom/handed.py</extracomment>
            <translation>{file}: foi alterado ou danificado depois de entregue: a soma de controlo não bate certo</translation>
        </message>
        <message>
            <source>the attempt has not been handed in</source>
            <extracomment>classroom/handed.py</extracomment>
            <translation>a tentativa não foi entregue</translation>
        </message>
        <message>
            <source>another file has its name</source>
            <extracomment>classroom/handed.py</extracomment>
            <translation>outro ficheiro tem o seu nome</translation>
        </message>
        <message>
            <source>{folder}: the attempt cannot be written there: {reason}</source>
            <extracomment>classroom/handed.py</extracomment>
            <translation>{folder}: a tentativa não pode ser escrita ali: {reason}</translation>
        </message>
        <message>
            <source>Exercise</source>
            <extracomment>classroom/key.py, classroom/summary.py, spec/formats.py, ui/class_desk.py, ui/class_paper_dialog.py</extracomment>
            <translation>Exercício</translation>
        </message>
        <message>
            <source>Pupil</source>
            <extracomment>classroom/key.py, classroom/summary.py</extracomment>
            <translation>Aluno</translation>
        </message>
        <message>
            <source>What</source>
            <extracomment>classroom/key.py, practice/report.py</extracomment>
            <translation>O quê</translation>
        </message>
        <message>
            <source>Answer</source>
            <extracomment>classroom/key.py, ui/job_bars.py, ui/practice_sight.py</extracomment>
            <translation>Resposta</translation>
        </message>
        <message>
            <source>{number}. {name}</source>
            <extracomment>classroom/key.py, classroom/summary.py</extracomment>
            <translation>{number}. {name}</translation>
        </message>
        <message>
            <source>Each pupil of this set has a fault of their own: name the pupils the key is for</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>Cada aluno desta série tem um defeito seu: indicar os alunos a quem se destina a chave</translation>
        </message>
        <message>
            <source>contacts open {amount}° of rotor late</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>contactos abrem {amount}° de rotor tarde</translation>
        </message>
        <message>
            <source>largest gap {length} too wide</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>folga máxima {length} a mais</translation>
        </message>
        <message>
            <source>backplate {amount}° off, with cam rotation</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>placa de base {amount}° fora, no sentido da rotação do came</translation>
        </message>
        <message>
            <source>lock screw carries the contact screw {amount}° along, contacts closer</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>o parafuso de fixação arrasta o parafuso de contacto {amount}°, contactos mais perto</translation>
        </message>
        <message>
            <source>crank disc reads {reading}° at top dead centre</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>o disco da cambota lê {reading}° no ponto morto superior</translation>
        </message>
        <message>
            <source>fitted with the rotor at neutral</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>montado com o rotor no neutro</translation>
        </message>
        <message>
            <source>lobe {lobe} lifts {length} less</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>o ressalto {lobe} levanta {length} menos</translation>
        </message>
        <message>
            <source>pip of {length} on the contacts</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>pico de {length} nos contactos</translation>
        </message>
        <message>
            <source>{amount}° of rotor play in the coupling</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>{amount}° de jogo do rotor no acoplamento</translation>
        </message>
        <message>
            <source>switch lead broken: no ground</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>cabo de massa partido: sem massa</translation>
        </message>
        <message>
            <source>switch lead shorted: always grounded</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>cabo de massa em curto: sempre à massa</translation>
        </message>
        <message>
            <source>spring tab does not touch: the coil is not joined</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>a lingueta de mola não toca: a bobina não está ligada</translation>
        </message>
        <message>
            <source>switch lead sound</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>cabo de massa bom</translation>
        </message>
        <message>
            <source>everyone</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>todos</translation>
        </message>
        <message>
            <source>Answer key: {title}</source>
            <extracomment>classroom/key.py, classroom/set_papers.py</extracomment>
            <translation>Chave: {title}</translation>
        </message>
        <message>
            <source>Answer key</source>
            <extracomment>classroom/key.py, classroom/set_papers.py, ui/class_maker.py</extracomment>
            <translation>Chave</translation>
        </message>
        <message>
            <source>Code {code}</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>Código {code}</translation>
        </message>
        <message>
            <source>{number}. {name} – {who} (draws from {seed})</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>{number}. {name} – {who} (sorteio de {seed})</translation>
        </message>
        <message>
            <source>contacts open {amount}° of rotor early</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>contactos abrem {amount}° de rotor cedo</translation>
        </message>
        <message>
            <source>largest gap {length} too narrow</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>folga máxima {length} a menos</translation>
        </message>
        <message>
            <source>backplate {amount}° off, against cam rotation</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>placa de base {amount}° fora, contra a rotação do came</translation>
        </message>
        <message>
            <source>lock screw carries the contact screw {amount}° along, contacts wider</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>o parafuso de fixação arrasta o parafuso de contacto {amount}°, contactos mais abertos</translation>
        </message>
        <message>
            <source>fires on the wrong stroke</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>inflama no tempo errado</translation>
        </message>
        <message>
            <source>one tooth early at the magneto flange</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>um dente cedo na flange do magneto</translation>
        </message>
        <message>
            <source>{count} teeth early at the magneto flange</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>{count} dentes cedo na flange do magneto</translation>
        </message>
        <message>
            <source>one tooth late at the magneto flange</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>um dente tarde na flange do magneto</translation>
        </message>
        <message>
            <source>{count} teeth late at the magneto flange</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>{count} dentes tarde na flange do magneto</translation>
        </message>
        <message>
            <source>one tooth early at the drive flange</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>um dente cedo na flange motriz</translation>
        </message>
        <message>
            <source>{count} teeth early at the drive flange</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>{count} dentes cedo na flange motriz</translation>
        </message>
        <message>
            <source>one tooth late at the drive flange</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>um dente tarde na flange motriz</translation>
        </message>
        <message>
            <source>{count} teeth late at the drive flange</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>{count} dentes tarde na flange motriz</translation>
        </message>
        <message>
            <source>one vernier step early</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>um passo do vernier cedo</translation>
        </message>
        <message>
            <source>{count} vernier steps early</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>{count} passos do vernier cedo</translation>
        </message>
        <message>
            <source>one vernier step late</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>um passo do vernier tarde</translation>
        </message>
        <message>
            <source>{count} vernier steps late</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>{count} passos do vernier tarde</translation>
        </message>
        <message>
            <source>Fault</source>
            <extracomment>classroom/key.py, ui/class_editor_rows.py</extracomment>
            <translation>Defeito</translation>
        </message>
        <message>
            <source>   • no fault: it is as it should be</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>   • sem defeito: está como deve</translation>
        </message>
        <message>
            <source>none</source>
            <extracomment>classroom/key.py, practice/debrief.py, practice/report.py, ui/class_editor_fields.py</extracomment>
            <translation>nenhum</translation>
        </message>
        <message>
            <source>A name or a number is needed: each pupil's fault is drawn from it</source>
            <extracomment>classroom/names.py</extracomment>
            <translation>É preciso um nome ou um número: dele se sorteia o defeito de cada aluno</translation>
        </message>
        <message>
            <source>{why}; and it cannot be kept on this machine either ({here}): save the attempt by hand</source>
            <extracomment>classroom/outbox.py</extracomment>
            <translation>{why}; e também não pode ser conservado nesta máquina ({here}): guardar a tentativa à mão</translation>
        </message>
        <message>
            <source>About {minutes} minutes; {percent} % are needed.</source>
            <extracomment>classroom/preview.py</extracomment>
            <translation>Cerca de {minutes} minutos; são precisos {percent} %.</translation>
        </message>
        <message>
            <source>Hidden, for this seed</source>
            <extracomment>classroom/preview.py</extracomment>
            <translation>Escondido, para esta semente</translation>
        </message>
        <message>
            <source>What the pupil reads</source>
            <extracomment>classroom/preview.py</extracomment>
            <translation>O que o aluno lê</translation>
        </message>
        <message>
            <source>Hints, one at a time</source>
            <extracomment>classroom/preview.py</extracomment>
            <translation>Pistas, uma de cada vez</translation>
        </message>
        <message>
            <source>Nothing on the tray can prove “{goal}”.</source>
            <extracomment>classroom/preview.py</extracomment>
            <translation>Nada no tabuleiro pode provar “{goal}”.</translation>
        </message>
        <message>
            <source>No goal asks for “{fault}”.</source>
            <extracomment>classroom/preview.py</extracomment>
            <translation>Nenhum objetivo pede “{fault}”.</translation>
        </message>
        <message>
            <source>no fault</source>
            <extracomment>classroom/preview.py</extracomment>
            <translation>sem defeito</translation>
        </message>
        <message>
            <source>{file}: cannot be marked: {reason}</source>
            <extracomment>classroom/results.py</extracomment>
            <translation>{file}: não pode ser avaliado: {reason}</translation>
        </message>
        <message>
            <source>{file}: is not handed in yet</source>
            <extracomment>classroom/results.py</extracomment>
            <translation>{file}: ainda não foi entregue</translation>
        </message>
        <message>
            <source>Worksheets</source>
            <extracomment>classroom/set_papers.py</extracomment>
            <translation>Fichas</translation>
        </message>
        <message>
            <source>Each pupil of this set has a fault of their own: name the pupils the sheets are for</source>
            <extracomment>classroom/set_papers.py</extracomment>
            <translation>Cada aluno desta série tem um defeito seu: indicar os alunos a quem se destinam as fichas</translation>
        </message>
        <message>
            <source>Class code {code}.</source>
            <extracomment>classroom/set_papers.py</extracomment>
            <translation>Código da turma {code}.</translation>
        </message>
        <message>
            <source>{number}. {exercise}</source>
            <extracomment>classroom/set_papers.py, classroom/worksheet.py</extracomment>
            <translation>{number}. {exercise}</translation>
        </message>
        <message>
            <source>A code holds {most} exercises at most; this set needs its file</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation>Um código leva no máximo {most} exercícios; esta série precisa do seu ficheiro</translation>
        </message>
        <message>
            <source>“{exercise}” is not a shipped exercise; this set needs its file</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation>“{exercise}” não é um exercício fornecido; esta série precisa do seu ficheiro</translation>
        </message>
        <message>
            <source>This is no class code: it looks like 8K2M-4TXN-0QZ7-5C</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation>Não é um código de turma: é parecido com 8K2M-4TXN-0QZ7-5C</translation>
        </message>
        <message>
            <source>This code was made by a newer magview, which is needed to use it</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation>Este código foi feito por um magview mais novo, que é preciso para o usar</translation>
        </message>
        <message>
            <source>Exercise {number} of this code is not shipped with this magview; both sides need the same version</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation>O exercício {number} deste código não vem com este magview; os dois lados precisam da mesma versão</translation>
        </message>
        <message>
            <source>This code was made with another version of its exercises; both sides need the same magview</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation>Este código foi feito com outra versão dos exercícios; os dois lados precisam do mesmo magview</translation>
        </message>
        <message>
            <source>exercise {number} is not in this set, which has {count}</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation>o exercício {number} não está nesta série, que tem {count}</translation>
        </message>
        <message>
            <source>pupils[{i}] is “{name}”, which has neither a letter nor a digit</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation>pupils[{i}] é “{name}”, sem letra nem algarismo</translation>
        </message>
        <message>
            <source>pupils has “{one}” and “{other}”, who cannot be told apart; capitals, accents and spaces do not count</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation>pupils tem “{one}” e “{other}”, que não se distinguem; maiúsculas, acentos e espaços não contam</translation>
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
            <translation>Atos</translation>
        </message>
        <message>
            <source>Found</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Achados</translation>
        </message>
        <message>
            <source>Missed</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Falhados</translation>
        </message>
        <message>
            <source>Dangers</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Perigos</translation>
        </message>
        <message>
            <source>Handed in</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Entregue</translation>
        </message>
        <message>
            <source>Counts</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Conta</translation>
        </message>
        <message>
            <source>Remarks</source>
            <extracomment>classroom/summary.py, job/parts.py, job/sheet.py</extracomment>
            <translation>Observações</translation>
        </message>
        <message>
            <source>File</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Ficheiro</translation>
        </message>
        <message>
            <source>Done</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Feitos</translation>
        </message>
        <message>
            <source>Passed</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Passados</translation>
        </message>
        <message>
            <source>Weakest step</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Passo mais fraco</translation>
        </message>
        <message>
            <source>Step</source>
            <extracomment>classroom/summary.py, ui/lesson_view.py</extracomment>
            <translation>Passo</translation>
        </message>
        <message>
            <source>Attempts</source>
            <extracomment>classroom/summary.py, ui/class_gather.py</extracomment>
            <translation>Tentativas</translation>
        </message>
        <message>
            <source>Wrong</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Errado</translation>
        </message>
        <message>
            <source>Nearly right</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Quase certo</translation>
        </message>
        <message>
            <source>Right, not proved</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Certo, não provado</translation>
        </message>
        <message>
            <source>What goes wrong</source>
            <extracomment>classroom/summary.py, ui/class_gather.py</extracomment>
            <translation>O que corre mal</translation>
        </message>
        <message>
            <source>Pupils</source>
            <extracomment>classroom/summary.py, ui/class_gather.py, ui/class_maker_fields.py</extracomment>
            <translation>Alunos</translation>
        </message>
        <message>
            <source>its exercise is not the set's</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>o exercício não é o da série</translation>
        </message>
        <message>
            <source>its fault was not drawn for this pupil</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>o defeito não foi sorteado para este aluno</translation>
        </message>
        <message>
            <source>not on the list of pupils</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>não está na lista de alunos</translation>
        </message>
        <message>
            <source>DANGER: {what}</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>PERIGO: {what}</translation>
        </message>
        <message>
            <source>missed: {fault}</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>falhado: {fault}</translation>
        </message>
        <message>
            <source>yes</source>
            <extracomment>classroom/summary.py, job/words.py, ui/job_kinds.py</extracomment>
            <translation>sim</translation>
        </message>
        <message>
            <source>no</source>
            <extracomment>classroom/summary.py, job/words.py, ui/job_kinds.py</extracomment>
            <translation>não</translation>
        </message>
        <message>
            <source>a copy of {file}</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>uma cópia de {file}</translation>
        </message>
        <message>
            <source>the same acts, to the second, as {pupil} in {file}</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>os mesmos atos, ao segundo, que {pupil} em {file}</translation>
        </message>
        <message>
            <source>there is a later attempt</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>há uma tentativa posterior</translation>
        </message>
        <message>
            <source>of another set</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>de outra série</translation>
        </message>
        <message>
            <source>saved by hand, not handed in with a class</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>guardada à mão, não entregue com uma turma</translation>
        </message>
        <message>
            <source>rotor held at the E-gap</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>rotor seguro no E-gap</translation>
        </message>
        <message>
            <source>contacts open at the mark</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>contactos abrem na marca</translation>
        </message>
        <message>
            <source>largest gap within its limits</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>folga máxima dentro dos limites</translation>
        </message>
        <message>
            <source>contacts clean and flat</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>contactos limpos e planos</translation>
        </message>
        <message>
            <source>disc set to top dead centre</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>disco posto no ponto morto superior</translation>
        </message>
        <message>
            <source>timed to the engine</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>calado ao motor</translation>
        </message>
        <message>
            <source>both magnetos together</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>ambos os magnetos de acordo</translation>
        </message>
        <message>
            <source>switch lead sound and proved</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>cabo de massa bom e provado</translation>
        </message>
        <message>
            <source>coupling marked first</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>acoplamento marcado primeiro</translation>
        </message>
        <message>
            <source>everything tight and closed up</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>tudo apertado e fechado</translation>
        </message>
        <message>
            <source>opening, as written down</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>abertura, como anotada</translation>
        </message>
        <message>
            <source>largest gap, as written down</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>folga máxima, como anotada</translation>
        </message>
        <message>
            <source>firing, as written down</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>ignição, como anotada</translation>
        </message>
        <message>
            <source>disc's zero, as written down</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>zero do disco, como anotado</translation>
        </message>
        <message>
            <source>switch lead, as written down</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>cabo de massa, como anotado</translation>
        </message>
        <message>
            <source>opens early or late</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>abre cedo ou tarde</translation>
        </message>
        <message>
            <source>gap too wide or narrow</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>folga a mais ou a menos</translation>
        </message>
        <message>
            <source>backplate off</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>placa de base fora do lugar</translation>
        </message>
        <message>
            <source>lock screw carries the contact screw along</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>o parafuso de fixação arrasta o parafuso de contacto</translation>
        </message>
        <message>
            <source>a low lobe</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>um ressalto baixo</translation>
        </message>
        <message>
            <source>pip on the contacts</source>
            <extracomment>classroom/words.py, physics/setting_uncertainty.py</extracomment>
            <translation>pico nos contactos</translation>
        </message>
        <message>
            <source>play in the coupling</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>jogo no acoplamento</translation>
        </message>
        <message>
            <source>teeth out at the magneto flange</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>dentes fora na flange do magneto</translation>
        </message>
        <message>
            <source>teeth out at the drive flange</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>dentes fora na flange motriz</translation>
        </message>
        <message>
            <source>vernier steps out</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>passos do vernier fora</translation>
        </message>
        <message>
            <source>disc not at zero</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>disco fora do zero</translation>
        </message>
        <message>
            <source>on the wrong stroke</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>no tempo errado</translation>
        </message>
        <message>
            <source>fitted at neutral</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>montado no neutro</translation>
        </message>
        <message>
            <source>switch lead</source>
            <extracomment>classroom/words.py, practice/words.py</extracomment>
            <translation>cabo de massa</translation>
        </message>
        <message>
            <source>took the magneto off unmarked</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>tirou o magneto sem marcas</translation>
        </message>
        <message>
            <source>turned the propeller with no chocks at the wheels</source>
            <extracomment>classroom/words.py, practice/evidence.py</extracomment>
            <translation>rodou a hélice sem calços nas rodas</translation>
        </message>
        <message>
            <source>turned the propeller with a live magneto and the plugs in</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>rodou a hélice com um magneto vivo e as velas postas</translation>
        </message>
        <message>
            <source>turned the propeller, plugs in, without proving the switch</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>rodou a hélice, velas postas, sem provar o interruptor</translation>
        </message>
        <message>
            <source>handed in with screws or nuts slack</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>entregou com parafusos ou porcas por apertar</translation>
        </message>
        <message>
            <source>handed in with the switch on</source>
            <extracomment>classroom/words.py, practice/marking.py</extracomment>
            <translation>entregou com o interruptor ligado</translation>
        </message>
        <message>
            <source>{step}: wrong</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>{step}: errado</translation>
        </message>
        <message>
            <source>{step}: nearly right</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>{step}: quase certo</translation>
        </message>
        <message>
            <source>{step}: right, not proved by instruments</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>{step}: certo, não provado por instrumentos</translation>
        </message>
        <message>
            <source>{what} (left)</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>{what} (esquerdo)</translation>
        </message>
        <message>
            <source>{what} (right)</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>{what} (direito)</translation>
        </message>
        <message>
            <source>newer version</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>versão mais nova</translation>
        </message>
        <message>
            <source>not handed in</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>não entregue</translation>
        </message>
        <message>
            <source>damaged</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>danificado</translation>
        </message>
        <message>
            <source>passed</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>passou</translation>
        </message>
        <message>
            <source>not passed</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>não passou</translation>
        </message>
        <message>
            <source>On a real magneto: treat the propeller as live; switch off, its lead grounded and proved; plugs out; wheels chocked. The maker's current manual and local rules govern; work on a certified aircraft is done or released by a licensed person. This sheet is for training; its magneto is invented.</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Num magneto real: tratar a hélice como viva; interruptor desligado, o seu cabo à massa e provado; velas fora; rodas calçadas. Valem o manual atual do fabricante e as regras locais; o trabalho num avião certificado é feito ou libertado por uma pessoa licenciada. Esta ficha é para treino; o magneto é inventado.</translation>
        </message>
        <message>
            <source>{magneto}: pictures</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>{magneto}: imagens</translation>
        </message>
        <message>
            <source>{title} · magview {version} · treat the propeller as live</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>{title} · magview {version} · tratar a hélice como viva</translation>
        </message>
        <message>
            <source>In the program: begin this exercise with the code {seed}.</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>No programa: começar este exercício com o código {seed}.</translation>
        </message>
        <message>
            <source>Name the parts: key</source>
            <extracomment>classroom/worksheet.py, ui/class_paper_dialog.py</extracomment>
            <translation>Nomear as peças: chave</translation>
        </message>
        <message>
            <source>Name the parts</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Nomear as peças</translation>
        </message>
        <message>
            <source>Answer key: {exercise}</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Chave: {exercise}</translation>
        </message>
        <message>
            <source>In the program: class code {code}, under this name.</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>No programa: código da turma {code}, com este nome.</translation>
        </message>
        <message>
            <source>In the program: class code {code}.</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>No programa: código da turma {code}.</translation>
        </message>
        <message>
            <source>The straightedge (dashed) as the contacts open, and the rim mark: how far apart, short or past?</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>A régua (a tracejado) quando os contactos abrem, e a marca do rebordo: a que distância, aquém ou depois?</translation>
        </message>
        <message>
            <source>The case</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>O caso</translation>
        </message>
        <message>
            <source>About {minutes} minutes. Done when:</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Cerca de {minutes} minutos. Pronto quando:</translation>
        </message>
        <message>
            <source>Data sheet</source>
            <extracomment>classroom/worksheet.py, ui/practice_task.py</extracomment>
            <translation>Folha de dados</translation>
        </message>
        <message>
            <source>Readings</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Leituras</translation>
        </message>
        <message>
            <source>What was wrong, and what put it right</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>O que estava errado e o que o corrigiu</translation>
        </message>
        <message>
            <source>{side} magneto: {fault}</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Magneto {side}: {fault}</translation>
        </message>
        <message>
            <source>Class</source>
            <extracomment>classroom/worksheet.py, ui/class_desk.py</extracomment>
            <translation>Turma</translation>
        </message>
        <message>
            <source>Date</source>
            <extracomment>classroom/worksheet.py, job/document.py, job/history.py, job/parts.py, job/sheet.py, job/shift_plan.py</extracomment>
            <translation>Data</translation>
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
            <translation>Para as imagens: ressalto 1 como encontrado</translation>
        </message>
        <message>
            <source>The contacts at their widest. Not to scale.</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Os contactos abertos ao máximo. Não está à escala.</translation>
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
            <translation>Nada precisa de ser corrigido.</translation>
        </message>
        <message>
            <source>Name the parts – {picture}</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Nomear as peças – {picture}</translation>
        </message>
        <message>
            <source>Part</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Peça</translation>
        </message>
        <message>
            <source>What it does</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>O que faz</translation>
        </message>
        <message>
            <source>not installed; install magview again</source>
            <extracomment>cli_check.py</extracomment>
            <translation>não instalado; instalar de novo o magview</translation>
        </message>
        <message>
            <source>{count} magnetos and {more} installations can be read</source>
            <extracomment>cli_check.py</extracomment>
            <translation>podem ler-se {count} magnetos e {more} instalações</translation>
        </message>
        <message>
            <source>opens ({platform}, screen of {width} × {height})</source>
            <extracomment>cli_check.py</extracomment>
            <translation>abre ({platform}, ecrã de {width} × {height})</translation>
        </message>
        <message>
            <source>Qt does not start: {reason}</source>
            <extracomment>cli_check.py</extracomment>
            <translation>o Qt não arranca: {reason}</translation>
        </message>
        <message>
            <source>good</source>
            <extracomment>cli_check.py</extracomment>
            <translation>bom</translation>
        </message>
        <message>
            <source>MISSING</source>
            <extracomment>cli_check.py</extracomment>
            <translation>FALTA</translation>
        </message>
        <message>
            <source>no magnetos in {folder}; install magview again</source>
            <extracomment>cli_check.py</extracomment>
            <translation>não há magnetos em {folder}; instalar de novo o magview</translation>
        </message>
        <message>
            <source>Qt needs it for a window; the package {package} of Debian and Ubuntu has it</source>
            <extracomment>cli_check.py</extracomment>
            <translation>o Qt precisa dele para uma janela; vem no pacote {package} de Debian e Ubuntu</translation>
        </message>
        <message>
            <source>opens, but where nobody sees it: QT_QPA_PLATFORM is {platform}</source>
            <extracomment>cli_check.py</extracomment>
            <translation>abre, mas onde ninguém vê: QT_QPA_PLATFORM é {platform}</translation>
        </message>
        <message>
            <source>there are no fonts, so words are boxes; the package fonts-dejavu-core of Debian and Ubuntu has some</source>
            <extracomment>cli_check.py</extracomment>
            <translation>não há tipos de letra, as palavras saem em quadrados; o pacote fonts-dejavu-core de Debian e Ubuntu tem alguns</translation>
        </message>
        <message>
            <source>Qt has no working platform plugin “{chosen}”, which QT_QPA_PLATFORM asks for; unset it, or choose one of: {known}</source>
            <extracomment>cli_check.py</extracomment>
            <translation>o Qt não tem o plugin de plataforma “{chosen}” que QT_QPA_PLATFORM pede; anulá-la, ou escolher um de: {known}</translation>
        </message>
        <message>
            <source>folder of work under way</source>
            <extracomment>cli_check.py</extracomment>
            <translation>pasta do trabalho em curso</translation>
        </message>
        <message>
            <source>folder of the log</source>
            <extracomment>cli_check.py</extracomment>
            <translation>pasta do registo</translation>
        </message>
        <message>
            <source>folder of fault reports</source>
            <extracomment>cli_check.py</extracomment>
            <translation>pasta dos relatórios de falhas</translation>
        </message>
        <message>
            <source>folder for the time being</source>
            <extracomment>cli_check.py</extracomment>
            <translation>pasta temporária</translation>
        </message>
        <message>
            <source>{trouble}; make the folder writable, or set XDG_DATA_HOME and XDG_STATE_HOME to ones that are</source>
            <extracomment>cli_check.py</extracomment>
            <translation>{trouble}; tornar a pasta gravável, ou pôr XDG_DATA_HOME e XDG_STATE_HOME noutras que o sejam</translation>
        </message>
        <message>
            <source>{folder} has only {free} MB free; make room</source>
            <extracomment>cli_check.py</extracomment>
            <translation>{folder} só tem {free} MB livres; arranjar espaço</translation>
        </message>
        <message>
            <source>{folder} can be written, {free} MB free</source>
            <extracomment>cli_check.py</extracomment>
            <translation>pode escrever-se em {folder}, {free} MB livres</translation>
        </message>
        <message>
            <source>versions</source>
            <extracomment>cli_check.py</extracomment>
            <translation>versões</translation>
        </message>
        <message>
            <source>shipped files</source>
            <extracomment>cli_check.py</extracomment>
            <translation>ficheiros fornecidos</translation>
        </message>
        <message>
            <source>window</source>
            <extracomment>cli_check.py</extracomment>
            <translation>janela</translation>
        </message>
        <message>
            <source>printing</source>
            <extracomment>cli_check.py</extracomment>
            <translation>impressão</translation>
        </message>
        <message>
            <source>files</source>
            <extracomment>cli_check.py</extracomment>
            <translation>ficheiros</translation>
        </message>
        <message>
            <source>desktop</source>
            <extracomment>cli_check.py</extracomment>
            <translation>ambiente de trabalho</translation>
        </message>
        <message>
            <source>PDF is written, with {count} families of type</source>
            <extracomment>cli_check.py</extracomment>
            <translation>escreve-se PDF, com {count} famílias de letra</translation>
        </message>
        <message>
            <source>it gave no reason</source>
            <extracomment>cli_check.py</extracomment>
            <translation>não deu motivo</translation>
        </message>
        <message>
            <source>not in the menu; `magview desktop` puts it there</source>
            <extracomment>cli_check.py</extracomment>
            <translation>não está no menu; `magview desktop` põe-no lá</translation>
        </message>
        <message>
            <source>Nothing is missing.</source>
            <extracomment>cli_check.py</extracomment>
            <translation>Não falta nada.</translation>
        </message>
        <message>
            <source>Something is missing.</source>
            <extracomment>cli_check.py</extracomment>
            <translation>Falta alguma coisa.</translation>
        </message>
        <message>
            <source>Qt writes no PDF or reads no SVG; install magview again</source>
            <extracomment>cli_check.py</extracomment>
            <translation>o Qt não escreve PDF ou não lê SVG; instalar de novo o magview</translation>
        </message>
        <message>
            <source>Qt did not answer within {seconds} s; try again</source>
            <extracomment>cli_check.py</extracomment>
            <translation>o Qt não respondeu em {seconds} s; tentar de novo</translation>
        </message>
        <message>
            <source>in the menu; `magview desktop --remove` takes it away</source>
            <extracomment>cli_check.py</extracomment>
            <translation>está no menu; `magview desktop --remove` tira-o</translation>
        </message>
        <message>
            <source>could not be looked at: {reason}</source>
            <extracomment>cli_check.py</extracomment>
            <translation>não pôde ser visto: {reason}</translation>
        </message>
        <message>
            <source>about {minutes} minutes</source>
            <extracomment>cli_class.py</extracomment>
            <translation>cerca de {minutes} minutos</translation>
        </message>
        <message>
            <source>A fault of their own for each pupil.</source>
            <extracomment>cli_class.py</extracomment>
            <translation>Um defeito próprio para cada aluno.</translation>
        </message>
        <message>
            <source>The same faults for everyone.</source>
            <extracomment>cli_class.py</extracomment>
            <translation>Os mesmos defeitos para todos.</translation>
        </message>
        <message>
            <source>the set</source>
            <extracomment>cli_class.py</extracomment>
            <translation>a série</translation>
        </message>
        <message>
            <source>{count} attempts count, of {files} files.</source>
            <extracomment>cli_class.py, ui/class_gather.py</extracomment>
            <translation>contam {count} tentativas, de {files} ficheiros.</translation>
        </message>
        <message>
            <source>{name}: {percent} %, {passed} of {done} passed</source>
            <extracomment>cli_class.py</extracomment>
            <translation>{name}: {percent} %, passou {passed} de {done}</translation>
        </message>
        <message>
            <source>a code for a class, its answer key, and its attempts gathered</source>
            <extracomment>cli_class.py</extracomment>
            <translation>um código para uma turma, a sua chave, e as tentativas reunidas</translation>
        </message>
        <message>
            <source>make a class code, or say what one stands for</source>
            <extracomment>cli_class.py</extracomment>
            <translation>fazer um código de turma, ou dizer o que um significa</translation>
        </message>
        <message>
            <source>shipped exercises or files, in order; or one code or set</source>
            <extracomment>cli_class.py</extracomment>
            <translation>exercícios fornecidos ou ficheiros, por ordem; ou um código ou uma série</translation>
        </message>
        <message>
            <source>the same seed makes the same code; left out: drawn</source>
            <extracomment>cli_class.py</extracomment>
            <translation>a mesma semente faz o mesmo código; omitida: sorteada</translation>
        </message>
        <message>
            <source>a fault of their own for each pupil</source>
            <extracomment>cli_class.py</extracomment>
            <translation>um defeito próprio para cada aluno</translation>
        </message>
        <message>
            <source>the exercises' hints are not given</source>
            <extracomment>cli_class.py</extracomment>
            <translation>não se dão as pistas dos exercícios</translation>
        </message>
        <message>
            <source>straightedge, and blades beside the exercise's</source>
            <extracomment>cli_class.py</extracomment>
            <translation>régua, e lâminas além das do exercício</translation>
        </message>
        <message>
            <source>the time allowed for each exercise</source>
            <extracomment>cli_class.py</extracomment>
            <translation>o tempo permitido para cada exercício</translation>
        </message>
        <message>
            <source>for the file and the key</source>
            <extracomment>cli_class.py</extracomment>
            <translation>para o ficheiro e a chave</translation>
        </message>
        <message>
            <source>a pupil; again for each</source>
            <extracomment>cli_class.py</extracomment>
            <translation>um aluno; repetir para cada um</translation>
        </message>
        <message>
            <source>write the set as a file, pupils and own exercises included</source>
            <extracomment>cli_class.py</extracomment>
            <translation>escrever a série como ficheiro, com alunos e exercícios próprios</translation>
        </message>
        <message>
            <source>the answer key of a code or a set's file</source>
            <extracomment>cli_class.py</extracomment>
            <translation>a chave de um código ou de um ficheiro de série</translation>
        </message>
        <message>
            <source>a code or a file</source>
            <extracomment>cli_class.py</extracomment>
            <translation>um código ou um ficheiro</translation>
        </message>
        <message>
            <source>write it as CSV</source>
            <extracomment>cli_class.py</extracomment>
            <translation>escrevê-la como CSV</translation>
        </message>
        <message>
            <source>mark every attempt in a folder</source>
            <extracomment>cli_class.py</extracomment>
            <translation>avaliar todas as tentativas numa pasta</translation>
        </message>
        <message>
            <source>hold them against a code or a set's file</source>
            <extracomment>cli_class.py</extracomment>
            <translation>compará-las com um código ou um ficheiro de série</translation>
        </message>
        <message>
            <source>write every attempt as CSV</source>
            <extracomment>cli_class.py</extracomment>
            <translation>escrever todas as tentativas como CSV</translation>
        </message>
        <message>
            <source>keep the marks there, for the next time</source>
            <extracomment>cli_class.py</extracomment>
            <translation>conservar ali as notas, para a próxima vez</translation>
        </message>
        <message>
            <source>put a finished attempt's file into the class's folder</source>
            <extracomment>cli_class.py</extracomment>
            <translation>pôr o ficheiro de uma tentativa acabada na pasta da turma</translation>
        </message>
        <message>
            <source>a file saved from a practice window</source>
            <extracomment>cli_class.py</extracomment>
            <translation>um ficheiro guardado de uma janela de treino</translation>
        </message>
        <message>
            <source>--seed is {seed}; it must be from 0 to {most}</source>
            <extracomment>cli_class.py</extracomment>
            <translation>--seed é {seed}; tem de ser de 0 a {most}</translation>
        </message>
        <message>
            <source>Most often:</source>
            <extracomment>cli_class.py</extracomment>
            <translation>Mais vezes:</translation>
        </message>
        <message>
            <source>Nothing from: {names}</source>
            <extracomment>cli_class.py</extracomment>
            <translation>Nada de: {names}</translation>
        </message>
        <message>
            <source>Handed in as {file}.</source>
            <extracomment>cli_class.py</extracomment>
            <translation>Entregue como {file}.</translation>
        </message>
        <message>
            <source>passed over: {why}</source>
            <extracomment>cli_class.py</extracomment>
            <translation>ignorado: {why}</translation>
        </message>
        <message>
            <source>weakest: {step}</source>
            <extracomment>cli_class.py</extracomment>
            <translation>mais fraco: {step}</translation>
        </message>
        <message>
            <source>magview is in the desktop's menu, and opens files whose names end in {ending}. `magview desktop --remove` takes it away again. Put there, in {folder}:</source>
            <extracomment>cli_desktop.py</extracomment>
            <translation>o magview está no menu do ambiente de trabalho e abre ficheiros cujos nomes acabam em {ending}. `magview desktop --remove` tira-o de novo. Posto ali, em {folder}:</translation>
        </message>
        <message>
            <source>magview is taken off the desktop. Deleted, in {folder}:</source>
            <extracomment>cli_desktop.py</extracomment>
            <translation>o magview foi tirado do ambiente de trabalho. Apagado, em {folder}:</translation>
        </message>
        <message>
            <source>There was nothing to take away in {folder}.</source>
            <extracomment>cli_desktop.py</extracomment>
            <translation>Não havia nada para tirar em {folder}.</translation>
        </message>
        <message>
            <source>Menu entries of this kind are for Linux desktops. Here, pin {program} to the task bar or Dock, and choose it under Open with for files of the program.</source>
            <extracomment>cli_desktop.py</extracomment>
            <translation>Entradas de menu deste tipo são para ambientes Linux. Aqui, fixar {program} na barra de tarefas ou Dock, e escolhê-lo em Abrir com para os ficheiros do programa.</translation>
        </message>
        <message>
            <source>the guide, as one HTML file or as PDF; or what is in it</source>
            <extracomment>cli_guide.py</extracomment>
            <translation>o guia, como um ficheiro HTML ou como PDF; ou o que contém</translation>
        </message>
        <message>
            <source>write it as HTML</source>
            <extracomment>cli_guide.py</extracomment>
            <translation>escrevê-lo como HTML</translation>
        </message>
        <message>
            <source>write it as PDF</source>
            <extracomment>cli_guide.py</extracomment>
            <translation>escrevê-lo como PDF</translation>
        </message>
        <message>
            <source>paper size; left out: a4</source>
            <extracomment>cli_guide.py, cli_paper.py</extracomment>
            <translation>tamanho do papel; omitido: a4</translation>
        </message>
        <message>
            <source>words to search for</source>
            <extracomment>cli_guide.py</extracomment>
            <translation>palavras a procurar</translation>
        </message>
        <message>
            <source>no PDF: {reason} For HTML, which needs no Qt, use --html.</source>
            <extracomment>cli_guide.py</extracomment>
            <translation>sem PDF: {reason} Para HTML, que não precisa do Qt, usar --html.</translation>
        </message>
        <message>
            <source>F1 in the window opens it; --html and --pdf write it to a file.</source>
            <extracomment>cli_guide.py</extracomment>
            <translation>F1 na janela abre-o; --html e --pdf escrevem-no num ficheiro.</translation>
        </message>
        <message>
            <source>with --set: for whom; may be given again; left out: those of the set's file</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>com --set: para quem; pode repetir-se; omitido: os do ficheiro da série</translation>
        </message>
        <message>
            <source>Wrote {file}: 1 page.</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>Escrito {file}: 1 página.</translation>
        </message>
        <message>
            <source>a worksheet of an exercise, or its answer key, as PDF</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>uma ficha de um exercício, ou a sua chave, em PDF</translation>
        </message>
        <message>
            <source>a file or a shipped one (gap-wrong), or:</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>um ficheiro ou um fornecido (gap-wrong), ou:</translation>
        </message>
        <message>
            <source>a class's set instead, by its code or its file</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>em vez disso a série de uma turma, por código ou ficheiro</translation>
        </message>
        <message>
            <source>the code that draws the faults; left out: 0</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>o código de que se sorteiam os defeitos; omitido: 0</translation>
        </message>
        <message>
            <source>the answer key instead of the worksheet</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>a chave em vez da ficha</translation>
        </message>
        <message>
            <source>print the exercise's hints, too</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>imprimir também as pistas do exercício</translation>
        </message>
        <message>
            <source>leave out the pictures whose parts are named</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>omitir as imagens com peças a nomear</translation>
        </message>
        <message>
            <source>whose sheet it is; left out: a line for it</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>de quem é a ficha; omitido: uma linha para isso</translation>
        </message>
        <message>
            <source>pictures of a magneto or installation as PDF</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>imagens de um magneto ou instalação em PDF</translation>
        </message>
        <message>
            <source>a file or a shipped magneto or installation</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>um ficheiro ou um magneto ou instalação fornecido</translation>
        </message>
        <message>
            <source>which; may be given again; left out: all there are</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>quais; pode repetir-se; omitido: todas</translation>
        </message>
        <message>
            <source>what stands beside the parts</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>o que está ao lado das peças</translation>
        </message>
        <message>
            <source>add what there is to say of each part</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>juntar o que há a dizer de cada peça</translation>
        </message>
        <message>
            <source>the file to write</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>o ficheiro a escrever</translation>
        </message>
        <message>
            <source>give either an EXERCISE or --set with a class's code or file</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>dar um EXERCÍCIO ou --set com o código ou ficheiro de uma turma</translation>
        </message>
        <message>
            <source>--seed is “{seed}”; it must be a whole number from 0 on, of at most 16 digits</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>--seed é “{seed}”; tem de ser um número inteiro a partir de 0, de 16 algarismos no máximo</translation>
        </message>
        <message>
            <source>no PDF: {reason}</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>sem PDF: {reason}</translation>
        </message>
        <message>
            <source>Wrote {file}: {pages} pages.</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>Escrito {file}: {pages} páginas.</translation>
        </message>
        <message>
            <source>“{name}” is neither a file nor one of the shipped: {known}</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>“{name}” não é um ficheiro nem um dos fornecidos: {known}</translation>
        </message>
        <message>
            <source>How sure the readings are: each may be out by the half-width of the instrument or habit it was taken with, all values within it equally likely. These were propagated linearly (JCGM 100:2008); the interval stated is the expanded uncertainty with its coverage factor k, and holds the true value 95 times in 100 unless stated otherwise. It does not allow for mistakes, nor for a magneto that differs from the file it was compared with.</source>
            <extracomment>job/document.py</extracomment>
            <translation>Quão certas são as leituras: cada uma pode estar fora por meia largura do instrumento ou hábito com que foi tomada, todos os valores dentro igualmente prováveis. Foram propagadas linearmente (JCGM 100:2008); o intervalo dado é a incerteza expandida com o seu fator k, e contém o valor verdadeiro 95 vezes em 100, salvo outra indicação. Não conta com enganos, nem com um magneto diferente do ficheiro com que foi comparado.</translation>
        </message>
        <message>
            <source>Breaker end as found</source>
            <extracomment>job/document.py</extracomment>
            <translation>Lado do ruptor como encontrado</translation>
        </message>
        <message>
            <source>Breaker end as left</source>
            <extracomment>job/document.py</extracomment>
            <translation>Lado do ruptor como deixado</translation>
        </message>
        <message>
            <source>Coupling as found</source>
            <extracomment>job/document.py, job/shift_plan.py</extracomment>
            <translation>Acoplamento como encontrado</translation>
        </message>
        <message>
            <source>Coupling as left</source>
            <extracomment>job/document.py</extracomment>
            <translation>Acoplamento como deixado</translation>
        </message>
        <message>
            <source>{sheet} · magview {version} · treat the propeller as live</source>
            <extracomment>job/document.py, job/shift_plan.py</extracomment>
            <translation>{sheet} · magview {version} · tratar a hélice como viva</translation>
        </message>
        <message>
            <source>OUT OF LIMITS</source>
            <extracomment>job/document.py, job/readings.py</extracomment>
            <translation>FORA DOS LIMITES</translation>
        </message>
        <message>
            <source>NOT AS IT MUST BE</source>
            <extracomment>job/document.py, job/readings.py</extracomment>
            <translation>NÃO COMO TEM DE SER</translation>
        </message>
        <message>
            <source>found out of limits</source>
            <extracomment>job/document.py, job/readings.py</extracomment>
            <translation>encontrado fora dos limites</translation>
        </message>
        <message>
            <source>As found and as left: breaker end, contacts just opening</source>
            <extracomment>job/document.py</extracomment>
            <translation>Como encontrado e como deixado: lado do ruptor, contactos a abrir</translation>
        </message>
        <message>
            <source>As found: breaker end, contacts just opening</source>
            <extracomment>job/document.py</extracomment>
            <translation>Como encontrado: lado do ruptor, contactos a abrir</translation>
        </message>
        <message>
            <source>As left: breaker end, contacts just opening</source>
            <extracomment>job/document.py</extracomment>
            <translation>Como deixado: lado do ruptor, contactos a abrir</translation>
        </message>
        <message>
            <source>Seen from the drive end, rotation {way}.</source>
            <extracomment>job/document.py, ui/drive_view.py</extracomment>
            <translation>Visto do lado motriz, rotação {way}.</translation>
        </message>
        <message>
            <source>Trial</source>
            <extracomment>job/document.py, ui/job_table.py</extracomment>
            <translation>Ensaio</translation>
        </message>
        <message>
            <source>Backplate</source>
            <extracomment>job/document.py, job/parts.py</extracomment>
            <translation>Placa de base</translation>
        </message>
        <message>
            <source>Gap at least</source>
            <extracomment>job/document.py, job/parts.py</extracomment>
            <translation>Folga no mínimo</translation>
        </message>
        <message>
            <source>Gap at most</source>
            <extracomment>job/document.py, job/parts.py</extracomment>
            <translation>Folga no máximo</translation>
        </message>
        <message>
            <source>Opening from the E-gap</source>
            <extracomment>job/document.py, job/parts.py</extracomment>
            <translation>Abertura desde o E-gap</translation>
        </message>
        <message>
            <source>Opening from its place</source>
            <extracomment>job/document.py</extracomment>
            <translation>Abertura desde o seu lugar</translation>
        </message>
        <message>
            <source>Contacts closed</source>
            <extracomment>job/document.py, ui/contact_view.py</extracomment>
            <translation>Contactos fechados</translation>
        </message>
        <message>
            <source>backplate {angle}</source>
            <extracomment>job/document.py</extracomment>
            <translation>placa de base {angle}</translation>
        </message>
        <message>
            <source>contact screw {angle}</source>
            <extracomment>job/document.py</extracomment>
            <translation>parafuso de contacto {angle}</translation>
        </message>
        <message>
            <source>Seen from the breaker end, rotation clockwise.</source>
            <extracomment>job/document.py</extracomment>
            <translation>Visto do lado do ruptor, rotação no sentido horário.</translation>
        </message>
        <message>
            <source>Seen from the breaker end, rotation anticlockwise.</source>
            <extracomment>job/document.py</extracomment>
            <translation>Visto do lado do ruptor, rotação no sentido anti-horário.</translation>
        </message>
        <message>
            <source>magneto flange {teeth}</source>
            <extracomment>job/document.py</extracomment>
            <translation>flange do magneto {teeth}</translation>
        </message>
        <message>
            <source>disc {teeth}</source>
            <extracomment>job/document.py, ui/plan_box.py</extracomment>
            <translation>disco {teeth}</translation>
        </message>
        <message>
            <source>Aircraft</source>
            <extracomment>job/document.py, job/sheet.py</extracomment>
            <translation>Avião</translation>
        </message>
        <message>
            <source>Manual</source>
            <extracomment>job/document.py</extracomment>
            <translation>Manual</translation>
        </message>
        <message>
            <source>Limits</source>
            <extracomment>job/document.py, job/sheet.py</extracomment>
            <translation>Limites</translation>
        </message>
        <message>
            <source>Next check</source>
            <extracomment>job/document.py, job/sheet.py</extracomment>
            <translation>Próxima verificação</translation>
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
            <translation>falta em {stage}</translation>
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
            <translation>Quão certo</translation>
        </message>
        <message>
            <source>Best estimate ± expanded uncertainty</source>
            <extracomment>job/document.py</extracomment>
            <translation>Melhor estimativa ± incerteza expandida</translation>
        </message>
        <message>
            <source>Likely in limits</source>
            <extracomment>job/document.py</extracomment>
            <translation>Provável nos limites</translation>
        </message>
        <message>
            <source>What matters most</source>
            <extracomment>job/document.py</extracomment>
            <translation>O que mais pesa</translation>
        </message>
        <message>
            <source>opens {angle} against the E-gap</source>
            <extracomment>job/document.py</extracomment>
            <translation>abre {angle} do E-gap</translation>
        </message>
        <message>
            <source>largest gap {gap}</source>
            <extracomment>job/document.py</extracomment>
            <translation>folga máxima {gap}</translation>
        </message>
        <message>
            <source>drawn is the gap that plate and screw give, {gap}</source>
            <extracomment>job/document.py</extracomment>
            <translation>desenhada está a abertura que dão placa e parafuso, {gap}</translation>
        </message>
        <message>
            <source>fires {angle}</source>
            <extracomment>job/document.py</extracomment>
            <translation>inflama {angle}</translation>
        </message>
        <message>
            <source>Thick lines: the painted marks, each of them number 1.</source>
            <extracomment>job/document.py</extracomment>
            <translation>Linhas grossas: as marcas pintadas, cada uma o número 1.</translation>
        </message>
        <message>
            <source>Earlier sheets of this magneto</source>
            <extracomment>job/document.py</extracomment>
            <translation>Folhas anteriores deste magneto</translation>
        </message>
        <message>
            <source>Signature</source>
            <extracomment>job/document.py, job/sheet.py, job/shift_plan.py</extracomment>
            <translation>Assinatura</translation>
        </message>
        <message>
            <source>Magneto job sheet</source>
            <extracomment>job/document.py, job/report.py, ui/print_pdf.py</extracomment>
            <translation>Folha de trabalho do magneto</translation>
        </message>
        <message>
            <source>INVENTED FOR DEMONSTRATION: no such aircraft, engine, magneto or person.</source>
            <extracomment>job/document.py</extracomment>
            <translation>INVENTADO PARA DEMONSTRAÇÃO: não há tal avião, motor, magneto ou pessoa.</translation>
        </message>
        <message>
            <source>taken from: {source}</source>
            <extracomment>job/document.py</extracomment>
            <translation>tirado de: {source}</translation>
        </message>
        <message>
            <source>OUT OF LIMITS OR NOT AS IT MUST BE: {what}.</source>
            <extracomment>job/document.py</extracomment>
            <translation>FORA DOS LIMITES OU NÃO COMO TEM DE SER: {what}.</translation>
        </message>
        <message>
            <source>TO BE CLEARED UP: see {stages}.</source>
            <extracomment>job/document.py</extracomment>
            <translation>POR ESCLARECER: ver {stages}.</translation>
        </message>
        <message>
            <source>open: {stages}</source>
            <extracomment>job/document.py</extracomment>
            <translation>abertos: {stages}</translation>
        </message>
        <message>
            <source>NOT FINISHED: {words}.</source>
            <extracomment>job/document.py</extracomment>
            <translation>NÃO ACABADO: {words}.</translation>
        </message>
        <message>
            <source>CHANGED SINCE IT WAS SIGNED: the signature does not cover this sheet.</source>
            <extracomment>job/document.py</extracomment>
            <translation>ALTERADO DESDE A ASSINATURA: a assinatura não cobre esta folha.</translation>
        </message>
        <message>
            <source>Finished; as left, all readings that have limits are within them.</source>
            <extracomment>job/document.py</extracomment>
            <translation>Acabado; como deixado, todas as leituras com limites estão dentro deles.</translation>
        </message>
        <message>
            <source>Skipped: {reason}</source>
            <extracomment>job/document.py, ui/job_bars.py</extracomment>
            <translation>Saltado: {reason}</translation>
        </message>
        <message>
            <source>TO BE CLEARED UP: {what}</source>
            <extracomment>job/document.py</extracomment>
            <translation>POR ESCLARECER: {what}</translation>
        </message>
        <message>
            <source>Note: {note}</source>
            <extracomment>job/document.py</extracomment>
            <translation>Nota: {note}</translation>
        </message>
        <message>
            <source>Done by: {by}</source>
            <extracomment>job/document.py</extracomment>
            <translation>Feito por: {by}</translation>
        </message>
        <message>
            <source>Nothing entered.</source>
            <extracomment>job/document.py</extracomment>
            <translation>Nada registado.</translation>
        </message>
        <message>
            <source>As found and as left: coupling, seen from the drive end</source>
            <extracomment>job/document.py</extracomment>
            <translation>Como encontrado e como deixado: acoplamento, visto do lado do acionamento</translation>
        </message>
        <message>
            <source>The signature covers the sheet with the digest {covers}.</source>
            <extracomment>job/document.py</extracomment>
            <translation>A assinatura cobre a folha com a soma {covers}.</translation>
        </message>
        <message>
            <source>Cautions.</source>
            <extracomment>job/document.py, job/shift_plan.py</extracomment>
            <translation>Precauções.</translation>
        </message>
        <message>
            <source>{hours} h total</source>
            <extracomment>job/document.py</extracomment>
            <translation>{hours} h no total</translation>
        </message>
        <message>
            <source>serial {serial}</source>
            <extracomment>job/document.py</extracomment>
            <translation>n.º {serial}</translation>
        </message>
        <message>
            <source>{hours} h since overhaul</source>
            <extracomment>job/document.py</extracomment>
            <translation>{hours} h desde a revisão</translation>
        </message>
        <message>
            <source>{hours} h of the magneto</source>
            <extracomment>job/document.py</extracomment>
            <translation>{hours} h do magneto</translation>
        </message>
        <message>
            <source>no blade refused</source>
            <extracomment>job/document.py</extracomment>
            <translation>nenhuma lâmina deixou de passar</translation>
        </message>
        <message>
            <source>No drawings: {error}</source>
            <extracomment>job/document.py</extracomment>
            <translation>Sem desenhos: {error}</translation>
        </message>
        <message>
            <source>Work done and released by</source>
            <extracomment>job/document.py</extracomment>
            <translation>Trabalho feito e libertado por</translation>
        </message>
        <message>
            <source>Licence no.</source>
            <extracomment>job/document.py, job/parts.py</extracomment>
            <translation>Licença n.º</translation>
        </message>
        <message>
            <source>Independent check by</source>
            <extracomment>job/document.py, job/parts.py</extracomment>
            <translation>Verificação independente por</translation>
        </message>
        <message>
            <source>opening {limits}</source>
            <extracomment>job/document.py</extracomment>
            <translation>abertura {limits}</translation>
        </message>
        <message>
            <source>gap {limits}</source>
            <extracomment>job/document.py</extracomment>
            <translation>folga {limits}</translation>
        </message>
        <message>
            <source>Largest gap [mm]</source>
            <extracomment>job/drift_line.py</extracomment>
            <translation>Folga máxima [mm]</translation>
        </message>
        <message>
            <source>The gap moved {change} in 100 h (± {spread}); after 100 h more, at {at} h, it should read {value}, between {low} and {high} 95 times in 100.</source>
            <extracomment>job/drift_line.py</extracomment>
            <translation>A folga moveu-se {change} em 100 h (± {spread}); após mais 100 h, às {at} h, deve ler {value}, entre {low} e {high} 95 vezes em 100.</translation>
        </message>
        <message>
            <source>The gap may leave its limits from {hours} h on.</source>
            <extracomment>job/drift_line.py</extracomment>
            <translation>A folga pode sair dos limites a partir das {hours} h.</translation>
        </message>
        <message>
            <source>Opening from the E-gap [rotor °]</source>
            <extracomment>job/drift_line.py</extracomment>
            <translation>Abertura desde o E-gap [rotor °]</translation>
        </message>
        <message>
            <source>The opening moved {change} in 100 h (± {spread}); after 100 h more, at {at} h, it should read {value}, between {low} and {high} 95 times in 100.</source>
            <extracomment>job/drift_line.py</extracomment>
            <translation>A abertura moveu-se {change} em 100 h (± {spread}); após mais 100 h, às {at} h, deve ler {value}, entre {low} e {high} 95 vezes em 100.</translation>
        </message>
        <message>
            <source>The opening may leave its limits from {hours} h on.</source>
            <extracomment>job/drift_line.py</extracomment>
            <translation>A abertura pode sair dos limites a partir das {hours} h.</translation>
        </message>
        <message>
            <source>Fires before top dead centre [crank °]</source>
            <extracomment>job/drift_line.py</extracomment>
            <translation>Inflama antes do ponto morto superior [° de cambota]</translation>
        </message>
        <message>
            <source>The firing moved {change} of crank in 100 h (± {spread}), positive earlier; after 100 h more, at {at} h, it should read {value} before top dead centre, between {low} and {high} 95 times in 100.</source>
            <extracomment>job/drift_line.py</extracomment>
            <translation>A inflamação moveu-se {change} de cambota em 100 h (± {spread}), positivo mais cedo; após mais 100 h, às {at} h, deve ler {value} antes do ponto morto superior, entre {low} e {high} 95 vezes em 100.</translation>
        </message>
        <message>
            <source>The firing may leave its limits from {hours} h on.</source>
            <extracomment>job/drift_line.py</extracomment>
            <translation>A inflamação pode sair dos limites a partir das {hours} h.</translation>
        </message>
        <message>
            <source>no reading of the lamp stands on the bench: enter on its Engine page what the lamp says now, after contacts and teeth were last moved</source>
            <extracomment>job/feeds.py</extracomment>
            <translation>na bancada não vale nenhuma leitura da lâmpada: introduzir na sua página Motor o que a lâmpada diz agora, depois de contactos e dentes terem sido mexidos pela última vez</translation>
        </message>
        <message>
            <source>the bench</source>
            <extracomment>job/feeds.py</extracomment>
            <translation>a bancada</translation>
        </message>
        <message>
            <source>file of the {name}</source>
            <extracomment>job/feeds.py</extracomment>
            <translation>ficheiro de {name}</translation>
        </message>
        <message>
            <source>neither wear nor a pip has been set on the bench yet</source>
            <extracomment>job/feeds.py</extracomment>
            <translation>na bancada ainda não se pôs nem desgaste nem pico</translation>
        </message>
        <message>
            <source>this gap cannot be had: {reason}</source>
            <extracomment>job/feeds.py</extracomment>
            <translation>esta folga não se consegue: {reason}</translation>
        </message>
        <message>
            <source>this magneto is not on an engine: there is no coupling to mark</source>
            <extracomment>job/feeds.py</extracomment>
            <translation>este magneto não está num motor: não há acoplamento para marcar</translation>
        </message>
        <message>
            <source>no marks were painted on the bench yet; that is done on its Engine page</source>
            <extracomment>job/feeds.py</extracomment>
            <translation>na bancada ainda não se pintaram marcas; isso faz-se na sua página Motor</translation>
        </message>
        <message>
            <source>with this setting the contacts never open and close, so there is nothing to plan</source>
            <extracomment>job/feeds.py, job/shift_plan.py</extracomment>
            <translation>com esta regulação os contactos nunca abrem e fecham, pelo que não há nada a planear</translation>
        </message>
        <message>
            <source>no tooth has been moved on the bench since the lamp was read</source>
            <extracomment>job/feeds.py</extracomment>
            <translation>na bancada não se moveu nenhum dente desde que se leu a lâmpada</translation>
        </message>
        <message>
            <source>with the plug in and the contacts closed nothing tells of the lead: open the contacts</source>
            <extracomment>job/feeds.py</extracomment>
            <translation>com a ficha metida e os contactos fechados nada diz do cabo: abrir os contactos</translation>
        </message>
        <message>
            <source>Next check as entered: at {hours} h or {day}.</source>
            <extracomment>job/history.py</extracomment>
            <translation>Próxima verificação como registada: às {hours} h ou {day}.</translation>
        </message>
        <message>
            <source>Next check as entered: {day}.</source>
            <extracomment>job/history.py</extracomment>
            <translation>Próxima verificação como registada: {day}.</translation>
        </message>
        <message>
            <source>Next check as entered: at {hours} h.</source>
            <extracomment>job/history.py</extracomment>
            <translation>Próxima verificação como registada: às {hours} h.</translation>
        </message>
        <message>
            <source>this magneto</source>
            <extracomment>job/history.py</extracomment>
            <translation>este magneto</translation>
        </message>
        <message>
            <source>Next check of {name}: due at {at} h of the magneto, in {hours} h.</source>
            <extracomment>job/history.py</extracomment>
            <translation>Próxima verificação de {name}: às {at} h do magneto, daqui a {hours} h.</translation>
        </message>
        <message>
            <source>magneto hours [h]</source>
            <extracomment>job/history.py, ui/job_drift_sheet.py</extracomment>
            <translation>horas do magneto [h]</translation>
        </message>
        <message>
            <source>{title} over the magneto's hours. Open: as found; filled: as left; dashed: limits.</source>
            <extracomment>job/history.py</extracomment>
            <translation>{title} sobre as horas do magneto. Aberto: como encontrado; cheio: como deixado; tracejado: limites.</translation>
        </message>
        <message>
            <source>{title} over the magneto's hours. Open: as found; filled: as left; dashed: limits; grey: where the next reading should lie, 95 times in 100.</source>
            <extracomment>job/history.py</extracomment>
            <translation>{title} sobre as horas do magneto. Aberto: como encontrado; cheio: como deixado; tracejado: limites; cinzento: onde deve cair a próxima leitura, 95 vezes em 100.</translation>
        </message>
        <message>
            <source>Hours</source>
            <extracomment>job/history.py, job/parts.py, ui/wear_panel.py</extracomment>
            <translation>Horas</translation>
        </message>
        <message>
            <source>Gap found</source>
            <extracomment>job/history.py</extracomment>
            <translation>Folga encontrada</translation>
        </message>
        <message>
            <source>Gap left</source>
            <extracomment>job/history.py</extracomment>
            <translation>Folga deixada</translation>
        </message>
        <message>
            <source>Opens found</source>
            <extracomment>job/history.py</extracomment>
            <translation>Abre, encontrado</translation>
        </message>
        <message>
            <source>Opens left</source>
            <extracomment>job/history.py</extracomment>
            <translation>Abre, deixado</translation>
        </message>
        <message>
            <source>Fires found</source>
            <extracomment>job/history.py</extracomment>
            <translation>Inflama, encontrado</translation>
        </message>
        <message>
            <source>Fires left</source>
            <extracomment>job/history.py</extracomment>
            <translation>Inflama, deixado</translation>
        </message>
        <message>
            <source>the magneto has no serial number on this sheet, so that no earlier one can be told to be its own</source>
            <extracomment>job/history.py</extracomment>
            <translation>o magneto não tem número de série nesta folha, pelo que nenhuma anterior se pode dizer sua</translation>
        </message>
        <message>
            <source>{name}: holds {count} files; only the first {most} were looked at</source>
            <extracomment>job/history.py</extracomment>
            <translation>{name}: contém {count} ficheiros; só se viram os primeiros {most}</translation>
        </message>
        <message>
            <source>Look again at {when} h of the magneto, or sooner as the manual says.</source>
            <extracomment>job/history.py</extracomment>
            <translation>Ver de novo às {when} h do magneto, ou antes como diz o manual.</translation>
        </message>
        <message>
            <source>Next check of {name}: due at {at} h of the magneto, {hours} h ago.</source>
            <extracomment>job/history.py</extracomment>
            <translation>Próxima verificação de {name}: devida às {at} h do magneto, há {hours} h.</translation>
        </message>
        <message>
            <source>Next check of {name}: due on {day}, in {days} days.</source>
            <extracomment>job/history.py</extracomment>
            <translation>Próxima verificação de {name}: a {day}, daqui a {days} dias.</translation>
        </message>
        <message>
            <source>{name}: cannot be read: {reason}</source>
            <extracomment>job/history.py</extracomment>
            <translation>{name}: não pode ser lido: {reason}</translation>
        </message>
        <message>
            <source>Next check of {name}: due on {day}, {days} days ago.</source>
            <extracomment>job/history.py</extracomment>
            <translation>Próxima verificação de {name}: a {day}, há {days} dias.</translation>
        </message>
        <message>
            <source>{stage} is not done yet; missing: {lacks}</source>
            <extracomment>job/judge.py</extracomment>
            <translation>{stage} ainda não está feito; falta: {lacks}</translation>
        </message>
        <message>
            <source>{stage} comes after {others}: do that first, or skip it with a reason</source>
            <extracomment>job/judge.py</extracomment>
            <translation>{stage} vem depois de {others}: fazer isso primeiro, ou saltar com um motivo</translation>
        </message>
        <message>
            <source>the lobes</source>
            <extracomment>job/judge.py</extracomment>
            <translation>os ressaltos</translation>
        </message>
        <message>
            <source>meter or lamp, switch off</source>
            <extracomment>job/judge.py</extracomment>
            <translation>multímetro ou lâmpada, interruptor desligado</translation>
        </message>
        <message>
            <source>meter or lamp, switch on</source>
            <extracomment>job/judge.py</extracomment>
            <translation>multímetro ou lâmpada, interruptor ligado</translation>
        </message>
        <message>
            <source>“{name}” is neither a file nor one of the shipped jobs: {known}</source>
            <extracomment>job/library.py</extracomment>
            <translation>“{name}” não é um ficheiro nem uma das folhas fornecidas: {known}</translation>
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
            <translation>N.º de série</translation>
        </message>
        <message>
            <source>Hours since overhaul</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Horas desde a revisão</translation>
        </message>
        <message>
            <source>Position</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Posição</translation>
        </message>
        <message>
            <source>Straightedge from the rim mark, either way</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Régua desde a marca do rebordo, para cada lado</translation>
        </message>
        <message>
            <source>Left should fire</source>
            <extracomment>job/parts.py</extracomment>
            <translation>O esquerdo deve inflamar</translation>
        </message>
        <message>
            <source>Right should fire</source>
            <extracomment>job/parts.py</extracomment>
            <translation>O direito deve inflamar</translation>
        </message>
        <message>
            <source>Timing to the engine, either way</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Calagem ao motor, para cada lado</translation>
        </message>
        <message>
            <source>Left against right, either way</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Esquerdo contra direito, para cada lado</translation>
        </message>
        <message>
            <source>Largest drop on one magneto</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Maior queda num magneto</translation>
        </message>
        <message>
            <source>Largest difference of the drops</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Maior diferença das quedas</translation>
        </message>
        <message>
            <source>Taken from</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Tirado de</translation>
        </message>
        <message>
            <source>At magneto hours</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Às horas do magneto</translation>
        </message>
        <message>
            <source>Or on</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Ou a</translation>
        </message>
        <message>
            <source>Left fires</source>
            <extracomment>job/parts.py</extracomment>
            <translation>O esquerdo inflama</translation>
        </message>
        <message>
            <source>Right fires</source>
            <extracomment>job/parts.py</extracomment>
            <translation>O direito inflama</translation>
        </message>
        <message>
            <source>Left error less right error</source>
            <extracomment>job/parts.py, job/readings.py</extracomment>
            <translation>Erro esquerdo menos erro direito</translation>
        </message>
        <message>
            <source>Propeller treated as live; its arc kept clear</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Hélice tratada como viva; o seu arco livre</translation>
        </message>
        <message>
            <source>Ignition switch off, key out</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Interruptor de ignição desligado, chave fora</translation>
        </message>
        <message>
            <source>Switch lead grounded, to be proved at the next stage</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Cabo de massa à massa, a provar na etapa seguinte</translation>
        </message>
        <message>
            <source>Plugs out: at least one from every cylinder</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Velas fora: pelo menos uma por cilindro</translation>
        </message>
        <message>
            <source>Wheels chocked</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Rodas calçadas</translation>
        </message>
        <message>
            <source>The maker's current manual and local rules at hand</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Manual atual do fabricante e regras locais à mão</translation>
        </message>
        <message>
            <source>Manual and revision</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Manual e revisão</translation>
        </message>
        <message>
            <source>Meter on the lead, switch off: grounded</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Multímetro no cabo, interruptor desligado: massa</translation>
        </message>
        <message>
            <source>Meter on the lead, switch on: grounded</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Multímetro no cabo, interruptor ligado: massa</translation>
        </message>
        <message>
            <source>Lamp, plug in, switch off: grounded</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Lâmpada, ficha metida, interruptor desligado: massa</translation>
        </message>
        <message>
            <source>Lamp, plug in, switch on: grounded</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Lâmpada, ficha metida, interruptor ligado: massa</translation>
        </message>
        <message>
            <source>Lamp, plug out: grounded by the tab</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Lâmpada, ficha tirada: massa pela lingueta</translation>
        </message>
        <message>
            <source>Disc at the stop, one way</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Disco no batente, para um lado</translation>
        </message>
        <message>
            <source>Disc at the stop, the other way</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Disco no batente, para o outro lado</translation>
        </message>
        <message>
            <source>Stroke of No. 1 before it fires</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Tempo do n.º 1 antes de inflamar</translation>
        </message>
        <message>
            <source>Disc</source>
            <extracomment>job/parts.py, ui/plan_box.py, ui/practice_sight.py, ui/practice_work.py</extracomment>
            <translation>Disco</translation>
        </message>
        <message>
            <source>Opening from the E-gap, rotor</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Abertura desde o E-gap, rotor</translation>
        </message>
        <message>
            <source>Wear of the heel</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Desgaste do calcador</translation>
        </message>
        <message>
            <source>Read with</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Lido com</translation>
        </message>
        <message>
            <source>Clean and dry</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Limpos e secos</translation>
        </message>
        <message>
            <source>Faces meet squarely</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Faces assentam a direito</translation>
        </message>
        <message>
            <source>Cam felt oiled as the manual says</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Feltro do came oleado como diz o manual</translation>
        </message>
        <message>
            <source>Faces dressed</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Faces retificadas</translation>
        </message>
        <message>
            <source>Contacts replaced</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Contactos substituídos</translation>
        </message>
        <message>
            <source>Spring, at the contacts</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Mola, nos contactos</translation>
        </message>
        <message>
            <source>Backplate planned</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Placa de base planeada</translation>
        </message>
        <message>
            <source>Contact screw planned</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Parafuso de contacto planeado</translation>
        </message>
        <message>
            <source>Gap planned</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Folga planeada</translation>
        </message>
        <message>
            <source>Read again after tightening</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Lido de novo depois de apertar</translation>
        </message>
        <message>
            <source>Opening from its place, rotor</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Abertura desde o seu lugar, rotor</translation>
        </message>
        <message>
            <source>Contacts closed, rotor</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Contactos fechados, rotor</translation>
        </message>
        <message>
            <source>Drive flange marked</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Flange motriz marcada</translation>
        </message>
        <message>
            <source>Disc marked</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Disco marcado</translation>
        </message>
        <message>
            <source>Magneto flange marked</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Flange do magneto marcada</translation>
        </message>
        <message>
            <source>Magneto marked on the engine's pad</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Magneto marcado na base do motor</translation>
        </message>
        <message>
            <source>Magneto flange's mark from the disc's, with rotation</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Marca da flange do magneto desde a do disco, no sentido de rotação</translation>
        </message>
        <message>
            <source>Disc's mark from the drive flange's, with rotation</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Marca do disco desde a da flange motriz, no sentido de rotação</translation>
        </message>
        <message>
            <source>Fires, as read</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Inflama, como lido</translation>
        </message>
        <message>
            <source>Wanted</source>
            <extracomment>job/parts.py, job/shift_plan.py, practice/report.py, ui/lamp_box.py</extracomment>
            <translation>Desejado</translation>
        </message>
        <message>
            <source>Planned: magneto flange on the disc</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Planeado: flange do magneto no disco</translation>
        </message>
        <message>
            <source>Planned: disc on the drive flange</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Planeado: disco na flange motriz</translation>
        </message>
        <message>
            <source>Planned: fires</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Planeado: inflama</translation>
        </message>
        <message>
            <source>Moved: magneto flange on the disc</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Movido: flange do magneto no disco</translation>
        </message>
        <message>
            <source>Moved: disc on the drive flange</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Movido: disco na flange motriz</translation>
        </message>
        <message>
            <source>Fires, afterwards</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Inflama, depois</translation>
        </message>
        <message>
            <source>Lock screw and clamp screws tight</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Parafuso de fixação e de aperto apertados</translation>
        </message>
        <message>
            <source>Coupling pins and split pins fitted</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Pinos do acoplamento e troços postos</translation>
        </message>
        <message>
            <source>Nuts torqued as the manual says</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Porcas ao binário do manual</translation>
        </message>
        <message>
            <source>Safety wire fitted</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Arame de segurança posto</translation>
        </message>
        <message>
            <source>Spark plugs refitted and torqued as the manual says</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Velas montadas de novo e ao binário do manual</translation>
        </message>
        <message>
            <source>Plug leads connected, each to its cylinder</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Cabos de vela ligados, cada um ao seu cilindro</translation>
        </message>
        <message>
            <source>Switch lead connected and proved again</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Cabo de massa ligado e provado de novo</translation>
        </message>
        <message>
            <source>Tools, timing pins and stop counted back</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Ferramentas, pinos e batente contados</translation>
        </message>
        <message>
            <source>Engine speed</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Velocidade do motor</translation>
        </message>
        <message>
            <source>Drop, running on left</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Queda, só com o esquerdo</translation>
        </message>
        <message>
            <source>Drop, running on right</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Queda, só com o direito</translation>
        </message>
        <message>
            <source>Stops firing with the switch off, at idle</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Deixa de inflamar com o interruptor desligado, ao ralenti</translation>
        </message>
        <message>
            <source>Trials</source>
            <extracomment>job/parts.py, ui/plot_pane.py, ui/plot_trials.py</extracomment>
            <translation>Ensaios</translation>
        </message>
        <message>
            <source>Uncertainty</source>
            <extracomment>job/parts.py, ui/job_form.py, ui/plot_pane.py, ui/uncertainty_panel.py</extracomment>
            <translation>Incerteza</translation>
        </message>
        <message>
            <source>Lobes</source>
            <extracomment>job/parts.py, practice/paper.py, ui/plot_lift.py, ui/plot_pane.py</extracomment>
            <translation>Ressaltos</translation>
        </message>
        <message>
            <source>gap_low_mm is {low}; it must not be above gap_high_mm, {high}</source>
            <extracomment>job/parts.py</extracomment>
            <translation>gap_low_mm é {low}; não pode estar acima de gap_high_mm, {high}</translation>
        </message>
        <message>
            <source>reason is missing; a stage can be skipped only with a reason</source>
            <extracomment>job/parts.py</extracomment>
            <translation>falta reason; uma etapa só pode ser saltada com um motivo</translation>
        </message>
        <message>
            <source>reason is given, but the stage is not skipped; write it as a note</source>
            <extracomment>job/parts.py</extracomment>
            <translation>reason está dado, mas a etapa não foi saltada; escrevê-lo como nota</translation>
        </message>
        <message>
            <source>gap_low_mm is {gap_low}; it must not be above gap_high_mm</source>
            <extracomment>job/parts.py</extracomment>
            <translation>gap_low_mm é {gap_low}; não pode estar acima de gap_high_mm</translation>
        </message>
        <message>
            <source>“{text}” is not a date; write it as 2026-11-25</source>
            <extracomment>job/parts.py</extracomment>
            <translation>“{text}” não é uma data; escrever como 2026-11-25</translation>
        </message>
        <message>
            <source>{label}: expanded uncertainty</source>
            <extracomment>job/readings.py</extracomment>
            <translation>{label}: incerteza expandida</translation>
        </message>
        <message>
            <source>{label}: probability in limits</source>
            <extracomment>job/readings.py</extracomment>
            <translation>{label}: probabilidade nos limites</translation>
        </message>
        <message>
            <source>Not judged, for no limit was given: {what}.</source>
            <extracomment>job/readings.py</extracomment>
            <translation>Não julgado, por não se ter dado limite: {what}.</translation>
        </message>
        <message>
            <source>no limit given, not judged</source>
            <extracomment>job/readings.py</extracomment>
            <translation>sem limite dado, não julgado</translation>
        </message>
        <message>
            <source>in limits</source>
            <extracomment>job/readings.py, ui/plot_window.py</extracomment>
            <translation>nos limites</translation>
        </message>
        <message>
            <source>{label}: best estimate</source>
            <extracomment>job/readings.py</extracomment>
            <translation>{label}: melhor estimativa</translation>
        </message>
        <message>
            <source>{label}: coverage factor</source>
            <extracomment>job/readings.py</extracomment>
            <translation>{label}: fator de expansão</translation>
        </message>
        <message>
            <source>as it must be</source>
            <extracomment>job/readings.py</extracomment>
            <translation>como tem de ser</translation>
        </message>
        <message>
            <source>Disc at true top dead centre</source>
            <extracomment>job/readings.py</extracomment>
            <translation>Disco no ponto morto superior verdadeiro</translation>
        </message>
        <message>
            <source>Difference of the drops</source>
            <extracomment>job/readings.py</extracomment>
            <translation>Diferença das quedas</translation>
        </message>
        <message>
            <source>Trial {number}: {reading}</source>
            <extracomment>job/readings.py</extracomment>
            <translation>Ensaio {number}: {reading}</translation>
        </message>
        <message>
            <source>Lobe {number}: {reading}</source>
            <extracomment>job/readings.py</extracomment>
            <translation>Ressalto {number}: {reading}</translation>
        </message>
        <message>
            <source>Treat the propeller as live at all times: keep out of its arc, and let nobody else near it.</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Tratar sempre a hélice como viva: ficar fora do seu arco e não deixar ninguém perto.</translation>
        </message>
        <message>
            <source>Ignition switch off; switch lead grounded and proved with a meter or lamp, not taken for granted.</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Interruptor de ignição desligado; cabo de massa à massa e provado com multímetro ou lâmpada, não dado por certo.</translation>
        </message>
        <message>
            <source>Plugs out: at least one from every cylinder.</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Velas fora: pelo menos uma por cilindro.</translation>
        </message>
        <message>
            <source>Wheels chocked; the aircraft cannot move.</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Rodas calçadas; o avião não se pode mover.</translation>
        </message>
        <message>
            <source>The manufacturer's current manual and local rules govern, not this sheet.</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Valem o manual atual do fabricante e as regras locais, não esta folha.</translation>
        </message>
        <message>
            <source>Work on a certified aircraft is done or released by a licensed person.</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>O trabalho num avião certificado é feito ou libertado por uma pessoa licenciada.</translation>
        </message>
        <message>
            <source>magview is a training and planning aid; the magnetos it ships are invented.</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>O magview é um auxílio de treino e planeamento; os magnetos que traz são inventados.</translation>
        </message>
        <message>
            <source>this sheet</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>esta folha</translation>
        </message>
        <message>
            <source>Invented for demonstration</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Inventado para demonstração</translation>
        </message>
        <message>
            <source>Cautions and making safe</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Precauções e segurança</translation>
        </message>
        <message>
            <source>Switch-lead proof</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Prova do cabo de massa</translation>
        </message>
        <message>
            <source>Top dead centre and stroke</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Ponto morto superior e tempo</translation>
        </message>
        <message>
            <source>Condition of the contacts</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Estado dos contactos</translation>
        </message>
        <message>
            <source>Internal timing, as left</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Regulação interna, como deixada</translation>
        </message>
        <message>
            <source>Every lobe</source>
            <extracomment>job/sheet.py, ui/job_sources.py</extracomment>
            <translation>Todos os ressaltos</translation>
        </message>
        <message>
            <source>Marks before removal</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Marcas antes de desmontar</translation>
        </message>
        <message>
            <source>Tooth shift</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Mudança de dentes</translation>
        </message>
        <message>
            <source>Synchronising</source>
            <extracomment>job/sheet.py, ui/job_sources.py, ui/timing_panel.py</extracomment>
            <translation>Sincronização</translation>
        </message>
        <message>
            <source>Closing checks</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Verificações finais</translation>
        </message>
        <message>
            <source>Ground run</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Ensaio no solo</translation>
        </message>
        <message>
            <source>“{name}” is no stage of a job; stages are {known}</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>“{name}” não é etapa de um trabalho; as etapas são {known}</translation>
        </message>
        <message>
            <source>“{part}” is no part of a job</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>“{part}” não é parte de um trabalho</translation>
        </message>
        <message>
            <source>a signature takes a name and a date</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>uma assinatura leva nome e data</translation>
        </message>
        <message>
            <source>done is {done}; it must be at most the number of steps, {count}</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>done é {done}; tem de ser no máximo o número de passos, {count}</translation>
        </message>
        <message>
            <source>magneto_file and installation are both given; the installation has a magneto of its own</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>magneto_file e installation estão ambos dados; a instalação tem o seu próprio magneto</translation>
        </message>
        <message>
            <source>The slots are those of the disc's marked tooth.</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>As ranhuras são as do dente marcado do disco.</translation>
        </message>
        <message>
            <source>{face}: {each}</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>{face}: {each}</translation>
        </message>
        <message>
            <source>as found, marks painted</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>como encontrado, marcas pintadas</translation>
        </message>
        <message>
            <source>Tooth-shift plan: {magneto}</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Plano da mudança de dentes: {magneto}</translation>
        </message>
        <message>
            <source>⚠ The internal timing is out of limits: put that right first, no tooth makes up for it.</source>
            <extracomment>job/shift_plan.py, ui/lamp_box.py</extracomment>
            <translation>⚠ A calagem interna está fora dos limites: corrigi-la primeiro, nenhum dente a compensa.</translation>
        </message>
        <message>
            <source>The contacts were set anew since the lamp was read: with the teeth as found it would now read {found}.</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Os contactos foram regulados de novo desde a leitura da lâmpada: com os dentes como encontrados leria agora {found}.</translation>
        </message>
        <message>
            <source>magneto slot {magneto}, drive slot {drive}</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>ranhura do magneto {magneto}, do acionamento {drive}</translation>
        </message>
        <message>
            <source>One tooth with rotation, so much earlier</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Um dente no sentido de rotação, tanto mais cedo</translation>
        </message>
        <message>
            <source>at the rotor</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>no rotor</translation>
        </message>
        <message>
            <source>at the crank</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>na cambota</translation>
        </message>
        <message>
            <source>Magneto flange on the disc</source>
            <extracomment>job/shift_plan.py, ui/teeth_box.py</extracomment>
            <translation>Flange do magneto no disco</translation>
        </message>
        <message>
            <source>Disc on the drive flange</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Disco no flange motriz</translation>
        </message>
        <message>
            <source>{slot} of {teeth}</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>{slot} de {teeth}</translation>
        </message>
        <message>
            <source>this magneto is not on an engine: there is no coupling to move</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>este magneto não está num motor: não há acoplamento para mover</translation>
        </message>
        <message>
            <source>Tooth-shift plan</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Plano da mudança de dentes</translation>
        </message>
        <message>
            <source>{way} seen from the drive end</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>{way} visto do lado do acionamento</translation>
        </message>
        <message>
            <source>Teeth</source>
            <extracomment>job/shift_plan.py, lessons/a-full-job.json</extracomment>
            <translation>Dentes</translation>
        </message>
        <message>
            <source>{magneto} at the magneto, {drive} at the drive</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>{magneto} no magneto, {drive} no acionamento</translation>
        </message>
        <message>
            <source>Lamp reads</source>
            <extracomment>job/shift_plan.py, ui/lamp_box.py</extracomment>
            <translation>Lâmpada lê</translation>
        </message>
        <message>
            <source>Expected</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Esperado</translation>
        </message>
        <message>
            <source>Off by</source>
            <extracomment>job/shift_plan.py, practice/report.py, ui/plan_box.py</extracomment>
            <translation>Desvio</translation>
        </message>
        <message>
            <source>Coupling as wanted</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Acoplamento como desejado</translation>
        </message>
        <message>
            <source>Magneto flange one with rotation, disc one against</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Flange do magneto um no sentido, disco um contra</translation>
        </message>
        <message>
            <source>One tooth at a time, seen from the drive end: check the slot, then tick</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Um dente de cada vez, visto do lado do acionamento: verificar a ranhura, depois assinalar</translation>
        </message>
        <message>
            <source>Magneto slot</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Ranhura magneto</translation>
        </message>
        <message>
            <source>Drive slot</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Ranhura motriz</translation>
        </message>
        <message>
            <source>{box} Tightened and secured. {box} Lamp read again, the propeller turned with rotation so that the play is taken up. What it reads then counts, not what is expected here.</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>{box} Apertado e freado. {box} Lâmpada lida de novo, a hélice rodada no sentido de rotação para tomar a folga. Conta o que então ler, não o que aqui se espera.</translation>
        </message>
        <message>
            <source>✗ This move does not reach it: {outside}.</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>✗ Este movimento não chega lá: {outside}.</translation>
        </message>
        <message>
            <source>⚠ The installation does not fit together: {mismatch}.</source>
            <extracomment>job/shift_plan.py, ui/lamp_box.py</extracomment>
            <translation>⚠ A instalação não condiz: {mismatch}.</translation>
        </message>
        <message>
            <source>Lamp reads afterwards, ° before top dead centre</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Lâmpada lê depois, ° antes do ponto morto superior</translation>
        </message>
        <message>
            <source>DANGER: THE MAGNETO IS LIVE WITH THE SWITCH OFF. Stop. Keep clear of the propeller. Repair the switch lead, or take the magneto out of use, and prove the lead again before anything is turned.</source>
            <extracomment>job/standing.py</extracomment>
            <translation>PERIGO: O MAGNETO ESTÁ VIVO COM O INTERRUPTOR DESLIGADO. Parar. Ficar longe da hélice. Reparar o cabo de massa, ou pôr o magneto fora de serviço, e provar de novo o cabo antes de rodar seja o que for.</translation>
        </message>
        <message>
            <source>DANGER: THE MAGNETO IS LIVE WITH ITS PLUG OUT: the tab does not ground it. Stop. Keep clear of the propeller; ground the magneto before anything is turned.</source>
            <extracomment>job/standing.py</extracomment>
            <translation>PERIGO: O MAGNETO ESTÁ VIVO COM A FICHA TIRADA: a lingueta não o liga à massa. Parar. Ficar longe da hélice; ligar o magneto à massa antes de rodar seja o que for.</translation>
        </message>
        <message>
            <source>1 reading out of limits or not as it must be</source>
            <extracomment>job/standing.py</extracomment>
            <translation>1 leitura fora dos limites ou não como tem de ser</translation>
        </message>
        <message>
            <source>{count} readings out of limits or not as they must be</source>
            <extracomment>job/standing.py</extracomment>
            <translation>{count} leituras fora dos limites ou não como têm de ser</translation>
        </message>
        <message>
            <source>1 reading found out of limits</source>
            <extracomment>job/standing.py</extracomment>
            <translation>1 leitura encontrada fora dos limites</translation>
        </message>
        <message>
            <source>{count} readings found out of limits</source>
            <extracomment>job/standing.py</extracomment>
            <translation>{count} leituras encontradas fora dos limites</translation>
        </message>
        <message>
            <source>1 point to be cleared up</source>
            <extracomment>job/standing.py</extracomment>
            <translation>1 ponto por esclarecer</translation>
        </message>
        <message>
            <source>{count} points to be cleared up</source>
            <extracomment>job/standing.py</extracomment>
            <translation>{count} pontos por esclarecer</translation>
        </message>
        <message>
            <source>skipped</source>
            <extracomment>job/standing.py</extracomment>
            <translation>saltado</translation>
        </message>
        <message>
            <source>open</source>
            <extracomment>job/standing.py, ui/plot_lift.py</extracomment>
            <translation>aberto</translation>
        </message>
        <message>
            <source>done, with {what}</source>
            <extracomment>job/standing.py</extracomment>
            <translation>feito, com {what}</translation>
        </message>
        <message>
            <source>done</source>
            <extracomment>job/standing.py</extracomment>
            <translation>feito</translation>
        </message>
        <message>
            <source>The timing wanted, {wanted}, is outside this sheet's limits, {limits}; readings are judged by the limits.</source>
            <extracomment>job/standing.py</extracomment>
            <translation>O ponto desejado, {wanted}, está fora dos limites desta folha, {limits}; as leituras julgam-se pelos limites.</translation>
        </message>
        <message>
            <source>Teeth and readings contradict each other: magneto flange {magneto} and disc {disc} would bring it from {before} to {expected}, and it is said to fire {after}; count the teeth, and read the lamp again.</source>
            <extracomment>job/standing.py</extracomment>
            <translation>Dentes e leituras contradizem-se: flange do magneto {magneto} e disco {disc} levariam de {before} a {expected}, e diz-se que dispara a {after}; contar os dentes e ler de novo a lâmpada.</translation>
        </message>
        <message>
            <source>1 missing</source>
            <extracomment>job/standing.py</extracomment>
            <translation>falta 1</translation>
        </message>
        <message>
            <source>{count} missing</source>
            <extracomment>job/standing.py</extracomment>
            <translation>faltam {count}</translation>
        </message>
        <message>
            <source>{error}. What you entered is kept here and tried again with your next step; a copy is in {folder}</source>
            <extracomment>job/store.py</extracomment>
            <translation>{error}. O que registou fica aqui e tenta-se de novo no próximo passo; há uma cópia em {folder}</translation>
        </message>
        <message>
            <source>{error}. What you entered is kept here and tried again with your next step</source>
            <extracomment>job/store.py</extracomment>
            <translation>{error}. O que registou fica aqui e tenta-se de novo no próximo passo</translation>
        </message>
        <message>
            <source>{error}. What you entered is kept here; a copy is in {folder}</source>
            <extracomment>job/store.py</extracomment>
            <translation>{error}. O que registou fica aqui; há uma cópia em {folder}</translation>
        </message>
        <message>
            <source>{error}. What you entered is kept here</source>
            <extracomment>job/store.py</extracomment>
            <translation>{error}. O que registou fica aqui</translation>
        </message>
        <message>
            <source>{name} may only be read; save it under another name to change it</source>
            <extracomment>job/store.py</extracomment>
            <translation>{name} só pode ser lido; guardar com outro nome para o alterar</translation>
        </message>
        <message>
            <source>{name}: is there already; open it, or choose another name</source>
            <extracomment>job/store.py</extracomment>
            <translation>{name}: já existe; abri-lo, ou escolher outro nome</translation>
        </message>
        <message>
            <source>{name}: is there already; choose another name</source>
            <extracomment>job/store.py</extracomment>
            <translation>{name}: já existe; escolher outro nome</translation>
        </message>
        <message>
            <source>{name} is open in another window or program: it can be read here, and changed there; save it under another name to change it here</source>
            <extracomment>job/store.py</extracomment>
            <translation>{name} está aberto noutra janela ou programa: aqui pode ler-se, lá alterar-se; guardar com outro nome para alterar aqui</translation>
        </message>
        <message>
            <source>{name} can only be read: its folder takes no files ({reason}); save it elsewhere to change it</source>
            <extracomment>job/store.py</extracomment>
            <translation>{name} só pode ser lido: a pasta não aceita ficheiros ({reason}); guardar noutro sítio para alterar</translation>
        </message>
        <message>
            <source>{name}: cannot be written: its folder or drive is gone; put it back, or save elsewhere</source>
            <extracomment>job/store.py</extracomment>
            <translation>{name}: não pode ser escrito: a pasta ou unidade desapareceu; repô-la, ou guardar noutro sítio</translation>
        </message>
        <message>
            <source>{name}: was changed by another program and is left as it is; reload it, or save under another name</source>
            <extracomment>job/store.py</extracomment>
            <translation>{name}: foi alterado por outro programa e fica como está; recarregar, ou guardar com outro nome</translation>
        </message>
        <message>
            <source>this sheet is larger than {most} MB, the most that is read again; shorten it</source>
            <extracomment>job/store.py</extracomment>
            <translation>esta folha é maior do que {most} MB, o máximo que se volta a ler; encurtá-la</translation>
        </message>
        <message>
            <source>{name}: is no name of a file</source>
            <extracomment>job/store.py</extracomment>
            <translation>{name}: não é nome de ficheiro</translation>
        </message>
        <message>
            <source>this step of the history is damaged; it cannot be undone or done again</source>
            <extracomment>job/store.py</extracomment>
            <translation>este passo do histórico está danificado; não pode ser desfeito nem refeito</translation>
        </message>
        <message>
            <source>{name}: cannot be written; choose another name</source>
            <extracomment>job/store.py</extracomment>
            <translation>{name}: não pode ser escrito; escolher outro nome</translation>
        </message>
        <message>
            <source>intake</source>
            <extracomment>job/words.py, ui/job_kinds.py</extracomment>
            <translation>admissão</translation>
        </message>
        <message>
            <source>compression</source>
            <extracomment>job/words.py, ui/job_kinds.py</extracomment>
            <translation>compressão</translation>
        </message>
        <message>
            <source>power</source>
            <extracomment>job/words.py, ui/job_kinds.py</extracomment>
            <translation>trabalho</translation>
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
            <translation>{angle} cedo</translation>
        </message>
        <message>
            <source>at most {limit}</source>
            <extracomment>job/words.py</extracomment>
            <translation>no máximo {limit}</translation>
        </message>
        <message>
            <source>at least {limit}</source>
            <extracomment>job/words.py</extracomment>
            <translation>no mínimo {limit}</translation>
        </message>
        <message>
            <source>{angle} before top dead centre</source>
            <extracomment>job/words.py</extracomment>
            <translation>{angle} antes do ponto morto superior</translation>
        </message>
        <message>
            <source>{angle} after top dead centre</source>
            <extracomment>job/words.py</extracomment>
            <translation>{angle} depois do ponto morto superior</translation>
        </message>
        <message>
            <source>{name} has shape {shape}; an axis of a map is one-dimensional</source>
            <extracomment>physics/adjustment_map.py</extracomment>
            <translation>{name} tem forma {shape}; um eixo de um mapa é unidimensional</translation>
        </message>
        <message>
            <source>{name} holds a value that is not finite</source>
            <extracomment>physics/adjustment_map.py</extracomment>
            <translation>{name} contém um valor que não é finito</translation>
        </message>
        <message>
            <source>The trials ask for {scale} times the file's lift: check that this is the file for this cam.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Os ensaios pedem {scale} vezes o levantamento do ficheiro: verificar se é o ficheiro deste came.</translation>
        </message>
        <message>
            <source>The trials ask for {scale} times the file's rise: check that this is the file for this cam.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Os ensaios pedem {scale} vezes a subida do ficheiro: verificar se é o ficheiro deste came.</translation>
        </message>
        <message>
            <source>The gap of trial {behind} is smaller than that of trial {ahead}, though its plate stands further with rotation; openings off the mark but within the tolerance explain it: set them closer to the mark.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>A folga do ensaio {behind} é menor do que a do ensaio {ahead}, embora a sua placa esteja mais no sentido de rotação; aberturas fora da marca mas na tolerância explicam-no: regulá-las mais perto da marca.</translation>
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
            <translation>Feito: a folga, {span}, está nos limites.</translation>
        </message>
        <message>
            <source>{gap}; {probability} times in 100 it will be {span}</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>{gap}; {probability} vezes em 100 será {span}</translation>
        </message>
        <message>
            <source>Start with the plate at {plate}° and the contacts set to open at the E-gap: by the file the gap should be {expected}.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Começar com a placa em {plate}° e os contactos a abrir no E-gap: pelo ficheiro a folga deve ser {expected}.</translation>
        </message>
        <message>
            <source>The gap cannot be brought into limits within the slot ({low}° to {high}°): that would take about {aim}°. The nearest is the end of the slot at {plate}°, where the gap should be {expected}.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>A folga não pode entrar nos limites dentro da ranhura ({low}° a {high}°): seriam precisos cerca de {aim}°. O mais perto é o fim da ranhura em {plate}°, onde a folga deve ser {expected}.</translation>
        </message>
        <message>
            <source>Leave the plate at {plate}° and set the opening again, closer to the mark: an opening off the mark but within the tolerance explains this gap, which should be {expected}.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Deixar a placa em {plate}° e regular de novo a abertura, mais perto da marca: uma abertura fora da marca mas na tolerância explica esta folga, que deve ser {expected}.</translation>
        </message>
        <message>
            <source>Trials {first} and {second} stood at the same plate and give different gaps; openings off the mark but within the tolerance explain it: set them closer to the mark.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Os ensaios {first} e {second} estavam na mesma placa e dão folgas diferentes; aberturas fora da marca mas na tolerância explicam-no: regulá-las mais perto da marca.</translation>
        </message>
        <message>
            <source>The gap of trial {behind} is smaller than that of trial {ahead}, though its plate stands further with rotation, more than openings within the tolerance explain: check that the clamping screws hold, that lobe 1 was used, and which blades were, and repeat one of the two.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>A folga do ensaio {behind} é menor do que a do ensaio {ahead}, embora a sua placa esteja mais no sentido de rotação, mais do que aberturas na tolerância explicam: verificar se os parafusos de aperto seguram, se se usou o ressalto 1, e que lâminas, e repetir um dos dois.</translation>
        </message>
        <message>
            <source>above {length}</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>acima de {length}</translation>
        </message>
        <message>
            <source>the limits are {low} to {high} mm; they must be above 0, the low one first</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>os limites são {low} a {high} mm; têm de estar acima de 0, o menor primeiro</translation>
        </message>
        <message>
            <source>the wanted gap is {wanted} mm; the limits are {low} to {high} mm</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>a folga desejada é {wanted} mm; os limites são {low} a {high} mm</translation>
        </message>
        <message>
            <source>Turn the plate {turn}° with cam rotation, to {plate}°: the gap should be {expected}.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Rodar a placa {turn}° com a rotação do came, para {plate}°: a folga deve ser {expected}.</translation>
        </message>
        <message>
            <source>Turn the plate {turn}° against cam rotation, to {plate}°: the gap should be {expected}.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Rodar a placa {turn}° contra a rotação do came, para {plate}°: a folga deve ser {expected}.</translation>
        </message>
        <message>
            <source>The aim is about {aim}°, but that is too far from what was tried to be sure of.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>O alvo é cerca de {aim}°, mas está demasiado longe do que se ensaiou para ter a certeza.</translation>
        </message>
        <message>
            <source>The gap, {span}, may be in limits, but the blades cannot tell: the plate is right where it is, so try finer blades, or set the opening again, closer to the mark.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>A folga, {span}, pode estar nos limites, mas as lâminas não o dizem: a placa está certa onde está; experimentar lâminas mais finas, ou regular de novo a abertura, mais perto da marca.</translation>
        </message>
        <message>
            <source>Leave the plate at the end of the slot and set the opening again, closer to the mark: an opening off the mark but within the tolerance explains this gap, which should be {expected}.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Deixar a placa no fim da ranhura e regular de novo a abertura, mais perto da marca: uma abertura fora da marca mas na tolerância explica esta folga, que deve ser {expected}.</translation>
        </message>
        <message>
            <source>Trial {trial} does not fit the others and is left out: its gap is larger than any opening within the tolerance explains; check it.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>O ensaio {trial} não condiz com os outros e fica de fora: a sua folga é maior do que qualquer abertura na tolerância explica; verificá-lo.</translation>
        </message>
        <message>
            <source>Trial {trial} does not fit the others and is left out: its gap is smaller than any opening within the tolerance explains; check it.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>O ensaio {trial} não condiz com os outros e fica de fora: a sua folga é menor do que qualquer abertura na tolerância explica; verificá-lo.</translation>
        </message>
        <message>
            <source>Trials {first} and {second} stood at the same plate and give different gaps, more than openings within the tolerance explain: check that the clamping screws hold, that lobe 1 was used, and which blades were, and repeat one of the two.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Os ensaios {first} e {second} estavam na mesma placa e dão folgas diferentes, mais do que aberturas na tolerância explicam: verificar se os parafusos de aperto seguram, se se usou o ressalto 1, e que lâminas, e repetir um dos dois.</translation>
        </message>
        <message>
            <source>The trials contradict each other; clear that up before going on.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Os ensaios contradizem-se; esclarecer isso antes de continuar.</translation>
        </message>
        <message>
            <source>It is not what the other trials lead to expect, so try the blades once more.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Não é o que os outros ensaios fazem esperar; experimentar as lâminas outra vez.</translation>
        </message>
        <message>
            <source>That is the end of the slot; the gap may just come into limits there.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>É o fim da ranhura; a folga pode ali entrar por pouco nos limites.</translation>
        </message>
        <message>
            <source>{hidden} mm of lift</source>
            <extracomment>physics/breaker.py</extracomment>
            <translation>{hidden} mm de levantamento</translation>
        </message>
        <message>
            <source>a part of it altogether</source>
            <extracomment>physics/breaker.py</extracomment>
            <translation>uma parte dele por completo</translation>
        </message>
        <message>
            <source>breaker.heel_radius_mm: the heel cannot follow the cam's flank, which is too hollow for its radius or too steep for its arm: it misses {missed}, where at most {most} mm is allowed; a smaller heel, a longer rise_deg or fall_deg, or another law would fit</source>
            <extracomment>physics/breaker.py</extracomment>
            <translation>breaker.heel_radius_mm: o calcador não pode seguir o flanco do came, demasiado côncavo para o seu raio ou íngreme para o seu braço: falha {missed}, quando se permitem no máximo {most} mm; serviria um calcador menor, rise_deg ou fall_deg maior, ou outra lei</translation>
        </message>
        <message>
            <source>closed_deg is {closed}; it must be 0 or more</source>
            <extracomment>physics/coil.py</extracomment>
            <translation>closed_deg é {closed}; tem de ser 0 ou mais</translation>
        </message>
        <message>
            <source>{name} has no electrical values</source>
            <extracomment>physics/coil.py</extracomment>
            <translation>{name} não tem valores elétricos</translation>
        </message>
        <message>
            <source>readings have shape {shape}; those of one setting are needed</source>
            <extracomment>physics/coil.py</extracomment>
            <translation>readings tem forma {shape}; são precisas as de uma regulação</translation>
        </message>
        <message>
            <source>poles is {poles}; it must be an even number from 2 on</source>
            <extracomment>physics/coil.py</extracomment>
            <translation>poles é {poles}; tem de ser um número par a partir de 2</translation>
        </message>
        <message>
            <source>speed_rpm is {speed}; it must be above 0 and at most {most}</source>
            <extracomment>physics/coil.py</extracomment>
            <translation>speed_rpm é {speed}; tem de estar acima de 0 e no máximo em {most}</translation>
        </message>
        <message>
            <source>an angle is infinite</source>
            <extracomment>physics/coil.py</extracomment>
            <translation>um ângulo é infinito</translation>
        </message>
        <message>
            <source>the nearest this coupling comes is {residual}° of crank late, outside the tolerance of {tolerance}°</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>o mais perto que este acoplamento chega é {residual}° de cambota tarde, fora da tolerância de {tolerance}°</translation>
        </message>
        <message>
            <source>rotor_turns_per_crank_turn is {given}; {cylinders} cylinders and {poles} poles need {cylinders}/{twice}, which is {needed}</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>rotor_turns_per_crank_turn é {given}; {cylinders} cilindros e {poles} polos precisam de {cylinders}/{twice}, que é {needed}</translation>
        </message>
        <message>
            <source>the nearest this coupling comes is {residual}° of crank early, outside the tolerance of {tolerance}°</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>o mais perto que este acoplamento chega é {residual}° de cambota cedo, fora da tolerância de {tolerance}°</translation>
        </message>
        <message>
            <source>the list of moves must be allowed at least 1 move, not {most}</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>a lista de movimentos tem de poder ter pelo menos 1, não {most}</translation>
        </message>
        <message>
            <source>the reading is {value}° before top dead centre; it must lie within ±3600°</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>a leitura é {value}° antes do ponto morto superior; tem de estar dentro de ±3600°</translation>
        </message>
        <message>
            <source>the wanted timing is {value}° before top dead centre; it must lie within ±3600°</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>o ponto desejado é {value}° antes do ponto morto superior; tem de estar dentro de ±3600°</translation>
        </message>
        <message>
            <source>the rotor turns {ratio} times per crank turn; it must be 0.05 to 20 times</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>o rotor roda {ratio} vezes por volta da cambota; têm de ser 0,05 a 20 vezes</translation>
        </message>
        <message>
            <source>the coupling has {count} teeth at the magneto; it must have 1 to {most}</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>o acoplamento tem {count} dentes no magneto; têm de ser 1 a {most}</translation>
        </message>
        <message>
            <source>the coupling has {count} teeth at the drive; it must have 1 to {most}</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>o acoplamento tem {count} dentes no acionamento; têm de ser 1 a {most}</translation>
        </message>
        <message>
            <source>{cylinders} cylinders and {poles} poles have no speed ratio; both must be at least 1</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>{cylinders} cilindros e {poles} polos não têm razão de velocidade; ambos têm de ser pelo menos 1</translation>
        </message>
        <message>
            <source>the left magneto's reading is {value}; it must be a number of degrees</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>a leitura do magneto esquerdo é {value}; tem de ser um número de graus</translation>
        </message>
        <message>
            <source>the right magneto's reading is {value}; it must be a number of degrees</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>a leitura do magneto direito é {value}; tem de ser um número de graus</translation>
        </message>
        <message>
            <source>the knots of a rising curve must increase in x and in y</source>
            <extracomment>physics/curve.py</extracomment>
            <translation>os nós de uma curva crescente têm de crescer em x e em y</translation>
        </message>
        <message>
            <source>firing_order puts cylinder {cylinder} {away}° from where its piston is at the top; with all rods on one crank pin it cannot fire in that place</source>
            <extracomment>physics/engine.py</extracomment>
            <translation>firing_order põe o cilindro {cylinder} a {away}° de onde o seu êmbolo está em cima; com todas as bielas num moente não pode inflamar ali</translation>
        </message>
        <message>
            <source>there is no cylinder {cylinder}; the engine has 1 to {cylinders}</source>
            <extracomment>physics/engine.py</extracomment>
            <translation>não há cilindro {cylinder}; o motor tem 1 a {cylinders}</translation>
        </message>
        <message>
            <source>both stop readings are {first}°; for the second the crank is turned to the stop the other way</source>
            <extracomment>physics/engine.py</extracomment>
            <translation>ambas as leituras do batente são {first}°; para a segunda roda-se a cambota até ao batente pelo outro lado</translation>
        </message>
        <message>
            <source>stop readings of {first}° and {second}° have no middle that can be told from its opposite; they must be numbers, and not 180° apart</source>
            <extracomment>physics/engine.py</extracomment>
            <translation>leituras do batente de {first}° e {second}° não têm meio que se distinga do oposto; têm de ser números, e não a 180° uma da outra</translation>
        </message>
        <message>
            <source>there are {count} openings; there must be one for each of the {lobes} lobes</source>
            <extracomment>physics/engine.py</extracomment>
            <translation>há {count} aberturas; tem de haver uma por cada um dos {lobes} ressaltos</translation>
        </message>
        <message>
            <source>the cam gives {sparks} sparks in two crank turns; the engine needs {n}</source>
            <extracomment>physics/engine.py</extracomment>
            <translation>o came dá {sparks} faíscas em duas voltas da cambota; o motor precisa de {n}</translation>
        </message>
        <message>
            <source>the timing is {btdc}° before top dead centre; it must lie within ±90°</source>
            <extracomment>physics/engine.py</extracomment>
            <translation>o ponto é {btdc}° antes do ponto morto superior; tem de estar dentro de ±90°</translation>
        </message>
        <message>
            <source>the piston of cylinder {cylinder} does not reach {wanted} mm below top dead centre</source>
            <extracomment>physics/engine.py</extracomment>
            <translation>o êmbolo do cilindro {cylinder} não chega a {wanted} mm abaixo do ponto morto superior</translation>
        </message>
        <message>
            <source>the scaled magneto</source>
            <extracomment>physics/flank.py</extracomment>
            <translation>o magneto ajustado</translation>
        </message>
        <message>
            <source>the scaled cam cannot be: {reason}</source>
            <extracomment>physics/flank.py</extracomment>
            <translation>o came ajustado não pode ser: {reason}</translation>
        </message>
        <message>
            <source>Fitted from {trials}: lift × {lift_scale} ± {lift_spread}, rise × {rise_scale} ± {rise_spread}, index {index}° ± {index_spread}° (95 in 100). Law of motion, dwell and fall are the first file's.</source>
            <extracomment>physics/flank_fit.py</extracomment>
            <translation>Ajustado a {trials}: levantamento × {lift_scale} ± {lift_spread}, subida × {rise_scale} ± {rise_spread}, índice {index}° ± {index_spread}° (95 em 100). Lei de movimento, patamar e descida são os do primeiro ficheiro.</translation>
        </message>
        <message>
            <source>1 trial</source>
            <extracomment>physics/flank_fit.py</extracomment>
            <translation>1 ensaio</translation>
        </message>
        <message>
            <source>{count} trials</source>
            <extracomment>physics/flank_fit.py</extracomment>
            <translation>{count} ensaios</translation>
        </message>
        <message>
            <source>{name}, fitted from {trials}</source>
            <extracomment>physics/flank_fit.py</extracomment>
            <translation>{name}, ajustado a {trials}</translation>
        </message>
        <message>
            <source>{count} trials are given; at most {most} are used</source>
            <extracomment>physics/flank_fit.py</extracomment>
            <translation>estão dados {count} ensaios; usam-se no máximo {most}</translation>
        </message>
        <message>
            <source>the probability is {probability}; it must lie between 0 and 1</source>
            <extracomment>physics/flank_fit.py</extracomment>
            <translation>a probabilidade é {probability}; tem de estar entre 0 e 1</translation>
        </message>
        <message>
            <source>fitted from {trials}</source>
            <extracomment>physics/flank_fit.py</extracomment>
            <translation>ajustado a {trials}</translation>
        </message>
        <message>
            <source>an inspection at {hours} h; hours lie between 0 and {most}</source>
            <extracomment>physics/inspection.py</extracomment>
            <translation>uma inspeção às {hours} h; as horas estão entre 0 e {most}</translation>
        </message>
        <message>
            <source>the gap is {value} mm; it must lie between 0 and 100</source>
            <extracomment>physics/inspection.py</extracomment>
            <translation>a folga é {value} mm; tem de estar entre 0 e 100</translation>
        </message>
        <message>
            <source>the gap's half-width is {value} mm; it must lie between 0 and 100</source>
            <extracomment>physics/inspection.py</extracomment>
            <translation>a meia largura da folga é {value} mm; tem de estar entre 0 e 100</translation>
        </message>
        <message>
            <source>the opening's error is {value}°; it must lie within 90°</source>
            <extracomment>physics/inspection.py</extracomment>
            <translation>o erro da abertura é {value}°; tem de estar dentro de 90°</translation>
        </message>
        <message>
            <source>the opening's half-width is {value}°; it must lie within 90°</source>
            <extracomment>physics/inspection.py</extracomment>
            <translation>a meia largura da abertura é {value}°; tem de estar dentro de 90°</translation>
        </message>
        <message>
            <source>common practice</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>prática comum</translation>
        </message>
        <message>
            <source>resolution: read to the nearest division, half of one to each side</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>resolução: lido à divisão mais próxima, meia para cada lado</translation>
        </message>
        <message>
            <source>resolution: between the blade that passes and the next</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>resolução: entre a lâmina que passa e a seguinte</translation>
        </message>
        <message>
            <source>straightedge held by hand</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>régua segura à mão</translation>
        </message>
        <message>
            <source>straightedge clamped to the cam</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>régua presa ao came</translation>
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
            <translation>escala de 0,5 mm</translation>
        </message>
        <message>
            <source>rule to 1/64 in</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>escala de 1/64 in</translation>
        </message>
        <message>
            <source>magnifier with a scale to 0.1 mm</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>lupa com escala de 0,1 mm</translation>
        </message>
        <message>
            <source>blades in steps of 0.05 mm</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>lâminas em passos de 0,05 mm</translation>
        </message>
        <message>
            <source>blades in steps of 0.001 in</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>lâminas em passos de 0,001 in</translation>
        </message>
        <message>
            <source>blades in steps of 0.0005 in</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>lâminas em passos de 0,0005 in</translation>
        </message>
        <message>
            <source>blades in steps of 0.01 mm</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>lâminas em passos de 0,01 mm</translation>
        </message>
        <message>
            <source>drag judged by one blade</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>atrito julgado por uma lâmina</translation>
        </message>
        <message>
            <source>drag compared with the next blade's</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>atrito comparado com o da lâmina seguinte</translation>
        </message>
        <message>
            <source>strip of thin paper, just free</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>tira de papel fino, a soltar-se</translation>
        </message>
        <message>
            <source>ohmmeter across the contacts</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>ohmímetro entre os contactos</translation>
        </message>
        <message>
            <source>timing lamp</source>
            <extracomment>physics/instruments.py, ui/class_editor_fields.py</extracomment>
            <translation>lâmpada de calagem</translation>
        </message>
        <message>
            <source>rotor turned by hand</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>rotor rodado à mão</translation>
        </message>
        <message>
            <source>rotor turned with a bar, against a stop</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>rotor rodado com uma barra, contra um batente</translation>
        </message>
        <message>
            <source>propeller turned by hand</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>hélice rodada à mão</translation>
        </message>
        <message>
            <source>propeller tapped round</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>hélice rodada a pequenos toques</translation>
        </message>
        <message>
            <source>disc to 1°</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>disco de 1°</translation>
        </message>
        <message>
            <source>disc to 0.5°</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>disco de 0,5°</translation>
        </message>
        <message>
            <source>angle indicator to 0.1°</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>indicador de ângulo de 0,1°</translation>
        </message>
        <message>
            <source>turned to and fro</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>rodado para cá e para lá</translation>
        </message>
        <message>
            <source>anywhere within the play</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>em qualquer ponto do jogo</translation>
        </message>
        <message>
            <source>always led in with rotation</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>sempre levado no sentido de rotação</translation>
        </message>
        <message>
            <source>the play is taken up</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>o jogo está tirado</translation>
        </message>
        <message>
            <source>read before tightening</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>lido antes de apertar</translation>
        </message>
        <message>
            <source>either way, as the file</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>para qualquer lado, como no ficheiro</translation>
        </message>
        <message>
            <source>read again after tightening</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>lido de novo depois de apertar</translation>
        </message>
        <message>
            <source>as found</source>
            <extracomment>physics/instruments.py, ui/drive_view.py</extracomment>
            <translation>como encontrado</translation>
        </message>
        <message>
            <source>the table's lift comes to {lift} mm at the contacts, and {least} to {most} mm is allowed: are its unit and the kind of reading right?</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>o levantamento da tabela dá {lift} mm nos contactos, e permitem-se {least} a {most} mm: a unidade e o tipo de leitura estão certos?</translation>
        </message>
        <message>
            <source>the readings stand high off the lobe and fall on it: say that the dial falls with lift</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>as leituras são altas fora do ressalto e descem nele: indicar que o comparador desce com o levantamento</translation>
        </message>
        <message>
            <source>the table shows {count} tops, near {places}; it must show one lobe, from base circle to base circle</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>a tabela mostra {count} topos, perto de {places}; tem de mostrar um ressalto, de círculo de base a círculo de base</translation>
        </message>
        <message>
            <source>the readings scatter by {noise} mm about any smooth curve, {share} % of the lift; at most {most} % is taken for a lobe</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>as leituras dispersam-se {noise} mm à volta de qualquer curva lisa, {share} % do levantamento; no máximo {most} % se toma por ressalto</translation>
        </message>
        <message>
            <source>the table covers one side of the lobe only; it must go over the top and down again</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>a tabela cobre só um lado do ressalto; tem de passar o topo e descer de novo</translation>
        </message>
        <message>
            <source>neither end of the table lies on the base circle; measure from base circle to base circle</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>nenhum extremo da tabela está no círculo de base; medir de círculo de base a círculo de base</translation>
        </message>
        <message>
            <source>The table begins on the flank; its foot is drawn, not measured.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>A tabela começa no flanco; o pé é desenhado, não medido.</translation>
        </message>
        <message>
            <source>The table ends on the flank; its foot is drawn, not measured.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>A tabela acaba no flanco; o pé é desenhado, não medido.</translation>
        </message>
        <message>
            <source>The base circle reads {difference} mm more after the lobe than before it (the dial slipped, or the cam runs out); each flank was taken from its own side.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>O círculo de base lê {difference} mm mais depois do ressalto do que antes (o comparador escorregou, ou o came está empenado); cada flanco foi tirado do seu lado.</translation>
        </message>
        <message>
            <source>The base circle reads {difference} mm more before the lobe than after it (the dial slipped, or the cam runs out); each flank was taken from its own side.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>O círculo de base lê {difference} mm mais antes do ressalto do que depois (o comparador escorregou, ou o came está empenado); cada flanco foi tirado do seu lado.</translation>
        </message>
        <message>
            <source>Only {count} rows lie on the rise; between them it is a guess.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>Só {count} linhas estão na subida; entre elas é um palpite.</translation>
        </message>
        <message>
            <source>Only {count} rows lie on the fall; between them it is a guess.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>Só {count} linhas estão na descida; entre elas é um palpite.</translation>
        </message>
        <message>
            <source>The readings scatter by {noise} mm about the curve, {share} % of the lift.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>As leituras dispersam-se {noise} mm à volta da curva, {share} % do levantamento.</translation>
        </message>
        <message>
            <source>Below {lift} mm of lift the contacts were closed; the foot is drawn, not measured.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>Abaixo de {lift} mm de levantamento os contactos estavam fechados; o pé é desenhado, não medido.</translation>
        </message>
        <message>
            <source>The base circle before the lobe is uneven by {uneven} mm.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>O círculo de base antes do ressalto é desigual em {uneven} mm.</translation>
        </message>
        <message>
            <source>The base circle after the lobe is uneven by {uneven} mm.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>O círculo de base depois do ressalto é desigual em {uneven} mm.</translation>
        </message>
        <message>
            <source>table of the lift</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>tabela do levantamento</translation>
        </message>
        <message>
            <source>the measured lift</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>o levantamento medido</translation>
        </message>
        <message>
            <source>The table has {columns} columns; two of them were used.</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>A tabela tem {columns} colunas; usaram-se duas.</translation>
        </message>
        <message>
            <source>Turned both ways, the readings lie {backlash}° of cam apart, as backlash makes them; the middle of the two was taken.</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>Rodado para os dois lados, as leituras distam {backlash}° de came, como o jogo faz; tomou-se o meio das duas.</translation>
        </message>
        <message>
            <source>{outliers} of {count} rows, far off their neighbours, were left out.</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>{outliers} de {count} linhas, muito longe das vizinhas, ficaram de fora.</translation>
        </message>
        <message>
            <source>the table tells the lift at {places} different angles; it must be at {least} or more, better at 20</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>a tabela dá o levantamento a {places} ângulos diferentes; têm de ser {least} ou mais, melhor 20</translation>
        </message>
        <message>
            <source>the cam's turns per rotor turn is {value}; it must be 0.01 to 100</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>as voltas do came por volta do rotor são {value}; têm de ser 0,01 a 100</translation>
        </message>
        <message>
            <source>the contact arm over the heel arm is {value}; it must be 0.01 to 100</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>o braço do contacto sobre o do calcador é {value}; tem de ser 0,01 a 100</translation>
        </message>
        <message>
            <source>the stop is {stop} mm; it must be 0 to {most} mm</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>o batente é {stop} mm; tem de ser 0 a {most} mm</translation>
        </message>
        <message>
            <source>the measured lift: {reason}</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>o levantamento medido: {reason}</translation>
        </message>
        <message>
            <source>no lobe can be drawn through the table: {reason}</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>não se pode traçar um ressalto pela tabela: {reason}</translation>
        </message>
        <message>
            <source>{count} instruments are given for {role}; there must be one</source>
            <extracomment>physics/measurement.py</extracomment>
            <translation>estão dados {count} instrumentos para {role}; tem de haver um</translation>
        </message>
        <message>
            <source>nothing was read with an instrument for {role}</source>
            <extracomment>physics/measurement.py</extracomment>
            <translation>nada foi lido com um instrumento para {role}</translation>
        </message>
        <message>
            <source>linear and Monte Carlo agree: the ends of their intervals differ by {worst} at most, where {tolerance} is allowed</source>
            <extracomment>physics/monte_carlo.py</extracomment>
            <translation>linear e Monte Carlo concordam: os extremos dos intervalos diferem no máximo {worst}, quando se permitem {tolerance}</translation>
        </message>
        <message>
            <source>linear and Monte Carlo agree: the ends of their intervals differ by {worst} at most, where {tolerance} is allowed; more trials are needed to be sure</source>
            <extracomment>physics/monte_carlo.py</extracomment>
            <translation>linear e Monte Carlo concordam: os extremos dos intervalos diferem no máximo {worst}, quando se permitem {tolerance}; são precisos mais sorteios para ter a certeza</translation>
        </message>
        <message>
            <source>linear and Monte Carlo disagree: the ends of their intervals differ by {worst} at most, where {tolerance} is allowed</source>
            <extracomment>physics/monte_carlo.py</extracomment>
            <translation>linear e Monte Carlo discordam: os extremos dos intervalos diferem no máximo {worst}, quando se permitem {tolerance}</translation>
        </message>
        <message>
            <source>linear and Monte Carlo disagree: the ends of their intervals differ by {worst} at most, where {tolerance} is allowed; more trials are needed to be sure</source>
            <extracomment>physics/monte_carlo.py</extracomment>
            <translation>linear e Monte Carlo discordam: os extremos dos intervalos diferem no máximo {worst}, quando se permitem {tolerance}; são precisos mais sorteios para ter a certeza</translation>
        </message>
        <message>
            <source>a Monte Carlo of {trials} trials tells nothing; it takes at least 1</source>
            <extracomment>physics/monte_carlo.py</extracomment>
            <translation>um Monte Carlo de {trials} sorteios nada diz; precisa de pelo menos 1</translation>
        </message>
        <message>
            <source>{count} values are too few for an interval of probability {probability}</source>
            <extracomment>physics/monte_carlo.py</extracomment>
            <translation>{count} valores são poucos para um intervalo de probabilidade {probability}</translation>
        </message>
        <message>
            <source>a standard uncertainty of {uncertainty} has no digits</source>
            <extracomment>physics/monte_carlo.py</extracomment>
            <translation>uma incerteza padrão de {uncertainty} não tem algarismos</translation>
        </message>
        <message>
            <source>intervals of {probability} and {other} cannot be compared</source>
            <extracomment>physics/monte_carlo.py</extracomment>
            <translation>intervalos de {probability} e {other} não podem ser comparados</translation>
        </message>
        <message>
            <source>the backplate would stand at {value}°, {beyond}° beyond the end of its slot ({low}° to {high}°)</source>
            <extracomment>physics/setting.py</extracomment>
            <translation>a placa de base ficaria em {value}°, {beyond}° além do fim da ranhura ({low}° a {high}°)</translation>
        </message>
        <message>
            <source>the contact screw would stand at {value}°, {beyond}° beyond the end of its travel ({low}° to {high}°)</source>
            <extracomment>physics/setting.py</extracomment>
            <translation>o parafuso de contacto ficaria em {value}°, {beyond}° além do fim do percurso ({low}° a {high}°)</translation>
        </message>
        <message>
            <source>the nearest gap that can be had is {gap}</source>
            <extracomment>physics/setting.py</extracomment>
            <translation>a folga mais próxima possível é {gap}</translation>
        </message>
        <message>
            <source>the gap is {gap} mm; it must be 0 or more</source>
            <extracomment>physics/setting.py</extracomment>
            <translation>a folga é {gap} mm; tem de ser 0 ou mais</translation>
        </message>
        <message>
            <source>lobe 1 lifts the contacts {both} in all, so they would never close</source>
            <extracomment>physics/setting.py</extracomment>
            <translation>o ressalto 1 levanta os contactos {both} ao todo, pelo que nunca fechariam</translation>
        </message>
        <message>
            <source>no gap within reach opens at the E-gap</source>
            <extracomment>physics/setting.py</extracomment>
            <translation>nenhuma folga ao alcance abre no E-gap</translation>
        </message>
        <message>
            <source>the nearest gap that can be had is {gap}, with the backplate at the end of its slot</source>
            <extracomment>physics/setting.py</extracomment>
            <translation>a folga mais próxima possível é {gap}, com a placa de base no fim da ranhura</translation>
        </message>
        <message>
            <source>the nearest gap that can be had is {gap}, with the contact screw at the end of its travel</source>
            <extracomment>physics/setting.py</extracomment>
            <translation>a folga mais próxima possível é {gap}, com o parafuso de contacto no fim do percurso</translation>
        </message>
        <message>
            <source>the contact screw's eccentric does not reach that far</source>
            <extracomment>physics/setting.py</extracomment>
            <translation>o excêntrico do parafuso de contacto não chega tão longe</translation>
        </message>
        <message>
            <source>disc, left magneto</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>disco, magneto esquerdo</translation>
        </message>
        <message>
            <source>turning the crank, left</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>rodar a cambota, esquerdo</translation>
        </message>
        <message>
            <source>gap when it shows, left</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>folga quando se vê, esquerdo</translation>
        </message>
        <message>
            <source>play not taken up, left</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>jogo não tirado, esquerdo</translation>
        </message>
        <message>
            <source>left magneto fires</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>magneto esquerdo inflama</translation>
        </message>
        <message>
            <source>disc, right magneto</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>disco, magneto direito</translation>
        </message>
        <message>
            <source>turning the crank, right</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>rodar a cambota, direito</translation>
        </message>
        <message>
            <source>gap when it shows, right</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>folga quando se vê, direito</translation>
        </message>
        <message>
            <source>play not taken up, right</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>jogo não tirado, direito</translation>
        </message>
        <message>
            <source>right magneto fires</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>magneto direito inflama</translation>
        </message>
        <message>
            <source>straightedge from the mark</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>régua desde a marca</translation>
        </message>
        <message>
            <source>straightedge along the step</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>régua ao longo do degrau</translation>
        </message>
        <message>
            <source>blade</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>lâmina</translation>
        </message>
        <message>
            <source>drag of the blade</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>atrito da lâmina</translation>
        </message>
        <message>
            <source>gap when it shows</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>folga quando se vê</translation>
        </message>
        <message>
            <source>turning the rotor</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>rodar o rotor</translation>
        </message>
        <message>
            <source>play not taken up</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>jogo não tirado</translation>
        </message>
        <message>
            <source>creep of the screw</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>arrasto do parafuso</translation>
        </message>
        <message>
            <source>a gap of {gap} mm cannot be: lobe 1 lifts the contacts {top} mm, and below {parting} mm nothing would show that they part</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>uma folga de {gap} mm não pode ser: o ressalto 1 levanta os contactos {top} mm, e abaixo de {parting} mm nada mostraria que se separam</translation>
        </message>
        <message>
            <source>a gap of {gap} mm cannot be: lobe 1 lifts the contacts {top} mm</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>uma folga de {gap} mm não pode ser: o ressalto 1 levanta os contactos {top} mm</translation>
        </message>
        <message>
            <source>neither magneto was read; at least one must be</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>nenhum magneto foi lido; pelo menos um tem de ser</translation>
        </message>
        <message>
            <source>disc at the first stop</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>disco no primeiro batente</translation>
        </message>
        <message>
            <source>disc at the second stop</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>disco no segundo batente</translation>
        </message>
        <message>
            <source>left less right, beyond the {design}° wanted</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>esquerdo menos direito, além dos {design}° desejados</translation>
        </message>
        <message>
            <source>left less right</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>esquerdo menos direito</translation>
        </message>
        <message>
            <source>as given</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>como dado</translation>
        </message>
        <message>
            <source>opening from the E-gap</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>abertura desde o E-gap</translation>
        </message>
        <message>
            <source>widest gap</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>folga máxima</translation>
        </message>
        <message>
            <source>the radius of the slot is {value}; it must be above 0</source>
            <extracomment>physics/trials.py</extracomment>
            <translation>o raio da ranhura é {value}; tem de estar acima de 0</translation>
        </message>
        <message>
            <source>the angle between two marks is {value}; it must be above 0</source>
            <extracomment>physics/trials.py</extracomment>
            <translation>o ângulo entre duas marcas é {value}; tem de estar acima de 0</translation>
        </message>
        <message>
            <source>the plate stands at {backplate}°; it must lie within ±3600°</source>
            <extracomment>physics/trials.py</extracomment>
            <translation>a placa está em {backplate}°; tem de estar dentro de ±3600°</translation>
        </message>
        <message>
            <source>the opening is {opening_error}° off; it must lie within ±45°</source>
            <extracomment>physics/trials.py</extracomment>
            <translation>a abertura está {opening_error}° fora; tem de estar dentro de ±45°</translation>
        </message>
        <message>
            <source>the gap is given as {low} to {high} mm; it must be above 0, within 1000 mm, low end first</source>
            <extracomment>physics/trials.py</extracomment>
            <translation>a folga está dada como {low} a {high} mm; tem de estar acima de 0, dentro de 1000 mm, o extremo menor primeiro</translation>
        </message>
        <message>
            <source>a gap of 0 mm or more says nothing; give the blade that passes or the one that does not</source>
            <extracomment>physics/trials.py</extracomment>
            <translation>uma folga de 0 mm ou mais nada diz; dar a lâmina que passa ou a que não passa</translation>
        </message>
        <message>
            <source>the gap is known to within {within} mm; it must be 0 or more</source>
            <extracomment>physics/trials.py</extracomment>
            <translation>a folga é conhecida a {within} mm; tem de ser 0 ou mais</translation>
        </message>
        <message>
            <source>the errors of a trial must be numbers, 0 or more</source>
            <extracomment>physics/trials.py</extracomment>
            <translation>os erros de um ensaio têm de ser números, 0 ou mais</translation>
        </message>
        <message>
            <source>doubt in lift and rise must be above 0 and at most 1, in the index at most 90°</source>
            <extracomment>physics/trials.py</extracomment>
            <translation>a dúvida no levantamento e na subida tem de estar acima de 0 e no máximo em 1, no índice no máximo 90°</translation>
        </message>
        <message>
            <source>no coverage factor for a probability of {probability} and {dof} degrees of freedom</source>
            <extracomment>physics/uncertainty.py</extracomment>
            <translation>não há fator de expansão para uma probabilidade de {probability} e {dof} graus de liberdade</translation>
        </message>
        <message>
            <source>the second-order terms leave no variance: the expansion does not hold for this model</source>
            <extracomment>physics/uncertainty.py</extracomment>
            <translation>os termos de segunda ordem não deixam variância: o desenvolvimento não vale para este modelo</translation>
        </message>
        <message>
            <source>{name}: {estimate} ± {spread} is no estimate with a spread</source>
            <extracomment>physics/uncertainty.py</extracomment>
            <translation>{name}: {estimate} ± {spread} não é uma estimativa com dispersão</translation>
        </message>
        <message>
            <source>{name}: {dof} degrees of freedom; there must be at least 1</source>
            <extracomment>physics/uncertainty.py</extracomment>
            <translation>{name}: {dof} graus de liberdade; tem de haver pelo menos 1</translation>
        </message>
        <message>
            <source>{name}: a {distribution} distribution has no half-width</source>
            <extracomment>physics/uncertainty.py</extracomment>
            <translation>{name}: uma distribuição {distribution} não tem meia largura</translation>
        </message>
        <message>
            <source>{name}: a t distribution needs its degrees of freedom</source>
            <extracomment>physics/uncertainty.py</extracomment>
            <translation>{name}: uma distribuição t precisa dos seus graus de liberdade</translation>
        </message>
        <message>
            <source>hours since the setting must be 0 or more, and finite</source>
            <extracomment>physics/wear.py</extracomment>
            <translation>as horas desde a regulação têm de ser 0 ou mais, e finitas</translation>
        </message>
        <message>
            <source>after {hours} h the heel would have lost {heel} mm and the pip be {pip} mm high</source>
            <extracomment>physics/wear.py</extracomment>
            <translation>após {hours} h o calcador teria perdido {heel} mm e o pico teria {pip} mm de altura</translation>
        </message>
        <message>
            <source>a rate takes inspections at two different hours at least</source>
            <extracomment>physics/wear.py</extracomment>
            <translation>uma taxa precisa de inspeções a pelo menos duas horas diferentes</translation>
        </message>
        <message>
            <source>heel wear is {rate} mm per 100 h; it must be 0 or more</source>
            <extracomment>physics/wear.py</extracomment>
            <translation>o desgaste do calcador é {rate} mm por 100 h; tem de ser 0 ou mais</translation>
        </message>
        <message>
            <source>the pip's growth is {rate} mm per 100 h; it must be 0 or more</source>
            <extracomment>physics/wear.py</extracomment>
            <translation>o crescimento do pico é {rate} mm por 100 h; tem de ser 0 ou mais</translation>
        </message>
        <message>
            <source>breaker.heel_arm_mm is missing in the magneto's file: it tells what heel wear does</source>
            <extracomment>physics/wear.py</extracomment>
            <translation>falta breaker.heel_arm_mm no ficheiro do magneto: diz o que faz o desgaste do calcador</translation>
        </message>
        <message>
            <source>that is not to be had in practice: here hands and instruments do the work</source>
            <extracomment>practice/actions.py</extracomment>
            <translation>isso não há no treino: aqui trabalham mãos e instrumentos</translation>
        </message>
        <message>
            <source>the coupling is moved one tooth at a time, at one face</source>
            <extracomment>practice/actions.py</extracomment>
            <translation>o acoplamento move-se um dente de cada vez, numa face</translation>
        </message>
        <message>
            <source>On {name}, renew the lead, and prove it again.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Em {name}, renovar o cabo e prová-lo de novo.</translation>
        </message>
        <message>
            <source>On {name}, renew the insulation, and prove it again.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Em {name}, renovar o isolamento e prová-lo de novo.</translation>
        </message>
        <message>
            <source>On {name}, renew the tab, and prove it again.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Em {name}, renovar a lingueta e prová-la de novo.</translation>
        </message>
        <message>
            <source>Stop in No. 1, met gently from both sides; half-way between the two readings is top dead centre.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Batente no n.º 1, tocado devagar dos dois lados; a meio das duas leituras está o ponto morto superior.</translation>
        </message>
        <message>
            <source>On {name}: paint marks, nuts off; magneto flange on the disc {flange}; disc on the drive flange {disc}; nuts on. {residual}° remain. Lamp and disc, approached with rotation.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Em {name}: pintar marcas, porcas fora; flange do magneto no disco {flange}; disco na flange motriz {disc}; porcas postas. Restam {residual}°. Lâmpada e disco, alcançados no sentido de rotação.</translation>
        </message>
        <message>
            <source>Lay the straightedge on, look square over it, turn to the mark with rotation, and hold.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Pousar a régua, olhar a direito por cima dela, rodar até à marca no sentido de rotação e segurar.</translation>
        </message>
        <message>
            <source>Close up: screws, nuts, plug in, switch off; and look once more at what tightening can shift.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Fechar: parafusos, porcas, ficha metida, interruptor desligado; e ver mais uma vez o que o aperto pode deslocar.</translation>
        </message>
        <message>
            <source>Make it safe: {words}.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Pôr seguro: {words}.</translation>
        </message>
        <message>
            <source>On {name}, prove the lead: plug pulled, meter with the switch off and on, lamp for tab and coil.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Em {name}, provar o cabo: ficha tirada, multímetro com o interruptor desligado e ligado, lâmpada para lingueta e bobina.</translation>
        </message>
        <message>
            <source>On {name}, dress the contacts before measuring.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Em {name}, retificar os contactos antes de medir.</translation>
        </message>
        <message>
            <source>On {name}, no setting puts gap and opening right at once.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Em {name}, nenhuma regulação acerta folga e abertura ao mesmo tempo.</translation>
        </message>
        <message>
            <source>On {name}, slacken the clamp screws, {move}, tighten; lamp and straightedge.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Em {name}, aliviar os parafusos de aperto, {move}, apertar; lâmpada e régua.</translation>
        </message>
        <message>
            <source>Turn the disc {error}° later, to read zero there. Stop out.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Rodar o disco {error}° mais tarde, para ler zero ali. Batente fora.</translation>
        </message>
        <message>
            <source>Turn the disc {error}° earlier, to read zero there. Stop out.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Rodar o disco {error}° mais cedo, para ler zero ali. Batente fora.</translation>
        </message>
        <message>
            <source>On {name}: paint marks, plug out, nuts off, lift it off.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Em {name}: pintar marcas, ficha tirada, porcas fora, levantá-lo.</translation>
        </message>
        <message>
            <source>No. 1 on compression at {wanted}° before top dead centre, the rotor where the contacts open with the finger at No. 1; mesh to the nearest tooth.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>N.º 1 em compressão a {wanted}° antes do ponto morto superior, o rotor onde os contactos abrem com o rotor distribuidor no n.º 1; engrenar no dente mais próximo.</translation>
        </message>
        <message>
            <source>On {name}, no tooth needs to move; lamp and disc with rotation say so.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Em {name}, nenhum dente precisa de se mover; lâmpada e disco no sentido de rotação dizem-no.</translation>
        </message>
        <message>
            <source>On {name}, slacken the lock screw, {turn}, tighten (tightening carries it {creep}° on); blades on both limits.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Em {name}, aliviar o parafuso de fixação, {turn}, apertar (o aperto leva-o mais {creep}°); lâminas nos dois limites.</translation>
        </message>
        <message>
            <source>On {name}, slacken the lock screw, {turn}, tighten; blades on both limits.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Em {name}, aliviar o parafuso de fixação, {turn}, apertar; lâminas nos dois limites.</translation>
        </message>
        <message>
            <source>chocks</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>calços</translation>
        </message>
        <message>
            <source>spark plugs out</source>
            <extracomment>practice/advice.py, practice/seen.py, ui/class_editor_fields.py</extracomment>
            <translation>velas fora</translation>
        </message>
        <message>
            <source>there is no piston stop on the tray</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>não há batente do êmbolo no tabuleiro</translation>
        </message>
        <message>
            <source>the attempt has been handed in</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>a tentativa foi entregue</translation>
        </message>
        <message>
            <source>there is no meter on the tray</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>não há multímetro no tabuleiro</translation>
        </message>
        <message>
            <source>the stop goes into No. 1's plug hole: take the spark plugs out first</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>o batente vai no furo da vela do n.º 1: retirar primeiro as velas</translation>
        </message>
        <message>
            <source>the piston of No. 1 stands too high for the stop: turn the propeller on first</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>o êmbolo do n.º 1 está demasiado alto para o batente: rodar primeiro a hélice</translation>
        </message>
        <message>
            <source>there is no engine here</source>
            <extracomment>practice/apply.py, practice/instruments.py</extracomment>
            <translation>aqui não há motor</translation>
        </message>
        <message>
            <source>the piston stop is in No. 1's plug hole: take it out first</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>o batente do êmbolo está no furo da vela do n.º 1: retirá-lo primeiro</translation>
        </message>
        <message>
            <source>the magneto is off the engine</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>o magneto está fora do motor</translation>
        </message>
        <message>
            <source>there is no {side} magneto here</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>aqui não há magneto {side}</translation>
        </message>
        <message>
            <source>the magneto is off the engine already</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>o magneto já está fora do motor</translation>
        </message>
        <message>
            <source>the nuts hold the magneto: take them off first</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>as porcas seguram o magneto: retirá-las primeiro</translation>
        </message>
        <message>
            <source>the switch lead holds the magneto: pull its plug first</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>o cabo de massa segura o magneto: tirar primeiro a ficha</translation>
        </message>
        <message>
            <source>the magneto is on the engine already</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>o magneto já está no motor</translation>
        </message>
        <message>
            <source>the coupling is moved one tooth at a time, at its magneto or its disc face</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>o acoplamento move-se um dente de cada vez, na face do magneto ou do disco</translation>
        </message>
        <message>
            <source>the coupling is closed: take the nuts off and draw the magneto back first</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>o acoplamento está fechado: retirar primeiro as porcas e recuar o magneto</translation>
        </message>
        <message>
            <source>the pin holds the rotor: take it out to turn the flange</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>o pino segura o rotor: retirá-lo para rodar a flange</translation>
        </message>
        <message>
            <source>“{kind}” is no kind of reading</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>“{kind}” não é um tipo de leitura</translation>
        </message>
        <message>
            <source>the notebook is full: it holds {most} lines</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>o caderno está cheio: leva {most} linhas</translation>
        </message>
        <message>
            <source>a note is one line of at most {most} characters</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>uma nota é uma linha de no máximo {most} caracteres</translation>
        </message>
        <message>
            <source>a finding on the switch lead is sound, broken, shorted or tab</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>um achado no cabo de massa é sound, broken, shorted ou tab</translation>
        </message>
        <message>
            <source>a finding in words takes no number</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>um achado em palavras não leva número</translation>
        </message>
        <message>
            <source>a reading needs its number</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>uma leitura precisa do seu número</translation>
        </message>
        <message>
            <source>there is no lobe {lobe}; the cam has {lobes}</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>não há ressalto {lobe}; o came tem {lobes}</translation>
        </message>
        <message>
            <source>the backplate is at the end of its slot</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>a placa de base está no fim da ranhura</translation>
        </message>
        <message>
            <source>the contact screw is at the end of its travel</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>o parafuso de contacto está no fim do percurso</translation>
        </message>
        <message>
            <source>what can be renewed is the lead, the tab or the insulation</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>o que se pode renovar é o cabo, a lingueta ou o isolamento</translation>
        </message>
        <message>
            <source>there is no straightedge on the tray</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>não há régua no tabuleiro</translation>
        </message>
        <message>
            <source>there is no timing lamp on the tray</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>não há lâmpada de calagem no tabuleiro</translation>
        </message>
        <message>
            <source>there is no {kind} set of blades on the tray</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>não há jogo de lâminas {kind} no tabuleiro</translation>
        </message>
        <message>
            <source>there is no crank disc on the tray</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>não há disco de cambota no tabuleiro</translation>
        </message>
        <message>
            <source>no marks were painted to refit it by: it can only go on as its rotor stands</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>não se pintaram marcas para o repor: só pode ir como o rotor está</translation>
        </message>
        <message>
            <source>a part's name is one line of at most {most} characters</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>o nome de uma peça é uma linha de no máximo {most} caracteres</translation>
        </message>
        <message>
            <source>the pin holds the rotor</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>o pino segura o rotor</translation>
        </message>
        <message>
            <source>that is the {part}</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>isso é: {part}</translation>
        </message>
        <message>
            <source>{where}.{field} is {found}; it must be true or false</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where}.{field} é {found}; tem de ser verdadeiro ou falso</translation>
        </message>
        <message>
            <source>{where}.{field} is {found}; it must be a whole number</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where}.{field} é {found}; tem de ser um número inteiro</translation>
        </message>
        <message>
            <source>{where}.{field} is {found}; it must be text</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where}.{field} é {found}; tem de ser texto</translation>
        </message>
        <message>
            <source>{where}.{field} is {found}; it must be a list</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where}.{field} é {found}; tem de ser uma lista</translation>
        </message>
        <message>
            <source>{source}: holds no attempt; it must be one JSON object in braces</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{source}: não contém tentativa; tem de ser um objeto JSON entre chavetas</translation>
        </message>
        <message>
            <source>{source}: format is {found}; it must be "{wanted}"</source>
            <extracomment>practice/attempt.py, spec/files.py</extracomment>
            <translation>{source}: format é {found}; tem de ser "{wanted}"</translation>
        </message>
        <message>
            <source>{source}: {name} is missing</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{source}: falta {name}</translation>
        </message>
        <message>
            <source>{source}: {name} is not a known name</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{source}: {name} não é um nome conhecido</translation>
        </message>
        <message>
            <source>{source}: events must be a list of at most {most}</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{source}: events tem de ser uma lista de no máximo {most}</translation>
        </message>
        <message>
            <source>{where} must be an object in braces</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where} tem de ser um objeto entre chavetas</translation>
        </message>
        <message>
            <source>{where}.at_s is {found}; it must be a number of seconds from 0 on</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where}.at_s é {found}; tem de ser um número de segundos a partir de 0</translation>
        </message>
        <message>
            <source>{where}.do is {found}, which is no act this program knows</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where}.do é {found}, que não é um ato que este programa conheça</translation>
        </message>
        <message>
            <source>{where}.{field} is {found}; it must be {allowed}</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where}.{field} é {found}; tem de ser {allowed}</translation>
        </message>
        <message>
            <source>{where}.{field} is {found}; it must be a number</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where}.{field} é {found}; tem de ser um número</translation>
        </message>
        <message>
            <source>{where}.{field} is {found}; it must be what the act takes</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where}.{field} é {found}; tem de ser o que o ato leva</translation>
        </message>
        <message>
            <source>the time is {at_s}; it must be a number of seconds</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>o tempo é {at_s}; tem de ser um número de segundos</translation>
        </message>
        <message>
            <source>the record is full at {most} acts: hand in</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>o registo está cheio com {most} atos: entregar</translation>
        </message>
        <message>
            <source>{source}: format is {found} (a newer magview wrote it; it is left as it was); it must be "{wanted}"</source>
            <extracomment>practice/attempt.py, spec/files.py</extracomment>
            <translation>{source}: format é {found} (escreveu-o um magview mais novo; fica como estava); tem de ser "{wanted}"</translation>
        </message>
        <message>
            <source>{source}: {name} is {found}; it must be text of at most {most} characters</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{source}: {name} é {found}; tem de ser texto de no máximo {most} caracteres</translation>
        </message>
        <message>
            <source>{source}: events[{i}].at_s is {at_s}; time does not run backwards</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{source}: events[{i}].at_s é {at_s}; o tempo não anda para trás</translation>
        </message>
        <message>
            <source>{where}.{field} is not a known name of {name}</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where}.{field} não é um nome conhecido de {name}</translation>
        </message>
        <message>
            <source>{where}.{field} is missing</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>falta {where}.{field}</translation>
        </message>
        <message>
            <source>Done with version {version}, shown with {here}: what followed from an act may differ.</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>Feito com a versão {version}, mostrado com a {here}: o que se seguiu a um ato pode diferir.</translation>
        </message>
        <message>
            <source>Opening from the mark</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>Abertura desde a marca</translation>
        </message>
        <message>
            <source>Opening from the mark, {name}</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>Abertura desde a marca, {name}</translation>
        </message>
        <message>
            <source>Largest gap, {name}</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>Folga máxima, {name}</translation>
        </message>
        <message>
            <source>Pip on the contacts, {name}</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>Pico nos contactos, {name}</translation>
        </message>
        <message>
            <source>Lock screw carries the contact screw along</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>O parafuso de fixação arrasta o parafuso de contacto</translation>
        </message>
        <message>
            <source>Lock screw carries the contact screw along, {name}</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>O parafuso de fixação arrasta o parafuso de contacto, {name}</translation>
        </message>
        <message>
            <source>Switch lead, {name}</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>Cabo de massa, {name}</translation>
        </message>
        <message>
            <source>Fires before top dead centre, {name}</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>Inflama antes do ponto morto superior, {name}</translation>
        </message>
        <message>
            <source>Play in the coupling</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>Jogo no acoplamento</translation>
        </message>
        <message>
            <source>Play in the coupling, {name}</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>Jogo no acoplamento, {name}</translation>
        </message>
        <message>
            <source>not at all</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>nada</translation>
        </message>
        <message>
            <source>{angle}° closer</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>{angle}° mais perto</translation>
        </message>
        <message>
            <source>{angle}° wider</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>{angle}° mais abertos</translation>
        </message>
        <message>
            <source>{mm} mm past</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>{mm} mm depois</translation>
        </message>
        <message>
            <source>{mm} mm short</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>{mm} mm aquém</translation>
        </message>
        <message>
            <source>off the engine</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>fora do motor</translation>
        </message>
        <message>
            <source>{fires}° (the wrong stroke)</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>{fires}° (o tempo errado)</translation>
        </message>
        <message>
            <source>the attempt has not been handed in: until then nothing true is shown</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>a tentativa não foi entregue: até lá nada de verdadeiro se mostra</translation>
        </message>
        <message>
            <source>within {tolerance} mm</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>dentro de {tolerance} mm</translation>
        </message>
        <message>
            <source>sound</source>
            <extracomment>practice/debrief.py, practice/words.py, ui/class_editor_rows.py, ui/practice_notebook.py</extracomment>
            <translation>bom</translation>
        </message>
        <message>
            <source>Disc at top dead centre of No. 1</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>Disco no ponto morto superior do n.º 1</translation>
        </message>
        <message>
            <source>to be allowed for</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>a ter em conta</translation>
        </message>
        <message>
            <source>{wanted}° within {allowed}°</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>{wanted}° dentro de {allowed}°</translation>
        </message>
        <message>
            <source>taken up with rotation</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>tirado no sentido de rotação</translation>
        </message>
        <message>
            <source>the lock screw was tightened</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation>o parafuso de fixação foi apertado</translation>
        </message>
        <message>
            <source>the clamp screws were tightened</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation>os parafusos de aperto foram apertados</translation>
        </message>
        <message>
            <source>the contacts were dressed</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation>os contactos foram retificados</translation>
        </message>
        <message>
            <source>the backplate was turned</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation>a placa de base foi rodada</translation>
        </message>
        <message>
            <source>the contact screw was turned</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation>o parafuso de contacto foi rodado</translation>
        </message>
        <message>
            <source>took the magneto off with no marks across its coupling</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation>tirou o magneto sem marcas através do acoplamento</translation>
        </message>
        <message>
            <source>turned the propeller with a live magneto and the spark plugs in</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation>rodou a hélice com um magneto vivo e as velas postas</translation>
        </message>
        <message>
            <source>a tooth was moved</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation>um dente foi movido</translation>
        </message>
        <message>
            <source>the magneto was refitted</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation>o magneto foi reposto</translation>
        </message>
        <message>
            <source>turned the propeller, plugs in, without proving that the switch grounds</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation>rodou a hélice, velas postas, sem provar que o interruptor põe à massa</translation>
        </message>
        <message>
            <source>rotor degrees, positive = opens late</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>graus de rotor, positivo = abre tarde</translation>
        </message>
        <message>
            <source>millimetres, positive = too wide; it opens at the E-gap all the same</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>milímetros, positivo = a mais; abre na mesma no E-gap</translation>
        </message>
        <message>
            <source>degrees the plate is off, positive with cam rotation</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>graus que a placa está fora, positivo com a rotação do came</translation>
        </message>
        <message>
            <source>degrees the contact screw goes along with its lock screw, positive = contacts closer</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>graus que o parafuso de contacto vai com o de fixação, positivo = contactos mais perto</translation>
        </message>
        <message>
            <source>millimetres one lobe lifts less</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>milímetros que um ressalto levanta a menos</translation>
        </message>
        <message>
            <source>millimetres of pip on the contacts</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>milímetros de pico nos contactos</translation>
        </message>
        <message>
            <source>rotor degrees of play in the coupling</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>graus de rotor de jogo no acoplamento</translation>
        </message>
        <message>
            <source>whole teeth at the magneto flange, positive = fires early</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>dentes inteiros na flange do magneto, positivo = inflama cedo</translation>
        </message>
        <message>
            <source>whole teeth at the drive flange, positive = fires early</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>dentes inteiros na flange motriz, positivo = inflama cedo</translation>
        </message>
        <message>
            <source>whole vernier steps, positive = fires early</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>passos inteiros do vernier, positivo = inflama cedo</translation>
        </message>
        <message>
            <source>crank degrees the disc reads at top dead centre</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>graus de cambota que o disco lê no ponto morto superior</translation>
        </message>
        <message>
            <source>size is [{low}, {high}]; it must run upwards from 0 or more (way gives the sign)</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>size é [{low}, {high}]; tem de subir a partir de 0 ou mais (way dá o sinal)</translation>
        </message>
        <message>
            <source>among is for kind lead, which needs it: a list of sound, broken, shorted, tab</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>among é para kind lead, que precisa dele: uma lista de sound, broken, shorted, tab</translation>
        </message>
        <message>
            <source>way of {kind} must be left out or "plus"</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>way de {kind} tem de ser omitido ou "plus"</translation>
        </message>
        <message>
            <source>reading is for goal "reading", which needs it</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>reading é para goal "reading", que precisa dele</translation>
        </message>
        <message>
            <source>within is for a reading in numbers, which needs it</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>within é para uma leitura em números, que precisa dele</translation>
        </message>
        <message>
            <source>magneto or installation: an exercise has one of the two</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>magneto ou installation: um exercício tem um dos dois</translation>
        </message>
        <message>
            <source>both_sides needs an installation with two magnetos</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>both_sides precisa de uma instalação com dois magnetos</translation>
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
            <translation>goals: synchronised precisa de both_sides</translation>
        </message>
        <message>
            <source>faults has {twice} twice; give each kind once for a magneto</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>faults tem {twice} duas vezes; dar cada tipo uma vez por magneto</translation>
        </message>
        <message>
            <source>size of {kind} ends at {high}; it must be above 0 and at most {most} ({unit})</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>size de {kind} acaba em {high}; tem de estar acima de 0 e no máximo em {most} ({unit})</translation>
        </message>
        <message>
            <source>size of {kind} is [{low}, {high}]; it must be whole numbers</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>size de {kind} é [{low}, {high}]; têm de ser números inteiros</translation>
        </message>
        <message>
            <source>size is not for {kind}, which is there or is not</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>size não é para {kind}, que existe ou não</translation>
        </message>
        <message>
            <source>{what}.side is {side}, a magneto this exercise does not have</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>{what}.side é {side}, um magneto que este exercício não tem</translation>
        </message>
        <message>
            <source>faults[{i}].lobe is {lobe}; the cam has {lobes}</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>faults[{i}].lobe é {lobe}; o came tem {lobes}</translation>
        </message>
        <message>
            <source>faults[{i}].kind is {kind}, which needs an installation</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>faults[{i}].kind é {kind}, que precisa de uma instalação</translation>
        </message>
        <message>
            <source>goals[{i}] is {goal} of an engine, which needs an installation</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>goals[{i}] é {goal} de um motor, que precisa de uma instalação</translation>
        </message>
        <message>
            <source>the seed is {seed}; it must be a whole number from 0 to {most}</source>
            <extracomment>practice/faults.py</extracomment>
            <translation>a semente é {seed}; tem de ser um número inteiro de 0 a {most}</translation>
        </message>
        <message>
            <source>lobe-low takes {lobe_low} mm off a lobe that lifts {top_lift} mm</source>
            <extracomment>practice/faults.py</extracomment>
            <translation>lobe-low tira {lobe_low} mm a um ressalto que levanta {top_lift} mm</translation>
        </message>
        <message>
            <source>{name} cannot be set for a gap of {wanted} mm: {reason}</source>
            <extracomment>practice/faults.py</extracomment>
            <translation>{name} não pode ser regulado para uma folga de {wanted} mm: {reason}</translation>
        </message>
        <message>
            <source>blades on both sides of the limits were tried on every lobe after the last change</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>experimentaram-se lâminas dos dois lados dos limites em todos os ressaltos depois da última mudança</translation>
        </message>
        <message>
            <source>blades on both sides of the limits were not tried on every lobe after {why}</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>não se experimentaram lâminas dos dois lados dos limites em todos os ressaltos depois de: {why}</translation>
        </message>
        <message>
            <source>blades on both sides of the limits were not tried on every lobe</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>não se experimentaram lâminas dos dois lados dos limites em todos os ressaltos</translation>
        </message>
        <message>
            <source>blades on both sides of the limits were tried on a lobe after the last change</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>experimentaram-se lâminas dos dois lados dos limites num ressalto depois da última mudança</translation>
        </message>
        <message>
            <source>blades on both sides of the limits were not tried on a lobe after {why}</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>não se experimentaram lâminas dos dois lados dos limites num ressalto depois de: {why}</translation>
        </message>
        <message>
            <source>blades on both sides of the limits were not tried on a lobe</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>não se experimentaram lâminas dos dois lados dos limites num ressalto</translation>
        </message>
        <message>
            <source>fires {error}° of crank early, {allowed}° are allowed</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>inflama {error}° de cambota cedo, permitem-se {allowed}°</translation>
        </message>
        <message>
            <source>fires {error}° of crank early, {allowed}° are allowed: on the wrong stroke</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>inflama {error}° de cambota cedo, permitem-se {allowed}°: no tempo errado</translation>
        </message>
        <message>
            <source>fires {error}° of crank late, {allowed}° are allowed</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>inflama {error}° de cambota tarde, permitem-se {allowed}°</translation>
        </message>
        <message>
            <source>fires {error}° of crank late, {allowed}° are allowed: on the wrong stroke</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>inflama {error}° de cambota tarde, permitem-se {allowed}°: no tempo errado</translation>
        </message>
        <message>
            <source>{magneto}: coupling marked before it was taken apart</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>{magneto}: acoplamento marcado antes de desmontado</translation>
        </message>
        <message>
            <source>{magneto}: closed up</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>{magneto}: fechado</translation>
        </message>
        <message>
            <source>the edge stands {offset} mm from the mark, {allowed} mm are allowed</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>a aresta está a {offset} mm da marca, permitem-se {allowed} mm</translation>
        </message>
        <message>
            <source>the rotor stands near no mark</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>o rotor não está perto de nenhuma marca</translation>
        </message>
        <message>
            <source>the straightedge lay on it, looked at square</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>a régua estava posta, vista a direito</translation>
        </message>
        <message>
            <source>the straightedge was not looked at square there</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>a régua não foi ali vista a direito</translation>
        </message>
        <message>
            <source>Rotor at the E-gap</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Rotor no E-gap</translation>
        </message>
        <message>
            <source>opens {worst} mm from the mark, {allowed} mm are allowed</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>abre a {worst} mm da marca, permitem-se {allowed} mm</translation>
        </message>
        <message>
            <source>{magneto}: contacts open at the mark</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>{magneto}: contactos abrem na marca</translation>
        </message>
        <message>
            <source>The largest gap is {span}, limits {low} to {high}; {how}.</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>A folga máxima é {span}, limites {low} a {high}; {how}.</translation>
        </message>
        <message>
            <source>{low} to {high} over the lobes</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>{low} a {high} nos ressaltos</translation>
        </message>
        <message>
            <source>The contacts are clean</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Os contactos estão limpos</translation>
        </message>
        <message>
            <source>A pip of {pip} stands on the contacts</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Há um pico de {pip} nos contactos</translation>
        </message>
        <message>
            <source>they were looked at</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>foram vistos</translation>
        </message>
        <message>
            <source>they were not looked at as they are now</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>não foram vistos como estão agora</translation>
        </message>
        <message>
            <source>Contacts clean and flat</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Contactos limpos e planos</translation>
        </message>
        <message>
            <source>the piston met its stop from both sides</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>o êmbolo tocou o batente dos dois lados</translation>
        </message>
        <message>
            <source>the stop was not met from both sides</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>o batente não foi tocado dos dois lados</translation>
        </message>
        <message>
            <source>Crank disc at zero</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Disco da cambota em zero</translation>
        </message>
        <message>
            <source>The disc reads {error}° at top dead centre, {allowed}° are allowed; {how}.</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>O disco lê {error}° no ponto morto superior, permitem-se {allowed}°; {how}.</translation>
        </message>
        <message>
            <source>the magneto is off the engine, or never opens</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>o magneto está fora do motor, ou nunca abre</translation>
        </message>
        <message>
            <source>{magneto}: timed to the engine</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>{magneto}: calado ao motor</translation>
        </message>
        <message>
            <source>both were read with lamp and disc after the last change</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>ambos foram lidos com lâmpada e disco depois da última mudança</translation>
        </message>
        <message>
            <source>not both were read after the last change</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>não foram ambos lidos depois da última mudança</translation>
        </message>
        <message>
            <source>left and right are {apart}° apart, {allowed}° are allowed</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>esquerdo e direito estão a {apart}°, permitem-se {allowed}°</translation>
        </message>
        <message>
            <source>one does not fire</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>um não inflama</translation>
        </message>
        <message>
            <source>Left and right together</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Esquerdo e direito de acordo</translation>
        </message>
        <message>
            <source>the meter with the switch off and on</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>o multímetro com o interruptor desligado e ligado</translation>
        </message>
        <message>
            <source>proved by {checks}</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>provado por {checks}</translation>
        </message>
        <message>
            <source>not proved by {checks}</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>não provado por {checks}</translation>
        </message>
        <message>
            <source>The switch lead is sound</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>O cabo de massa está bom</translation>
        </message>
        <message>
            <source>{magneto}: switch lead sound</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>{magneto}: cabo de massa bom</translation>
        </message>
        <message>
            <source>Marks were painted first.</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Primeiro pintaram-se marcas.</translation>
        </message>
        <message>
            <source>It was taken apart with no marks painted across it.</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Desmontou-se sem marcas pintadas através dele.</translation>
        </message>
        <message>
            <source>lock screw tight</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>parafuso de fixação apertado</translation>
        </message>
        <message>
            <source>clamp screws tight</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>parafusos de aperto apertados</translation>
        </message>
        <message>
            <source>Everything is closed up.</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Tudo está fechado.</translation>
        </message>
        <message>
            <source>Not so: {missing}.</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Não assim: {missing}.</translation>
        </message>
        <message>
            <source>checked by lamp and straightedge, looked at square, after the last change</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>verificado com lâmpada e régua, vista a direito, depois da última mudança</translation>
        </message>
        <message>
            <source>checked only with the eye to one side of the straightedge</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>verificado só com o olho de lado da régua</translation>
        </message>
        <message>
            <source>never checked by lamp and straightedge, looked at square</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>nunca verificado com lâmpada e régua, vista a direito</translation>
        </message>
        <message>
            <source>{magneto}: largest gap within limits on every lobe</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>{magneto}: folga máxima dentro dos limites em todos os ressaltos</translation>
        </message>
        <message>
            <source>{magneto}: largest gap within limits</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>{magneto}: folga máxima dentro dos limites</translation>
        </message>
        <message>
            <source>the disc's zero was never found by the stop from both sides</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>o zero do disco nunca foi achado pelo batente dos dois lados</translation>
        </message>
        <message>
            <source>checked by lamp and disc, approached with rotation, after the last change</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>verificado com lâmpada e disco, alcançado no sentido de rotação, depois da última mudança</translation>
        </message>
        <message>
            <source>checked only approached against rotation, with the play on the wrong side</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>verificado só alcançado contra a rotação, com o jogo do lado errado</translation>
        </message>
        <message>
            <source>never checked by lamp and disc, approached with rotation</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>nunca verificado com lâmpada e disco, alcançado no sentido de rotação</translation>
        </message>
        <message>
            <source>the lamp lighting</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>a lâmpada acesa</translation>
        </message>
        <message>
            <source>the lamp staying dark with the plug out</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>a lâmpada apagada com a ficha tirada</translation>
        </message>
        <message>
            <source>The coupling was not taken apart and is marked.</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>O acoplamento não foi desmontado e está marcado.</translation>
        </message>
        <message>
            <source>The coupling was not taken apart, and not marked either.</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>O acoplamento não foi desmontado, nem marcado.</translation>
        </message>
        <message>
            <source>magneto on the engine</source>
            <extracomment>practice/goals.py, practice/seen.py, ui/class_editor_fields.py</extracomment>
            <translation>magneto no motor</translation>
        </message>
        <message>
            <source>nuts tight</source>
            <extracomment>practice/goals.py, practice/seen.py</extracomment>
            <translation>porcas apertadas</translation>
        </message>
        <message>
            <source>pin out</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>pino fora</translation>
        </message>
        <message>
            <source>paper out</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>papel fora</translation>
        </message>
        <message>
            <source>plug in</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>ficha metida</translation>
        </message>
        <message>
            <source>piston stop out</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>batente do êmbolo fora</translation>
        </message>
        <message>
            <source>not checked again after {why}</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>não verificado de novo depois de: {why}</translation>
        </message>
        <message>
            <source>the primary is shorted inside</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>o primário está em curto por dentro</translation>
        </message>
        <message>
            <source>{angle}° before the disc's zero</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>{angle}° antes do zero do disco</translation>
        </message>
        <message>
            <source>{angle}° after the disc's zero</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>{angle}° depois do zero do disco</translation>
        </message>
        <message>
            <source>nearest to No. {cylinder}</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>mais perto do n.º {cylinder}</translation>
        </message>
        <message>
            <source>not connected</source>
            <extracomment>practice/instruments.py, ui/debrief_view.py, ui/practice_sight.py</extracomment>
            <translation>não ligado</translation>
        </message>
        <message>
            <source>not laid on</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>não colocada</translation>
        </message>
        <message>
            <source>no mark near the edge</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>nenhuma marca perto da aresta</translation>
        </message>
        <message>
            <source>in line with the mark (mark {mark})</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>alinhada com a marca (marca {mark})</translation>
        </message>
        <message>
            <source>in line with the mark</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>alinhada com a marca</translation>
        </message>
        <message>
            <source>{size} {unit} past the mark (mark {mark})</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>{size} {unit} depois da marca (marca {mark})</translation>
        </message>
        <message>
            <source>{size} {unit} past the mark</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>{size} {unit} depois da marca</translation>
        </message>
        <message>
            <source>{size} {unit} short of the mark (mark {mark})</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>{size} {unit} aquém da marca (marca {mark})</translation>
        </message>
        <message>
            <source>{size} {unit} short of the mark</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>{size} {unit} aquém da marca</translation>
        </message>
        <message>
            <source>“{kind}” is not a set of blades; there are {known}</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>“{kind}” não é um jogo de lâminas; há {known}</translation>
        </message>
        <message>
            <source>{blades} blades cannot be held together; take 1 to {most}</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>não se podem segurar {blades} lâminas juntas; pegar em 1 a {most}</translation>
        </message>
        <message>
            <source>no-go</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>não passa</translation>
        </message>
        <message>
            <source>drag</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>roça</translation>
        </message>
        <message>
            <source>go</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>passa</translation>
        </message>
        <message>
            <source>a pip stands on one contact, a pit in the other</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>há um pico num contacto e uma cova no outro</translation>
        </message>
        <message>
            <source>no disc on the crank</source>
            <extracomment>practice/instruments.py, ui/debrief_view.py</extracomment>
            <translation>sem disco na cambota</translation>
        </message>
        <message>
            <source>with the plug in, the meter sees lead and coil at once: pull the plug first</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>com a ficha metida, o multímetro vê cabo e bobina ao mesmo tempo: tirar primeiro a ficha</translation>
        </message>
        <message>
            <source>no distributor on the bench</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>sem distribuidor na bancada</translation>
        </message>
        <message>
            <source>the spark plug is in its hole: take the plugs out first</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>a vela de ignição está no furo: retirar primeiro as velas</translation>
        </message>
        <message>
            <source>pressure: No. 1 is on compression</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>pressão: o n.º 1 está em compressão</translation>
        </message>
        <message>
            <source>no pressure</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>sem pressão</translation>
        </message>
        <message>
            <source>light</source>
            <extracomment>practice/instruments.py, ui/practice_sight.py</extracomment>
            <translation>acesa</translation>
        </message>
        <message>
            <source>dark</source>
            <extracomment>practice/instruments.py, ui/practice_sight.py</extracomment>
            <translation>apagada</translation>
        </message>
        <message>
            <source>the {kind} set has no blade {blade} left to take</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>o jogo {kind} já não tem lâmina {blade} para pegar</translation>
        </message>
        <message>
            <source>a lesson is not handed in</source>
            <extracomment>practice/lesson.py</extracomment>
            <translation>uma lição não se entrega</translation>
        </message>
        <message>
            <source>what is {what}; for {that} it must be {known}</source>
            <extracomment>practice/lesson.py</extracomment>
            <translation>o que é {what}; para {that} tem de ser {known}</translation>
        </message>
        <message>
            <source>{name} is missing, which {that} needs</source>
            <extracomment>practice/lesson.py</extracomment>
            <translation>falta {name}, de que {that} precisa</translation>
        </message>
        <message>
            <source>{name} is not for {that}</source>
            <extracomment>practice/lesson.py</extracomment>
            <translation>{name} não é para {that}</translation>
        </message>
        <message>
            <source>the lamp light</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>a lâmpada acesa</translation>
        </message>
        <message>
            <source>the lamp dark</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>a lâmpada apagada</translation>
        </message>
        <message>
            <source>the lamp not connected</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>a lâmpada não ligada</translation>
        </message>
        <message>
            <source>the rotor at neutral</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>o rotor no neutro</translation>
        </message>
        <message>
            <source>the rotor at full register</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>o rotor no registo pleno</translation>
        </message>
        <message>
            <source>the rotor at the E-gap</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>o rotor no E-gap</translation>
        </message>
        <message>
            <source>the contacts widest open</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>os contactos abertos ao máximo</translation>
        </message>
        <message>
            <source>the contact screw turned {angle}° closer or more</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>o parafuso de contacto rodado {angle}° ou mais a fechar</translation>
        </message>
        <message>
            <source>the contact screw turned {angle}° wider or more</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>o parafuso de contacto rodado {angle}° ou mais a abrir</translation>
        </message>
        <message>
            <source>the backplate turned {angle}° with rotation or more</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>a placa de base rodada {angle}° ou mais no sentido de rotação</translation>
        </message>
        <message>
            <source>the backplate turned {angle}° against rotation or more</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>a placa de base rodada {angle}° ou mais contra a rotação</translation>
        </message>
        <message>
            <source>what an instrument says</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>o que diz um instrumento</translation>
        </message>
        <message>
            <source>the rotor to be let go</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>que se largue o rotor</translation>
        </message>
        <message>
            <source>the lamp across the contacts</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>a lâmpada ligada aos contactos</translation>
        </message>
        <message>
            <source>the lamp taken off</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>a lâmpada retirada</translation>
        </message>
        <message>
            <source>the lamp to go from dark to light while you turn with rotation</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>que a lâmpada passe de apagada a acesa ao rodar no sentido de rotação</translation>
        </message>
        <message>
            <source>the straightedge laid on and looked at square</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>a régua colocada e vista a direito</translation>
        </message>
        <message>
            <source>the eye away from square</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>o olho fora da vista a direito</translation>
        </message>
        <message>
            <source>the lock screw tight</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>o parafuso de fixação apertado</translation>
        </message>
        <message>
            <source>the lock screw slack</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>o parafuso de fixação aliviado</translation>
        </message>
        <message>
            <source>the clamp screws tight</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>os parafusos de aperto apertados</translation>
        </message>
        <message>
            <source>the clamp screws slack</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>os parafusos de aperto aliviados</translation>
        </message>
        <message>
            <source>the contacts to open at the mark</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>que os contactos abram na marca</translation>
        </message>
        <message>
            <source>the largest gap within its limits</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>a folga máxima dentro dos limites</translation>
        </message>
        <message>
            <source>the switch on</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>o interruptor ligado</translation>
        </message>
        <message>
            <source>the switch off</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>o interruptor desligado</translation>
        </message>
        <message>
            <source>the plug pulled out</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>a ficha tirada</translation>
        </message>
        <message>
            <source>the plug in</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>a ficha metida</translation>
        </message>
        <message>
            <source>chocks at the wheels</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>calços nas rodas</translation>
        </message>
        <message>
            <source>the chocks away</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>os calços retirados</translation>
        </message>
        <message>
            <source>the spark plugs out</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>as velas de ignição fora</translation>
        </message>
        <message>
            <source>the spark plugs in</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>as velas de ignição postas</translation>
        </message>
        <message>
            <source>the lead proved: meter, plug out, switch off</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>o cabo provado: multímetro, ficha tirada, interruptor desligado</translation>
        </message>
        <message>
            <source>the piston stop in</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>o batente do êmbolo montado</translation>
        </message>
        <message>
            <source>the piston stop out</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>o batente do êmbolo fora</translation>
        </message>
        <message>
            <source>the disc to read zero at top dead centre</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>que o disco leia zero no ponto morto superior</translation>
        </message>
        <message>
            <source>marks painted across the coupling</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>marcas pintadas através do acoplamento</translation>
        </message>
        <message>
            <source>the nuts tight</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>as porcas apertadas</translation>
        </message>
        <message>
            <source>the nuts off</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>as porcas fora</translation>
        </message>
        <message>
            <source>the magneto on the engine</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>o magneto no motor</translation>
        </message>
        <message>
            <source>the magneto off the engine</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>o magneto fora do motor</translation>
        </message>
        <message>
            <source>it to fire where it should</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>que inflame onde deve</translation>
        </message>
        <message>
            <source>the answer “{answer}”</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>a resposta “{answer}”</translation>
        </message>
        <message>
            <source>the lamp to be watched all the way round</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>que se observe a lâmpada em toda a volta</translation>
        </message>
        <message>
            <source>what the meter says</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>o que diz o multímetro</translation>
        </message>
        <message>
            <source>That is the {part}; to click on it does nothing here. The step waits for {wanted}.</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>Isso é: {part}; clicar aí não faz nada aqui. O passo espera {wanted}.</translation>
        </message>
        <message>
            <source>That is the {part}. The step waits for {wanted}.</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>Isso é: {part}. O passo espera {wanted}.</translation>
        </message>
        <message>
            <source>That undid {undone}. The step waits for {wanted}.</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>Isso desfez: {undone}. O passo espera {wanted}.</translation>
        </message>
        <message>
            <source>Not yet. The step waits for {wanted}.</source>
            <extracomment>practice/lesson_words.py, ui/lesson_view.py</extracomment>
            <translation>Ainda não. O passo espera {wanted}.</translation>
        </message>
        <message>
            <source>Step {step}: so already.</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>Passo {step}: já está assim.</translation>
        </message>
        <message>
            <source>Step {step}: done.</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>Passo {step}: feito.</translation>
        </message>
        <message>
            <source>the {part} to be pointed at</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>que se aponte para: {part}</translation>
        </message>
        <message>
            <source>this to be done: {act}</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>que se faça isto: {act}</translation>
        </message>
        <message>
            <source>the crank {value}° before top dead centre</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>a cambota {value}° antes do ponto morto superior</translation>
        </message>
        <message>
            <source>a line in the notebook: {act}</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>uma linha no caderno: {act}</translation>
        </message>
        <message>
            <source>the piston to meet the stop with rotation</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>que o êmbolo encontre o batente no sentido de rotação</translation>
        </message>
        <message>
            <source>the piston to meet the stop against rotation</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>que o êmbolo encontre o batente contra a rotação</translation>
        </message>
        <message>
            <source>“{name}” is neither a file nor one of the shipped exercises: {known}</source>
            <extracomment>practice/library.py</extracomment>
            <translation>“{name}” não é um ficheiro nem um dos exercícios fornecidos: {known}</translation>
        </message>
        <message>
            <source>“{name}” is neither a file nor one of the shipped lessons: {known}</source>
            <extracomment>practice/library.py</extracomment>
            <translation>“{name}” não é um ficheiro nem uma das lições fornecidas: {known}</translation>
        </message>
        <message>
            <source>{file}: {field} is “{given}”; it must be a file's path or one of {known}</source>
            <extracomment>practice/library.py</extracomment>
            <translation>{file}: {field} é “{given}”; tem de ser o caminho de um ficheiro ou um de {known}</translation>
        </message>
        <message>
            <source>handed in with the lock screw slack</source>
            <extracomment>practice/marking.py</extracomment>
            <translation>entregue com o parafuso de fixação aliviado</translation>
        </message>
        <message>
            <source>handed in with the clamp screws slack</source>
            <extracomment>practice/marking.py</extracomment>
            <translation>entregue com os parafusos de aperto aliviados</translation>
        </message>
        <message>
            <source>handed in with the nuts slack</source>
            <extracomment>practice/marking.py</extracomment>
            <translation>entregue com as porcas aliviadas</translation>
        </message>
        <message>
            <source>handed in with the lock screw and the clamp screws slack</source>
            <extracomment>practice/marking.py</extracomment>
            <translation>entregue com o parafuso de fixação e os parafusos de aperto aliviados</translation>
        </message>
        <message>
            <source>handed in with the lock screw and the nuts slack</source>
            <extracomment>practice/marking.py</extracomment>
            <translation>entregue com o parafuso de fixação e as porcas aliviados</translation>
        </message>
        <message>
            <source>handed in with the clamp screws and the nuts slack</source>
            <extracomment>practice/marking.py</extracomment>
            <translation>entregue com os parafusos de aperto e as porcas aliviados</translation>
        </message>
        <message>
            <source>handed in with the lock screw and the clamp screws and the nuts slack</source>
            <extracomment>practice/marking.py</extracomment>
            <translation>entregue com o parafuso de fixação, os parafusos de aperto e as porcas aliviados</translation>
        </message>
        <message>
            <source>Not passed: {danger}.</source>
            <extracomment>practice/marking.py</extracomment>
            <translation>Não aprovado: {danger}.</translation>
        </message>
        <message>
            <source>Not passed: {percent} % of the marks, and {pass_percent} % are needed.</source>
            <extracomment>practice/marking.py</extracomment>
            <translation>Não aprovado: {percent} % dos pontos, e são precisos {pass_percent} %.</translation>
        </message>
        <message>
            <source>Passed with {percent} %.</source>
            <extracomment>practice/marking.py</extracomment>
            <translation>Aprovado com {percent} %.</translation>
        </message>
        <message>
            <source>the rotor is held at the E-gap, the straightedge on it and looked at square</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>o rotor está seguro no E-gap, com a régua colocada e vista a direito</translation>
        </message>
        <message>
            <source>the contacts open at the mark, seen by lamp and straightedge</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>os contactos abrem na marca, visto com lâmpada e régua</translation>
        </message>
        <message>
            <source>the largest gap is within its limits, measured with blades</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>a folga máxima está dentro dos limites, medida com lâminas</translation>
        </message>
        <message>
            <source>the contacts are clean and flat, and were looked at</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>os contactos estão limpos e planos, e foram vistos</translation>
        </message>
        <message>
            <source>the disc reads zero at No. 1's top dead centre, found from both sides</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>o disco lê zero no ponto morto superior do n.º 1, encontrado dos dois lados</translation>
        </message>
        <message>
            <source>it fires where it should, read by lamp and disc with rotation</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>inflama onde deve, lido com lâmpada e disco no sentido de rotação</translation>
        </message>
        <message>
            <source>both magnetos fire together within what is allowed</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>os dois magnetos inflamam juntos dentro do permitido</translation>
        </message>
        <message>
            <source>the switch lead is sound and proved</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>o cabo de massa está são e provado</translation>
        </message>
        <message>
            <source>the coupling was marked before it was taken apart</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>o acoplamento foi marcado antes de ser desmontado</translation>
        </message>
        <message>
            <source>every screw and nut is tight, the plug in, the switch off</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>parafusos e porcas todos apertados, a ficha metida, o interruptor desligado</translation>
        </message>
        <message>
            <source>the rotor is held at the E-gap, the straightedge on it and looked at square, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>o rotor está seguro no E-gap, com a régua colocada e vista a direito, em cada ressalto</translation>
        </message>
        <message>
            <source>the contacts open at the mark, seen by lamp and straightedge, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>os contactos abrem na marca, visto com lâmpada e régua, em cada ressalto</translation>
        </message>
        <message>
            <source>the largest gap is within its limits, measured with blades, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>a folga máxima está dentro dos limites, medida com lâminas, em cada ressalto</translation>
        </message>
        <message>
            <source>the contacts are clean and flat, and were looked at, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>os contactos estão limpos e planos, e foram vistos, em cada ressalto</translation>
        </message>
        <message>
            <source>the disc reads zero at No. 1's top dead centre, found from both sides, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>o disco lê zero no ponto morto superior do n.º 1, encontrado dos dois lados, em cada ressalto</translation>
        </message>
        <message>
            <source>it fires where it should, read by lamp and disc with rotation, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>inflama onde deve, lido com lâmpada e disco no sentido de rotação, em cada ressalto</translation>
        </message>
        <message>
            <source>both magnetos fire together within what is allowed, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>os dois magnetos inflamam juntos dentro do permitido, em cada ressalto</translation>
        </message>
        <message>
            <source>the switch lead is sound and proved, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>o cabo de massa está são e provado, em cada ressalto</translation>
        </message>
        <message>
            <source>the coupling was marked before it was taken apart, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>o acoplamento foi marcado antes de ser desmontado, em cada ressalto</translation>
        </message>
        <message>
            <source>every screw and nut is tight, the plug in, the switch off, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>parafusos e porcas todos apertados, a ficha metida, o interruptor desligado, em cada ressalto</translation>
        </message>
        <message>
            <source>written down: how far past the mark the contacts open</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>escrito: a que distância depois da marca os contactos abrem</translation>
        </message>
        <message>
            <source>written down: the largest gap</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>escrito: a folga máxima</translation>
        </message>
        <message>
            <source>written down: where it fires before top dead centre</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>escrito: onde inflama antes do ponto morto superior</translation>
        </message>
        <message>
            <source>written down: what the disc reads at top dead centre</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>escrito: o que o disco lê no ponto morto superior</translation>
        </message>
        <message>
            <source>written down: what the switch lead suffers from</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>escrito: de que sofre o cabo de massa</translation>
        </message>
        <message>
            <source>eccentric, {size} mm throw; clockwise brings the contacts closer</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>excêntrico, excentricidade {size} mm; no sentido horário aproxima os contactos</translation>
        </message>
        <message>
            <source>eccentric, {size} mm throw; anticlockwise brings the contacts closer</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>excêntrico, excentricidade {size} mm; no sentido anti-horário aproxima os contactos</translation>
        </message>
        <message>
            <source>threaded, {size} mm a turn; clockwise brings the contacts closer</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>roscado, {size} mm por volta; no sentido horário aproxima os contactos</translation>
        </message>
        <message>
            <source>threaded, {size} mm a turn; anticlockwise brings the contacts closer</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>roscado, {size} mm por volta; no sentido anti-horário aproxima os contactos</translation>
        </message>
        <message>
            <source>{goal}, left magneto</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{goal}, magneto esquerdo</translation>
        </message>
        <message>
            <source>{goal}, right magneto</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{goal}, magneto direito</translation>
        </message>
        <message>
            <source>{angle}° (left)</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{angle}° (esquerdo)</translation>
        </message>
        <message>
            <source>{angle}° (right)</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{angle}° (direito)</translation>
        </message>
        <message>
            <source>{reading}, within {within}</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{reading}, dentro de {within}</translation>
        </message>
        <message>
            <source>{e_gap}° of rotor past neutral</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{e_gap}° de rotor depois do neutro</translation>
        </message>
        <message>
            <source>Rim mark</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>Marca do rebordo</translation>
        </message>
        <message>
            <source>within {tolerance} mm, at {radius} mm radius</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>dentro de {tolerance} mm, a {radius} mm de raio</translation>
        </message>
        <message>
            <source>{name}; No. 1 fires {fires} before top dead centre</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{name}; o n.º 1 inflama {fires} antes do ponto morto superior</translation>
        </message>
        <message>
            <source>Allowed</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>Permitido</translation>
        </message>
        <message>
            <source>{tolerance}° of crank</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{tolerance}° de cambota</translation>
        </message>
        <message>
            <source>Coupling</source>
            <extracomment>practice/paper.py, ui/plot_coupling.py, ui/plot_pane.py</extracomment>
            <translation>Acoplamento</translation>
        </message>
        <message>
            <source>{magneto_teeth} teeth at the magneto, {drive_teeth} at the drive</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{magneto_teeth} dentes no magneto, {drive_teeth} no acionamento</translation>
        </message>
        <message>
            <source>Rotor</source>
            <extracomment>practice/paper.py, ui/lift_dialog.py, ui/setting_panel.py</extracomment>
            <translation>Rotor</translation>
        </message>
        <message>
            <source>{turns} turns a turn of the crank</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{turns} voltas por volta da cambota</translation>
        </message>
        <message>
            <source>clockwise seen from the breaker end</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>no sentido horário visto do lado do ruptor</translation>
        </message>
        <message>
            <source>anticlockwise seen from the breaker end</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>no sentido anti-horário visto do lado do ruptor</translation>
        </message>
        <message>
            <source>{lobes}, unequally spaced</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{lobes}, com espaços desiguais</translation>
        </message>
        <message>
            <source>Together</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>Juntos</translation>
        </message>
        <message>
            <source>within {tolerance}° of one another</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>a menos de {tolerance}° um do outro</translation>
        </message>
        <message>
            <source>“{name}” is no predicate</source>
            <extracomment>practice/predicates.py</extracomment>
            <translation>“{name}” não é um predicado</translation>
        </message>
        <message>
            <source>Written: {value} {unit}; true: {truth}; {within} {unit} are allowed; {how}.</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>Escrito: {value} {unit}; real: {truth}; permitem-se {within} {unit}; {how}.</translation>
        </message>
        <message>
            <source>Where the contacts open, as read, {magneto}</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>Onde abrem os contactos, como lido, {magneto}</translation>
        </message>
        <message>
            <source>Largest gap, as read, {magneto}</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>Folga máxima, como lida, {magneto}</translation>
        </message>
        <message>
            <source>Firing, as read, {magneto}</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>Inflamação, como lida, {magneto}</translation>
        </message>
        <message>
            <source>The disc's zero, as read</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>O zero do disco, como lido</translation>
        </message>
        <message>
            <source>What the switch lead suffers from, {magneto}</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>De que sofre o cabo de massa, {magneto}</translation>
        </message>
        <message>
            <source>read with lamp and straightedge, looked at square before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>lido com lâmpada e régua, visto a direito antes de escrito</translation>
        </message>
        <message>
            <source>not read with lamp and straightedge, looked at square before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>não lido com lâmpada e régua, visto a direito antes de escrito</translation>
        </message>
        <message>
            <source>read with blades before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>lido com lâminas antes de escrito</translation>
        </message>
        <message>
            <source>not read with blades before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>não lido com lâminas antes de escrito</translation>
        </message>
        <message>
            <source>read with lamp, and a disc whose zero was found before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>lido com lâmpada e um disco cujo zero se encontrou antes de escrito</translation>
        </message>
        <message>
            <source>not read with lamp, and a disc whose zero was found before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>não lido com lâmpada e um disco cujo zero se encontrou antes de escrito</translation>
        </message>
        <message>
            <source>read with the stop from both sides before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>lido com o batente dos dois lados antes de escrito</translation>
        </message>
        <message>
            <source>not read with the stop from both sides before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>não lido com o batente dos dois lados antes de escrito</translation>
        </message>
        <message>
            <source>read with meter and lamp before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>lido com multímetro e lâmpada antes de escrito</translation>
        </message>
        <message>
            <source>not read with meter and lamp before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>não lido com multímetro e lâmpada antes de escrito</translation>
        </message>
        <message>
            <source>read with nothing before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>lido com nada antes de escrito</translation>
        </message>
        <message>
            <source>not read with nothing before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>não lido com nada antes de escrito</translation>
        </message>
        <message>
            <source>It was not written down.</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>Não foi escrito.</translation>
        </message>
        <message>
            <source>Written: {text}; true: {truth}; {how}.</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>Escrito: {text}; real: {truth}; {how}.</translation>
        </message>
        <message>
            <source>There was nothing to read: the contacts never open; {how}.</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>Não havia nada a ler: os contactos nunca abrem; {how}.</translation>
        </message>
        <message>
            <source>Code {seed}, {time} minutes.</source>
            <extracomment>practice/report.py</extracomment>
            <translation>Código {seed}, {time} minutos.</translation>
        </message>
        <message>
            <source>Dangerous acts</source>
            <extracomment>practice/report.py</extracomment>
            <translation>Atos perigosos</translation>
        </message>
        <message>
            <source>Marks</source>
            <extracomment>practice/report.py, ui/class_plots.py, ui/debrief_view.py, lessons/a-full-job.json</extracomment>
            <translation>Pontos</translation>
        </message>
        <message>
            <source>True values</source>
            <extracomment>practice/report.py, ui/debrief_view.py</extracomment>
            <translation>Valores reais</translation>
        </message>
        <message>
            <source>Own readings</source>
            <extracomment>practice/report.py, ui/debrief_view.py</extracomment>
            <translation>Leituras próprias</translation>
        </message>
        <message>
            <source>Time line</source>
            <extracomment>practice/report.py, ui/debrief_view.py</extracomment>
            <translation>Linha do tempo</translation>
        </message>
        <message>
            <source>An efficient path</source>
            <extracomment>practice/report.py, ui/debrief_view.py</extracomment>
            <translation>Um caminho eficiente</translation>
        </message>
        <message>
            <source>When</source>
            <extracomment>practice/report.py</extracomment>
            <translation>Quando</translation>
        </message>
        <message>
            <source>Times</source>
            <extracomment>practice/report.py</extracomment>
            <translation>Vezes</translation>
        </message>
        <message>
            <source>Weight</source>
            <extracomment>practice/report.py</extracomment>
            <translation>Peso</translation>
        </message>
        <message>
            <source>Got</source>
            <extracomment>practice/report.py</extracomment>
            <translation>Obtido</translation>
        </message>
        <message>
            <source>Why</source>
            <extracomment>practice/report.py</extracomment>
            <translation>Porquê</translation>
        </message>
        <message>
            <source>Written</source>
            <extracomment>practice/report.py</extracomment>
            <translation>Escrito</translation>
        </message>
        <message>
            <source>True then</source>
            <extracomment>practice/report.py</extracomment>
            <translation>Real então</translation>
        </message>
        <message>
            <source>Danger</source>
            <extracomment>practice/report.py, ui/job_bars.py</extracomment>
            <translation>Perigo</translation>
        </message>
        <message>
            <source>lock screw tight, clamp screws tight</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>parafuso de fixação apertado, parafusos de aperto apertados</translation>
        </message>
        <message>
            <source>lock screw tight, clamp screws slack</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>parafuso de fixação apertado, parafusos de aperto aliviados</translation>
        </message>
        <message>
            <source>lock screw slack, clamp screws tight</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>parafuso de fixação aliviado, parafusos de aperto apertados</translation>
        </message>
        <message>
            <source>lock screw slack, clamp screws slack</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>parafuso de fixação aliviado, parafusos de aperto aliviados</translation>
        </message>
        <message>
            <source>plug in, paper under the spring tab; switch on</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>ficha metida, papel sob a lingueta de mola; interruptor ligado</translation>
        </message>
        <message>
            <source>plug in, paper under the spring tab; switch off</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>ficha metida, papel sob a lingueta de mola; interruptor desligado</translation>
        </message>
        <message>
            <source>plug in; switch on</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>ficha metida; interruptor ligado</translation>
        </message>
        <message>
            <source>plug in; switch off</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>ficha metida; interruptor desligado</translation>
        </message>
        <message>
            <source>plug pulled, paper under the spring tab; switch on</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>ficha tirada, papel sob a lingueta de mola; interruptor ligado</translation>
        </message>
        <message>
            <source>plug pulled, paper under the spring tab; switch off</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>ficha tirada, papel sob a lingueta de mola; interruptor desligado</translation>
        </message>
        <message>
            <source>plug pulled; switch on</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>ficha tirada; interruptor ligado</translation>
        </message>
        <message>
            <source>plug pulled; switch off</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>ficha tirada; interruptor desligado</translation>
        </message>
        <message>
            <source>turned {angle}° since you came</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>rotação de {angle}° desde a chegada</translation>
        </message>
        <message>
            <source>turned {angle}° since you came (with rotation)</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>rotação de {angle}° desde a chegada (no sentido de rotação)</translation>
        </message>
        <message>
            <source>turned {angle}° since you came (against rotation)</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>rotação de {angle}° desde a chegada (contra a rotação)</translation>
        </message>
        <message>
            <source>turned {angle}° since you came (closer)</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>rotação de {angle}° desde a chegada (mais perto)</translation>
        </message>
        <message>
            <source>turned {angle}° since you came (wider)</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>rotação de {angle}° desde a chegada (mais abertos)</translation>
        </message>
        <message>
            <source>from {eye}° behind against rotation</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>de {eye}° atrás, contra a rotação</translation>
        </message>
        <message>
            <source>square over the edge</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>a direito por cima da aresta</translation>
        </message>
        <message>
            <source>from {eye}° ahead with rotation</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>de {eye}° à frente, no sentido de rotação</translation>
        </message>
        <message>
            <source>no marks to count by</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>sem marcas por que contar</translation>
        </message>
        <message>
            <source>by the marks: magneto flange {i}, disc {j} teeth</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>pelas marcas: flange do magneto {i}, disco {j} dentes</translation>
        </message>
        <message>
            <source>the marks stand in line</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>as marcas estão alinhadas</translation>
        </message>
        <message>
            <source>wheels chocked</source>
            <extracomment>practice/seen.py, ui/class_editor_fields.py</extracomment>
            <translation>rodas calçadas</translation>
        </message>
        <message>
            <source>no chocks</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>sem calços</translation>
        </message>
        <message>
            <source>spark plugs in</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>velas de ignição postas</translation>
        </message>
        <message>
            <source>magneto off the engine</source>
            <extracomment>practice/seen.py, ui/drive_view.py</extracomment>
            <translation>magneto fora do motor</translation>
        </message>
        <message>
            <source>nuts off</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>porcas fora</translation>
        </message>
        <message>
            <source>coupling marked</source>
            <extracomment>practice/seen.py, ui/class_editor_fields.py</extracomment>
            <translation>acoplamento marcado</translation>
        </message>
        <message>
            <source>no marks on the coupling</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>sem marcas no acoplamento</translation>
        </message>
        <message>
            <source>piston stop in No. 1</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>batente do êmbolo no n.º 1</translation>
        </message>
        <message>
            <source>rotor pinned</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>rotor com pino</translation>
        </message>
        <message>
            <source>lamp</source>
            <extracomment>practice/state.py</extracomment>
            <translation>lâmpada</translation>
        </message>
        <message>
            <source>blades</source>
            <extracomment>practice/state.py</extracomment>
            <translation>lâminas</translation>
        </message>
        <message>
            <source>meter</source>
            <extracomment>practice/state.py</extracomment>
            <translation>multímetro</translation>
        </message>
        <message>
            <source>finger</source>
            <extracomment>practice/state.py</extracomment>
            <translation>rotor distribuidor</translation>
        </message>
        <message>
            <source>thumb</source>
            <extracomment>practice/state.py</extracomment>
            <translation>polegar</translation>
        </message>
        <message>
            <source>stop</source>
            <extracomment>practice/state.py</extracomment>
            <translation>batente</translation>
        </message>
        <message>
            <source>hand</source>
            <extracomment>practice/state.py</extracomment>
            <translation>mão</translation>
        </message>
        <message>
            <source>“{what}” is nothing to turn to: lamp, mark, widest or stop</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>“{what}” não é nada até onde rodar: lamp, mark, widest ou stop</translation>
        </message>
        <message>
            <source>the magneto is on the engine: turn the propeller, or lift it off</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>o magneto está no motor: rodar a hélice, ou retirá-lo</translation>
        </message>
        <message>
            <source>the rotor is pinned: take the pin out first</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>o rotor está preso com pino: tirar primeiro o pino</translation>
        </message>
        <message>
            <source>there is no engine here: turn the rotor</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>aqui não há motor: rodar o rotor</translation>
        </message>
        <message>
            <source>there is no disc on the crank to read</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>não há disco na cambota para ler</translation>
        </message>
        <message>
            <source>{value} is not a move a hand makes; it must lie within ±{most}</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>{value} não é um movimento que uma mão faça; tem de ficar dentro de ±{most}</translation>
        </message>
        <message>
            <source>no piston stop is fitted</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>não há batente do êmbolo montado</translation>
        </message>
        <message>
            <source>clip the lamp across the contacts first</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>ligar primeiro a lâmpada aos contactos</translation>
        </message>
        <message>
            <source>lay the straightedge along the cam's step first</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>pousar primeiro a régua ao longo do degrau do came</translation>
        </message>
        <message>
            <source>a magneto is drawn back from its drive: tighten its nuts before turning the propeller</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>um magneto está recuado do seu acionamento: apertar as porcas antes de rodar a hélice</translation>
        </message>
        <message>
            <source>a pin holds a magneto's rotor: take it out before turning the propeller</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>um pino prende o rotor de um magneto: tirá-lo antes de rodar a hélice</translation>
        </message>
        <message>
            <source>light all the way round</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>acesa em toda a volta</translation>
        </message>
        <message>
            <source>dark all the way round</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>apagada em toda a volta</translation>
        </message>
        <message>
            <source>the piston meets the stop</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>o êmbolo encontra o batente</translation>
        </message>
        <message>
            <source>turn the propeller with rotation until the lamp changes</source>
            <extracomment>practice/words.py</extracomment>
            <translation>rodar a hélice no sentido de rotação até a lâmpada mudar</translation>
        </message>
        <message>
            <source>turn the propeller against rotation until the lamp changes</source>
            <extracomment>practice/words.py</extracomment>
            <translation>rodar a hélice contra a rotação até a lâmpada mudar</translation>
        </message>
        <message>
            <source>turn the rotor with rotation until the lamp changes</source>
            <extracomment>practice/words.py</extracomment>
            <translation>rodar o rotor no sentido de rotação até a lâmpada mudar</translation>
        </message>
        <message>
            <source>turn the rotor against rotation until the lamp changes</source>
            <extracomment>practice/words.py</extracomment>
            <translation>rodar o rotor contra a rotação até a lâmpada mudar</translation>
        </message>
        <message>
            <source>turn the propeller with rotation until the straightedge comes in line</source>
            <extracomment>practice/words.py</extracomment>
            <translation>rodar a hélice no sentido de rotação até a régua alinhar</translation>
        </message>
        <message>
            <source>turn the propeller against rotation until the straightedge comes in line</source>
            <extracomment>practice/words.py</extracomment>
            <translation>rodar a hélice contra a rotação até a régua alinhar</translation>
        </message>
        <message>
            <source>turn the rotor with rotation until the straightedge comes in line</source>
            <extracomment>practice/words.py</extracomment>
            <translation>rodar o rotor no sentido de rotação até a régua alinhar</translation>
        </message>
        <message>
            <source>turn the rotor against rotation until the straightedge comes in line</source>
            <extracomment>practice/words.py</extracomment>
            <translation>rodar o rotor contra a rotação até a régua alinhar</translation>
        </message>
        <message>
            <source>turn the propeller with rotation until the contacts stand widest open</source>
            <extracomment>practice/words.py</extracomment>
            <translation>rodar a hélice no sentido de rotação até os contactos estarem abertos ao máximo</translation>
        </message>
        <message>
            <source>turn the propeller against rotation until the contacts stand widest open</source>
            <extracomment>practice/words.py</extracomment>
            <translation>rodar a hélice contra a rotação até os contactos estarem abertos ao máximo</translation>
        </message>
        <message>
            <source>turn the rotor with rotation until the contacts stand widest open</source>
            <extracomment>practice/words.py</extracomment>
            <translation>rodar o rotor no sentido de rotação até os contactos estarem abertos ao máximo</translation>
        </message>
        <message>
            <source>turn the rotor against rotation until the contacts stand widest open</source>
            <extracomment>practice/words.py</extracomment>
            <translation>rodar o rotor contra a rotação até os contactos estarem abertos ao máximo</translation>
        </message>
        <message>
            <source>turn the propeller with rotation until the piston meets the stop</source>
            <extracomment>practice/words.py</extracomment>
            <translation>rodar a hélice no sentido de rotação até o êmbolo encontrar o batente</translation>
        </message>
        <message>
            <source>turn the propeller against rotation until the piston meets the stop</source>
            <extracomment>practice/words.py</extracomment>
            <translation>rodar a hélice contra a rotação até o êmbolo encontrar o batente</translation>
        </message>
        <message>
            <source>turn the rotor with rotation until the piston meets the stop</source>
            <extracomment>practice/words.py</extracomment>
            <translation>rodar o rotor no sentido de rotação até o êmbolo encontrar o batente</translation>
        </message>
        <message>
            <source>turn the rotor against rotation until the piston meets the stop</source>
            <extracomment>practice/words.py</extracomment>
            <translation>rodar o rotor contra a rotação até o êmbolo encontrar o batente</translation>
        </message>
        <message>
            <source>the left magneto</source>
            <extracomment>practice/words.py</extracomment>
            <translation>o magneto esquerdo</translation>
        </message>
        <message>
            <source>the right magneto</source>
            <extracomment>practice/words.py</extracomment>
            <translation>o magneto direito</translation>
        </message>
        <message>
            <source>put in a new lead</source>
            <extracomment>practice/words.py</extracomment>
            <translation>montar um cabo novo</translation>
        </message>
        <message>
            <source>put in a new tab</source>
            <extracomment>practice/words.py</extracomment>
            <translation>montar uma lingueta nova</translation>
        </message>
        <message>
            <source>renew the insulation inside</source>
            <extracomment>practice/words.py</extracomment>
            <translation>renovar o isolamento interior</translation>
        </message>
        <message>
            <source>move the magneto flange on the disc 1 tooth with rotation</source>
            <extracomment>practice/words.py</extracomment>
            <translation>mover a flange do magneto no disco 1 dente no sentido de rotação</translation>
        </message>
        <message>
            <source>move the magneto flange on the disc 1 tooth against rotation</source>
            <extracomment>practice/words.py</extracomment>
            <translation>mover a flange do magneto no disco 1 dente contra a rotação</translation>
        </message>
        <message>
            <source>move the disc on the drive flange 1 tooth with rotation</source>
            <extracomment>practice/words.py</extracomment>
            <translation>mover o disco na flange motriz 1 dente no sentido de rotação</translation>
        </message>
        <message>
            <source>move the disc on the drive flange 1 tooth against rotation</source>
            <extracomment>practice/words.py</extracomment>
            <translation>mover o disco na flange motriz 1 dente contra a rotação</translation>
        </message>
        <message>
            <source>straightedge past the mark as the contacts open</source>
            <extracomment>practice/words.py</extracomment>
            <translation>régua após a marca quando os contactos abrem</translation>
        </message>
        <message>
            <source>largest gap</source>
            <extracomment>practice/words.py</extracomment>
            <translation>folga máxima</translation>
        </message>
        <message>
            <source>fires before top dead centre</source>
            <extracomment>practice/words.py</extracomment>
            <translation>inflama antes do ponto morto superior</translation>
        </message>
        <message>
            <source>disc reads at top dead centre</source>
            <extracomment>practice/words.py</extracomment>
            <translation>o disco lê no ponto morto superior</translation>
        </message>
        <message>
            <source>note</source>
            <extracomment>practice/words.py</extracomment>
            <translation>nota</translation>
        </message>
        <message>
            <source>broken</source>
            <extracomment>practice/words.py, ui/class_editor_rows.py</extracomment>
            <translation>partido</translation>
        </message>
        <message>
            <source>shorted</source>
            <extracomment>practice/words.py, ui/class_editor_rows.py</extracomment>
            <translation>em curto-circuito</translation>
        </message>
        <message>
            <source>tab</source>
            <extracomment>practice/words.py, spec/lift_table.py, ui/class_editor_rows.py</extracomment>
            <translation>lingueta</translation>
        </message>
        <message>
            <source>thumb over No. 1's plug hole</source>
            <extracomment>practice/words.py</extracomment>
            <translation>polegar no furo da vela n.º 1</translation>
        </message>
        <message>
            <source>the magneto</source>
            <extracomment>practice/words.py</extracomment>
            <translation>o magneto</translation>
        </message>
        <message>
            <source>largest gap, lobe {lobe}</source>
            <extracomment>practice/words.py</extracomment>
            <translation>folga máxima, ressalto {lobe}</translation>
        </message>
        <message>
            <source>point at {part}</source>
            <extracomment>practice/words.py</extracomment>
            <translation>apontar {part}</translation>
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
            <translation>olhar para os contactos</translation>
        </message>
        <message>
            <source>dress the contacts</source>
            <extracomment>practice/words.py</extracomment>
            <translation>retificar os contactos</translation>
        </message>
        <message>
            <source>try {blades} {unit}</source>
            <extracomment>practice/words.py</extracomment>
            <translation>experimentar {blades} {unit}</translation>
        </message>
        <message>
            <source>meter from the lead's plug to the case</source>
            <extracomment>practice/words.py</extracomment>
            <translation>multímetro da ficha do cabo à carcaça</translation>
        </message>
        <message>
            <source>lift the magneto off</source>
            <extracomment>practice/words.py</extracomment>
            <translation>retirar o magneto</translation>
        </message>
        <message>
            <source>paint marks across the coupling</source>
            <extracomment>practice/words.py</extracomment>
            <translation>pintar marcas através do acoplamento</translation>
        </message>
        <message>
            <source>turn the propeller {angle}° with rotation</source>
            <extracomment>practice/words.py</extracomment>
            <translation>rodar a hélice {angle}° no sentido de rotação</translation>
        </message>
        <message>
            <source>turn the propeller {angle}° against rotation</source>
            <extracomment>practice/words.py</extracomment>
            <translation>rodar a hélice {angle}° contra a rotação</translation>
        </message>
        <message>
            <source>turn the propeller with rotation to {reading}° on the disc</source>
            <extracomment>practice/words.py</extracomment>
            <translation>rodar a hélice no sentido de rotação até {reading}° no disco</translation>
        </message>
        <message>
            <source>turn the propeller against rotation to {reading}° on the disc</source>
            <extracomment>practice/words.py</extracomment>
            <translation>rodar a hélice contra a rotação até {reading}° no disco</translation>
        </message>
        <message>
            <source>lay the straightedge on</source>
            <extracomment>practice/words.py</extracomment>
            <translation>pousar a régua</translation>
        </message>
        <message>
            <source>take the straightedge away</source>
            <extracomment>practice/words.py</extracomment>
            <translation>retirar a régua</translation>
        </message>
        <message>
            <source>look square over the straightedge</source>
            <extracomment>practice/words.py</extracomment>
            <translation>olhar a direito por cima da régua</translation>
        </message>
        <message>
            <source>look from {eye}° to the side</source>
            <extracomment>practice/words.py</extracomment>
            <translation>olhar de {eye}° para o lado</translation>
        </message>
        <message>
            <source>clip the lamp across the contacts</source>
            <extracomment>practice/words.py</extracomment>
            <translation>ligar a lâmpada aos contactos</translation>
        </message>
        <message>
            <source>take the lamp off</source>
            <extracomment>practice/words.py</extracomment>
            <translation>retirar a lâmpada</translation>
        </message>
        <message>
            <source>screw the piston stop in</source>
            <extracomment>practice/words.py</extracomment>
            <translation>enroscar o batente do êmbolo</translation>
        </message>
        <message>
            <source>take the piston stop out</source>
            <extracomment>practice/words.py</extracomment>
            <translation>retirar o batente do êmbolo</translation>
        </message>
        <message>
            <source>turn the disc on the crank {by}° earlier</source>
            <extracomment>practice/words.py</extracomment>
            <translation>rodar o disco na cambota {by}° para mais cedo</translation>
        </message>
        <message>
            <source>turn the disc on the crank {by}° later</source>
            <extracomment>practice/words.py</extracomment>
            <translation>rodar o disco na cambota {by}° para mais tarde</translation>
        </message>
        <message>
            <source>slip paper under the spring tab</source>
            <extracomment>practice/words.py</extracomment>
            <translation>meter papel sob a lingueta de mola</translation>
        </message>
        <message>
            <source>take the paper from the spring tab</source>
            <extracomment>practice/words.py</extracomment>
            <translation>tirar o papel da lingueta de mola</translation>
        </message>
        <message>
            <source>chock the wheels</source>
            <extracomment>practice/words.py</extracomment>
            <translation>calçar as rodas</translation>
        </message>
        <message>
            <source>take the chocks away</source>
            <extracomment>practice/words.py</extracomment>
            <translation>retirar os calços</translation>
        </message>
        <message>
            <source>take the spark plugs out</source>
            <extracomment>practice/words.py</extracomment>
            <translation>retirar as velas</translation>
        </message>
        <message>
            <source>put the spark plugs in</source>
            <extracomment>practice/words.py</extracomment>
            <translation>montar as velas</translation>
        </message>
        <message>
            <source>tighten the magneto's nuts</source>
            <extracomment>practice/words.py</extracomment>
            <translation>apertar as porcas do magneto</translation>
        </message>
        <message>
            <source>take the nuts off and draw the magneto back</source>
            <extracomment>practice/words.py</extracomment>
            <translation>retirar as porcas e recuar o magneto</translation>
        </message>
        <message>
            <source>pin the rotor</source>
            <extracomment>practice/words.py</extracomment>
            <translation>travar o rotor com o pino</translation>
        </message>
        <message>
            <source>take the pin out</source>
            <extracomment>practice/words.py</extracomment>
            <translation>retirar o pino</translation>
        </message>
        <message>
            <source>refit the magneto as its rotor stands</source>
            <extracomment>practice/words.py</extracomment>
            <translation>montar o magneto como está o rotor</translation>
        </message>
        <message>
            <source>go to the left magneto</source>
            <extracomment>practice/words.py</extracomment>
            <translation>passar ao magneto esquerdo</translation>
        </message>
        <message>
            <source>go to the right magneto</source>
            <extracomment>practice/words.py</extracomment>
            <translation>passar ao magneto direito</translation>
        </message>
        <message>
            <source>firing_order is {order}; it must name each cylinder from 1 to {n} once</source>
            <extracomment>spec/engine.py</extracomment>
            <translation>firing_order é {order}; deve indicar cada cilindro de 1 a {n} uma vez</translation>
        </message>
        <message>
            <source>firing_order begins with {first}; it must begin with cylinder 1</source>
            <extracomment>spec/engine.py</extracomment>
            <translation>firing_order começa por {first}; deve começar pelo cilindro 1</translation>
        </message>
        <message>
            <source>rod_mm is {rod:g}; it must be longer than half the stroke, {crank:g} mm</source>
            <extracomment>spec/engine.py</extracomment>
            <translation>rod_mm é {rod:g}; deve ser maior do que meio curso, {crank:g} mm</translation>
        </message>
        <message>
            <source>articulation is for a radial engine; this one is {arrangement}</source>
            <extracomment>spec/engine.py</extracomment>
            <translation>articulation é para um motor em estrela; este é {arrangement}</translation>
        </message>
        <message>
            <source>articulation.master_cylinder is {master_cylinder}; the engine has {cylinders} cylinders</source>
            <extracomment>spec/engine.py</extracomment>
            <translation>articulation.master_cylinder é {master_cylinder}; o motor tem {cylinders} cilindros</translation>
        </message>
        <message>
            <source>articulation.knuckle_angles_deg has {count} values; it must have one for each of the {cylinders} cylinders</source>
            <extracomment>spec/engine.py</extracomment>
            <translation>articulation.knuckle_angles_deg tem {count} valores; deve ter um para cada um dos {cylinders} cilindros</translation>
        </message>
        <message>
            <source>articulation.link_rod_mm is {rod:g}; it must be longer than half the stroke and the knuckle radius together, {reach:g} mm</source>
            <extracomment>spec/engine.py</extracomment>
            <translation>articulation.link_rod_mm é {rod:g}; deve ser maior do que meio curso e o raio da articulação juntos, {reach:g} mm</translation>
        </message>
        <message>
            <source>not a number (NaN)</source>
            <extracomment>spec/files.py</extracomment>
            <translation>não é um número (NaN)</translation>
        </message>
        <message>
            <source>infinite</source>
            <extracomment>spec/files.py</extracomment>
            <translation>infinito</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be at least {ge:g}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} é {found}; deve ser pelo menos {ge:g}</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be above {gt:g}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} é {found}; deve ser superior a {gt:g}</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be at most {le:g}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} é {found}; deve ser no máximo {le:g}</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be below {lt:g}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} é {found}; deve ser inferior a {lt:g}</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be a multiple of {multiple_of:g}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} é {found}; deve ser múltiplo de {multiple_of:g}</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be a whole number</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} é {found}; deve ser um número inteiro</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be text</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} é {found}; deve ser texto</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be text without broken characters</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} é {found}; deve ser texto sem caracteres corrompidos</translation>
        </message>
        <message>
            <source>{field} is {found}; it must have at least {min_length} characters</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} é {found}; deve ter pelo menos {min_length} caracteres</translation>
        </message>
        <message>
            <source>{field} is {found}; it must have at most {max_length} characters</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} é {found}; deve ter no máximo {max_length} caracteres</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be one line of text</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} é {found}; deve ser uma linha de texto</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be true or false</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} é {found}; deve ser true ou false</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be {expected}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} é {found}; deve ser {expected}</translation>
        </message>
        <message>
            <source>{field} is {found}; it must have at least {min_length} values</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} é {found}; deve ter pelo menos {min_length} valores</translation>
        </message>
        <message>
            <source>{field} is {found}; it must have at most {max_length} values</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} é {found}; deve ter no máximo {max_length} valores</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be a list</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} é {found}; deve ser uma lista</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be an object in braces</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} é {found}; deve ser um objeto entre chavetas</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be a finite number of millimetres</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} é {found}; deve ser um número finito de milímetros</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be a finite number of degrees</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} é {found}; deve ser um número finito de graus</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be a finite number of newton metres</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} é {found}; deve ser um número finito de newton-metros</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be a finite number of ohms</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} é {found}; deve ser um número finito de ohms</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be a finite number</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} é {found}; deve ser um número finito</translation>
        </message>
        <message>
            <source>{field} is missing</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} falta</translation>
        </message>
        <message>
            <source>{field} is not a known name (known here: {known})</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} não é um nome conhecido (conhecidos aqui: {known})</translation>
        </message>
        <message>
            <source>{field} is {found}; it must {rule}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} é {found}; deve {rule}</translation>
        </message>
        <message>
            <source>{file}: is larger than {most:g} MB, the most that is read</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{file}: é maior do que {most:g} MB, o máximo que se lê</translation>
        </message>
        <message>
            <source>“{repeated}” is given twice in one place; give it once</source>
            <extracomment>spec/files.py</extracomment>
            <translation>“{repeated}” aparece duas vezes no mesmo lugar; indicá-lo uma vez</translation>
        </message>
        <message>
            <source>{source}: holds no {kind} object; it must be one JSON object in braces</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{source}: não contém objeto {kind}; deve ser um objeto JSON entre chavetas</translation>
        </message>
        <message>
            <source>{source}: format is missing; it must be "{wanted}"</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{source}: falta format; deve ser "{wanted}"</translation>
        </message>
        <message>
            <source>{field} is not a known name (did you mean {close}?)</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} não é um nome conhecido (seria {close}?)</translation>
        </message>
        <message>
            <source>{field}.kind is {found}; it must be {tags}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field}.kind é {found}; deve ser {tags}</translation>
        </message>
        <message>
            <source>{field}.kind is missing; it must be {tags}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field}.kind falta; deve ser {tags}</translation>
        </message>
        <message>
            <source>it is not a file</source>
            <extracomment>spec/files.py</extracomment>
            <translation>não é um ficheiro</translation>
        </message>
        <message>
            <source>{file}: cannot be read: {reason}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{file}: não pode ser lido: {reason}</translation>
        </message>
        <message>
            <source>{file}: is not a text file (byte {byte} is not UTF-8)</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{file}: não é um ficheiro de texto (o byte {byte} não é UTF-8)</translation>
        </message>
        <message>
            <source>{file}: line {line}, column {column}: not JSON: {reason}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{file}: linha {line}, coluna {column}: não é JSON: {reason}</translation>
        </message>
        <message>
            <source>{file}: is nested too deeply</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{file}: está aninhado com demasiada profundidade</translation>
        </message>
        <message>
            <source>holds a list of {count} values; at most {most} are read</source>
            <extracomment>spec/files.py</extracomment>
            <translation>contém uma lista de {count} valores; leem-se no máximo {most}</translation>
        </message>
        <message>
            <source>{file}: cannot be written: {reason}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{file}: não pode ser escrito: {reason}</translation>
        </message>
        <message>
            <source>Magneto on its engine</source>
            <extracomment>spec/formats.py</extracomment>
            <translation>Magneto no seu motor</translation>
        </message>
        <message>
            <source>Lesson</source>
            <extracomment>spec/formats.py</extracomment>
            <translation>Lição</translation>
        </message>
        <message>
            <source>Attempt at an exercise</source>
            <extracomment>spec/formats.py</extracomment>
            <translation>Tentativa de um exercício</translation>
        </message>
        <message>
            <source>Set of exercises for a class</source>
            <extracomment>spec/formats.py</extracomment>
            <translation>Série de exercícios para uma turma</translation>
        </message>
        <message>
            <source>Job sheet of a magneto</source>
            <extracomment>spec/formats.py</extracomment>
            <translation>Folha de trabalho de um magneto</translation>
        </message>
        <message>
            <source>{file}: is not a file of this program; its format must be one of {known}</source>
            <extracomment>spec/formats.py</extracomment>
            <translation>{file}: não é um ficheiro deste programa; o seu format deve ser um de {known}</translation>
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
            <translation>{first} e {other}</translation>
        </message>
        <message>
            <source>“{name}” is neither a file nor one of the shipped magnetos: {known}</source>
            <extracomment>spec/library.py</extracomment>
            <translation>“{name}” não é um ficheiro nem um dos magnetos fornecidos: {known}</translation>
        </message>
        <message>
            <source>“{name}” is neither a file nor one of the shipped engines: {known}</source>
            <extracomment>spec/library.py</extracomment>
            <translation>“{name}” não é um ficheiro nem um dos motores fornecidos: {known}</translation>
        </message>
        <message>
            <source>“{name}” is neither a file nor one of the shipped installations: {known}</source>
            <extracomment>spec/library.py</extracomment>
            <translation>“{name}” não é um ficheiro nem uma das instalações fornecidas: {known}</translation>
        </message>
        <message>
            <source>{where} has no angle in column {column} (columns separated by {separator})</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{where} não tem ângulo na coluna {column} (colunas separadas por {separator})</translation>
        </message>
        <message>
            <source>{where} has no reading in column {column} (columns separated by {separator})</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{where} não tem leitura na coluna {column} (colunas separadas por {separator})</translation>
        </message>
        <message>
            <source>semicolon</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>ponto e vírgula</translation>
        </message>
        <message>
            <source>comma</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>vírgula</translation>
        </message>
        <message>
            <source>space</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>espaço</translation>
        </message>
        <message>
            <source>the table</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>a tabela</translation>
        </message>
        <message>
            <source>{source}: its commas may be decimal signs or stand between columns: say which, or save it with semicolons between columns</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{source}: as suas vírgulas podem ser sinais decimais ou separar colunas: dizer qual, ou guardá-la com pontos e vírgulas entre colunas</translation>
        </message>
        <message>
            <source>{source}: is longer than {most:g} million characters, the most that is read</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{source}: tem mais de {most:g} milhões de caracteres, o máximo que se lê</translation>
        </message>
        <message>
            <source>{source}: the decimal sign must be a point or a comma, the columns two of the first hundred</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{source}: o sinal decimal deve ser ponto ou vírgula, as colunas duas das primeiras cem</translation>
        </message>
        <message>
            <source>{source}: has {count} rows of numbers; it must have at least {least} (“{numbered}” is none: write numbers alone, without their units)</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{source}: tem {count} linhas de números; deve ter pelo menos {least} (“{numbered}” não é uma: escrever só números, sem unidades)</translation>
        </message>
        <message>
            <source>{where}: “{field}” is not a number (columns separated by {separator}, decimal sign “{decimal}”)</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{where}: “{field}” não é um número (colunas separadas por {separator}, sinal decimal “{decimal}”)</translation>
        </message>
        <message>
            <source>{where}: {field} is too large; at most {most:g} is read</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{where}: {field} é grande demais; lê-se no máximo {most:g}</translation>
        </message>
        <message>
            <source>{source}: line {line}</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{source}: linha {line}</translation>
        </message>
        <message>
            <source>{source}: has more than {most} rows, the most that are read</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{source}: tem mais de {most} linhas, o máximo que se lê</translation>
        </message>
        <message>
            <source>{source}: has no row of numbers in its first 100 lines</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{source}: não tem linha de números nas primeiras 100 linhas</translation>
        </message>
        <message>
            <source>{source}: has {count} rows of numbers; it must have at least {least}</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{source}: tem {count} linhas de números; deve ter pelo menos {least}</translation>
        </message>
        <message>
            <source>{source}: line {line}: “{row}” is not a row of numbers</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{source}: linha {line}: “{row}” não é uma linha de números</translation>
        </message>
        <message>
            <source>{source}: has both points and commas in its numbers: say which is the decimal sign</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{source}: tem pontos e vírgulas nos números: dizer qual é o sinal decimal</translation>
        </message>
        <message>
            <source>{field} is [{low:g}, {high:g}]; the first must be below the second</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>{field} é [{low:g}, {high:g}]; o primeiro deve ser inferior ao segundo</translation>
        </message>
        <message>
            <source>lobes {lobe} and {next} overlap: their tops are {apart:g}° apart and a lobe is {width:g}° wide</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>os ressaltos {lobe} e {next} sobrepõem-se: os topos distam {apart:g}° e um ressalto tem {width:g}° de largura</translation>
        </message>
        <message>
            <source>angle_deg has {angles} values and contact_lift_mm {lifts}; they must be as many</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>angle_deg tem {angles} valores e contact_lift_mm {lifts}; devem ser tantos</translation>
        </message>
        <message>
            <source>contact_lift_mm must begin and end with 0 (the heel off the lobe)</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>contact_lift_mm deve começar e acabar em 0 (o calcador fora do ressalto)</translation>
        </message>
        <message>
            <source>contact_lift_mm never rises; the top must be at least 0.001</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>contact_lift_mm nunca sobe; o topo deve ser pelo menos 0.001</translation>
        </message>
        <message>
            <source>the top of contact_lift_mm is at {angle:g}°; angle_deg counts from it</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>o topo de contact_lift_mm está a {angle:g}°; angle_deg conta-se a partir dele</translation>
        </message>
        <message>
            <source>contact_lift_mm must rise to one top and fall again, without steps or dips</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>contact_lift_mm deve subir até um topo e descer de novo, sem degraus nem covas</translation>
        </message>
        <message>
            <source>lobe_peaks_deg begins with {first:g}; it must begin with 0 (lobe 1)</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>lobe_peaks_deg começa por {first:g}; deve começar por 0 (ressalto 1)</translation>
        </message>
        <message>
            <source>lobe_peaks_deg: {overlap}</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>lobe_peaks_deg: {overlap}</translation>
        </message>
        <message>
            <source>e_gap_deg is {e_gap:g}; with {poles} poles it must be below {most:g}, where full register lies</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>e_gap_deg é {e_gap:g}; com {poles} polos deve ser inferior a {most:g}, onde fica o registo pleno</translation>
        </message>
        <message>
            <source>contact_screw.range_deg is [{low:g}, {high:g}]; it must contain 0</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>contact_screw.range_deg é [{low:g}, {high:g}]; deve conter 0</translation>
        </message>
        <message>
            <source>designed_setting.backplate_deg is {backplate:g}; it must lie in backplate.range_deg, [{low:g}, {high:g}]</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>designed_setting.backplate_deg é {backplate:g}; deve estar em backplate.range_deg, [{low:g}, {high:g}]</translation>
        </message>
        <message>
            <source>breaker.pivot_distance_mm is {distance:g}; the pivot must stand outside the lobe's top, {top:g} mm from the cam's centre</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>breaker.pivot_distance_mm é {distance:g}; o eixo deve ficar fora do topo do ressalto, a {top:g} mm do centro do came</translation>
        </message>
        <message>
            <source>designed_setting.gap_mm is {gap:g}; it must be below the contact lift at the top of the lobe, {top_lift:.4g} mm</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>designed_setting.gap_mm é {gap:g}; deve ser inferior ao levantamento do contacto no topo do ressalto, {top_lift:.4g} mm</translation>
        </message>
        <message>
            <source>angle_deg goes from {before:g} to {after:g}; it must increase</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>angle_deg passa de {before:g} a {after:g}; deve crescer</translation>
        </message>
        <message>
            <source>lobe_peaks_deg goes from {before:g} to {after:g}; it must increase</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>lobe_peaks_deg passa de {before:g} a {after:g}; deve crescer</translation>
        </message>
        <message>
            <source>condition.heel_wear_mm needs breaker.heel_arm_mm, to know what wear does</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>condition.heel_wear_mm precisa de breaker.heel_arm_mm, para saber o que o desgaste faz</translation>
        </message>
        <message>
            <source>breaker.{field} is missing; only a measured profile can do without it</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>breaker.{field} falta; só um perfil medido o dispensa</translation>
        </message>
        <message>
            <source>breaker.heel_arm_mm is {arm:g}; with it the heel reaches from {near:g} to {far:g} mm of the cam's centre, and must reach {radius:g} mm</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>breaker.heel_arm_mm é {arm:g}; com ele o calcador chega de {near:g} a {far:g} mm do centro do came, e deve chegar a {radius:g} mm</translation>
        </message>
        <message>
            <source>condition.{field} has {count} values; it must have one for each of the {lobes} lobes</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>condition.{field} tem {count} valores; deve ter um para cada um dos {lobes} ressaltos</translation>
        </message>
        <message>
            <source>condition.lobe_lift_error_mm takes {error:g} mm off lobe {lobe}, which has only {top_lift:.4g} mm of contact lift</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>condition.lobe_lift_error_mm tira {error:g} mm ao ressalto {lobe}, que tem só {top_lift:.4g} mm de levantamento do contacto</translation>
        </message>
        <message>
            <source>condition.lobe_angle_error_deg: {overlap}</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>condition.lobe_angle_error_deg: {overlap}</translation>
        </message>
        <message>
            <source>sources[{i}].field is “{field}”; it must be the name of a field of this file, such as “{such}”</source>
            <extracomment>spec/sources.py</extracomment>
            <translation>sources[{i}].field é “{field}”; tem de ser o nome de um campo deste ficheiro, como “{such}”</translation>
        </message>
        <message>
            <source>sources[{i}].field is “{field}”, which has a source already; give it one</source>
            <extracomment>spec/sources.py</extracomment>
            <translation>sources[{i}].field é “{field}”, que já tem uma fonte; indicar só uma</translation>
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
            <translation>“{unit}” não é uma unidade de comprimento: usar {known}</translation>
        </message>
        <message>
            <source>“{text}” is not an angle: write a number and a unit, such as 1.5°</source>
            <extracomment>spec/units.py</extracomment>
            <translation>“{text}” não é um ângulo: escrever um número e uma unidade, como 1.5°</translation>
        </message>
        <message>
            <source>“{text}” has no unit: write one, such as 1.5°</source>
            <extracomment>spec/units.py</extracomment>
            <translation>“{text}” não tem unidade: escrever uma, como 1.5°</translation>
        </message>
        <message>
            <source>“{unit}” is not a unit of angle: use {known}</source>
            <extracomment>spec/units.py</extracomment>
            <translation>“{unit}” não é uma unidade de ângulo: usar {known}</translation>
        </message>
        <message>
            <source>“{text}” has a minus and a side of top dead centre: write one or the other</source>
            <extracomment>spec/units.py</extracomment>
            <translation>“{text}” tem um menos e um lado do ponto morto superior: escrever um ou outro</translation>
        </message>
        <message>
            <source>{length} in</source>
            <extracomment>spec/units.py</extracomment>
            <translation>{length} in</translation>
        </message>
        <message>
            <source>“{text}” is too large</source>
            <extracomment>spec/units.py</extracomment>
            <translation>“{text}” é grande demais</translation>
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
            <translation>“{text}” não é um número: escrever um como {example}</translation>
        </message>
        <message>
            <source>The program had not been closed as it should; the bench is as you left it.</source>
            <extracomment>ui/app.py</extracomment>
            <translation>O programa não tinha sido fechado como devia; a bancada está como foi deixada.</translation>
        </message>
        <message>
            <source>Your work is not kept for after a crash: {reason}</source>
            <extracomment>ui/app.py</extracomment>
            <translation>O trabalho não se conserva para depois de uma falha: {reason}</translation>
        </message>
        <message>
            <source>Drafts of a magneto of your own wait for you: File, A magneto of your own…</source>
            <extracomment>ui/app.py</extracomment>
            <translation>Há rascunhos de um magneto próprio à espera: Ficheiro, Um magneto próprio…</translation>
        </message>
        <message>
            <source>SVG (*.svg);;PDF (*.pdf);;PNG (*.png)</source>
            <extracomment>ui/asking.py</extracomment>
            <translation>SVG (*.svg);;PDF (*.pdf);;PNG (*.png)</translation>
        </message>
        <message>
            <source>Save the picture</source>
            <extracomment>ui/asking.py</extracomment>
            <translation>Guardar a imagem</translation>
        </message>
        <message>
            <source>In hand: {part}.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Na mão: {part}.</translation>
        </message>
        <message>
            <source>Rotor and pole shoes are diagrammatic; cam, arm, contacts and marks are to scale.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Rotor e sapatas polares são esquemáticos; came, braço, contactos e marcas estão à escala.</translation>
        </message>
        <message>
            <source>Breaker end of the magneto</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Lado do ruptor do magneto</translation>
        </message>
        <message>
            <source>Seen from the drive end, through the magneto, rotation {way}.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Visto do lado motriz, através do magneto, rotação {way}.</translation>
        </message>
        <message>
            <source>Seen from the breaker end, rotation {way}.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Visto do lado do ruptor, rotação {way}.</translation>
        </message>
        <message>
            <source>Rotor {rotor} past neutral, held; backplate {backplate}, contact screw {screw}; {contacts}.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Rotor {rotor} após o neutro, seguro; placa de base {backplate}, parafuso de contacto {screw}; {contacts}.</translation>
        </message>
        <message>
            <source>Rotor {rotor} past neutral, let go; backplate {backplate}, contact screw {screw}; {contacts}.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Rotor {rotor} após o neutro, largado; placa de base {backplate}, parafuso de contacto {screw}; {contacts}.</translation>
        </message>
        <message>
            <source>The gap is drawn {factor} times its size, the arm lifted with it off the cam.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>A folga está desenhada {factor} vezes maior, o braço levantado com ela do came.</translation>
        </message>
        <message>
            <source>Arm and heel in plain proportions: this magneto's file gives only the measured lift.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Braço e calcador em proporções simples: o ficheiro deste magneto dá só o levantamento medido.</translation>
        </message>
        <message>
            <source>Cam on the distributor shaft, {ratio} turn a rotor turn; drawn on the rotor's axis.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Came no veio do distribuidor, {ratio} de volta por volta do rotor; desenhado no eixo do rotor.</translation>
        </message>
        <message>
            <source>contacts closed</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>contactos fechados</translation>
        </message>
        <message>
            <source>contacts open {gap}</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>contactos abertos {gap}</translation>
        </message>
        <message>
            <source>Seen through from the drive end</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Visto através, do lado motriz</translation>
        </message>
        <message>
            <source>gap drawn {factor}×</source>
            <extracomment>ui/breaker_view.py, ui/contact_view.py</extracomment>
            <translation>folga desenhada {factor}×</translation>
        </message>
        <message>
            <source>at: {place}</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>em: {place}</translation>
        </message>
        <message>
            <source>rotor let go, but the engine holds it</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>rotor largado, mas o motor segura-o</translation>
        </message>
        <message>
            <source>rotor free</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>rotor livre</translation>
        </message>
        <message>
            <source>what is there ({part}) stays: drag the rotor, the backplate or the contact screw</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>o que está aí ({part}) não se move: arrastar o rotor, a placa de base ou o parafuso de contacto</translation>
        </message>
        <message>
            <source>Rotor held.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Rotor seguro.</translation>
        </message>
        <message>
            <source>Rotor let go.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Rotor largado.</translation>
        </message>
        <message>
            <source>Kept on this machine, and tried again every {seconds} seconds: {why}</source>
            <extracomment>ui/class_delivery.py</extracomment>
            <translation>Guardado nesta máquina, e tentado de novo a cada {seconds} segundos: {why}</translation>
        </message>
        <message>
            <source>Handed in: {file} stands in {folder}.</source>
            <extracomment>ui/class_delivery.py</extracomment>
            <translation>Entregue: {file} está em {folder}.</translation>
        </message>
        <message>
            <source>Exercises of the class</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Exercícios da turma</translation>
        </message>
        <message>
            <source>&amp;Begin</source>
            <extracomment>ui/class_desk.py, ui/practice_choice.py</extracomment>
            <translation>&amp;Começar</translation>
        </message>
        <message>
            <source>Hand in a &amp;saved attempt…</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Entregar uma tentativa &amp;guardada…</translation>
        </message>
        <message>
            <source>&amp;Try again now</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>&amp;Tentar de novo agora</translation>
        </message>
        <message>
            <source>Deliver to &amp;another folder…</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Entregar noutra &amp;pasta…</translation>
        </message>
        <message>
            <source>as the instructor gives it; capitals and hyphens do not matter</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>como o instrutor o dá; maiúsculas e hífenes não importam</translation>
        </message>
        <message>
            <source>Name or number</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Nome ou número</translation>
        </message>
        <message>
            <source>the folder the whole class hands in to</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>a pasta onde toda a turma entrega</translation>
        </message>
        <message>
            <source>&amp;Code</source>
            <extracomment>ui/class_desk.py, ui/class_paper_dialog.py, ui/practice_choice.py</extracomment>
            <translation>Có&amp;digo</translation>
        </message>
        <message>
            <source>&amp;Name or number</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>&amp;Nome ou número</translation>
        </message>
        <message>
            <source>&amp;Hand in to</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>&amp;Entregar em</translation>
        </message>
        <message>
            <source>Open a class's file</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Abrir o ficheiro de uma turma</translation>
        </message>
        <message>
            <source>Class sets (*.json);;All files (*)</source>
            <extracomment>ui/class_desk.py, ui/class_gather.py, ui/class_maker.py</extracomment>
            <translation>Séries da turma (*.json);;Todos os ficheiros (*)</translation>
        </message>
        <message>
            <source>{number}. {name} (about {minutes} minutes)</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>{number}. {name} (cerca de {minutes} minutos)</translation>
        </message>
        <message>
            <source>under way</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>em curso</translation>
        </message>
        <message>
            <source>Hand in a saved attempt</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Entregar uma tentativa guardada</translation>
        </message>
        <message>
            <source>{count} delivered.</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>{count} entregues.</translation>
        </message>
        <message>
            <source>Hand in to</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Entregar em</translation>
        </message>
        <message>
            <source>Deliver to another folder</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Entregar noutra pasta</translation>
        </message>
        <message>
            <source>How it stands</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Como está</translation>
        </message>
        <message>
            <source>&amp;Open file…</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>&amp;Abrir ficheiro…</translation>
        </message>
        <message>
            <source>Choose &amp;folder…</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Escolher pa&amp;sta…</translation>
        </message>
        <message>
            <source>Type the class's code, or open its file; then your name, and begin.</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Escrever o código da turma, ou abrir o seu ficheiro; depois o nome, e começar.</translation>
        </message>
        <message>
            <source>Everyone has a fault of their own: it hangs on the name as you type it.</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Cada um tem a sua própria avaria: depende do nome como se escreve.</translation>
        </message>
        <message>
            <source>Everyone has the same fault.</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Todos têm a mesma avaria.</translation>
        </message>
        <message>
            <source>Hints are not given.</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Não se dão dicas.</translation>
        </message>
        <message>
            <source>not begun</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>não começado</translation>
        </message>
        <message>
            <source>Type your name or number first: the attempt is handed in under it</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Escrever primeiro o nome ou número: a tentativa é entregue com ele</translation>
        </message>
        <message>
            <source>Choose the folder to hand in to first; your instructor knows it</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Escolher primeiro a pasta de entrega; o instrutor conhece-a</translation>
        </message>
        <message>
            <source>{count} attempts wait on this machine to be delivered.</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>{count} tentativas esperam nesta máquina para serem entregues.</translation>
        </message>
        <message>
            <source>Type the class's code first</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Escrever primeiro o código da turma</translation>
        </message>
        <message>
            <source>{count} still wait: {why}</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>{count} ainda esperam: {why}</translation>
        </message>
        <message>
            <source>closed without handing in</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>fechado sem entregar</translation>
        </message>
        <message>
            <source>Exercises (*.json);;All files (*)</source>
            <extracomment>ui/class_editor.py, ui/class_maker.py</extracomment>
            <translation>Exercícios (*.json);;Todos os ficheiros (*)</translation>
        </message>
        <message>
            <source>Exercise editor</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Editor de exercícios</translation>
        </message>
        <message>
            <source>Whether the exercise is valid</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Se o exercício é válido</translation>
        </message>
        <message>
            <source>&amp;Preview of seed</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>&amp;Pré-ver a semente</translation>
        </message>
        <message>
            <source>Preview</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Pré-visualização</translation>
        </message>
        <message>
            <source>Begin from a shipped exercise</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Começar de um exercício fornecido</translation>
        </message>
        <message>
            <source>Begin from a shipped one…</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Começar de um fornecido…</translation>
        </message>
        <message>
            <source>Save &amp;as…</source>
            <extracomment>ui/class_editor.py, ui/job_bars.py, ui/job_menus.py, ui/own_menus.py</extracomment>
            <translation>Guardar &amp;como…</translation>
        </message>
        <message>
            <source>Into the class's &amp;set</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Para a &amp;série da turma</translation>
        </message>
        <message>
            <source>Tr&amp;y it</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>E&amp;xperimentar</translation>
        </message>
        <message>
            <source>Open an exercise</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Abrir um exercício</translation>
        </message>
        <message>
            <source>Magneto or installation</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Magneto ou instalação</translation>
        </message>
        <message>
            <source>JSON (*.json);;All files (*)</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>JSON (*.json);;Todos os ficheiros (*)</translation>
        </message>
        <message>
            <source>Save the exercise</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Guardar o exercício</translation>
        </message>
        <message>
            <source>Saved {file}.</source>
            <extracomment>ui/class_editor.py, ui/class_gather.py, ui/class_maker.py, ui/class_plots.py, ui/own_files_work.py, ui/report_dialog.py</extracomment>
            <translation>{file} guardado.</translation>
        </message>
        <message>
            <source>This exercise has not been saved.</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Este exercício não foi guardado.</translation>
        </message>
        <message>
            <source>&amp;Open…</source>
            <extracomment>ui/class_editor.py, ui/class_gather.py</extracomment>
            <translation>&amp;Abrir…</translation>
        </message>
        <message>
            <source>this exercise</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>este exercício</translation>
        </message>
        <message>
            <source>An exercise that is not valid yet is not saved</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Um exercício ainda não válido não se guarda</translation>
        </message>
        <message>
            <source>&amp;Save…</source>
            <extracomment>ui/class_editor.py, ui/practice_window.py</extracomment>
            <translation>&amp;Guardar…</translation>
        </message>
        <message>
            <source>Go on &amp;without saving</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Continuar &amp;sem guardar</translation>
        </message>
        <message>
            <source>&amp;Back to the editor</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>&amp;Voltar ao editor</translation>
        </message>
        <message>
            <source>Not valid yet: {why}.</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Ainda não válido: {why}.</translation>
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
            <translation>&amp;Juntar uma avaria</translation>
        </message>
        <message>
            <source>A&amp;dd a goal</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>Juntar um o&amp;bjetivo</translation>
        </message>
        <message>
            <source>&amp;Name</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>&amp;Nome</translation>
        </message>
        <message>
            <source>&amp;Level, 1 to 5</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>Ní&amp;vel, 1 a 5</translation>
        </message>
        <message>
            <source>M&amp;inutes, a guide</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>M&amp;inutos, indicativo</translation>
        </message>
        <message>
            <source>Marks &amp;needed</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>Pontos n&amp;ecessários</translation>
        </message>
        <message>
            <source>&amp;Story: what is told of the case</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>&amp;História: o que se conta do caso</translation>
        </message>
        <message>
            <source>Tas&amp;k: what is to be done</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>Tare&amp;fa: o que há a fazer</translation>
        </message>
        <message>
            <source>&amp;Hints, one a line</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>Di&amp;cas, uma por linha</translation>
        </message>
        <message>
            <source>Magneto, alone or on its engine</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>Magneto, sozinho ou no seu motor</translation>
        </message>
        <message>
            <source>From a fil&amp;e…</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>De um fich&amp;eiro…</translation>
        </message>
        <message>
            <source>Magnet&amp;o</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>Magnet&amp;o</translation>
        </message>
        <message>
            <source>&amp;Both magnetos of the engine</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>Am&amp;bos os magnetos do motor</translation>
        </message>
        <message>
            <source>&amp;Rotor, off the engine</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>&amp;Rotor, fora do motor</translation>
        </message>
        <message>
            <source>As it is found</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>Como se encontra</translation>
        </message>
        <message>
            <source>screws slack</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>parafusos aliviados</translation>
        </message>
        <message>
            <source>switch lead proved</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>cabo de massa provado</translation>
        </message>
        <message>
            <source>disc at zero</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>disco a zero</translation>
        </message>
        <message>
            <source>On the tray</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>No tabuleiro</translation>
        </message>
        <message>
            <source>Crank disc, read to</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>Disco da cambota, lido a</translation>
        </message>
        <message>
            <source>{magneto}, on {engine} ({position})</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>{magneto}, em {engine} ({position})</translation>
        </message>
        <message>
            <source>&amp;Text</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>&amp;Texto</translation>
        </message>
        <message>
            <source>&amp;Magneto and tray</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>&amp;Magneto e tabuleiro</translation>
        </message>
        <message>
            <source>&amp;Faults</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>Ava&amp;rias</translation>
        </message>
        <message>
            <source>&amp;Goals</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>&amp;Objetivos</translation>
        </message>
        <message>
            <source>blades in inches</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>lâminas em polegadas</translation>
        </message>
        <message>
            <source>metric blades</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>lâminas métricas</translation>
        </message>
        <message>
            <source>piston stop</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>batente do êmbolo</translation>
        </message>
        <message>
            <source>meter for the switch lead</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>multímetro para o cabo de massa</translation>
        </message>
        <message>
            <source>at neutral</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>no neutro</translation>
        </message>
        <message>
            <source>anywhere</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>em qualquer lugar</translation>
        </message>
        <message>
            <source>at the E-gap</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>no E-gap</translation>
        </message>
        <message>
            <source>rotor °</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>° de rotor</translation>
        </message>
        <message>
            <source>°</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>°</translation>
        </message>
        <message>
            <source>teeth</source>
            <extracomment>ui/class_editor_rows.py, ui/job_kinds.py</extracomment>
            <translation>dentes</translation>
        </message>
        <message>
            <source>steps</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>passos</translation>
        </message>
        <message>
            <source>crank °</source>
            <extracomment>ui/class_editor_rows.py, ui/job_kinds.py</extracomment>
            <translation>° de cambota</translation>
        </message>
        <message>
            <source>late</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>tarde</translation>
        </message>
        <message>
            <source>early</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>cedo</translation>
        </message>
        <message>
            <source>too wide</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>grande demais</translation>
        </message>
        <message>
            <source>too narrow</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>pequeno demais</translation>
        </message>
        <message>
            <source>with cam rotation</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>com a rotação do came</translation>
        </message>
        <message>
            <source>against cam rotation</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>contra a rotação do came</translation>
        </message>
        <message>
            <source>closer</source>
            <extracomment>ui/class_editor_rows.py, ui/practice_work.py</extracomment>
            <translation>mais perto</translation>
        </message>
        <message>
            <source>wider</source>
            <extracomment>ui/class_editor_rows.py, ui/practice_work.py</extracomment>
            <translation>mais longe</translation>
        </message>
        <message>
            <source>plus</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>mais</translation>
        </message>
        <message>
            <source>minus</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>menos</translation>
        </message>
        <message>
            <source>Remove this row</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>Remover esta linha</translation>
        </message>
        <message>
            <source>each magneto</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>cada magneto</translation>
        </message>
        <message>
            <source>On which magneto</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>Em que magneto</translation>
        </message>
        <message>
            <source>Size from</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>Valor de</translation>
        </message>
        <message>
            <source>Size to</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>Valor até</translation>
        </message>
        <message>
            <source>Which way</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>Em que sentido</translation>
        </message>
        <message>
            <source>any lobe</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>qualquer ressalto</translation>
        </message>
        <message>
            <source>lobe </source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>ressalto </translation>
        </message>
        <message>
            <source>Which lobe</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>Que ressalto</translation>
        </message>
        <message>
            <source>How likely it is there [%]</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>Probabilidade de existir [%]</translation>
        </message>
        <message>
            <source>What counts</source>
            <extracomment>ui/class_editor_rows.py, ui/practice_task.py</extracomment>
            <translation>O que conta</translation>
        </message>
        <message>
            <source>Weight among the marks</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>Peso nos pontos</translation>
        </message>
        <message>
            <source>on every lobe</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>em todos os ressaltos</translation>
        </message>
        <message>
            <source>How near to the truth it must be</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>Quão perto da verdade deve estar</translation>
        </message>
        <message>
            <source>% likely</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>% provável</translation>
        </message>
        <message>
            <source>Size to, at most {most} {unit}</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>Valor até, no máximo {most} {unit}</translation>
        </message>
        <message>
            <source>weight</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>peso</translation>
        </message>
        <message>
            <source>{unit} allowed</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>{unit} permitidos</translation>
        </message>
        <message>
            <source>either</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>qualquer</translation>
        </message>
        <message>
            <source>Marks, dangers, and faults found and missed are worked out here from the acts in each file. Names and times are believed as the pupils' machines wrote them.</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Notas, perigos e defeitos achados ou não achados são apurados aqui a partir dos atos de cada ficheiro. Nomes e horas são aceites como as máquinas dos alunos os escreveram.</translation>
        </message>
        <message>
            <source>Class gathered</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Turma recolhida</translation>
        </message>
        <message>
            <source>the folder the class hands in to</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>a pasta onde a turma entrega</translation>
        </message>
        <message>
            <source>Progress</source>
            <extracomment>ui/class_gather.py, ui/job_bars.py</extracomment>
            <translation>Progresso</translation>
        </message>
        <message>
            <source>&amp;Folder</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>&amp;Pasta</translation>
        </message>
        <message>
            <source>Se&amp;t</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Sér&amp;ie</translation>
        </message>
        <message>
            <source>Steps</source>
            <extracomment>ui/class_gather.py, ui/lesson_view.py</extracomment>
            <translation>Passos</translation>
        </message>
        <message>
            <source>P&amp;lots</source>
            <extracomment>ui/class_gather.py, ui/menus.py</extracomment>
            <translation>&amp;Gráficos</translation>
        </message>
        <message>
            <source>&amp;Replay</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>&amp;Repetição</translation>
        </message>
        <message>
            <source>The debrief of the attempt that is chosen, with its replay</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>O balanço da tentativa escolhida, com a sua repetição</translation>
        </message>
        <message>
            <source>Save as CS&amp;V…</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Guardar como CS&amp;V…</translation>
        </message>
        <message>
            <source>Cancelled. What was marked so far is kept for the next time.</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Cancelado. O que já se avaliou fica guardado para a próxima vez.</translation>
        </message>
        <message>
            <source>{pupil}, {exercise}: {percent} % in {minutes} minutes. Replay shows how.</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>{pupil}, {exercise}: {percent} % em {minutes} minutos. Repetição mostra como.</translation>
        </message>
        <message>
            <source>The class's folder</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>A pasta da turma</translation>
        </message>
        <message>
            <source>Open a set</source>
            <extracomment>ui/class_gather.py, ui/class_maker.py</extracomment>
            <translation>Abrir uma série</translation>
        </message>
        <message>
            <source>Save the attempts</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Guardar as tentativas</translation>
        </message>
        <message>
            <source>Tables (*.csv)</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Tabelas (*.csv)</translation>
        </message>
        <message>
            <source>the set made in this session</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>a série feita nesta sessão</translation>
        </message>
        <message>
            <source>a code, or a set's file; may be left out</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>um código, ou o ficheiro de uma série; pode omitir-se</translation>
        </message>
        <message>
            <source>&amp;Gather</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Reco&amp;lher</translation>
        </message>
        <message>
            <source>C&amp;ancel</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>&amp;Cancelar</translation>
        </message>
        <message>
            <source>&amp;Pupils</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>&amp;Alunos</translation>
        </message>
        <message>
            <source>Atte&amp;mpts</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>&amp;Tentativas</translation>
        </message>
        <message>
            <source>&amp;Steps</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Pa&amp;ssos</translation>
        </message>
        <message>
            <source>&amp;What goes wrong</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>&amp;O que corre mal</translation>
        </message>
        <message>
            <source>Choose the folder the class hands in to first</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Escolher primeiro a pasta onde a turma entrega</translation>
        </message>
        <message>
            <source>{count} were passed over; the table of attempts says why.</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>{count} foram passadas por cima; a tabela das tentativas diz porquê.</translation>
        </message>
        <message>
            <source>Nothing from: {names}.</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Nada de: {names}.</translation>
        </message>
        <message>
            <source>Choose an attempt first</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Escolher primeiro uma tentativa</translation>
        </message>
        <message>
            <source>&amp;Choose…</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>&amp;Escolher…</translation>
        </message>
        <message>
            <source>there is nothing to replay</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>não há nada para repetir</translation>
        </message>
        <message>
            <source>Text (*.txt);;Table (*.csv)</source>
            <extracomment>ui/class_maker.py, ui/practice_window.py</extracomment>
            <translation>Texto (*.txt);;Tabela (*.csv)</translation>
        </message>
        <message>
            <source>Class set</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Série da turma</translation>
        </message>
        <message>
            <source>&amp;Set</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Sér&amp;ie</translation>
        </message>
        <message>
            <source>Answer &amp;key</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Cha&amp;ve de respostas</translation>
        </message>
        <message>
            <source>Class code</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Código da turma</translation>
        </message>
        <message>
            <source>Co&amp;py</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Co&amp;piar</translation>
        </message>
        <message>
            <source>&amp;Gather…</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Reco&amp;lher…</translation>
        </message>
        <message>
            <source>Exercise from a file</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Exercício de um ficheiro</translation>
        </message>
        <message>
            <source>this set</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>esta série</translation>
        </message>
        <message>
            <source>Title and pupils are not in the code; they travel in the set's file.</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Título e alunos não estão no código; seguem no ficheiro da série.</translation>
        </message>
        <message>
            <source>The key is being made…</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>A chave está a ser feita…</translation>
        </message>
        <message>
            <source>The code is on the clipboard.</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>O código está na área de transferência.</translation>
        </message>
        <message>
            <source>Save the set</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Guardar a série</translation>
        </message>
        <message>
            <source>Class sets (*.json)</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Séries da turma (*.json)</translation>
        </message>
        <message>
            <source>Save the answer key</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Guardar a chave de respostas</translation>
        </message>
        <message>
            <source>Save set &amp;as…</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>&amp;Guardar série como…</translation>
        </message>
        <message>
            <source>&amp;Open set…</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>A&amp;brir série…</translation>
        </message>
        <message>
            <source>For the instructor: it tells every hidden fault.</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Para o instrutor: revela todas as avarias ocultas.</translation>
        </message>
        <message>
            <source>Save &amp;key…</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Guardar c&amp;have…</translation>
        </message>
        <message>
            <source>There is no set yet.</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Ainda não há série.</translation>
        </message>
        <message>
            <source>Exercises there are</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>Exercícios existentes</translation>
        </message>
        <message>
            <source>Exercises of the set, in order</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>Exercícios da série, por ordem</translation>
        </message>
        <message>
            <source>A&amp;dd ▶</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>&amp;Juntar ▶</translation>
        </message>
        <message>
            <source>From a &amp;file…</source>
            <extracomment>ui/class_maker_fields.py, ui/class_paper_dialog.py, ui/practice_choice.py</extracomment>
            <translation>De um &amp;ficheiro…</translation>
        </message>
        <message>
            <source>&amp;Write one…</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>E&amp;screver um…</translation>
        </message>
        <message>
            <source>&amp;Remove</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>&amp;Remover</translation>
        </message>
        <message>
            <source>Settings</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>Definições</translation>
        </message>
        <message>
            <source>&amp;Hints may be asked for</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>Podem pedir-se &amp;dicas</translation>
        </message>
        <message>
            <source>A straightedge of this unit, and blades of it beside the exercise's own</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>Uma régua desta unidade, e lâminas dela além das do próprio exercício</translation>
        </message>
        <message>
            <source>as the exercise says</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>como diz o exercício</translation>
        </message>
        <message>
            <source>Shown to the pupils as a guide; time is not marked</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>Mostrado aos alunos como indicação; o tempo não conta para a nota</translation>
        </message>
        <message>
            <source>The same number draws the same faults</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>O mesmo número sorteia as mesmas avarias</translation>
        </message>
        <message>
            <source>one name or number a line</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>um nome ou número por linha</translation>
        </message>
        <message>
            <source>&amp;Title</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>&amp;Título</translation>
        </message>
        <message>
            <source>Fau&amp;lts</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>A&amp;varias</translation>
        </message>
        <message>
            <source>&amp;Blades, edge</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>Lâ&amp;minas, régua</translation>
        </message>
        <message>
            <source>&amp;Minutes</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>Mi&amp;nutos</translation>
        </message>
        <message>
            <source>&amp;Number</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>N&amp;úmero</translation>
        </message>
        <message>
            <source>Level {level} · {name}</source>
            <extracomment>ui/class_maker_fields.py, ui/class_paper_dialog.py, ui/practice_choice.py</extracomment>
            <translation>Nível {level} · {name}</translation>
        </message>
        <message>
            <source>&amp;Up</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>S&amp;ubir</translation>
        </message>
        <message>
            <source>Do&amp;wn</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>D&amp;escer</translation>
        </message>
        <message>
            <source>&amp;Exercises</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>E&amp;xercícios</translation>
        </message>
        <message>
            <source>&amp;In this set, in order</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>Nest&amp;a série, por ordem</translation>
        </message>
        <message>
            <source>the same for everyone</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>as mesmas para todos</translation>
        </message>
        <message>
            <source>one of their own for each pupil</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>próprias de cada aluno</translation>
        </message>
        <message>
            <source>as the exercise has them</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>como o exercício as tem</translation>
        </message>
        <message>
            <source>metric, too</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>métricas também</translation>
        </message>
        <message>
            <source>in inches, too</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>em polegadas também</translation>
        </message>
        <message>
            <source>Pu&amp;pils (not in the code; for the key, and to see who is missing)</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>A&amp;lunos (não no código; para a chave, e para ver quem falta)</translation>
        </message>
        <message>
            <source>Draw ane&amp;w</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>S&amp;ortear de novo</translation>
        </message>
        <message>
            <source>Add an exercise: a set has one at least</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>Juntar um exercício: uma série tem pelo menos um</translation>
        </message>
        <message>
            <source>Worksheet of an exercise</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Ficha de um exercício</translation>
        </message>
        <message>
            <source>Answer key of an exercise</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Chave de respostas de um exercício</translation>
        </message>
        <message>
            <source>Name the parts: sheet</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Nomear as peças: ficha</translation>
        </message>
        <message>
            <source>Pictures of the bench as it stands</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Imagens da bancada como está</translation>
        </message>
        <message>
            <source>Names</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Nomes</translation>
        </message>
        <message>
            <source>Numbers, with lines to write on</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Números, com linhas para escrever</translation>
        </message>
        <message>
            <source>Numbers, filled in</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Números, preenchidos</translation>
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
            <translation>Letter</translation>
        </message>
        <message>
            <source>Saved {file}: 1 page.</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>{file} guardado: 1 página.</translation>
        </message>
        <message>
            <source>JSON files (*.json);;All files (*)</source>
            <extracomment>ui/class_paper_dialog.py, ui/practice_choice.py</extracomment>
            <translation>Ficheiros JSON (*.json);;Todos os ficheiros (*)</translation>
        </message>
        <message>
            <source>Paper for a class</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Papel para uma turma</translation>
        </message>
        <message>
            <source>With the exercise's &amp;hints</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Com as &amp;dicas do exercício</translation>
        </message>
        <message>
            <source>With pictures whose &amp;parts are to be named</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Com imagens cujas peças há a &amp;nomear</translation>
        </message>
        <message>
            <source>With what there is to sa&amp;y of each part</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Com o que há a di&amp;zer de cada peça</translation>
        </message>
        <message>
            <source>&amp;What</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>&amp;Quê</translation>
        </message>
        <message>
            <source>&amp;Exercise</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>&amp;Exercício</translation>
        </message>
        <message>
            <source>Beside the &amp;parts</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Junto às &amp;peças</translation>
        </message>
        <message>
            <source>Paper si&amp;ze</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>&amp;Tamanho do papel</translation>
        </message>
        <message>
            <source>&amp;Save as PDF…</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>&amp;Guardar como PDF…</translation>
        </message>
        <message>
            <source>Close</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Fechar</translation>
        </message>
        <message>
            <source>PDF (*.pdf)</source>
            <extracomment>ui/class_paper_dialog.py, ui/doors.py, ui/job_reports.py</extracomment>
            <translation>PDF (*.pdf)</translation>
        </message>
        <message>
            <source>A code is a whole number, such as 4711.</source>
            <extracomment>ui/class_paper_dialog.py, ui/practice_choice.py</extracomment>
            <translation>Um código é um número inteiro, como 4711.</translation>
        </message>
        <message>
            <source>Saved {file}: {pages} pages.</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>{file} guardado: {pages} páginas.</translation>
        </message>
        <message>
            <source>Pictures</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Imagens</translation>
        </message>
        <message>
            <source>Choose at least one picture.</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Escolher pelo menos uma imagem.</translation>
        </message>
        <message>
            <source>Plots of the class</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>Gráficos da turma</translation>
        </message>
        <message>
            <source>Save plots…</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>Guardar gráficos…</translation>
        </message>
        <message>
            <source>{count} attempts of {pupils} pupils count; {passed} passed. ● passed, × not passed.</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>Contam {count} tentativas de {pupils} alunos; {passed} aprovadas. ● aprovada, × não aprovada.</translation>
        </message>
        <message>
            <source>marks [%]</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>pontos [%]</translation>
        </message>
        <message>
            <source>attempts</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>tentativas</translation>
        </message>
        <message>
            <source>minutes, by the pupils' clocks</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>minutos, pelos relógios dos alunos</translation>
        </message>
        <message>
            <source>Marks against time</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>Pontos em função do tempo</translation>
        </message>
        <message>
            <source>mean marks [%]</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>média de pontos [%]</translation>
        </message>
        <message>
            <source>Steps, the weakest above</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>Passos, os mais fracos em cima</translation>
        </message>
        <message>
            <source>missed (hatched), then found</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>falhadas (tracejado), depois encontradas</translation>
        </message>
        <message>
            <source>Faults</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>Avarias</translation>
        </message>
        <message>
            <source>Save the plots</source>
            <extracomment>ui/class_plots.py, ui/plot_sheet.py</extracomment>
            <translation>Guardar os gráficos</translation>
        </message>
        <message>
            <source>Contacts, magnified</source>
            <extracomment>ui/contact_view.py</extracomment>
            <translation>Contactos, ampliados</translation>
        </message>
        <message>
            <source>Contacts closed.</source>
            <extracomment>ui/contact_view.py</extracomment>
            <translation>Contactos fechados.</translation>
        </message>
        <message>
            <source>Contacts open {gap}.</source>
            <extracomment>ui/contact_view.py</extracomment>
            <translation>Contactos abertos {gap}.</translation>
        </message>
        <message>
            <source>Contacts open {gap}</source>
            <extracomment>ui/contact_view.py</extracomment>
            <translation>Contactos abertos {gap}</translation>
        </message>
        <message>
            <source>breaker end, magnified</source>
            <extracomment>ui/contact_view.py</extracomment>
            <translation>lado do ruptor, ampliado</translation>
        </message>
        <message>
            <source>No measure in practice: try blades.</source>
            <extracomment>ui/contact_view.py</extracomment>
            <translation>Sem medida na prática: experimentar lâminas.</translation>
        </message>
        <message>
            <source>Contacts</source>
            <extracomment>ui/contact_view.py, ui/practice_work.py</extracomment>
            <translation>Contactos</translation>
        </message>
        <message>
            <source>on its intake stroke</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>no tempo de admissão</translation>
        </message>
        <message>
            <source>on its compression stroke</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>no tempo de compressão</translation>
        </message>
        <message>
            <source>on its power stroke</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>no tempo de expansão</translation>
        </message>
        <message>
            <source>on its exhaust stroke</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>no tempo de escape</translation>
        </message>
        <message>
            <source>intake stroke</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>tempo de admissão</translation>
        </message>
        <message>
            <source>compression stroke</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>tempo de compressão</translation>
        </message>
        <message>
            <source>power stroke</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>tempo de expansão</translation>
        </message>
        <message>
            <source>exhaust stroke</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>tempo de escape</translation>
        </message>
        <message>
            <source>No. 1 {stroke}, {where}, piston {drop} down.</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>N.º 1 {stroke}, {where}, êmbolo {drop} abaixo.</translation>
        </message>
        <message>
            <source>No. 1: {stroke}, {where}, piston {drop} down</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>N.º 1: {stroke}, {where}, êmbolo {drop} abaixo</translation>
        </message>
        <message>
            <source>Seen from the propeller end. No. 1 cut open; its stroke is felt at the plug hole.</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>Visto do lado da hélice. N.º 1 em corte; o seu tempo sente-se no furo da vela.</translation>
        </message>
        <message>
            <source>{degrees}° before top dead centre</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>{degrees}° antes do ponto morto superior</translation>
        </message>
        <message>
            <source>{degrees}° after top dead centre</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>{degrees}° depois do ponto morto superior</translation>
        </message>
        <message>
            <source>{degrees}° BTDC</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>{degrees}° antes do PMS</translation>
        </message>
        <message>
            <source>{degrees}° ATDC</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>{degrees}° depois do PMS</translation>
        </message>
        <message>
            <source>No. 1: {stroke}, {where}</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>N.º 1: {stroke}, {where}</translation>
        </message>
        <message>
            <source>No engine</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>Sem motor</translation>
        </message>
        <message>
            <source>Approached against rotation, play of {play}° of rotor not taken up</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>Chegado contra a rotação, jogo de {play}° de rotor não eliminado</translation>
        </message>
        <message>
            <source>Against rotation: play of {play}° not taken up</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>Contra a rotação: jogo de {play}° não eliminado</translation>
        </message>
        <message>
            <source>No engine.</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>Sem motor.</translation>
        </message>
        <message>
            <source>Propeller end</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>Lado da hélice</translation>
        </message>
        <message>
            <source>No. 1 cut open. Its stroke is felt at the plug hole.</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>N.º 1 em corte. O seu tempo sente-se no furo da vela.</translation>
        </message>
        <message>
            <source>rod drawn on the crank pin</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>biela desenhada no moente</translation>
        </message>
        <message>
            <source>wanted</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>pretendido</translation>
        </message>
        <message>
            <source>opens</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>abrem</translation>
        </message>
        <message>
            <source>Mar&amp;ks</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>Pon&amp;tos</translation>
        </message>
        <message>
            <source>Tr&amp;uth</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>&amp;Verdade</translation>
        </message>
        <message>
            <source>&amp;Readings</source>
            <extracomment>ui/debrief_view.py, ui/own_pictures.py</extracomment>
            <translation>&amp;Leituras</translation>
        </message>
        <message>
            <source>&amp;Time line</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>Linha do te&amp;mpo</translation>
        </message>
        <message>
            <source>P&amp;ath</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>Perc&amp;urso</translation>
        </message>
        <message>
            <source>&amp;Play</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>&amp;Reproduzir</translation>
        </message>
        <message>
            <source>Moment of the attempt</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>Momento da tentativa</translation>
        </message>
        <message>
            <source>Choose a line to see that moment</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>Escolher uma linha para ver esse momento</translation>
        </message>
        <message>
            <source>&amp;Pause</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>&amp;Pausa</translation>
        </message>
        <message>
            <source>lamp {lamp}</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>lâmpada {lamp}</translation>
        </message>
        <message>
            <source>disc {disc}</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>disco {disc}</translation>
        </message>
        <message>
            <source>{danger} ({times} times)</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>{danger} ({times} vezes)</translation>
        </message>
        <message>
            <source>Magneto and installation files (*.json);;All files (*)</source>
            <extracomment>ui/doors.py</extracomment>
            <translation>Ficheiros de magneto e instalação (*.json);;Todos os ficheiros (*)</translation>
        </message>
        <message>
            <source>Tables (*.csv *.tsv *.txt);;All files (*)</source>
            <extracomment>ui/doors.py</extracomment>
            <translation>Tabelas (*.csv *.tsv *.txt);;Todos os ficheiros (*)</translation>
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
            <translation>Imprimir o plano da mudança de dentes em PDF</translation>
        </message>
        <message>
            <source>magview {version}: a training and planning aid; the maker's current manual governs.</source>
            <extracomment>ui/doors.py</extracomment>
            <translation>magview {version}: um auxílio de treino e planeamento; vale o manual atual do fabricante.</translation>
        </message>
        <message>
            <source>Keys and cautions</source>
            <extracomment>ui/doors.py, ui/job_reports.py, ui/practice_menus.py</extracomment>
            <translation>Teclas e precauções</translation>
        </message>
        <message>
            <source>Open a magneto or an installation</source>
            <extracomment>ui/doors.py</extracomment>
            <translation>Abrir um magneto ou uma instalação</translation>
        </message>
        <message>
            <source>Open a table of the lift</source>
            <extracomment>ui/doors.py, ui/own_files_work.py</extracomment>
            <translation>Abrir uma tabela do levantamento</translation>
        </message>
        <message>
            <source>Save the magneto</source>
            <extracomment>ui/doors.py, ui/lift_dialog.py</extracomment>
            <translation>Guardar o magneto</translation>
        </message>
        <message>
            <source>Saved {name}.</source>
            <extracomment>ui/doors.py, ui/lift_dialog.py, ui/plot_sheet.py, ui/practice_window.py</extracomment>
            <translation>{name} guardado.</translation>
        </message>
        <message>
            <source>✓ Printed 1 page to {file}.</source>
            <extracomment>ui/doors.py, ui/job_reports.py</extracomment>
            <translation>✓ 1 página impressa em {file}.</translation>
        </message>
        <message>
            <source>✓ Printed {count} pages to {file}.</source>
            <extracomment>ui/doors.py, ui/job_reports.py</extracomment>
            <translation>✓ {count} páginas impressas em {file}.</translation>
        </message>
        <message>
            <source>Both faces of the disc: drive flange outside, magneto flange inside.</source>
            <extracomment>ui/drive_view.py</extracomment>
            <translation>As duas faces do disco: flange motriz por fora, flange do magneto por dentro.</translation>
        </message>
        <message>
            <source>Drive end of the magneto: the toothed coupling</source>
            <extracomment>ui/drive_view.py</extracomment>
            <translation>Lado motriz do magneto: o acoplamento dentado</translation>
        </message>
        <message>
            <source>No marks on it.</source>
            <extracomment>ui/drive_view.py</extracomment>
            <translation>Sem marcas nele.</translation>
        </message>
        <message>
            <source>Drive end</source>
            <extracomment>ui/drive_view.py</extracomment>
            <translation>Lado motriz</translation>
        </message>
        <message>
            <source>This magneto is not on an engine.</source>
            <extracomment>ui/drive_view.py</extracomment>
            <translation>Este magneto não está num motor.</translation>
        </message>
        <message>
            <source>Left magneto, drive end</source>
            <extracomment>ui/drive_view.py</extracomment>
            <translation>Magneto esquerdo, lado motriz</translation>
        </message>
        <message>
            <source>Right magneto, drive end</source>
            <extracomment>ui/drive_view.py</extracomment>
            <translation>Magneto direito, lado motriz</translation>
        </message>
        <message>
            <source>This magneto is not on an engine. Open an installation to time it to one.</source>
            <extracomment>ui/drive_view.py, ui/timing_panel.py</extracomment>
            <translation>Este magneto não está num motor. Abrir uma instalação para o calar a um.</translation>
        </message>
        <message>
            <source>after</source>
            <extracomment>ui/drive_view.py</extracomment>
            <translation>depois</translation>
        </message>
        <message>
            <source>{name}: a picture's name must end in {kinds}</source>
            <extracomment>ui/export.py</extracomment>
            <translation>{name}: o nome de uma imagem deve terminar em {kinds}</translation>
        </message>
        <message>
            <source>there are no fonts to print with; on Debian or Ubuntu fonts-dejavu-core has some</source>
            <extracomment>ui/export.py</extracomment>
            <translation>não há tipos de letra para imprimir; em Debian ou Ubuntu, fonts-dejavu-core traz alguns</translation>
        </message>
        <message>
            <source>{name}: cannot be written: {reason}</source>
            <extracomment>ui/export.py</extracomment>
            <translation>{name}: não pode ser escrito: {reason}</translation>
        </message>
        <message>
            <source>the picture could not be saved</source>
            <extracomment>ui/export.py</extracomment>
            <translation>a imagem não pôde ser guardada</translation>
        </message>
        <message>
            <source>Find in this page</source>
            <extracomment>ui/guide_find.py</extracomment>
            <translation>Procurar nesta página</translation>
        </message>
        <message>
            <source>Match &amp;case</source>
            <extracomment>ui/guide_find.py</extracomment>
            <translation>&amp;Maiúsculas e minúsculas</translation>
        </message>
        <message>
            <source>&amp;Previous</source>
            <extracomment>ui/guide_find.py</extracomment>
            <translation>&amp;Anterior</translation>
        </message>
        <message>
            <source>Ne&amp;xt</source>
            <extracomment>ui/guide_find.py</extracomment>
            <translation>&amp;Seguinte</translation>
        </message>
        <message>
            <source>C&amp;lose</source>
            <extracomment>ui/guide_find.py</extracomment>
            <translation>&amp;Fechar</translation>
        </message>
        <message>
            <source>From the other end</source>
            <extracomment>ui/guide_find.py</extracomment>
            <translation>Do outro extremo</translation>
        </message>
        <message>
            <source>Not on this page</source>
            <extracomment>ui/guide_find.py</extracomment>
            <translation>Não está nesta página</translation>
        </message>
        <message>
            <source>Page of the guide</source>
            <extracomment>ui/guide_page.py</extracomment>
            <translation>Página do guia</translation>
        </message>
        <message>
            <source>Guide – magview</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Guia – magview</translation>
        </message>
        <message>
            <source>Search the guide</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Procurar no guia</translation>
        </message>
        <message>
            <source>Contents of the guide</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Índice do guia</translation>
        </message>
        <message>
            <source>What was found</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>O que se encontrou</translation>
        </message>
        <message>
            <source>Guide</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Guia</translation>
        </message>
        <message>
            <source>◀ Back</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>◀ Recuar</translation>
        </message>
        <message>
            <source>Forward ▶</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Avançar ▶</translation>
        </message>
        <message>
            <source>Contents</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Índice</translation>
        </message>
        <message>
            <source>Search</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Procurar</translation>
        </message>
        <message>
            <source>Find in page</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Procurar na página</translation>
        </message>
        <message>
            <source>Smaller</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Menor</translation>
        </message>
        <message>
            <source>Larger</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Maior</translation>
        </message>
        <message>
            <source>Usual size</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Tamanho normal</translation>
        </message>
        <message>
            <source>Find next</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Procurar seguinte</translation>
        </message>
        <message>
            <source>Find previous</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Procurar anterior</translation>
        </message>
        <message>
            <source>End searching, or close</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Terminar a procura, ou fechar</translation>
        </message>
        <message>
            <source>Close the guide</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Fechar o guia</translation>
        </message>
        <message>
            <source>{page} – guide – magview</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>{page} – guia – magview</translation>
        </message>
        <message>
            <source>{percent} %</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>{percent} %</translation>
        </message>
        <message>
            <source>Nothing found.</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Nada encontrado.</translation>
        </message>
        <message>
            <source>One section found.</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Uma secção encontrada.</translation>
        </message>
        <message>
            <source>{count} sections found.</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>{count} secções encontradas.</translation>
        </message>
        <message>
            <source>Nothing found. Try fewer words, or the beginning of one.</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Nada encontrado. Tentar menos palavras, ou o início de uma.</translation>
        </message>
        <message>
            <source>{text} is outside {low} to {high}: {taken} is taken</source>
            <extracomment>ui/inputs.py</extracomment>
            <translation>{text} está fora de {low} a {high}: toma-se {taken}</translation>
        </message>
        <message>
            <source>{angle} before TDC</source>
            <extracomment>ui/inputs.py</extracomment>
            <translation>{angle} antes do PMS</translation>
        </message>
        <message>
            <source>{angle} after TDC</source>
            <extracomment>ui/inputs.py</extracomment>
            <translation>{angle} depois do PMS</translation>
        </message>
        <message>
            <source>{field}: {text} is refused, it must be {low} to {high}; {kept} is kept</source>
            <extracomment>ui/inputs.py</extracomment>
            <translation>{field}: {text} é recusado, tem de ser de {low} a {high}; mantém-se {kept}</translation>
        </message>
        <message>
            <source>Aircraft, engine, magneto</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>Avião, motor, magneto</translation>
        </message>
        <message>
            <source>Next check, signature</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>Próxima verificação, assinatura</translation>
        </message>
        <message>
            <source>Earlier sheets</source>
            <extracomment>ui/job_bars.py, ui/job_history.py</extracomment>
            <translation>Folhas anteriores</translation>
        </message>
        <message>
            <source>As printed</source>
            <extracomment>ui/job_bars.py, ui/job_preview.py</extracomment>
            <translation>Como impresso</translation>
        </message>
        <message>
            <source>→ skipped: {reason}</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>→ saltada: {reason}</translation>
        </message>
        <message>
            <source>○ not begun</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>○ não começada</translation>
        </message>
        <message>
            <source>✗ begun; out of limits</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✗ começada; fora dos limites</translation>
        </message>
        <message>
            <source>◐ begun; {count} missing</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>◐ começada; faltam {count}</translation>
        </message>
        <message>
            <source>◐ nothing missing; not marked done</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>◐ nada falta; não dada como feita</translation>
        </message>
        <message>
            <source>✗ done, but {what}</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✗ feito, mas {what}</translation>
        </message>
        <message>
            <source>△ done; {what}</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>△ feito; {what}</translation>
        </message>
        <message>
            <source>✓ done</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✓ feita</translation>
        </message>
        <message>
            <source>Stages done or skipped</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>Etapas feitas ou saltadas</translation>
        </message>
        <message>
            <source>Stages of the job</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>Etapas do trabalho</translation>
        </message>
        <message>
            <source>○ not signed</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>○ não assinada</translation>
        </message>
        <message>
            <source>{come} of {count} stages done or skipped</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>{come} de {count} etapas feitas ou saltadas</translation>
        </message>
        <message>
            <source>✓ Nothing is missing.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✓ Nada falta.</translation>
        </message>
        <message>
            <source>✓ Done.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✓ Feito.</translation>
        </message>
        <message>
            <source>State of the file</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>Estado do ficheiro</translation>
        </message>
        <message>
            <source>&amp;Reload</source>
            <extracomment>ui/job_bars.py, ui/job_window.py</extracomment>
            <translation>&amp;Recarregar</translation>
        </message>
        <message>
            <source>✗ Not saved: {sentence}.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✗ Não guardado: {sentence}.</translation>
        </message>
        <message>
            <source>✓ signed</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✓ assinada</translation>
        </message>
        <message>
            <source>✗ changed since signed</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✗ alterada desde a assinatura</translation>
        </message>
        <message>
            <source>missing in {count}</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>falta em {count}</translation>
        </message>
        <message>
            <source>Still missing</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>Ainda falta</translation>
        </message>
        <message>
            <source>Mark as &amp;done</source>
            <extracomment>ui/job_bars.py, ui/job_menus.py</extracomment>
            <translation>&amp;Dar como feita</translation>
        </message>
        <message>
            <source>S&amp;kip…</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>Sa&amp;ltar…</translation>
        </message>
        <message>
            <source>Open a&amp;gain</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>Abrir de &amp;novo</translation>
        </message>
        <message>
            <source>Ne&amp;xt page</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>Página &amp;seguinte</translation>
        </message>
        <message>
            <source>✗ {stage} is marked as done, with {what}.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✗ {stage} está marcado como feito, com {what}.</translation>
        </message>
        <message>
            <source>✗ Nothing is missing, but {what}.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✗ Nada falta, mas {what}.</translation>
        </message>
        <message>
            <source>✗ Done, but {what}.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✗ Feito, mas {what}.</translation>
        </message>
        <message>
            <source>✓ Nothing is missing; {what}.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✓ Nada falta; {what}.</translation>
        </message>
        <message>
            <source>△ Done; {what}.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>△ Feito; {what}.</translation>
        </message>
        <message>
            <source>&amp;Try again</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>&amp;Tentar de novo</translation>
        </message>
        <message>
            <source>Read only: {sentence}.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>Só de leitura: {sentence}.</translation>
        </message>
        <message>
            <source>1 reading out</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>1 leitura fora</translation>
        </message>
        <message>
            <source>{count} readings out</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>{count} leituras fora</translation>
        </message>
        <message>
            <source>✓ Done: {stage}; {what}.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✓ Feito: {stage}; {what}.</translation>
        </message>
        <message>
            <source>✓ Done: {stage}.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✓ Feito: {stage}.</translation>
        </message>
        <message>
            <source>{file} was changed by another program while it was open here; reload it, or save elsewhere.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>{file} foi alterado por outro programa enquanto estava aqui aberto; recarregá-lo, ou guardar noutro lugar.</translation>
        </message>
        <message>
            <source>Still missing: {what}.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>Ainda falta: {what}.</translation>
        </message>
        <message>
            <source>at {hours} h: gap {value}, between {low} and {high} 95 times in 100</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>às {hours} h: folga {value}, entre {low} e {high} 95 vezes em 100</translation>
        </message>
        <message>
            <source>at {hours} h: opening {value}, between {low} and {high} 95 times in 100</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>às {hours} h: abertura {value}, entre {low} e {high} 95 vezes em 100</translation>
        </message>
        <message>
            <source>at {hours} h: fires {value} before top dead centre, between {low} and {high} 95 times in 100</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>às {hours} h: inflama {value} antes do ponto morto superior, entre {low} e {high} 95 vezes em 100</translation>
        </message>
        <message>
            <source>Drift of gap and timing</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>Deriva da folga e da calagem</translation>
        </message>
        <message>
            <source>largest gap [mm]</source>
            <extracomment>ui/job_drift_sheet.py, ui/plot_lift.py, ui/plot_trials.py, ui/plot_wear.py</extracomment>
            <translation>folga máxima [mm]</translation>
        </message>
        <message>
            <source>opens late [rotor deg]</source>
            <extracomment>ui/job_drift_sheet.py, ui/plot_coil.py, ui/plot_lift.py, ui/plot_wear.py</extracomment>
            <translation>abre tarde [° de rotor]</translation>
        </message>
        <message>
            <source>fires BTDC [crank deg]</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>inflama antes do PMS [° de cambota]</translation>
        </message>
        <message>
            <source>largest gap [{unit}]</source>
            <extracomment>ui/job_drift_sheet.py, ui/plot_lift.py, ui/plot_trials.py, ui/plot_wear.py</extracomment>
            <translation>folga máxima [{unit}]</translation>
        </message>
        <message>
            <source>largest gap found [mm]</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>folga máxima encontrada [mm]</translation>
        </message>
        <message>
            <source>largest gap left [mm]</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>folga máxima deixada [mm]</translation>
        </message>
        <message>
            <source>opening found [rotor deg]</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>abertura encontrada [° de rotor]</translation>
        </message>
        <message>
            <source>opening left [rotor deg]</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>abertura deixada [° de rotor]</translation>
        </message>
        <message>
            <source>fires found [crank deg BTDC]</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>inflama, encontrado [° de cambota antes do PMS]</translation>
        </message>
        <message>
            <source>fires left [crank deg BTDC]</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>inflama, deixado [° de cambota antes do PMS]</translation>
        </message>
        <message>
            <source>found</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>encontrado</translation>
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
            <translation>ano-mês-dia</translation>
        </message>
        <message>
            <source>Today</source>
            <extracomment>ui/job_edits.py</extracomment>
            <translation>Hoje</translation>
        </message>
        <message>
            <source>Missing in {what}.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Falta em {what}.</translation>
        </message>
        <message>
            <source>To be cleared up: see {stage}.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Por esclarecer: ver {stage}.</translation>
        </message>
        <message>
            <source>Not done yet: {stages}.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Ainda não feito: {stages}.</translation>
        </message>
        <message>
            <source>Out of limits, or not as it must be: see {stage}.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Fora dos limites, ou não como deve ser: ver {stage}.</translation>
        </message>
        <message>
            <source>Not signed.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Não assinada.</translation>
        </message>
        <message>
            <source>What is missing, next check, signature</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>O que falta, próxima verificação, assinatura</translation>
        </message>
        <message>
            <source>What is missing</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>O que falta</translation>
        </message>
        <message>
            <source>Not judged</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Não julgado</translation>
        </message>
        <message>
            <source>Signed by {who}</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Assinada por {who}</translation>
        </message>
        <message>
            <source>Signature taken back</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Assinatura retirada</translation>
        </message>
        <message>
            <source>Changed since it was signed: the signature does not cover this sheet; sign again.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Alterada desde que foi assinada: a assinatura não cobre esta folha; assinar de novo.</translation>
        </message>
        <message>
            <source>Sign the sheet</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Assinar a folha</translation>
        </message>
        <message>
            <source>Take the signature back</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Retirar a assinatura</translation>
        </message>
        <message>
            <source>✓ Finished: every stage is done or skipped, in limits as left, and signed.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>✓ Terminada: todas as etapas feitas ou saltadas, deixada dentro dos limites e assinada.</translation>
        </message>
        <message>
            <source>✓ Signed; the sheet is as it was signed.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>✓ Assinada; a folha está como foi assinada.</translation>
        </message>
        <message>
            <source>✗ Changed since it was signed.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>✗ Alterada desde que foi assinada.</translation>
        </message>
        <message>
            <source>{mark} {verdict} ({limits})</source>
            <extracomment>ui/job_form.py</extracomment>
            <translation>{mark} {verdict} ({limits})</translation>
        </message>
        <message>
            <source>{value} ± {spread} (k = {k}, {probability}); {odds} likely within {low} to {high}; what matters most: {most}</source>
            <extracomment>ui/job_form.py</extracomment>
            <translation>{value} ± {spread} (k = {k}, {probability}); {odds} de probabilidade dentro de {low} a {high}; o que mais pesa: {most}</translation>
        </message>
        <message>
            <source>{typed} is outside {low} to {high} and was not taken</source>
            <extracomment>ui/job_form.py</extracomment>
            <translation>{typed} está fora de {low} a {high} e não foi aceite</translation>
        </message>
        <message>
            <source>Strike out the uncertainty</source>
            <extracomment>ui/job_form.py</extracomment>
            <translation>Riscar a incerteza</translation>
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
            <translation>Por esclarecer</translation>
        </message>
        <message>
            <source>How sure: {quantity}</source>
            <extracomment>ui/job_form.py</extracomment>
            <translation>Certeza: {quantity}</translation>
        </message>
        <message>
            <source>not read</source>
            <extracomment>ui/job_form.py, ui/job_kinds.py</extracomment>
            <translation>não lido</translation>
        </message>
        <message>
            <source>none given</source>
            <extracomment>ui/job_form.py</extracomment>
            <translation>nenhum dado</translation>
        </message>
        <message>
            <source>Earlier sheets of the same magneto</source>
            <extracomment>ui/job_history.py</extracomment>
            <translation>Folhas anteriores do mesmo magneto</translation>
        </message>
        <message>
            <source>Double-click, or Return, opens a sheet</source>
            <extracomment>ui/job_history.py</extracomment>
            <translation>Duplo clique, ou Enter, abre uma folha</translation>
        </message>
        <message>
            <source>Looking in {folder}…</source>
            <extracomment>ui/job_history.py</extracomment>
            <translation>A procurar em {folder}…</translation>
        </message>
        <message>
            <source>{count} earlier sheets of this magneto in {folder}.</source>
            <extracomment>ui/job_history.py</extracomment>
            <translation>{count} folhas anteriores deste magneto em {folder}.</translation>
        </message>
        <message>
            <source>Another folder…</source>
            <extracomment>ui/job_history.py</extracomment>
            <translation>Outra pasta…</translation>
        </message>
        <message>
            <source>Look again</source>
            <extracomment>ui/job_history.py</extracomment>
            <translation>Procurar de novo</translation>
        </message>
        <message>
            <source>Passed over: {sentence}.</source>
            <extracomment>ui/job_history.py</extracomment>
            <translation>Passado por cima: {sentence}.</translation>
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
            <translation>Feito por</translation>
        </message>
        <message>
            <source>in</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>in</translation>
        </message>
        <message>
            <source>crank ° before top dead centre</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>° de cambota antes do ponto morto superior</translation>
        </message>
        <message>
            <source>°, + late</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>°, + tarde</translation>
        </message>
        <message>
            <source>°, + with rotation</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>°, + no sentido de rotação</translation>
        </message>
        <message>
            <source>°, + closer</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>°, + mais perto</translation>
        </message>
        <message>
            <source>rpm</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>rpm</translation>
        </message>
        <message>
            <source>h</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>h</translation>
        </message>
        <message>
            <source>teeth, + with rotation</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>dentes, + no sentido de rotação</translation>
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
            <translation>&amp;Nova folha de trabalho…</translation>
        </message>
        <message>
            <source>&amp;Open job sheet…</source>
            <extracomment>ui/job_menus.py, ui/menus.py</extracomment>
            <translation>A&amp;brir folha de trabalho…</translation>
        </message>
        <message>
            <source>&amp;Try again to save</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>&amp;Tentar guardar de novo</translation>
        </message>
        <message>
            <source>&amp;Reload from the file</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>&amp;Recarregar do ficheiro</translation>
        </message>
        <message>
            <source>&amp;Close</source>
            <extracomment>ui/job_menus.py, ui/lift_dialog.py, ui/own_menus.py, ui/practice_menus.py, ui/report_dialog.py</extracomment>
            <translation>&amp;Fechar</translation>
        </message>
        <message>
            <source>&amp;Undo</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/own_menus.py</extracomment>
            <translation>&amp;Anular</translation>
        </message>
        <message>
            <source>&amp;Redo</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/own_menus.py</extracomment>
            <translation>&amp;Refazer</translation>
        </message>
        <message>
            <source>&amp;Steps taken…</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>&amp;Passos dados…</translation>
        </message>
        <message>
            <source>&amp;Skip for a reason…</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Sa&amp;ltar com motivo…</translation>
        </message>
        <message>
            <source>&amp;Open again</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Abrir de n&amp;ovo</translation>
        </message>
        <message>
            <source>&amp;Next page</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Página &amp;seguinte</translation>
        </message>
        <message>
            <source>&amp;Previous page</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Página &amp;anterior</translation>
        </message>
        <message>
            <source>Print to PDF, &amp;A4…</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/plan_box.py</extracomment>
            <translation>Imprimir em PDF, A&amp;4…</translation>
        </message>
        <message>
            <source>Print to PDF, &amp;Letter…</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/plan_box.py</extracomment>
            <translation>Imprimir em PDF, &amp;Letter…</translation>
        </message>
        <message>
            <source>Save as &amp;HTML…</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Guardar como &amp;HTML…</translation>
        </message>
        <message>
            <source>Save readings as &amp;CSV…</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Guardar leituras como &amp;CSV…</translation>
        </message>
        <message>
            <source>Save readings as &amp;JSON…</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Guardar leituras como &amp;JSON…</translation>
        </message>
        <message>
            <source>With &amp;earlier sheets of this magneto</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Com folhas ant&amp;eriores deste magneto</translation>
        </message>
        <message>
            <source>Lengths in &amp;inches</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Comprimentos em &amp;polegadas</translation>
        </message>
        <message>
            <source>&amp;Keys and cautions</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/practice_menus.py</extracomment>
            <translation>Te&amp;clas e precauções</translation>
        </message>
        <message>
            <source>Steps taken</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Passos dados</translation>
        </message>
        <message>
            <source>&amp;Text size</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/practice_menus.py</extracomment>
            <translation>&amp;Tamanho do texto</translation>
        </message>
        <message>
            <source>&amp;Undo: {step}</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/own_menus.py</extracomment>
            <translation>&amp;Anular: {step}</translation>
        </message>
        <message>
            <source>&amp;Redo: {step}</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/own_menus.py</extracomment>
            <translation>&amp;Refazer: {step}</translation>
        </message>
        <message>
            <source>No step has been taken yet.</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Ainda não se deu nenhum passo.</translation>
        </message>
        <message>
            <source>&amp;Job</source>
            <extracomment>ui/job_menus.py, ui/menus.py</extracomment>
            <translation>&amp;Trabalho</translation>
        </message>
        <message>
            <source>&amp;Edit</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/own_menus.py</extracomment>
            <translation>&amp;Editar</translation>
        </message>
        <message>
            <source>&amp;Stage</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Eta&amp;pa</translation>
        </message>
        <message>
            <source>&amp;Note on the job sheet</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>A&amp;notar na folha de trabalho</translation>
        </message>
        <message>
            <source>&amp;Report</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>&amp;Relatório</translation>
        </message>
        <message>
            <source>&amp;View</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/practice_menus.py</extracomment>
            <translation>&amp;Ver</translation>
        </message>
        <message>
            <source>&amp;Help</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/own_menus.py, ui/practice_menus.py</extracomment>
            <translation>A&amp;juda</translation>
        </message>
        <message>
            <source>{n} %</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>{n} %</translation>
        </message>
        <message>
            <source>Not taken yet: {what}. Correct it, or press Escape in its field to put back what was there.</source>
            <extracomment>ui/job_model.py</extracomment>
            <translation>Ainda não aceite: {what}. Corrigir, ou premir Escape no seu campo para repor o que lá estava.</translation>
        </message>
        <message>
            <source>Job sheet</source>
            <extracomment>ui/job_model.py</extracomment>
            <translation>Folha de trabalho</translation>
        </message>
        <message>
            <source>{part}: {field}</source>
            <extracomment>ui/job_model.py</extracomment>
            <translation>{part}: {field}</translation>
        </message>
        <message>
            <source>{stage}: skipped</source>
            <extracomment>ui/job_model.py</extracomment>
            <translation>{stage}: saltada</translation>
        </message>
        <message>
            <source>{stage}: done</source>
            <extracomment>ui/job_model.py</extracomment>
            <translation>{stage}: feita</translation>
        </message>
        <message>
            <source>{stage}: opened again</source>
            <extracomment>ui/job_model.py</extracomment>
            <translation>{stage}: aberta de novo</translation>
        </message>
        <message>
            <source>Cautions</source>
            <extracomment>ui/job_page.py</extracomment>
            <translation>Precauções</translation>
        </message>
        <message>
            <source>Note from the bench: {what}</source>
            <extracomment>ui/job_page.py</extracomment>
            <translation>Nota da bancada: {what}</translation>
        </message>
        <message>
            <source>Aircraft, engine, magneto and limits</source>
            <extracomment>ui/job_page.py</extracomment>
            <translation>Avião, motor, magneto e limites</translation>
        </message>
        <message>
            <source>The sheet does not say yet which magneto the bench worked with; without it there are no drawings, and limits are as entered from the maker's manual.</source>
            <extracomment>ui/job_page.py</extracomment>
            <translation>A folha ainda não diz com que magneto trabalhou a bancada; sem isso não há desenhos, e os limites são os introduzidos do manual do fabricante.</translation>
        </message>
        <message>
            <source>Note from the bench:</source>
            <extracomment>ui/job_page.py</extracomment>
            <translation>Nota da bancada:</translation>
        </message>
        <message>
            <source>On the bench: {magneto}, on {engine}.</source>
            <extracomment>ui/job_page.py</extracomment>
            <translation>Na bancada: {magneto}, em {engine}.</translation>
        </message>
        <message>
            <source>On the bench: {magneto}.</source>
            <extracomment>ui/job_page.py</extracomment>
            <translation>Na bancada: {magneto}.</translation>
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
            <translation>Imprimir em PDF…</translation>
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
            <translation>Imprimir a folha de trabalho em PDF</translation>
        </message>
        <message>
            <source>Save the job sheet as HTML</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation>Guardar a folha de trabalho como HTML</translation>
        </message>
        <message>
            <source>HTML (*.html)</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation>HTML (*.html)</translation>
        </message>
        <message>
            <source>Save the readings</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation>Guardar as leituras</translation>
        </message>
        <message>
            <source>Table (*.csv)</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation>Tabela (*.csv)</translation>
        </message>
        <message>
            <source>Readings (*.json)</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation>Leituras (*.json)</translation>
        </message>
        <message>
            <source>✓ Saved {file}.</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation>✓ {file} guardado.</translation>
        </message>
        <message>
            <source>{file} is the job sheet itself; choose another name</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation>{file} é a própria folha de trabalho; escolher outro nome</translation>
        </message>
        <message>
            <source>this sheet ships with the program and stays as it is; save it under a name of your own to work on it</source>
            <extracomment>ui/job_room.py</extracomment>
            <translation>esta folha vem com o programa e fica como está; guardá-la com outro nome para trabalhar nela</translation>
        </message>
        <message>
            <source>Where is the new job sheet to be kept?</source>
            <extracomment>ui/job_room.py</extracomment>
            <translation>Onde guardar a nova folha de trabalho?</translation>
        </message>
        <message>
            <source>Job sheets (*.json)</source>
            <extracomment>ui/job_room.py, ui/job_window.py</extracomment>
            <translation>Folhas de trabalho (*.json)</translation>
        </message>
        <message>
            <source>Open a job sheet</source>
            <extracomment>ui/job_room.py</extracomment>
            <translation>Abrir uma folha de trabalho</translation>
        </message>
        <message>
            <source>Job sheets (*.json);;All files (*)</source>
            <extracomment>ui/job_room.py</extracomment>
            <translation>Folhas de trabalho (*.json);;Todos os ficheiros (*)</translation>
        </message>
        <message>
            <source>No job sheet is open: open one, or begin a new one, from the Job menu.</source>
            <extracomment>ui/job_room.py</extracomment>
            <translation>Não há folha de trabalho aberta: abrir uma, ou começar uma nova, no menu Trabalho.</translation>
        </message>
        <message>
            <source>the bench still has the setting it began with, which nobody has read: set plate and screw as they are first</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>a bancada tem ainda o ajuste com que começou, que ninguém leu: pôr primeiro placa e parafuso como estão</translation>
        </message>
        <message>
            <source>Magneto, engine and limits</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Magneto, motor e limites</translation>
        </message>
        <message>
            <source>What is on the bench, and the limits its files give</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>O que está na bancada e os limites que os seus ficheiros dão</translation>
        </message>
        <message>
            <source>Switch lead as it stands</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Cabo de massa como está</translation>
        </message>
        <message>
            <source>What meter and lamp say on the bench with plug and switch as they are now</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>O que multímetro e lâmpada dizem na bancada com ficha e interruptor como estão</translation>
        </message>
        <message>
            <source>Stop readings</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Leituras do batente</translation>
        </message>
        <message>
            <source>The two stop readings of the Engine page</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>As duas leituras do batente da página Motor</translation>
        </message>
        <message>
            <source>Stroke of No. 1 now</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Tempo do n.º 1 agora</translation>
        </message>
        <message>
            <source>Set the crank before No. 1 fires: its stroke there is noted</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Pôr a cambota antes de o n.º 1 inflamar: anota-se ali o seu tempo</translation>
        </message>
        <message>
            <source>Setting as it was put on the bench, timing as the lamp was read</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Ajuste como posto na bancada, ponto como lido na lâmpada</translation>
        </message>
        <message>
            <source>As found, by instruments</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Encontrado, por instrumentos</translation>
        </message>
        <message>
            <source>As the instruments chosen on the Uncertainty page read it</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Como o leem os instrumentos escolhidos na página Incerteza</translation>
        </message>
        <message>
            <source>Wear and pips</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Desgaste e picos</translation>
        </message>
        <message>
            <source>As they were set on the bench</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Como foram postos na bancada</translation>
        </message>
        <message>
            <source>Trials made</source>
            <extracomment>ui/job_sources.py, ui/trials_panel.py</extracomment>
            <translation>Ensaios feitos</translation>
        </message>
        <message>
            <source>All trials on the bench's list</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Todos os ensaios da lista da bancada</translation>
        </message>
        <message>
            <source>Setting planned</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Regulação planeada</translation>
        </message>
        <message>
            <source>Where backplate and screw belong for the gap wanted on the Internal page</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Onde devem ficar placa de base e parafuso para a folga pretendida na página Interna</translation>
        </message>
        <message>
            <source>The setting as the bench has it now</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>A regulação como a bancada a tem agora</translation>
        </message>
        <message>
            <source>As left, by instruments</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Deixado, por instrumentos</translation>
        </message>
        <message>
            <source>How sure the setting is</source>
            <extracomment>ui/job_sources.py, ui/panes.py</extracomment>
            <translation>Certeza da regulação</translation>
        </message>
        <message>
            <source>What the Uncertainty page shows of internal timing</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>O que a página Incerteza mostra da calagem interna</translation>
        </message>
        <message>
            <source>Opening, gap and dwell of each lobe</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Abertura, folga e permanência de cada ressalto</translation>
        </message>
        <message>
            <source>Marks as painted</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Marcas como pintadas</translation>
        </message>
        <message>
            <source>How the coupling's marks stand apart</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Quanto se afastam as marcas do acoplamento</translation>
        </message>
        <message>
            <source>Tooth shift planned</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Mudança de dentes planeada</translation>
        </message>
        <message>
            <source>Reading as found, timing wanted, and the move chosen in the planner, or its first</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Leitura como encontrada, ponto pretendido e o movimento escolhido no planeador, ou o primeiro</translation>
        </message>
        <message>
            <source>Tooth shift made</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Mudança de dentes feita</translation>
        </message>
        <message>
            <source>Teeth moved; where it fires then, the lamp has to tell</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Dentes movidos; onde dispara depois, tem a lâmpada de o dizer</translation>
        </message>
        <message>
            <source>Where the lamp was read to say that the magnetos fire</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Onde se leu na lâmpada que os magnetos disparam</translation>
        </message>
        <message>
            <source>How sure the timing is</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Certeza da calagem</translation>
        </message>
        <message>
            <source>What the Uncertainty page shows of timing to the engine</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>O que a página Incerteza mostra da calagem ao motor</translation>
        </message>
        <message>
            <source>the bench has “{bench}” on it and this sheet is of “{sheet}”: put that one on the bench, or take over magneto and limits anew</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>a bancada tem “{bench}” e esta folha é de “{sheet}”: pôr esse na bancada, ou retomar magneto e limites</translation>
        </message>
        <message>
            <source>this magneto is not on an engine: open an installation on the bench first</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>este magneto não está num motor: abrir primeiro uma instalação na bancada</translation>
        </message>
        <message>
            <source>neither plug nor switch has been moved on the bench yet: the lead has not been tried</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>na bancada ainda não se mexeu nem na ficha nem no interruptor: o cabo não foi experimentado</translation>
        </message>
        <message>
            <source>no stop readings were entered yet; they belong on the Engine page of the bench</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>ainda não se introduziram leituras do batente; o seu lugar é a página Motor da bancada</translation>
        </message>
        <message>
            <source>the crank has not been turned on the bench yet: set it as the engine's stands first</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>na bancada ainda não se rodou a cambota: pô-la primeiro como está a do motor</translation>
        </message>
        <message>
            <source>no trial has been made on the bench yet; they are noted on its Trials page</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>ainda não se fez nenhum ensaio na bancada; anotam-se na sua página Ensaios</translation>
        </message>
        <message>
            <source>the bench's Uncertainty page does not show internal timing; choose it there first</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>a página Incerteza da bancada não mostra a calagem interna; escolhê-la primeiro ali</translation>
        </message>
        <message>
            <source>the bench's Uncertainty page does not show timing to the engine; choose it there first</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>a página Incerteza da bancada não mostra a calagem ao motor; escolhê-la primeiro ali</translation>
        </message>
        <message>
            <source>Add a trial</source>
            <extracomment>ui/job_table.py</extracomment>
            <translation>Juntar um ensaio</translation>
        </message>
        <message>
            <source>Add a lobe</source>
            <extracomment>ui/job_table.py</extracomment>
            <translation>Juntar um ressalto</translation>
        </message>
        <message>
            <source>Strike out the chosen trial</source>
            <extracomment>ui/job_table.py</extracomment>
            <translation>Riscar o ensaio escolhido</translation>
        </message>
        <message>
            <source>Strike out the chosen lobe</source>
            <extracomment>ui/job_table.py</extracomment>
            <translation>Riscar o ressalto escolhido</translation>
        </message>
        <message>
            <source>{row} {number} waits for: {field}</source>
            <extracomment>ui/job_table.py</extracomment>
            <translation>{row} {number} espera por: {field}</translation>
        </message>
        <message>
            <source>{row} {number}, {field}: outside {low} to {high}, not taken</source>
            <extracomment>ui/job_table.py</extracomment>
            <translation>{row} {number}, {field}: fora de {low} a {high}, não aceite</translation>
        </message>
        <message>
            <source>{what}, from the bench</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>{what}, da bancada</translation>
        </message>
        <message>
            <source>{name} – job sheet – magview</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>{name} – folha de trabalho – magview</translation>
        </message>
        <message>
            <source>{count} found</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>{count} encontrados</translation>
        </message>
        <message>
            <source>Skip a stage</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Saltar uma etapa</translation>
        </message>
        <message>
            <source>Why is “{stage}” skipped?</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Porque se salta “{stage}”?</translation>
        </message>
        <message>
            <source>Skip it</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Saltar</translation>
        </message>
        <message>
            <source>Save the job sheet as</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Guardar a folha de trabalho como</translation>
        </message>
        <message>
            <source>Reload the sheet from its file?</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Recarregar a folha do seu ficheiro?</translation>
        </message>
        <message>
            <source>Not saved: {sentence}.</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Não guardado: {sentence}.</translation>
        </message>
        <message>
            <source>Read only: {file}</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Só de leitura: {file}</translation>
        </message>
        <message>
            <source>✓ Noted from the bench: {what}.</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>✓ Anotado da bancada: {what}.</translation>
        </message>
        <message>
            <source>Undone: {step}.</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Anulado: {step}.</translation>
        </message>
        <message>
            <source>Done again: {step}.</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Refeito: {step}.</translation>
        </message>
        <message>
            <source>Skipped: {stage}.</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Saltado: {stage}.</translation>
        </message>
        <message>
            <source>Opened again; its readings stand.</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Aberto de novo; as leituras mantêm-se.</translation>
        </message>
        <message>
            <source>Saved; from now on in {file}.</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Guardado; doravante em {file}.</translation>
        </message>
        <message>
            <source>&amp;Keep what is here</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>&amp;Manter o que está aqui</translation>
        </message>
        <message>
            <source>What was entered here and is not in the file is given up; save it elsewhere first.</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>O que aqui se introduziu e não está no ficheiro perde-se; guardá-lo primeiro noutro lugar.</translation>
        </message>
        <message>
            <source>&amp;Save as…</source>
            <extracomment>ui/job_window.py, ui/report_dialog.py</extracomment>
            <translation>&amp;Guardar como…</translation>
        </message>
        <message>
            <source>Close &amp;without saving</source>
            <extracomment>ui/job_window.py, ui/practice_window.py</extracomment>
            <translation>Fechar &amp;sem guardar</translation>
        </message>
        <message>
            <source>&amp;Go on</source>
            <extracomment>ui/job_window.py, ui/practice_window.py</extracomment>
            <translation>&amp;Continuar</translation>
        </message>
        <message>
            <source>✗ Not saved</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>✗ Não guardado</translation>
        </message>
        <message>
            <source>✓ Saved in {file}</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>✓ Guardado em {file}</translation>
        </message>
        <message>
            <source>{crank}° of crank early = {rotor}° of rotor = {piston} of piston travel.</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>{crank}° de cambota de avanço = {rotor}° de rotor = {piston} de curso do êmbolo.</translation>
        </message>
        <message>
            <source>{crank}° of crank late = {rotor}° of rotor = {piston} of piston travel.</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>{crank}° de cambota de atraso = {rotor}° de rotor = {piston} de curso do êmbolo.</translation>
        </message>
        <message>
            <source>Left</source>
            <extracomment>ui/lamp_box.py, ui/practice_sight.py</extracomment>
            <translation>Esquerdo</translation>
        </message>
        <message>
            <source>Right</source>
            <extracomment>ui/lamp_box.py, ui/practice_sight.py</extracomment>
            <translation>Direito</translation>
        </message>
        <message>
            <source>Left: its lamp was read before the contacts were set anew. With this internal setting it would now read {found}; read it again.</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Esquerdo: a sua lâmpada foi lida antes de os contactos serem regulados de novo. Com esta regulação interna leria agora {found}; lê-la de novo.</translation>
        </message>
        <message>
            <source>Right: its lamp was read before the contacts were set anew. With this internal setting it would now read {found}; read it again.</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Direito: a sua lâmpada foi lida antes de os contactos serem regulados de novo. Com esta regulação interna leria agora {found}; lê-la de novo.</translation>
        </message>
        <message>
            <source>Left: {line}</source>
            <extracomment>ui/lamp_box.py, ui/practice_notebook.py</extracomment>
            <translation>Esquerdo: {line}</translation>
        </message>
        <message>
            <source>Right: {line}</source>
            <extracomment>ui/lamp_box.py, ui/practice_notebook.py</extracomment>
            <translation>Direito: {line}</translation>
        </message>
        <message>
            <source>Where it fires, crank degrees before top dead centre</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Onde inflama, graus de cambota antes do ponto morto superior</translation>
        </message>
        <message>
            <source>Crank from No. 1's firing top dead centre, positive the way the engine turns</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Cambota desde o ponto morto superior de inflamação do n.º 1, positivo no sentido do motor</translation>
        </message>
        <message>
            <source>Cran&amp;k</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Camb&amp;ota</translation>
        </message>
        <message>
            <source>Tolerance ±{tolerance}° of crank.</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Tolerância ±{tolerance}° de cambota.</translation>
        </message>
        <message>
            <source>Fires now</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Inflama agora</translation>
        </message>
        <message>
            <source>Show this magneto's coupling</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Mostrar o acoplamento deste magneto</translation>
        </message>
        <message>
            <source>To firing</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>À inflamação</translation>
        </message>
        <message>
            <source>To TDC</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Ao PMS</translation>
        </message>
        <message>
            <source>The magneto is off the engine: all this holds once it is refitted by its marks.</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>O magneto está fora do motor: tudo isto vale depois de montado pelas marcas.</translation>
        </message>
        <message>
            <source>The contacts were set anew since the lamp was read: with the teeth as found it would now read {found}. Both magnetos are shown with this one's internal setting.</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Os contactos foram regulados de novo desde a leitura da lâmpada: com os dentes como encontrados leria agora {found}. Ambos os magnetos se mostram com a regulação interna deste.</translation>
        </message>
        <message>
            <source>With this setting the contacts never open and close: there is no timing to read.</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Com esta regulação os contactos nunca abrem e fecham: não há ponto para ler.</translation>
        </message>
        <message>
            <source>left magneto, lamp reads</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>magneto esquerdo, lâmpada lê</translation>
        </message>
        <message>
            <source>right magneto, lamp reads</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>magneto direito, lâmpada lê</translation>
        </message>
        <message>
            <source>left magneto, wanted</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>magneto esquerdo, pretendido</translation>
        </message>
        <message>
            <source>right magneto, wanted</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>magneto direito, pretendido</translation>
        </message>
        <message>
            <source>left magneto fires now</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>magneto esquerdo inflama agora</translation>
        </message>
        <message>
            <source>right magneto fires now</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>magneto direito inflama agora</translation>
        </message>
        <message>
            <source>Single</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Único</translation>
        </message>
        <message>
            <source>At the timing wanted.</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>No ponto pretendido.</translation>
        </message>
        <message>
            <source>Prove the lead before touching the propeller: plug out, meter from the lead's plug to the case: ground with the switch off, none with it on. A lead that shows no ground with the switch off leaves the magneto live. Treat the propeller as live all the same.</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation>Provar o cabo antes de tocar na hélice: ficha fora, multímetro da ficha do cabo à carcaça: massa com o interruptor desligado, nenhuma com ele ligado. Um cabo que não mostra massa com o interruptor desligado deixa o magneto vivo. Tratar ainda assim a hélice como viva.</translation>
        </message>
        <message>
            <source>Switch lead, drawn as a circuit</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation>Cabo de massa, desenhado como circuito</translation>
        </message>
        <message>
            <source>Lamp: open</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation>Lâmpada: abertos</translation>
        </message>
        <message>
            <source>Lamp: closed</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation>Lâmpada: fechados</translation>
        </message>
        <message>
            <source>Ignition switch &amp;on</source>
            <extracomment>ui/lead_panel.py, ui/practice_work.py</extracomment>
            <translation>&amp;Ignição ligada</translation>
        </message>
        <message>
            <source>Plug o&amp;ut of the magneto</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation>&amp;Ficha fora do magneto</translation>
        </message>
        <message>
            <source>Lead &amp;broken inside</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation>Ca&amp;bo partido por dentro</translation>
        </message>
        <message>
            <source>&amp;Short inside the magneto</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation>&amp;Curto-circuito no magneto</translation>
        </message>
        <message>
            <source>Spring tab bent clear of the c&amp;ase</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation>Lin&amp;gueta dobrada, afastada da carcaça</translation>
        </message>
        <message>
            <source>Hands on</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation>Pôr as mãos</translation>
        </message>
        <message>
            <source>Faults to try</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation>Avarias a experimentar</translation>
        </message>
        <message>
            <source>What it needs is on the tabs {tabs}.</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation>O necessário está nos separadores {tabs}.</translation>
        </message>
        <message>
            <source>“{tab}”</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation>“{tab}”</translation>
        </message>
        <message>
            <source>What it needs is on the tab {tab}.</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation>O necessário está no separador {tab}.</translation>
        </message>
        <message>
            <source>A hint</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation>Uma dica</translation>
        </message>
        <message>
            <source>What came of it</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation>O que resultou</translation>
        </message>
        <message>
            <source>{name}: done</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation>{name}: feita</translation>
        </message>
        <message>
            <source>Step {step} of {steps} – {title}</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation>Passo {step} de {steps} – {title}</translation>
        </message>
        <message>
            <source>What you have learnt: {told}</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation>O que se aprendeu: {told}</translation>
        </message>
        <message>
            <source>All steps are done.</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation>Todos os passos estão feitos.</translation>
        </message>
        <message>
            <source>Hint: {hint}</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation>Dica: {hint}</translation>
        </message>
        <message>
            <source>Lift of the contacts</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Levantamento dos contactos</translation>
        </message>
        <message>
            <source>Gap between the contacts</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Folga entre os contactos</translation>
        </message>
        <message>
            <source>Dial at the heel</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Comparador no calcador</translation>
        </message>
        <message>
            <source>found out</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>detetado</translation>
        </message>
        <message>
            <source>point: 0.25</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>ponto: 0.25</translation>
        </message>
        <message>
            <source>comma: 0,25</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>vírgula: 0,25</translation>
        </message>
        <message>
            <source>Lift from {name}</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Levantamento de {name}</translation>
        </message>
        <message>
            <source>What comes of the table</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>O que resulta da tabela</translation>
        </message>
        <message>
            <source>grow with rotation</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>crescem no sentido de rotação</translation>
        </message>
        <message>
            <source>falls as the contacts lift</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>desce quando os contactos levantam</translation>
        </message>
        <message>
            <source>Contact lift at which the contacts just touch: needed where gaps were read</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Levantamento em que os contactos apenas se tocam: necessário quando se leram folgas</translation>
        </message>
        <message>
            <source>Contact arm over heel arm: what the contacts lift for a millimetre at the heel</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Braço do contacto sobre braço do calcador: quanto levantam os contactos por milímetro no calcador</translation>
        </message>
        <message>
            <source>Readings and the smooth lift through them</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Leituras e o levantamento alisado que passa por elas</translation>
        </message>
        <message>
            <source>{readings} readings; the contacts lift {top} mm; scatter {noise} mm.</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>{readings} leituras; os contactos levantam {top} mm; dispersão {noise} mm.</translation>
        </message>
        <message>
            <source>Magneto (*.json)</source>
            <extracomment>ui/lift_dialog.py, ui/trials_panel.py</extracomment>
            <translation>Magneto (*.json)</translation>
        </message>
        <message>
            <source>Put on the &amp;bench</source>
            <extracomment>ui/lift_dialog.py, ui/own_menus.py</extracomment>
            <translation>Pôr na &amp;bancada</translation>
        </message>
        <message>
            <source>&amp;Save as magneto…</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>&amp;Guardar como magneto…</translation>
        </message>
        <message>
            <source>Cam</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Came</translation>
        </message>
        <message>
            <source>choose…</source>
            <extracomment>ui/lift_dialog.py, ui/own_field.py</extracomment>
            <translation>escolher…</translation>
        </message>
        <message>
            <source>Angles of the</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Ângulos do</translation>
        </message>
        <message>
            <source>Readings are</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>As leituras são</translation>
        </message>
        <message>
            <source>Their &amp;unit</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>A sua &amp;unidade</translation>
        </message>
        <message>
            <source>Contacts touch at</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Contactos tocam-se a</translation>
        </message>
        <message>
            <source>Contact arm / heel arm</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Braço contacto / calcador</translation>
        </message>
        <message>
            <source>Decimal sign</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Sinal decimal</translation>
        </message>
        <message>
            <source>Column of angles</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Coluna dos ângulos</translation>
        </message>
        <message>
            <source>Column of readings</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Coluna das leituras</translation>
        </message>
        <message>
            <source>cam past the top [deg]</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>came após o topo [°]</translation>
        </message>
        <message>
            <source>contact lift [mm]</source>
            <extracomment>ui/lift_dialog.py, ui/plot_lift.py</extracomment>
            <translation>levantamento do contacto [mm]</translation>
        </message>
        <message>
            <source>The magneto with the measured lift is on the bench.</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>O magneto com o levantamento medido está na bancada.</translation>
        </message>
        <message>
            <source>say in which unit the readings are</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>dizer em que unidade estão as leituras</translation>
        </message>
        <message>
            <source>Light colours</source>
            <extracomment>ui/menu_maker.py</extracomment>
            <translation>Cores claras</translation>
        </message>
        <message>
            <source>Dark colours</source>
            <extracomment>ui/menu_maker.py</extracomment>
            <translation>Cores escuras</translation>
        </message>
        <message>
            <source>High contrast colours</source>
            <extracomment>ui/menu_maker.py</extracomment>
            <translation>Cores de alto contraste</translation>
        </message>
        <message>
            <source>&amp;Guide</source>
            <extracomment>ui/menu_maker.py</extracomment>
            <translation>&amp;Guia</translation>
        </message>
        <message>
            <source>Zoom &amp;in</source>
            <extracomment>ui/menu_maker.py</extracomment>
            <translation>A&amp;mpliar</translation>
        </message>
        <message>
            <source>Zoom &amp;out</source>
            <extracomment>ui/menu_maker.py</extracomment>
            <translation>&amp;Reduzir</translation>
        </message>
        <message>
            <source>&amp;Whole picture</source>
            <extracomment>ui/menu_maker.py</extracomment>
            <translation>Ima&amp;gem inteira</translation>
        </message>
        <message>
            <source>&amp;Open magneto or installation…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>A&amp;brir magneto ou instalação…</translation>
        </message>
        <message>
            <source>&amp;Save magneto as…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Guardar magneto como…</translation>
        </message>
        <message>
            <source>A magneto of &amp;your own…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Um magneto &amp;próprio…</translation>
        </message>
        <message>
            <source>Lift from &amp;measurements…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Levantamento de medições…</translation>
        </message>
        <message>
            <source>Print the &amp;tooth-shift plan</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Imprimir o plano da &amp;mudança de dentes</translation>
        </message>
        <message>
            <source>&amp;Paper for a class…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Papel para uma &amp;turma…</translation>
        </message>
        <message>
            <source>&amp;Quit</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Sair</translation>
        </message>
        <message>
            <source>&amp;Hold the rotor</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Segurar o rotor</translation>
        </message>
        <message>
            <source>Magneto on the &amp;engine</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Magneto no &amp;motor</translation>
        </message>
        <message>
            <source>&amp;Snap to openings, lobes and marks</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Prender a aberturas, ressaltos e marcas</translation>
        </message>
        <message>
            <source>&amp;Reduced motion</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Movimento &amp;reduzido</translation>
        </message>
        <message>
            <source>New &amp;exercise…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Novo &amp;exercício…</translation>
        </message>
        <message>
            <source>&amp;Lessons…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Lições…</translation>
        </message>
        <message>
            <source>&amp;Open attempt…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Abrir tentativa…</translation>
        </message>
        <message>
            <source>&amp;Join a class…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Entrar numa &amp;turma…</translation>
        </message>
        <message>
            <source>&amp;Make a class set…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Fazer uma &amp;série para a turma…</translation>
        </message>
        <message>
            <source>&amp;Gather a class…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Recolher uma turma…</translation>
        </message>
        <message>
            <source>Exercise e&amp;ditor…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>E&amp;ditor de exercícios…</translation>
        </message>
        <message>
            <source>Look at the &amp;shipped job sheet</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Ver a folha de trabalho fornecida</translation>
        </message>
        <message>
            <source>&amp;Names of parts</source>
            <extracomment>ui/menus.py, ui/practice_menus.py</extracomment>
            <translation>&amp;Nomes das peças</translation>
        </message>
        <message>
            <source>See the breaker from the &amp;drive end</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Ver o ruptor do &amp;lado motriz</translation>
        </message>
        <message>
            <source>Draw the &amp;gap 5× its size</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Desenhar a folga 5× maior</translation>
        </message>
        <message>
            <source>&amp;Follow the contacts when zoomed</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Seguir os contactos ao ampliar</translation>
        </message>
        <message>
            <source>&amp;Projector mode</source>
            <extracomment>ui/menus.py, ui/practice_menus.py</extracomment>
            <translation>Modo &amp;projetor</translation>
        </message>
        <message>
            <source>L&amp;anguage</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Lín&amp;gua</translation>
        </message>
        <message>
            <source>P&amp;resent to a class</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>A&amp;presentar a uma turma</translation>
        </message>
        <message>
            <source>&amp;Fault reports…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Relatórios de &amp;falhas…</translation>
        </message>
        <message>
            <source>Bench</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Bancada</translation>
        </message>
        <message>
            <source>Magneto on the bench</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Magneto na bancada</translation>
        </message>
        <message>
            <source>Unit of length</source>
            <extracomment>ui/menus.py, ui/own_window.py</extracomment>
            <translation>Unidade de comprimento</translation>
        </message>
        <message>
            <source>As the &amp;desktop</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Como o a&amp;mbiente de trabalho</translation>
        </message>
        <message>
            <source>Save picture of the breaker end…</source>
            <extracomment>ui/menus.py, ui/practice_menus.py</extracomment>
            <translation>Guardar imagem do lado do ruptor…</translation>
        </message>
        <message>
            <source>Save picture of the drive end…</source>
            <extracomment>ui/menus.py, ui/practice_menus.py</extracomment>
            <translation>Guardar imagem do lado motriz…</translation>
        </message>
        <message>
            <source>Save picture of the crank…</source>
            <extracomment>ui/menus.py, ui/practice_menus.py</extracomment>
            <translation>Guardar imagem da cambota…</translation>
        </message>
        <message>
            <source>No&amp;te on the job sheet</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Ano&amp;tar na folha de trabalho</translation>
        </message>
        <message>
            <source>&amp;Recent job sheets</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Folhas de trabalho &amp;recentes</translation>
        </message>
        <message>
            <source>Millimetres</source>
            <extracomment>ui/menus.py, ui/own_window.py, ui/practice_tray.py</extracomment>
            <translation>Milímetros</translation>
        </message>
        <message>
            <source>Inches</source>
            <extracomment>ui/menus.py, ui/own_window.py</extracomment>
            <translation>Polegadas</translation>
        </message>
        <message>
            <source>Lengths in</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Comprimentos em</translation>
        </message>
        <message>
            <source>&amp;File</source>
            <extracomment>ui/menus.py, ui/own_menus.py</extracomment>
            <translation>&amp;Ficheiro</translation>
        </message>
        <message>
            <source>Ben&amp;ch</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Ban&amp;cada</translation>
        </message>
        <message>
            <source>&amp;Practice</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Prática</translation>
        </message>
        <message>
            <source>something in the program went wrong; look whether what you did last is done. A report was kept: Help, Fault reports</source>
            <extracomment>ui/mishaps.py</extracomment>
            <translation>algo falhou no programa; ver se o que se fez por último ficou feito. Guardou-se um relatório: Ajuda, Relatórios de falhas</translation>
        </message>
        <message>
            <source>magview: a report of a fault in the program was kept: {file}</source>
            <extracomment>ui/mishaps.py</extracomment>
            <translation>magview: guardou-se um relatório de uma falha do programa: {file}</translation>
        </message>
        <message>
            <source>something in the program went wrong; look whether what you did last is done. No report of it could be kept: {reason}</source>
            <extracomment>ui/mishaps.py</extracomment>
            <translation>algo falhou no programa; ver se o que se fez por último ficou feito. Não se pôde guardar relatório: {reason}</translation>
        </message>
        <message>
            <source>with this setting there is no “{place}” to run to</source>
            <extracomment>ui/model.py</extracomment>
            <translation>com esta regulação não há “{place}” até onde correr</translation>
        </message>
        <message>
            <source>{file} is an engine, and the bench holds a magneto: open an installation, which has both, or see the engine with `magview engine {file}`</source>
            <extracomment>ui/opening.py</extracomment>
            <translation>{file} é um motor, e a bancada leva um magneto: abrir uma instalação, que tem ambos, ou ver o motor com `magview engine {file}`</translation>
        </message>
        <message>
            <source>{file} is a bench that the program keeps for itself and finds again after a crash; it is not to be opened</source>
            <extracomment>ui/opening.py</extracomment>
            <translation>{file} é uma bancada que o programa guarda para si e reencontra depois de uma falha; não é para abrir</translation>
        </message>
        <message>
            <source>the magneto in this window</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>o magneto nesta janela</translation>
        </message>
        <message>
            <source>the engine in this window</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>o motor nesta janela</translation>
        </message>
        <message>
            <source>where from?</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>de onde?</translation>
        </message>
        <message>
            <source>Source of: {field}</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>Fonte de: {field}</translation>
        </message>
        <message>
            <source>page, instrument, who</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>página, instrumento, quem</translation>
        </message>
        <message>
            <source>Note on the source of: {field}</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>Nota sobre a fonte de: {field}</translation>
        </message>
        <message>
            <source>Work it out</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>Calcular</translation>
        </message>
        <message>
            <source>Refused: {sentence}</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>Recusado: {sentence}</translation>
        </message>
        <message>
            <source>a file…</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>um ficheiro…</translation>
        </message>
        <message>
            <source>May be left out.</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>Pode omitir-se.</translation>
        </message>
        <message>
            <source>⚠ {sentence}.</source>
            <extracomment>ui/own_field.py, ui/own_pictures.py</extracomment>
            <translation>⚠ {sentence}.</translation>
        </message>
        <message>
            <source>{field} – still needed</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>{field} – ainda necessário</translation>
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
            <translation>começar de novo</translation>
        </message>
        <message>
            <source>Open a file of your own</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>Abrir um ficheiro próprio</translation>
        </message>
        <message>
            <source>{file} is open.</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>{file} está aberto.</translation>
        </message>
        <message>
            <source>Save</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>Guardar</translation>
        </message>
        <message>
            <source>{file} is there already, and holds something else. Replace it?</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>{file} já existe e contém outra coisa. Substituí-lo?</translation>
        </message>
        <message>
            <source>&amp;Use this lift</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>&amp;Usar este levantamento</translation>
        </message>
        <message>
            <source>the bench's trials</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>os ensaios da bancada</translation>
        </message>
        <message>
            <source>Lift, rise and setting are filled in from the trials, marked measured.</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>Levantamento, subida e regulação preenchem-se a partir dos ensaios, marcados como medidos.</translation>
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
            <translation>&amp;Substituir</translation>
        </message>
        <message>
            <source>&amp;Leave it</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>&amp;Deixar</translation>
        </message>
        <message>
            <source>table {file}</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>tabela {file}</translation>
        </message>
        <message>
            <source>there is no engine on the bench: open an installation there first</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>não há motor na bancada: abrir ali primeiro uma instalação</translation>
        </message>
        <message>
            <source>the lift from a table</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>o levantamento de uma tabela</translation>
        </message>
        <message>
            <source>The lift is filled in from {file}, marked measured.</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>O levantamento preenche-se a partir de {file}, marcado como medido.</translation>
        </message>
        <message>
            <source>&amp;Open magneto, engine or installation…</source>
            <extracomment>ui/own_menus.py</extracomment>
            <translation>A&amp;brir magneto, motor ou instalação…</translation>
        </message>
        <message>
            <source>&amp;Save</source>
            <extracomment>ui/own_menus.py</extracomment>
            <translation>&amp;Guardar</translation>
        </message>
        <message>
            <source>Undo</source>
            <extracomment>ui/own_menus.py</extracomment>
            <translation>Anular</translation>
        </message>
        <message>
            <source>Redo</source>
            <extracomment>ui/own_menus.py</extracomment>
            <translation>Refazer</translation>
        </message>
        <message>
            <source>An engine comes to the bench with an installation</source>
            <extracomment>ui/own_menus.py</extracomment>
            <translation>Um motor vem para a bancada com uma instalação</translation>
        </message>
        <message>
            <source>Put on the bench</source>
            <extracomment>ui/own_menus.py</extracomment>
            <translation>Pôr na bancada</translation>
        </message>
        <message>
            <source>a source</source>
            <extracomment>ui/own_model.py</extracomment>
            <translation>uma fonte</translation>
        </message>
        <message>
            <source>Lift from a &amp;table…</source>
            <extracomment>ui/own_page.py</extracomment>
            <translation>Levantamento de uma &amp;tabela…</translation>
        </message>
        <message>
            <source>Lift from the t&amp;rials</source>
            <extracomment>ui/own_page.py</extracomment>
            <translation>Levantamento dos &amp;ensaios</translation>
        </message>
        <message>
            <source>Angles and dial readings of one lobe become its lift, marked measured</source>
            <extracomment>ui/own_page.py</extracomment>
            <translation>Ângulos e leituras do comparador de um ressalto passam a ser o seu levantamento, marcado como medido</translation>
        </message>
        <message>
            <source>Lift, rise and setting as the trials noted on the bench tell them, marked measured</source>
            <extracomment>ui/own_page.py</extracomment>
            <translation>Levantamento, subida e regulação como os dizem os ensaios anotados na bancada, marcados como medidos</translation>
        </message>
        <message>
            <source>Dra&amp;wn</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>&amp;Desenhado</translation>
        </message>
        <message>
            <source>&amp;Compared</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>&amp;Comparado</translation>
        </message>
        <message>
            <source>What the draft comes to</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>O que resulta do rascunho</translation>
        </message>
        <message>
            <source>Shipped file to compare with</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>Ficheiro fornecido para comparar</translation>
        </message>
        <message>
            <source>Fields that differ</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>Campos que diferem</translation>
        </message>
        <message>
            <source>Readings that differ</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>Leituras que diferem</translation>
        </message>
        <message>
            <source>✓ Complete: drawn as designed to be set.</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>✓ Completo: desenhado conforme a regulação de projeto.</translation>
        </message>
        <message>
            <source>Compared with “{name}”. Fields that differ: {differ}; given so far: {given} of {all}.</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>Comparado com “{name}”. Campos que diferem: {differ}; dados até agora: {given} de {all}.</translation>
        </message>
        <message>
            <source>Reading as designed</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>Leitura conforme o projeto</translation>
        </message>
        <message>
            <source>comes to</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>dá</translation>
        </message>
        <message>
            <source>Field</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>Campo</translation>
        </message>
        <message>
            <source>yours</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>seu</translation>
        </message>
        <message>
            <source>shipped</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>fornecido</translation>
        </message>
        <message>
            <source>The nearest shipped file</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>O ficheiro fornecido mais próximo</translation>
        </message>
        <message>
            <source>Drawn as it last was complete; what is missing or refused is marked at its field.</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>Desenhado como da última vez que esteve completo; o que falta ou foi recusado está assinalado no seu campo.</translation>
        </message>
        <message>
            <source>Nothing to draw yet: it is drawn once everything needed is there.</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>Ainda nada para desenhar: desenha-se quando houver tudo o necessário.</translation>
        </message>
        <message>
            <source>Nothing to compare yet.</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>Ainda nada para comparar.</translation>
        </message>
        <message>
            <source>What you drafted is on the bench; Undo brings the former back.</source>
            <extracomment>ui/own_room.py</extracomment>
            <translation>O que se esboçou está na bancada; Anular repõe o anterior.</translation>
        </message>
        <message>
            <source>The drafts are as you left them.</source>
            <extracomment>ui/own_room.py</extracomment>
            <translation>Os rascunhos estão como foram deixados.</translation>
        </message>
        <message>
            <source>The drafts cannot be kept for after a crash: {reason}</source>
            <extracomment>ui/own_room.py</extracomment>
            <translation>Os rascunhos não podem ser conservados para depois de uma falha: {reason}</translation>
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
            <translation>&amp;3 Instalação</translation>
        </message>
        <message>
            <source>A magneto of your own – magview</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Um magneto próprio – magview</translation>
        </message>
        <message>
            <source>What is drafted</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>O que se esboça</translation>
        </message>
        <message>
            <source>Pages</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Páginas</translation>
        </message>
        <message>
            <source>How far it has come</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Até onde se chegou</translation>
        </message>
        <message>
            <source>Next o&amp;pen field</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Próximo campo em a&amp;berto</translation>
        </message>
        <message>
            <source>Go to the next field that is still needed, or refused</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Ir ao próximo campo ainda necessário, ou recusado</translation>
        </message>
        <message>
            <source>Drafts</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Rascunhos</translation>
        </message>
        <message>
            <source>Begin from</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Começar de</translation>
        </message>
        <message>
            <source>B&amp;egin</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Co&amp;meçar</translation>
        </message>
        <message>
            <source>The draft becomes this one; Undo brings the former back</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>O rascunho passa a ser este; Anular repõe o anterior</translation>
        </message>
        <message>
            <source>What is on the bench</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>O que está na bancada</translation>
        </message>
        <message>
            <source>Nothing: empty fields</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Nada: campos vazios</translation>
        </message>
        <message>
            <source>Still needed: {missing}
Refused: {refused}
Without a source: {bare}</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Ainda necessários: {missing}
Recusados: {refused}
Sem fonte: {bare}</translation>
        </message>
        <message>
            <source>◂ &amp;Back</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>◂ &amp;Anterior</translation>
        </message>
        <message>
            <source>&amp;Next ▸</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>&amp;Seguinte ▸</translation>
        </message>
        <message>
            <source>  Begin from </source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>  Começar de </translation>
        </message>
        <message>
            <source>   Lengths in </source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>   Comprimentos em </translation>
        </message>
        <message>
            <source>{magneto}, mounted {side}</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>{magneto}, montado {side}</translation>
        </message>
        <message>
            <source>⚠ {page}: {count} refused</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>⚠ {page}: {count} recusados</translation>
        </message>
        <message>
            <source>{page}: {count} needed</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>{page}: {count} necessários</translation>
        </message>
        <message>
            <source>✓ {page}</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>✓ {page}</translation>
        </message>
        <message>
            <source>&amp;Internal</source>
            <extracomment>ui/panes.py</extracomment>
            <translation>&amp;Interna</translation>
        </message>
        <message>
            <source>Internal timing</source>
            <extracomment>ui/panes.py, ui/uncertainty_panel.py</extracomment>
            <translation>Regulação interna</translation>
        </message>
        <message>
            <source>En&amp;gine</source>
            <extracomment>ui/panes.py</extracomment>
            <translation>&amp;Motor</translation>
        </message>
        <message>
            <source>&amp;Lead</source>
            <extracomment>ui/panes.py</extracomment>
            <translation>&amp;Cabo</translation>
        </message>
        <message>
            <source>&amp;Trials</source>
            <extracomment>ui/panes.py</extracomment>
            <translation>&amp;Ensaios</translation>
        </message>
        <message>
            <source>Trials, and what to try next</source>
            <extracomment>ui/panes.py</extracomment>
            <translation>Ensaios, e o que tentar a seguir</translation>
        </message>
        <message>
            <source>Unce&amp;rtainty</source>
            <extracomment>ui/panes.py</extracomment>
            <translation>Ince&amp;rteza</translation>
        </message>
        <message>
            <source>&amp;Wear</source>
            <extracomment>ui/panes.py</extracomment>
            <translation>&amp;Desgaste</translation>
        </message>
        <message>
            <source>Wear and drift</source>
            <extracomment>ui/panes.py</extracomment>
            <translation>Desgaste e deriva</translation>
        </message>
        <message>
            <source>Point at a move to see where it brings the marks; choose one to step through it.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Apontar um movimento para ver onde leva as marcas; escolher um para o fazer passo a passo.</translation>
        </message>
        <message>
            <source>The move is made. Check the marks, tighten, and read the lamp again, approaching with rotation; enter what it says as the new reading.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>O movimento está feito. Verificar as marcas, apertar e ler a lâmpada de novo, chegando no sentido de rotação; introduzir o que diz como nova leitura.</translation>
        </message>
        <message>
            <source>1 single step to go.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Falta 1 passo simples.</translation>
        </message>
        <message>
            <source>{steps} single steps to go.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Faltam {steps} passos simples.</translation>
        </message>
        <message>
            <source>Moves that would put it right, best first</source>
            <extracomment>ui/plan_box.py, ui/timing_panel.py</extracomment>
            <translation>Movimentos que o poriam certo, o melhor primeiro</translation>
        </message>
        <message>
            <source>Moves of the coupling, best first</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Movimentos do acoplamento, o melhor primeiro</translation>
        </message>
        <message>
            <source>Move the ne&amp;xt tooth</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Mover o pró&amp;ximo dente</translation>
        </message>
        <message>
            <source>Pri&amp;nt the plan</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>&amp;Imprimir o plano</translation>
        </message>
        <message>
            <source>The chosen move, or the first, on one page: drawings, single steps to be ticked</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>O movimento escolhido, ou o primeiro, numa página: desenhos, passos a assinalar</translation>
        </message>
        <message>
            <source>Teeth of the magneto flange on the disc, and of the disc on the drive flange, from as found; with rotation is {along}, against is {against} seen from the drive end.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Dentes da flange do magneto no disco, e do disco na flange motriz, desde o encontrado; a favor da rotação é {along}, contra é {against}, visto do lado motriz.</translation>
        </message>
        <message>
            <source>Flange</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Flange</translation>
        </message>
        <message>
            <source>Fires at</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Inflama a</translation>
        </message>
        <message>
            <source>There is no reading to plan from.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Não há leitura de onde planear.</translation>
        </message>
        <message>
            <source>{first} or {second}</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>{first} ou {second}</translation>
        </message>
        <message>
            <source>✗ Nothing reaches it within tolerance: {outside}. The nearest two: {nearest}.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>✗ Nada lá chega dentro da tolerância: {outside}. Os dois mais próximos: {nearest}.</translation>
        </message>
        <message>
            <source>Magneto flange {teeth}</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Flange do magneto {teeth}</translation>
        </message>
        <message>
            <source>✓ The first is within ±{tolerance}° of crank.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>✓ O primeiro fica dentro de ±{tolerance}° de cambota.</translation>
        </message>
        <message>
            <source>By the present reading the first would come within ±{tolerance}° of crank; set the contacts first, read the lamp again, then plan.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Pela leitura presente o primeiro ficaria dentro de ±{tolerance}° de cambota; regular primeiro os contactos, ler a lâmpada de novo, depois planear.</translation>
        </message>
        <message>
            <source>Uncertainty budget</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation>Balanço da incerteza</translation>
        </message>
        <message>
            <source>{name}: {share} of the variance; {source}</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation>{name}: {share} da variância; {source}</translation>
        </message>
        <message>
            <source>share of the variance [%]</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation>parte da variância [%]</translation>
        </message>
        <message>
            <source>how often, per unit</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation>frequência, por unidade</translation>
        </message>
        <message>
            <source>Quantity whose budget is shown</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation>Grandeza cujo balanço se mostra</translation>
        </message>
        <message>
            <source>Nothing is judged yet.</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation>Ainda nada foi avaliado.</translation>
        </message>
        <message>
            <source>Choose readings and instruments on the Uncertainty page.</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation>Escolher leituras e instrumentos na página Incerteza.</translation>
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
            <translation>&amp;Grandeza</translation>
        </message>
        <message>
            <source>rotor {rotor}: {torque} N m with rotation</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>rotor {rotor}: {torque} N m no sentido de rotação</translation>
        </message>
        <message>
            <source>rotor {rotor}: {torque} N m against rotation</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>rotor {rotor}: {torque} N m contra a rotação</translation>
        </message>
        <message>
            <source>Let go, the rotor swings on, with rotation, {angle} to neutral.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Largado, o rotor avança, no sentido de rotação, {angle} até ao neutro.</translation>
        </message>
        <message>
            <source>Let go, the rotor swings back, against rotation, {angle} to neutral.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Largado, o rotor recua, contra a rotação, {angle} até ao neutro.</translation>
        </message>
        <message>
            <source>Let go, off the engine, the rotor swings on, with rotation, {angle} to neutral.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Largado, fora do motor, o rotor avança, no sentido de rotação, {angle} até ao neutro.</translation>
        </message>
        <message>
            <source>Let go, off the engine, the rotor swings back, against rotation, {angle} to neutral.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Largado, fora do motor, o rotor recua, contra a rotação, {angle} até ao neutro.</translation>
        </message>
        <message>
            <source>rotor past neutral [deg]</source>
            <extracomment>ui/plot_coil.py, ui/plot_lift.py</extracomment>
            <translation>rotor após o neutro [°]</translation>
        </message>
        <message>
            <source>rotor {rotor}: flux {flux} mWb (static {static}), current {current} A</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>rotor {rotor}: fluxo {flux} mWb (estático {static}), corrente {current} A</translation>
        </message>
        <message>
            <source>At {rpm} turns a minute the present opening leaves {now} mJ, the E-gap {at} mJ.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>A {rpm} rotações por minuto a abertura presente deixa {now} mJ, o E-gap {at} mJ.</translation>
        </message>
        <message>
            <source>core flux [mWb]</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>fluxo no núcleo [mWb]</translation>
        </message>
        <message>
            <source>primary current [A]</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>corrente primária [A]</translation>
        </message>
        <message>
            <source>energy at opening [mJ]</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>energia na abertura [mJ]</translation>
        </message>
        <message>
            <source>best here</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>melhor aqui</translation>
        </message>
        <message>
            <source>Speed of the rotor</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Velocidade do rotor</translation>
        </message>
        <message>
            <source>From turning by hand to full speed</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>De rodar à mão até à velocidade plena</translation>
        </message>
        <message>
            <source>opening {angle} from the E-gap leaves {energy} mJ</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>a abertura a {angle} do E-gap deixa {energy} mJ</translation>
        </message>
        <message>
            <source>There is no coil to show, or the contacts never work.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Não há bobina para mostrar, ou os contactos nunca trabalham.</translation>
        </message>
        <message>
            <source>torque with rotation [N m]</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>binário no sentido de rotação [N m]</translation>
        </message>
        <message>
            <source>This magneto's file gives no pull.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>O ficheiro deste magneto não dá a atração.</translation>
        </message>
        <message>
            <source>The rotor stands at neutral: it stays there by itself.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>O rotor está no neutro: fica ali por si.</translation>
        </message>
        <message>
            <source>This magneto's file gives no coil.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>O ficheiro deste magneto não dá bobina.</translation>
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
            <translation>Velocidade do rotor</translation>
        </message>
        <message>
            <source>now {energy} mJ</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>agora {energy} mJ</translation>
        </message>
        <message>
            <source>rests: neutral</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>repousa: neutro</translation>
        </message>
        <message>
            <source>balances but does not rest: full register</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>em equilíbrio mas sem repouso: registo pleno</translation>
        </message>
        <message>
            <source>{fires} BTDC, {off} early: magneto flange {magneto}, disc {disc}</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>{fires} antes do PMS, {off} de avanço: flange do magneto {magneto}, disco {disc}</translation>
        </message>
        <message>
            <source>{fires} BTDC, {off} late: magneto flange {magneto}, disc {disc}</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>{fires} antes do PMS, {off} de atraso: flange do magneto {magneto}, disco {disc}</translation>
        </message>
        <message>
            <source>{moves} timings near the wanted one; the nearest: {nearest}.</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>{moves} pontos perto do pretendido; o mais próximo: {nearest}.</translation>
        </message>
        <message>
            <source>fires [crank deg BTDC], earlier to the right</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>inflama [° de cambota antes do PMS], mais cedo à direita</translation>
        </message>
        <message>
            <source>teeth moved, both faces</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>dentes movidos, ambas as faces</translation>
        </message>
        <message>
            <source>now</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>agora</translation>
        </message>
        <message>
            <source>wanted {wanted} ± {tolerance}°</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>pretendido {wanted} ± {tolerance}°</translation>
        </message>
        <message>
            <source>No timing can be planned.</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>Não se pode planear nenhum ponto.</translation>
        </message>
        <message>
            <source>What if the disc had other teeth: the installation stays as it is</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>E se o disco tivesse outros dentes: a instalação fica como está</translation>
        </message>
        <message>
            <source>This magneto is not on an engine: open an installation.</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>Este magneto não está num motor: abrir uma instalação.</translation>
        </message>
        <message>
            <source>The contacts never open and close: there is no timing to plan from.</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>Os contactos nunca abrem e fecham: não há ponto de onde planear.</translation>
        </message>
        <message>
            <source>nearest</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>mais próximo</translation>
        </message>
        <message>
            <source>Teeth at the magneto, what if</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>Dentes do lado do magneto, hipótese</translation>
        </message>
        <message>
            <source>Teeth at the drive, what if</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>Dentes do lado motriz, hipótese</translation>
        </message>
        <message>
            <source>now, nearest</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>agora, mais próximo</translation>
        </message>
        <message>
            <source>Teeth: magneto</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>Dentes: magneto</translation>
        </message>
        <message>
            <source>drive</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>motriz</translation>
        </message>
        <message>
            <source>present</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>presente</translation>
        </message>
        <message>
            <source>designed</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>projetado</translation>
        </message>
        <message>
            <source>before</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>antes</translation>
        </message>
        <message>
            <source>Lift and gap</source>
            <extracomment>ui/plot_lift.py, ui/plot_pane.py</extracomment>
            <translation>Levantamento e folga</translation>
        </message>
        <message>
            <source>rotor {rotor}: lift {lift}, {what}</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>rotor {rotor}: levantamento {lift}, {what}</translation>
        </message>
        <message>
            <source>Contacts open at {opens} and close at {closes} of rotor; largest gap {max_gap}.</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>Os contactos abrem a {opens} e fecham a {closes} de rotor; folga máxima {max_gap}.</translation>
        </message>
        <message>
            <source>lobe {lobe}: {opens}, largest gap {max_gap}</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>ressalto {lobe}: {opens}, folga máxima {max_gap}</translation>
        </message>
        <message>
            <source>{good} of {lobes} lobes have their largest gap within limits.</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>{good} de {lobes} ressaltos têm a folga máxima dentro dos limites.</translation>
        </message>
        <message>
            <source>gap [mm]</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>folga [mm]</translation>
        </message>
        <message>
            <source>contact lift [{unit}]</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>levantamento do contacto [{unit}]</translation>
        </message>
        <message>
            <source>gap [{unit}]</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>folga [{unit}]</translation>
        </message>
        <message>
            <source>stop: contacts touch</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>batente: os contactos tocam-se</translation>
        </message>
        <message>
            <source>limits of the largest gap</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>limites da folga máxima</translation>
        </message>
        <message>
            <source>gap {gap}</source>
            <extracomment>ui/plot_lift.py, ui/plot_window.py</extracomment>
            <translation>folga {gap}</translation>
        </message>
        <message>
            <source>closed</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>fechados</translation>
        </message>
        <message>
            <source>at the mark: judged on lobe 1</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>na marca: avaliado no ressalto 1</translation>
        </message>
        <message>
            <source>at the mark</source>
            <extracomment>ui/plot_lift.py, ui/trials_panel.py</extracomment>
            <translation>na marca</translation>
        </message>
        <message>
            <source>limits</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>limites</translation>
        </message>
        <message>
            <source>never works the contacts</source>
            <extracomment>ui/plot_lift.py, ui/plot_window.py</extracomment>
            <translation>nunca aciona os contactos</translation>
        </message>
        <message>
            <source>{error} from its place</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>a {error} do seu lugar</translation>
        </message>
        <message>
            <source>The contacts never open on lobe 1.</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>Os contactos nunca abrem no ressalto 1.</translation>
        </message>
        <message>
            <source>The contacts never close.</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>Os contactos nunca fecham.</translation>
        </message>
        <message>
            <source>lobe, in firing order</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>ressalto, por ordem de inflamação</translation>
        </message>
        <message>
            <source>Window</source>
            <extracomment>ui/plot_pane.py</extracomment>
            <translation>Janela</translation>
        </message>
        <message>
            <source>Magnet</source>
            <extracomment>ui/plot_pane.py</extracomment>
            <translation>Íman</translation>
        </message>
        <message>
            <source>Wear</source>
            <extracomment>ui/plot_pane.py, ui/plot_wear.py</extracomment>
            <translation>Desgaste</translation>
        </message>
        <message>
            <source>The plots are coming…</source>
            <extracomment>ui/plot_pane.py</extracomment>
            <translation>Os gráficos estão a chegar…</translation>
        </message>
        <message>
            <source>SVG (*.svg);;PNG (*.png);;Values as CSV (*.csv)</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation>SVG (*.svg);;PNG (*.png);;Valores em CSV (*.csv)</translation>
        </message>
        <message>
            <source>Values under the pointer</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation>Valores sob o ponteiro</translation>
        </message>
        <message>
            <source>Copy the plots as a picture</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation>Copiar os gráficos como imagem</translation>
        </message>
        <message>
            <source>Save the plots as SVG or PNG, or their values as CSV</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation>Guardar os gráficos em SVG ou PNG, ou os seus valores em CSV</translation>
        </message>
        <message>
            <source>The plots are copied.</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation>Os gráficos estão copiados.</translation>
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
            <translation>não há aqui valores para guardar</translation>
        </message>
        <message>
            <source>{name}: plots are saved as .svg or .png, their values as .csv</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation>{name}: os gráficos guardam-se em .svg ou .png, os seus valores em .csv</translation>
        </message>
        <message>
            <source>{name}: the picture could not be saved</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation>{name}: a imagem não pôde ser guardada</translation>
        </message>
        <message>
            <source>plate {plate}: expect {gap}, 19 times in 20 between {low} and {high}</source>
            <extracomment>ui/plot_trials.py</extracomment>
            <translation>placa {plate}: esperar {gap}, 19 vezes em 20 entre {low} e {high}</translation>
        </message>
        <message>
            <source>backplate, positive with rotation [deg]</source>
            <extracomment>ui/plot_trials.py, ui/plot_window.py</extracomment>
            <translation>placa de base, positivo no sentido de rotação [°]</translation>
        </message>
        <message>
            <source>here: done</source>
            <extracomment>ui/plot_trials.py</extracomment>
            <translation>aqui: pronto</translation>
        </message>
        <message>
            <source>next</source>
            <extracomment>ui/plot_trials.py</extracomment>
            <translation>seguinte</translation>
        </message>
        <message>
            <source>through the trials</source>
            <extracomment>ui/plot_trials.py</extracomment>
            <translation>pelos ensaios</translation>
        </message>
        <message>
            <source>as the file has it</source>
            <extracomment>ui/plot_trials.py</extracomment>
            <translation>como o ficheiro a dá</translation>
        </message>
        <message>
            <source>19 times in 20</source>
            <extracomment>ui/plot_trials.py</extracomment>
            <translation>19 vezes em 20</translation>
        </message>
        <message>
            <source>running hours from now [h]</source>
            <extracomment>ui/plot_wear.py</extracomment>
            <translation>horas de funcionamento a partir de agora [h]</translation>
        </message>
        <message>
            <source>next inspection</source>
            <extracomment>ui/plot_wear.py</extracomment>
            <translation>próxima inspeção</translation>
        </message>
        <message>
            <source>true gap</source>
            <extracomment>ui/plot_wear.py</extracomment>
            <translation>folga verdadeira</translation>
        </message>
        <message>
            <source>what a blade finds</source>
            <extracomment>ui/plot_wear.py</extracomment>
            <translation>o que uma lâmina encontra</translation>
        </message>
        <message>
            <source>Adjustment window</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation>Janela de regulação</translation>
        </message>
        <message>
            <source>plate {plate}, screw {screw}: {opens}, largest gap {gap}</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation>placa {plate}, parafuso {screw}: {opens}, folga máxima {gap}</translation>
        </message>
        <message>
            <source>You are at {place}.</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation>Está em {place}.</translation>
        </message>
        <message>
            <source>contact screw [deg]</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation>parafuso de contacto [°]</translation>
        </message>
        <message>
            <source>Heel wear</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation>Desgaste do calcador</translation>
        </message>
        <message>
            <source>Wear the heel and see the window move: what is set now opens later, with a smaller gap</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation>Gastar o calcador e ver a janela mover-se: o que agora está regulado abre mais tarde, com menor folga</translation>
        </message>
        <message>
            <source>(no heel arm in the file)</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation>(sem braço do calcador no ficheiro)</translation>
        </message>
        <message>
            <source>opens {off} late</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation>abre {off} tarde</translation>
        </message>
        <message>
            <source>opens {off} early</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation>abre {off} cedo</translation>
        </message>
        <message>
            <source>Heel worn</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation>Calcador gasto</translation>
        </message>
        <message>
            <source>kept in the attempt's file</source>
            <extracomment>ui/practice_choice.py</extracomment>
            <translation>guardado no ficheiro da tentativa</translation>
        </message>
        <message>
            <source>left empty: drawn at random; the same code gives the same faults</source>
            <extracomment>ui/practice_choice.py</extracomment>
            <translation>vazio: sorteado ao acaso; o mesmo código dá as mesmas avarias</translation>
        </message>
        <message>
            <source>Lessons</source>
            <extracomment>ui/practice_choice.py</extracomment>
            <translation>Lições</translation>
        </message>
        <message>
            <source>New exercise</source>
            <extracomment>ui/practice_choice.py</extracomment>
            <translation>Novo exercício</translation>
        </message>
        <message>
            <source>&amp;Trainee</source>
            <extracomment>ui/practice_choice.py</extracomment>
            <translation>&amp;Formando</translation>
        </message>
        <message>
            <source>{steps} steps.</source>
            <extracomment>ui/practice_choice.py</extracomment>
            <translation>{steps} passos.</translation>
        </message>
        <message>
            <source>About {minutes} minutes.</source>
            <extracomment>ui/practice_choice.py</extracomment>
            <translation>Cerca de {minutes} minutos.</translation>
        </message>
        <message>
            <source>&amp;2 Tray</source>
            <extracomment>ui/practice_controls.py</extracomment>
            <translation>&amp;2 Tabuleiro</translation>
        </message>
        <message>
            <source>&amp;3 Work</source>
            <extracomment>ui/practice_controls.py</extracomment>
            <translation>&amp;3 Trabalho</translation>
        </message>
        <message>
            <source>&amp;4 Notebook</source>
            <extracomment>ui/practice_controls.py</extracomment>
            <translation>&amp;4 Caderno</translation>
        </message>
        <message>
            <source>{part}: by how much</source>
            <extracomment>ui/practice_controls.py</extracomment>
            <translation>{part}: de quanto</translation>
        </message>
        <message>
            <source>With Shift a tenth of the amount, with Alt ten times</source>
            <extracomment>ui/practice_controls.py</extracomment>
            <translation>Com Shift um décimo do valor, com Alt dez vezes</translation>
        </message>
        <message>
            <source>Drag rotor, backplate and contact screw in the picture, or take one in hand with 1, 2, 3 and turn it with the arrow keys or the wheel: finer with Shift. Everything else is a button at the right; Alt and the underlined letter reaches it, Alt with 1 to 4 the tabs. Nothing here shows a true value: read the instruments. There is no undo.</source>
            <extracomment>ui/practice_menus.py</extracomment>
            <translation>Arrastar rotor, placa de base e parafuso de contacto na imagem, ou pegar num com 1, 2, 3 e rodá-lo com as setas ou a roda do rato: mais fino com Shift. Tudo o resto é um botão à direita; Alt e a letra sublinhada chega lá, Alt com 1 a 4 aos separadores. Nada aqui mostra um valor verdadeiro: ler os instrumentos. Não há anular.</translation>
        </message>
        <message>
            <source>Save picture of the contacts…</source>
            <extracomment>ui/practice_menus.py</extracomment>
            <translation>Guardar imagem dos contactos…</translation>
        </message>
        <message>
            <source>&amp;Save attempt as…</source>
            <extracomment>ui/practice_menus.py</extracomment>
            <translation>&amp;Guardar tentativa como…</translation>
        </message>
        <message>
            <source>&amp;Hand in…</source>
            <extracomment>ui/practice_menus.py</extracomment>
            <translation>E&amp;ntregar…</translation>
        </message>
        <message>
            <source>Save &amp;debrief…</source>
            <extracomment>ui/practice_menus.py</extracomment>
            <translation>Guardar &amp;balanço…</translation>
        </message>
        <message>
            <source>Practice</source>
            <extracomment>ui/practice_menus.py</extracomment>
            <translation>Prática</translation>
        </message>
        <message>
            <source>Atte&amp;mpt</source>
            <extracomment>ui/practice_menus.py</extracomment>
            <translation>Ten&amp;tativa</translation>
        </message>
        <message>
            <source>put a hand on the propeller first, and treat it as live: nobody else in its arc</source>
            <extracomment>ui/practice_model.py</extracomment>
            <translation>pôr primeiro a mão na hélice, e tratá-la como viva: mais ninguém no seu arco</translation>
        </message>
        <message>
            <source>this is a replay: nothing in it can be changed</source>
            <extracomment>ui/practice_model.py</extracomment>
            <translation>isto é uma repetição: nada nela se pode alterar</translation>
        </message>
        <message>
            <source>Straightedge past the mark as the contacts open</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>Régua após a marca quando os contactos abrem</translation>
        </message>
        <message>
            <source>Disc reads at top dead centre</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>O disco lê no ponto morto superior</translation>
        </message>
        <message>
            <source>Remark</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>Observação</translation>
        </message>
        <message>
            <source>short inside the magneto</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>curto-circuito dentro do magneto</translation>
        </message>
        <message>
            <source>spring tab does not touch</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>a lingueta de mola não toca</translation>
        </message>
        <message>
            <source>such as 0.8 mm or −30 thou; short of it: with a minus</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>como 0.8 mm ou −30 thou; antes dela: com menos</translation>
        </message>
        <message>
            <source>such as 0.33 mm or 13 thou</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>such as 25.5°</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>como 25.5°</translation>
        </message>
        <message>
            <source>such as −3.25°; after the zero: with a minus</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>como −3.25°; depois do zero: com menos</translation>
        </message>
        <message>
            <source>one line</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>uma linha</translation>
        </message>
        <message>
            <source>Write down</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>Anotar</translation>
        </message>
        <message>
            <source>What is wrong with the entry</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>O que está errado na anotação</translation>
        </message>
        <message>
            <source>Writ&amp;e it down</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>Ano&amp;tar</translation>
        </message>
        <message>
            <source>Wha&amp;t</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>&amp;Quê</translation>
        </message>
        <message>
            <source>Ma&amp;gneto</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>Ma&amp;gneto</translation>
        </message>
        <message>
            <source>Lo&amp;be</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>Ress&amp;alto</translation>
        </message>
        <message>
            <source>&amp;Reading</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>&amp;Leitura</translation>
        </message>
        <message>
            <source>&amp;Finding</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>Ve&amp;rificado</translation>
        </message>
        <message>
            <source>Notebook</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>Caderno</translation>
        </message>
        <message>
            <source>“{text}” is not a lobe: write a whole number from 1 to {lobes} here, and the reading below</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>“{text}” não é um ressalto: escrever aqui um número inteiro de 1 a {lobes}, e a leitura em baixo</translation>
        </message>
        <message>
            <source>Left magneto</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>Magneto esquerdo</translation>
        </message>
        <message>
            <source>Right magneto</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>Magneto direito</translation>
        </message>
        <message>
            <source>there is nothing to write down yet</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>ainda não há nada para anotar</translation>
        </message>
        <message>
            <source>Attempts (*.json);;All files (*)</source>
            <extracomment>ui/practice_room.py</extracomment>
            <translation>Tentativas (*.json);;Todos os ficheiros (*)</translation>
        </message>
        <message>
            <source>Open an attempt</source>
            <extracomment>ui/practice_room.py</extracomment>
            <translation>Abrir uma tentativa</translation>
        </message>
        <message>
            <source>An attempt at “{name}” was under way when the program ended.</source>
            <extracomment>ui/practice_room.py</extracomment>
            <translation>Estava em curso uma tentativa de “{name}” quando o programa terminou.</translation>
        </message>
        <message>
            <source>&amp;Go on with it</source>
            <extracomment>ui/practice_room.py</extracomment>
            <translation>&amp;Continuá-la</translation>
        </message>
        <message>
            <source>&amp;Discard it</source>
            <extracomment>ui/practice_room.py</extracomment>
            <translation>&amp;Descartá-la</translation>
        </message>
        <message>
            <source>Treat the propeller as live: switch off and its lead proved, plugs out, wheels chocked, nobody in its arc.</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Tratar a hélice como viva: interruptor desligado e o seu cabo provado, velas fora, rodas calçadas, ninguém no seu arco.</translation>
        </message>
        <message>
            <source>by so much</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>neste valor</translation>
        </message>
        <message>
            <source>until lamp changes</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>até a lâmpada mudar</translation>
        </message>
        <message>
            <source>until edge in line</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>até a aresta alinhar</translation>
        </message>
        <message>
            <source>until widest open</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>até à abertura máxima</translation>
        </message>
        <message>
            <source>until piston stops</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>até o êmbolo parar</translation>
        </message>
        <message>
            <source>to a disc reading</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>até uma leitura do disco</translation>
        </message>
        <message>
            <source>propeller by so much</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>hélice neste valor</translation>
        </message>
        <message>
            <source>Timing lamp</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Lâmpada de calagem</translation>
        </message>
        <message>
            <source>What you see</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>O que se vê</translation>
        </message>
        <message>
            <source>Turning</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Rodar</translation>
        </message>
        <message>
            <source>Hol&amp;d the rotor</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Segura&amp;r o rotor</translation>
        </message>
        <message>
            <source>How far to turn</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Quanto rodar</translation>
        </message>
        <message>
            <source>By how many degrees, or to which reading before the disc's zero</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>De quantos graus, ou até que leitura antes do zero do disco</translation>
        </message>
        <message>
            <source>Hand on the &amp;propeller</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Mão na &amp;hélice</translation>
        </message>
        <message>
            <source>Lamp</source>
            <extracomment>ui/practice_sight.py, lessons/a-full-job.json</extracomment>
            <translation>Lâmpada</translation>
        </message>
        <message>
            <source>Finger</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Dedo</translation>
        </message>
        <message>
            <source>Magneto in view</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Magneto à vista</translation>
        </message>
        <message>
            <source>◀ &amp;Against</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>◀ C&amp;ontra</translation>
        </message>
        <message>
            <source>&amp;With ▶</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>A &amp;favor ▶</translation>
        </message>
        <message>
            <source>Turn against rotation</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Rodar contra a rotação</translation>
        </message>
        <message>
            <source>Turn with rotation</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Rodar no sentido de rotação</translation>
        </message>
        <message>
            <source>{way}; by so much: with Shift a tenth of it, with Alt ten times</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>{way}; neste valor: com Shift um décimo, com Alt dez vezes</translation>
        </message>
        <message>
            <source>Turning the propeller</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Rodar a hélice</translation>
        </message>
        <message>
            <source>About {minutes} minutes. Time is a guide and is not marked.</source>
            <extracomment>ui/practice_task.py</extracomment>
            <translation>Cerca de {minutes} minutos. O tempo é indicativo e não conta para a nota.</translation>
        </message>
        <message>
            <source>No more hints</source>
            <extracomment>ui/practice_task.py</extracomment>
            <translation>Não há mais dicas</translation>
        </message>
        <message>
            <source>A hi&amp;nt ({left} left)</source>
            <extracomment>ui/practice_task.py</extracomment>
            <translation>Uma d&amp;ica (restam {left})</translation>
        </message>
        <message>
            <source>Another hi&amp;nt ({left} left)</source>
            <extracomment>ui/practice_task.py</extracomment>
            <translation>Outra d&amp;ica (restam {left})</translation>
        </message>
        <message>
            <source>{percent} % are needed, and no dangerous act. Right, and proved by instruments since the last act that could have changed it, counts whole; right but not proved, half.</source>
            <extracomment>ui/practice_task.py</extracomment>
            <translation>São precisos {percent} % e nenhum ato perigoso. Certo, e provado por instrumentos desde o último ato que o pudesse alterar, conta por inteiro; certo mas não provado, metade.</translation>
        </message>
        <message>
            <source>Set of blades</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Jogo de lâminas</translation>
        </message>
        <message>
            <source>Straightedge, marks of {divisions}</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Régua, divisões de {divisions}</translation>
        </message>
        <message>
            <source>Laid along the &amp;step</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Pousada no d&amp;egrau</translation>
        </message>
        <message>
            <source>Look s&amp;quare over it</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Olhar a &amp;direito</translation>
        </message>
        <message>
            <source>From where the eye looks over the straightedge</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>De onde o olho vê por cima da régua</translation>
        </message>
        <message>
            <source>Behind, square over the edge, ahead</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Atrás, a direito sobre a aresta, à frente</translation>
        </message>
        <message>
            <source>Electrical</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Elétrico</translation>
        </message>
        <message>
            <source>Crank</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Cambota</translation>
        </message>
        <message>
            <source>Th&amp;umb over No. 1's plug hole</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Pole&amp;gar no furo da vela n.º 1</translation>
        </message>
        <message>
            <source>&amp;Try them</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Expe&amp;rimentar</translation>
        </message>
        <message>
            <source>Put &amp;back</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Re&amp;pôr</translation>
        </message>
        <message>
            <source>Blade {blade}</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Lâmina {blade}</translation>
        </message>
        <message>
            <source>In hand: {blades}</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Na mão: {blades}</translation>
        </message>
        <message>
            <source>Pick up to three</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Pegar em até três</translation>
        </message>
        <message>
            <source>Lamp a&amp;cross the contacts</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Lâmpad&amp;a nos contactos</translation>
        </message>
        <message>
            <source>Meter the &amp;lead to the case</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Mu&amp;ltímetro do cabo à carcaça</translation>
        </message>
        <message>
            <source>From the pulled plug of the switch lead to the case</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Da ficha solta do cabo de massa à carcaça</translation>
        </message>
        <message>
            <source>Disc on the cra&amp;nk</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Disco &amp;na cambota</translation>
        </message>
        <message>
            <source>Turn the disc on the crank, so that it reads earlier or later under its pointer</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Rodar o disco na cambota, para que leia mais cedo ou mais tarde sob o ponteiro</translation>
        </message>
        <message>
            <source>Piston st&amp;op in No. 1</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Ba&amp;tente do êmbolo no n.º 1</translation>
        </message>
        <message>
            <source>Thousandths of an inch</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Milésimas de polegada</translation>
        </message>
        <message>
            <source>There is nothing on the tray: eyes and hands are enough here.</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Não há nada no tabuleiro: aqui bastam olhos e mãos.</translation>
        </message>
        <message>
            <source>behind</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>atrás</translation>
        </message>
        <message>
            <source>ahead</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>à frente</translation>
        </message>
        <message>
            <source>reads later</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>lê mais tarde</translation>
        </message>
        <message>
            <source>reads earlier</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>lê mais cedo</translation>
        </message>
        <message>
            <source>magview {version}: a training aid.</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>magview {version}: um auxiliar de formação.</translation>
        </message>
        <message>
            <source>Hand &amp;in…</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>E&amp;ntregar…</translation>
        </message>
        <message>
            <source>Hand in now?</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>Entregar agora?</translation>
        </message>
        <message>
            <source>Hand in</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>Entregar</translation>
        </message>
        <message>
            <source>Save the attempt</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>Guardar a tentativa</translation>
        </message>
        <message>
            <source>Attempts (*.json)</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>Tentativas (*.json)</translation>
        </message>
        <message>
            <source>Save the debrief</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>Guardar o balanço</translation>
        </message>
        <message>
            <source>This attempt has not been saved.</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>Esta tentativa não foi guardada.</translation>
        </message>
        <message>
            <source>&amp;1 Lesson</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>&amp;1 Lição</translation>
        </message>
        <message>
            <source>&amp;1 Task</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>&amp;1 Tarefa</translation>
        </message>
        <message>
            <source>&amp;Hand in</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>&amp;Entregar</translation>
        </message>
        <message>
            <source>&amp;Go on working</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>&amp;Continuar a trabalhar</translation>
        </message>
        <message>
            <source>Then the true values are shown, and nothing more can be done.</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>Depois mostram-se os valores verdadeiros e nada mais se pode fazer.</translation>
        </message>
        <message>
            <source>practice</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>prática</translation>
        </message>
        <message>
            <source>The attempt cannot be kept for after a crash: {error}</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>A tentativa não pode ser conservada para depois de uma falha: {error}</translation>
        </message>
        <message>
            <source>Loc&amp;k screw tight</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Parafuso de fi&amp;xação apertado</translation>
        </message>
        <message>
            <source>C&amp;lamp screws tight</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Parafusos de a&amp;perto apertados</translation>
        </message>
        <message>
            <source>Contact &amp;screw</source>
            <extracomment>ui/practice_work.py, ui/setting_panel.py</extracomment>
            <translation>Parafu&amp;so de contacto</translation>
        </message>
        <message>
            <source>&amp;Backplate</source>
            <extracomment>ui/practice_work.py, ui/setting_panel.py</extracomment>
            <translation>Placa de &amp;base</translation>
        </message>
        <message>
            <source>Look at the &amp;contacts</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Olhar para os &amp;contactos</translation>
        </message>
        <message>
            <source>D&amp;ress them</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>&amp;Retificar</translation>
        </message>
        <message>
            <source>Plu&amp;g pulled out</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>&amp;Ficha tirada</translation>
        </message>
        <message>
            <source>Paper under the spring tab</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Papel sob a lingueta de mola</translation>
        </message>
        <message>
            <source>Engine and magneto</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Motor e magneto</translation>
        </message>
        <message>
            <source>Wh&amp;eels chocked</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Rodas ca&amp;lçadas</translation>
        </message>
        <message>
            <source>Spark plugs o&amp;ut</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>&amp;Velas fora</translation>
        </message>
        <message>
            <source>&amp;Nuts tight</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>P&amp;orcas apertadas</translation>
        </message>
        <message>
            <source>Rotor pinned</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Rotor travado com pino</translation>
        </message>
        <message>
            <source>Lift the magneto o&amp;ff</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Reti&amp;rar o magneto</translation>
        </message>
        <message>
            <source>Refit by its marks</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Montar pelas marcas</translation>
        </message>
        <message>
            <source>Refit as the rotor stands</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Montar como está o rotor</translation>
        </message>
        <message>
            <source>Coupling, one tooth at a time</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Acoplamento, um dente de cada vez</translation>
        </message>
        <message>
            <source>Paint marks across i&amp;t</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Pintar &amp;marcas através dele</translation>
        </message>
        <message>
            <source>Screw {screw}; plate {plate}.</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Parafuso {screw}; placa {plate}.</translation>
        </message>
        <message>
            <source>◀ against</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>◀ contra</translation>
        </message>
        <message>
            <source>with ▶</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>a favor ▶</translation>
        </message>
        <message>
            <source>New lead</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Cabo novo</translation>
        </message>
        <message>
            <source>New spring tab</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Lingueta de mola nova</translation>
        </message>
        <message>
            <source>New insulation</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Isolamento novo</translation>
        </message>
        <message>
            <source>Magneto flange</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Flange do magneto</translation>
        </message>
        <message>
            <source>Present</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Apresentar</translation>
        </message>
        <message>
            <source>◀ Previous</source>
            <extracomment>ui/present.py</extracomment>
            <translation>◀ Anterior</translation>
        </message>
        <message>
            <source>Name the part before</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Nomear a peça anterior</translation>
        </message>
        <message>
            <source>Next ▶</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Seguinte ▶</translation>
        </message>
        <message>
            <source>Name the next part; or click a part</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Nomear a peça seguinte; ou clicar numa peça</translation>
        </message>
        <message>
            <source>Spotlight</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Foco</translation>
        </message>
        <message>
            <source>Dim all but the part that is named</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Escurecer tudo menos a peça nomeada</translation>
        </message>
        <message>
            <source>Freeze</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Congelar</translation>
        </message>
        <message>
            <source>The picture stands; the bench moves on</source>
            <extracomment>ui/present.py</extracomment>
            <translation>A imagem fica parada; a bancada continua</translation>
        </message>
        <message>
            <source>Hide numbers</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Ocultar números</translation>
        </message>
        <message>
            <source>No numbers until they are asked for</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Sem números até serem pedidos</translation>
        </message>
        <message>
            <source>Keep this moment</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Fixar este momento</translation>
        </message>
        <message>
            <source>Remember the bench as it is</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Recordar a bancada como está</translation>
        </message>
        <message>
            <source>Before and after</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Antes e depois</translation>
        </message>
        <message>
            <source>The kept moment beside now</source>
            <extracomment>ui/present.py</extracomment>
            <translation>O momento fixado ao lado do de agora</translation>
        </message>
        <message>
            <source>End</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Terminar</translation>
        </message>
        <message>
            <source>Put away what is shown, then end</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Arrumar o que se mostra e depois terminar</translation>
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
            <translation>Ainda não há peça nomeada</translation>
        </message>
        <message>
            <source>This moment is kept: “Before and after” shows it beside the bench.</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Este momento está fixado: “Antes e depois” mostra-o ao lado da bancada.</translation>
        </message>
        <message>
            <source>FROZEN · the bench has moved on</source>
            <extracomment>ui/present_covers.py</extracomment>
            <translation>CONGELADO · a bancada já avançou</translation>
        </message>
        <message>
            <source>FROZEN · as on the bench</source>
            <extracomment>ui/present_covers.py</extracomment>
            <translation>CONGELADO · tal como na bancada</translation>
        </message>
        <message>
            <source>This is the moment that was kept: it does not move.</source>
            <extracomment>ui/present_covers.py</extracomment>
            <translation>Este é o momento que foi fixado: não se move.</translation>
        </message>
        <message>
            <source>Before</source>
            <extracomment>ui/present_covers.py</extracomment>
            <translation>Antes</translation>
        </message>
        <message>
            <source>Now</source>
            <extracomment>ui/present_covers.py</extracomment>
            <translation>Agora</translation>
        </message>
        <message>
            <source>{title}: breaker end of the magneto</source>
            <extracomment>ui/present_covers.py</extracomment>
            <translation>{title}: lado do ruptor do magneto</translation>
        </message>
        <message>
            <source>Nothing has changed.</source>
            <extracomment>ui/present_covers.py</extracomment>
            <translation>Nada mudou.</translation>
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
            <translation>{language} a partir do próximo arranque: há agora outras janelas abertas.</translation>
        </message>
        <message>
            <source>Reports stay on this computer and are sent nowhere; they hold no names and no words you typed. Whoever looks after the program can make use of one: save it, and hand it on if you wish.</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>Os relatórios ficam neste computador e não são enviados a lado nenhum; não contêm nomes nem palavras que tenha escrito. Podem servir a quem cuida do programa: guardar um e entregá-lo, se se quiser.</translation>
        </message>
        <message>
            <source>Fault reports</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>Relatórios de falhas</translation>
        </message>
        <message>
            <source>When the program ran last, something in it went wrong. A report of it was kept.</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>Da última vez que o programa correu, algo nele falhou. Guardou-se um relatório.</translation>
        </message>
        <message>
            <source>What went wrong in the program itself.</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>O que falhou no próprio programa.</translation>
        </message>
        <message>
            <source>Report</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>Relatório</translation>
        </message>
        <message>
            <source>What the report says</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>O que diz o relatório</translation>
        </message>
        <message>
            <source>&amp;Delete</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>&amp;Apagar</translation>
        </message>
        <message>
            <source>Save the report</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>Guardar o relatório</translation>
        </message>
        <message>
            <source>Deleted.</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>Apagado.</translation>
        </message>
        <message>
            <source>There is no report.</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>Não há relatório.</translation>
        </message>
        <message>
            <source>{file}: cannot be deleted: {reason}</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>{file}: não pode ser apagado: {reason}</translation>
        </message>
        <message>
            <source>Training and planning aid with invented magnetos. Treat the propeller as live: switch off, switch lead grounded and proved, plugs out, wheels chocked. The maker's current manual and local rules govern; work on a certified aircraft is done or released by a licensed person.</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Auxiliar de formação e planeamento com magnetos inventados. Tratar a hélice como viva: interruptor desligado, cabo de massa ligado à massa e provado, velas fora, rodas calçadas. Prevalecem o manual em vigor do fabricante e as regras locais; o trabalho num avião certificado é feito ou libertado por uma pessoa licenciada.</translation>
        </message>
        <message>
            <source>just open</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>abrem</translation>
        </message>
        <message>
            <source>just close</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>fecham</translation>
        </message>
        <message>
            <source>Setting</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Regulação</translation>
        </message>
        <message>
            <source>From the neutral before No. 1 fires, positive as it turns in service</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Do neutro antes de o n.º 1 inflamar, positivo no sentido em que roda em serviço</translation>
        </message>
        <message>
            <source>Positive with cam rotation; it stops at the end of its slot</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Positivo no sentido de rotação do came; para no fim da ranhura</translation>
        </message>
        <message>
            <source>Positive brings the contacts closer. Dragged in the picture it follows one to one from 40 pixels out; at its head about a sixth, for fine setting</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Positivo aproxima os contactos. Arrastado na imagem segue um para um a partir de 40 píxeis; na cabeça, cerca de um sexto, para o ajuste fino</translation>
        </message>
        <message>
            <source>Hol&amp;d</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Segura&amp;r</translation>
        </message>
        <message>
            <source>Let go, and the magnet pulls the rotor to where it wants it</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Largado, o íman puxa o rotor para onde quer</translation>
        </message>
        <message>
            <source>To the E-gap</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Ao E-gap</translation>
        </message>
        <message>
            <source>To &amp;opening</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>À a&amp;bertura</translation>
        </message>
        <message>
            <source>Clamp screws of the backplate tight</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Parafusos de aperto da placa de base apertados</translation>
        </message>
        <message>
            <source>Clamp screws: the plate turns only while they are slack</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Parafusos de aperto: a placa só roda enquanto estão aliviados</translation>
        </message>
        <message>
            <source>Lock screw of the contact screw tight</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Parafuso de fixação do parafuso de contacto apertado</translation>
        </message>
        <message>
            <source>Lock screw: the contact screw turns only while it is slack; tightening can shift it</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Parafuso de fixação: o parafuso de contacto só roda enquanto está aliviado; apertá-lo pode deslocá-lo</translation>
        </message>
        <message>
            <source>Tight</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Apertados</translation>
        </message>
        <message>
            <source>Go</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Ir</translation>
        </message>
        <message>
            <source>Turn</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Rodar</translation>
        </message>
        <message>
            <source>Run until</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Correr até</translation>
        </message>
        <message>
            <source>on and on</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>sem parar</translation>
        </message>
        <message>
            <source>Speed of the run</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Velocidade da corrida</translation>
        </message>
        <message>
            <source>Ru&amp;n</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>&amp;Correr</translation>
        </message>
        <message>
            <source>Readings, lobe 1</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Leituras, ressalto 1</translation>
        </message>
        <message>
            <source>What would put it right</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>O que o poria certo</translation>
        </message>
        <message>
            <source>For a l&amp;argest gap of</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Para folga m&amp;áxima de</translation>
        </message>
        <message>
            <source>Set it so</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Regular assim</translation>
        </message>
        <message>
            <source>Every lobe, in firing order</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Todos os ressaltos, por ordem de inflamação</translation>
        </message>
        <message>
            <source>Rotor degrees; the gap is the largest, at the top of the lobe</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Graus de rotor; a folga é a maior, no topo do ressalto</translation>
        </message>
        <message>
            <source>Readings of every lobe</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Leituras de todos os ressaltos</translation>
        </message>
        <message>
            <source>{gap} (blade {blade})</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>{gap} (lâmina {blade})</translation>
        </message>
        <message>
            <source>clamp screws</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>parafusos de aperto</translation>
        </message>
        <message>
            <source>Opens</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Abre</translation>
        </message>
        <message>
            <source>Error</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Erro</translation>
        </message>
        <message>
            <source>Closes</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Fecha</translation>
        </message>
        <message>
            <source>Dwell</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Perman.</translation>
        </message>
        <message>
            <source>Gap</source>
            <extracomment>ui/setting_panel.py, ui/trials_panel.py</extracomment>
            <translation>Folga</translation>
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
            <translation>✗ Fora dos limites: {faults}</translation>
        </message>
        <message>
            <source>✓ Within limits</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>✓ Dentro dos limites</translation>
        </message>
        <message>
            <source>within limits, {limit}</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>dentro dos limites, {limit}</translation>
        </message>
        <message>
            <source>out of limits, {limit}</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>fora dos limites, {limit}</translation>
        </message>
        <message>
            <source>Stop</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Parar</translation>
        </message>
        <message>
            <source>With this setting lobe 1 never opens or never closes the contacts.</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Com esta regulação o ressalto 1 nunca abre ou nunca fecha os contactos.</translation>
        </message>
        <message>
            <source>Contacts open at</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Contactos abrem a</translation>
        </message>
        <message>
            <source>From the E-gap</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Do E-gap</translation>
        </message>
        <message>
            <source>Straightedge off mark</source>
            <extracomment>ui/setting_panel.py, ui/uncertainty_panel.py</extracomment>
            <translation>Régua fora da marca</translation>
        </message>
        <message>
            <source>Closed for (dwell)</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Fechados (permanência)</translation>
        </message>
        <message>
            <source>at it</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>nele</translation>
        </message>
        <message>
            <source>Top dead centre from two stop readings</source>
            <extracomment>ui/stop_box.py</extracomment>
            <translation>Ponto morto superior por duas leituras do batente</translation>
        </message>
        <message>
            <source>Top dead centre on the disc</source>
            <extracomment>ui/stop_box.py</extracomment>
            <translation>Ponto morto superior no disco</translation>
        </message>
        <message>
            <source>True top dead centre is at {middle}° on the disc; set the pointer to zero there. (Disc numbered 0 to 360°, or to both sides with what is before zero negative. If the stop was met about bottom dead centre, the top is at {opposite}°. Exact for a rod on the crank pin: use the master rod's.)</source>
            <extracomment>ui/stop_box.py</extracomment>
            <translation>O verdadeiro ponto morto superior está a {middle}° no disco; pôr ali o ponteiro a zero. (Disco numerado de 0 a 360°, ou para os dois lados, com o que está antes do zero negativo. Se o batente foi encontrado à volta do ponto morto inferior, o superior está a {opposite}°. Exato para uma biela no moente da cambota: usar a da biela-mestra.)</translation>
        </message>
        <message>
            <source>First</source>
            <extracomment>ui/stop_box.py</extracomment>
            <translation>Primeira</translation>
        </message>
        <message>
            <source>Second</source>
            <extracomment>ui/stop_box.py</extracomment>
            <translation>Segunda</translation>
        </message>
        <message>
            <source>With rotation is {way} seen from the drive end.</source>
            <extracomment>ui/teeth_box.py</extracomment>
            <translation>O sentido de rotação é {way}, visto do lado motriz.</translation>
        </message>
        <message>
            <source>Teeth moved from as found</source>
            <extracomment>ui/teeth_box.py, ui/timing_panel.py</extracomment>
            <translation>Dentes movidos desde o encontrado</translation>
        </message>
        <message>
            <source>&amp;As found</source>
            <extracomment>ui/teeth_box.py</extracomment>
            <translation>&amp;Como encontrado</translation>
        </message>
        <message>
            <source>Paint new &amp;marks</source>
            <extracomment>ui/teeth_box.py</extracomment>
            <translation>Pintar novas &amp;marcas</translation>
        </message>
        <message>
            <source>Marks in line across drive flange, disc and magneto flange, as they stand now</source>
            <extracomment>ui/teeth_box.py</extracomment>
            <translation>Marcas em linha através da flange motriz, do disco e da flange do magneto, como estão agora</translation>
        </message>
        <message>
            <source>{name}: one tooth against rotation</source>
            <extracomment>ui/teeth_box.py</extracomment>
            <translation>{name}: um dente contra a rotação</translation>
        </message>
        <message>
            <source>{name}: one tooth with rotation</source>
            <extracomment>ui/teeth_box.py</extracomment>
            <translation>{name}: um dente no sentido de rotação</translation>
        </message>
        <message>
            <source>Disc on the drive</source>
            <extracomment>ui/teeth_box.py</extracomment>
            <translation>Disco na flange motriz</translation>
        </message>
        <message>
            <source>Before turning the crank: switch off, switch lead grounded and proved, plugs out, wheels chocked, nobody in the propeller's arc. Paint marks on disc, both flanges and engine before taking anything apart; move one tooth at a time; approach every reading in the direction of rotation, so that backlash is taken up. The maker's current manual and local rules govern.</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>Antes de rodar a cambota: interruptor desligado, cabo de massa ligado à massa e provado, velas fora, rodas calçadas, ninguém no arco da hélice. Pintar marcas no disco, nas duas flanges e no motor antes de desmontar seja o que for; mover um dente de cada vez; chegar a cada leitura no sentido de rotação, para eliminar o jogo. Prevalecem o manual em vigor do fabricante e as regras locais.</translation>
        </message>
        <message>
            <source>Teeth moved from as found, left magneto</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>Dentes movidos desde o encontrado, magneto esquerdo</translation>
        </message>
        <message>
            <source>Moves that would put it right, best first, left magneto</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>Movimentos que o poriam certo, o melhor primeiro, magneto esquerdo</translation>
        </message>
        <message>
            <source>Teeth moved from as found, right magneto</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>Dentes movidos desde o encontrado, magneto direito</translation>
        </message>
        <message>
            <source>Moves that would put it right, best first, right magneto</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>Movimentos que o poriam certo, o melhor primeiro, magneto direito</translation>
        </message>
        <message>
            <source>Left fires {left}°, right {right}° before top dead centre: {apart}. Wanted: {wanted}. That is {difference}° from it, {tolerance}° allowed.</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>O esquerdo inflama {left}°, o direito {right}° antes do ponto morto superior: {apart}. Pretendido: {wanted}. São {difference}° de diferença, {tolerance}° permitidos.</translation>
        </message>
        <message>
            <source>both together</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>ambos ao mesmo tempo</translation>
        </message>
        <message>
            <source>left {angle}° earlier</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>esquerdo {angle}° mais cedo</translation>
        </message>
        <message>
            <source>right {angle}° earlier</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>direito {angle}° mais cedo</translation>
        </message>
        <message>
            <source>⚠ Treat the propeller as live: switch off, lead proved, plugs out, wheels chocked.</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>⚠ Tratar a hélice como viva: interruptor desligado, cabo provado, velas fora, rodas calçadas.</translation>
        </message>
        <message>
            <source>Take care: {mismatch}.</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>Atenção: {mismatch}.</translation>
        </message>
        <message>
            <source>Plate</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Placa</translation>
        </message>
        <message>
            <source>Opened</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Abertura</translation>
        </message>
        <message>
            <source>Degrees</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Graus</translation>
        </message>
        <message>
            <source>Millimetres along the slot</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Milímetros ao longo da ranhura</translation>
        </message>
        <message>
            <source>Scale marks</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Marcas da escala</translation>
        </message>
        <message>
            <source>A trial: set to open at the E-gap</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Um ensaio: regulado para abrir no E-gap</translation>
        </message>
        <message>
            <source>The thickest blade that passes at the top of lobe 1; 0 if none does</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>A lâmina mais grossa que passa no topo do ressalto 1; 0 se nenhuma passar</translation>
        </message>
        <message>
            <source>The thinnest blade that does not pass; 0 if every blade did</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>A lâmina mais fina que não passa; 0 se todas passaram</translation>
        </message>
        <message>
            <source>How far past the E-gap the contacts opened, if the straightedge showed it</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Quanto depois do E-gap os contactos abriram, se a régua o mostrou</translation>
        </message>
        <message>
            <source>Plate rea&amp;d in</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Placa li&amp;da em</translation>
        </message>
        <message>
            <source>The plate as it stands, and what blades in steps of a thousandth of an inch would find</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>A placa como está, e o que lâminas em passos de um milésimo de polegada achariam</translation>
        </message>
        <message>
            <source>Stri&amp;ke out</source>
            <extracomment>ui/trials_panel.py, ui/wear_panel.py</extracomment>
            <translation>Ris&amp;car</translation>
        </message>
        <message>
            <source>Strike out the trial that is chosen, or the last</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Riscar o ensaio escolhido, ou o último</translation>
        </message>
        <message>
            <source>What to do next</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>O que fazer a seguir</translation>
        </message>
        <message>
            <source>T&amp;urn the plate there</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>&amp;Rodar a placa até lá</translation>
        </message>
        <message>
            <source>&amp;Save what was found…</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>&amp;Guardar o que se achou…</translation>
        </message>
        <message>
            <source>Turn the plate on the bench; then set the contacts to open at the E-gap again</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Rodar a placa na bancada; depois pôr de novo os contactos a abrir no E-gap</translation>
        </message>
        <message>
            <source>Save a magneto file of your own, with lift, rise and index as the trials tell</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Guardar um ficheiro de magneto próprio, com levantamento, subida e índice como os ensaios dizem</translation>
        </message>
        <message>
            <source>Save what was found</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Guardar o que se achou</translation>
        </message>
        <message>
            <source>Saved {name}: open it from the File menu.</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>{name} guardado: abrir pelo menu Ficheiro.</translation>
        </message>
        <message>
            <source>Plate, with rotation +</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Placa, no sentido de rotação +</translation>
        </message>
        <message>
            <source>Along the slot</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Ao longo da ranhura</translation>
        </message>
        <message>
            <source>Slot's radius</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Raio da ranhura</translation>
        </message>
        <message>
            <source>Marks, with rotation +</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Marcas, no sentido de rotação +</translation>
        </message>
        <message>
            <source>Between two marks</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Entre duas marcas</translation>
        </message>
        <message>
            <source>&amp;Blade that passes</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>&amp;Lâmina que passa</translation>
        </message>
        <message>
            <source>Blade that does n&amp;ot</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Lâmina que nã&amp;o passa</translation>
        </message>
        <message>
            <source>Opened late by</source>
            <extracomment>ui/trials_panel.py, ui/wear_panel.py</extracomment>
            <translation>Abriu tarde por</translation>
        </message>
        <message>
            <source>Fro&amp;m the bench</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Da ban&amp;cada</translation>
        </message>
        <message>
            <source>&amp;Note the trial</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>&amp;Anotar o ensaio</translation>
        </message>
        <message>
            <source>the blade that passes must be thinner than the one that does not</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>a lâmina que passa tem de ser mais fina do que a que não passa</translation>
        </message>
        <message>
            <source>No advice: {refusal}.</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Sem conselho: {refusal}.</translation>
        </message>
        <message>
            <source>over {low}</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>acima de {low}</translation>
        </message>
        <message>
            <source>✓ Done</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>✓ Feito</translation>
        </message>
        <message>
            <source>{chance} % likely within limits there</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>{chance} % de probabilidade dentro dos limites ali</translation>
        </message>
        <message>
            <source>Comes to</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Chega a</translation>
        </message>
        <message>
            <source>Share</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Parte</translation>
        </message>
        <message>
            <source>What was read</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>O que se leu</translation>
        </message>
        <message>
            <source>&amp;Measurement</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>&amp;Medição</translation>
        </message>
        <message>
            <source>Straightedge from the rim mark, positive past it: the contacts open late</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Régua desde a marca do rebordo, positivo depois dela: os contactos abrem tarde</translation>
        </message>
        <message>
            <source>The thickest blade that passes the widest gap</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>A lâmina mais grossa que passa na folga máxima</translation>
        </message>
        <message>
            <source>Take from the &amp;bench</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Tirar da &amp;bancada</translation>
        </message>
        <message>
            <source>What these instruments would read of the bench as it stands</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>O que estes instrumentos leriam da bancada como está</translation>
        </message>
        <message>
            <source>With what</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Com quê</translation>
        </message>
        <message>
            <source>How sure it is</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Quão certo é</translation>
        </message>
        <message>
            <source>Number of Monte Carlo draws</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Número de sorteios de Monte Carlo</translation>
        </message>
        <message>
            <source>Draw every reading at random within what its instrument allows, and count</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Sortear cada leitura dentro do que o seu instrumento permite, e contar</translation>
        </message>
        <message>
            <source>Progress of the Monte Carlo</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Progresso do Monte Carlo</translation>
        </message>
        <message>
            <source>Uncertainty budget of the least sure quantity</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Balanço de incerteza da grandeza menos certa</translation>
        </message>
        <message>
            <source>by Monte Carlo</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>por Monte Carlo</translation>
        </message>
        <message>
            <source>{name}, the least sure of them</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>{name}, a menos certa delas</translation>
        </message>
        <message>
            <source>by linear propagation</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>por propagação linear</translation>
        </message>
        <message>
            <source>{chance} likely within limits ({how})</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>{chance} de probabilidade dentro dos limites ({how})</translation>
        </message>
        <message>
            <source>Blade that passes</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Lâmina que passa</translation>
        </message>
        <message>
            <source>Disc at the first stop</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Disco no primeiro batente</translation>
        </message>
        <message>
            <source>Disc at the second stop</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Disco no segundo batente</translation>
        </message>
        <message>
            <source>Disc, left opens</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Disco, esquerdo abre</translation>
        </message>
        <message>
            <source>Disc, right opens</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Disco, direito abre</translation>
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
            <translation>onde não concordam, vale o Monte Carlo</translation>
        </message>
        <message>
            <source>Linear propagation (JCGM 100); the Monte Carlo (JCGM 101) checks it.</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Propagação linear (JCGM 100); o Monte Carlo (JCGM 101) confere-a.</translation>
        </message>
        <message>
            <source>Next to improve: {name}.</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>A melhorar a seguir: {name}.</translation>
        </message>
        <message>
            <source>No finer instrument on the list would help.</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Nenhum instrumento mais fino da lista ajudaria.</translation>
        </message>
        <message>
            <source>Blade gap</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Folga por lâminas</translation>
        </message>
        <message>
            <source>Opens late</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Abre tarde</translation>
        </message>
        <message>
            <source>Wear from now on</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Desgaste daqui em diante</translation>
        </message>
        <message>
            <source>Off the heel of the breaker arm in 100 running hours: it opens later, the gap closes</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Do calcador do braço do ruptor em 100 horas de marcha: abre mais tarde, a folga fecha</translation>
        </message>
        <message>
            <source>A pip on one contact in 100 running hours: the blade finds less than the true gap</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Um pico num contacto em 100 horas de marcha: a lâmina acha menos do que a folga verdadeira</translation>
        </message>
        <message>
            <source>Heel, i&amp;n 100 h</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Calcador, e&amp;m 100 h</translation>
        </message>
        <message>
            <source>Pip, in 100 h</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Pico, em 100 h</translation>
        </message>
        <message>
            <source>Next inspection &amp;after</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Próxima inspeção &amp;após</translation>
        </message>
        <message>
            <source>Wear the bench by the&amp;se hours</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Ga&amp;star a bancada por estas horas</translation>
        </message>
        <message>
            <source>See on the bench what those hours would do to it</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Ver na bancada o que essas horas lhe fariam</translation>
        </message>
        <message>
            <source>Inspections of this setting</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Inspeções desta regulação</translation>
        </message>
        <message>
            <source>Inspections</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Inspeções</translation>
        </message>
        <message>
            <source>The thickest blade that passed, and half a step more</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>A lâmina mais grossa que passou, e mais meio passo</translation>
        </message>
        <message>
            <source>How far past the E-gap it opened, in degrees of rotor</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Quanto depois do E-gap abriu, em graus do rotor</translation>
        </message>
        <message>
            <source>At, since it was set</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Aos, desde a regulação</translation>
        </message>
        <message>
            <source>Gap by blades</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Folga por lâminas</translation>
        </message>
        <message>
            <source>✗ Plate or screw was turned since: what was read before tells nothing of this setting; strike it out.</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>✗ A placa de base ou o parafuso foi rodado desde então: o que se leu antes nada diz desta regulação; risque-o.</translation>
        </message>
        <message>
            <source>&amp;Use these rates</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>&amp;Usar estas taxas</translation>
        </message>
        <message>
            <source>From the &amp;bench</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Da &amp;bancada</translation>
        </message>
        <message>
            <source>N&amp;ote</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>An&amp;otar</translation>
        </message>
        <message>
            <source>Two inspections at different hours give rates.</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Duas inspeções a horas diferentes dão taxas.</translation>
        </message>
        <message>
            <source>Read of another setting than the present one</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Lido noutra regulação que não a atual</translation>
        </message>
        <message>
            <source>The bench cannot be kept for after a crash: {error}</source>
            <extracomment>ui/window.py</extracomment>
            <translation>A bancada não pode ser conservada para depois de uma falha: {error}</translation>
        </message>
        <message>
            <source>{file}: cannot be changed: {reason}</source>
            <extracomment>upkeep/desktop.py</extracomment>
            <translation>{file}: não pode ser alterado: {reason}</translation>
        </message>
        <message>
            <source>nothing can be kept in {folder}: {reason}</source>
            <extracomment>upkeep/places.py, upkeep/reports.py</extracomment>
            <translation>nada pode ser conservado em {folder}: {reason}</translation>
        </message>
        <message>
            <source>not known: the system ended the program at once</source>
            <extracomment>upkeep/reports.py</extracomment>
            <translation>desconhecido: o sistema terminou o programa de imediato</translation>
        </message>
        <message>
            <source>nothing</source>
            <extracomment>upkeep/reports.py</extracomment>
            <translation>nada</translation>
        </message>
        <message>
            <source>magview: report of a fault</source>
            <extracomment>upkeep/reports.py</extracomment>
            <translation>magview: relatório de uma falha</translation>
        </message>
        <message>
            <source>Kept on this computer; nothing is sent anywhere by itself.</source>
            <extracomment>upkeep/reports.py</extracomment>
            <translation>Conservado neste computador; nada é enviado por si só.</translation>
        </message>
        <message>
            <source>When: {when}</source>
            <extracomment>upkeep/reports.py</extracomment>
            <translation>Quando: {when}</translation>
        </message>
        <message>
            <source>Versions:</source>
            <extracomment>upkeep/reports.py</extracomment>
            <translation>Versões:</translation>
        </message>
        <message>
            <source>What and where:</source>
            <extracomment>upkeep/reports.py</extracomment>
            <translation>O quê e onde:</translation>
        </message>
        <message>
            <source>What was done last:</source>
            <extracomment>upkeep/reports.py</extracomment>
            <translation>O que se fez por último:</translation>
        </message>
        <message>
            <source>Four-cylinder practice magneto</source>
            <extracomment>magnetos/four-opposed.json</extracomment>
            <translation>Magneto de treino de quatro cilindros</translation>
        </message>
        <message>
            <source>Invented for practice, all of it: dimensions, limits, angles and electrical values; no real magneto has them. Two poles, two lobes, threaded contact screw.</source>
            <extracomment>magnetos/four-opposed.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Nine-cylinder practice magneto</source>
            <extracomment>magnetos/nine-radial.json</extracomment>
            <translation>Magneto de treino de nove cilindros</translation>
        </message>
        <message>
            <source>Invented for practice, all of it: dimensions, limits, angles and electrical values; no real magneto has them. Four poles; compensated cam, one lobe per cylinder, on the distributor shaft at half crank speed. Its lobes are spaced for the shipped nine-cylinder engine.</source>
            <extracomment>magnetos/nine-radial.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Seven-cylinder practice magneto</source>
            <extracomment>magnetos/seven-radial.json</extracomment>
            <translation>Magneto de treino de sete cilindros</translation>
        </message>
        <message>
            <source>Invented for practice, all of it: dimensions, limits, angles and electrical values; no real magneto has them. Four poles, one lobe per spark of a rotor turn (uncompensated cam on the rotor shaft).</source>
            <extracomment>magnetos/seven-radial.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Six-cylinder practice magneto, traced lift</source>
            <extracomment>magnetos/traced-six.json</extracomment>
            <translation>Magneto de treino de seis cilindros, levantamento medido</translation>
        </message>
        <message>
            <source>Invented for practice, all of it: dimensions, limits, angles and electrical values; no real magneto has them. Two poles, two lobes; the lift was traced at the contacts with a dial gauge every 2°, so the arm's other dimensions are not known.</source>
            <extracomment>magnetos/traced-six.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Four-cylinder practice engine</source>
            <extracomment>engines/four-opposed.json</extracomment>
            <translation>Motor de treino de quatro cilindros</translation>
        </message>
        <message>
            <source>Nine-cylinder practice engine</source>
            <extracomment>engines/nine-radial.json</extracomment>
            <translation>Motor de treino de nove cilindros</translation>
        </message>
        <message>
            <source>Seven-cylinder practice engine</source>
            <extracomment>engines/seven-radial.json</extracomment>
            <translation>Motor de treino de sete cilindros</translation>
        </message>
        <message>
            <source>Six-cylinder practice engine</source>
            <extracomment>engines/six-inline.json</extracomment>
            <translation>Motor de treino de seis cilindros</translation>
        </message>
        <message>
            <source>A vernier step or two out</source>
            <extracomment>exercises/a-step-or-two-out.json</extracomment>
            <translation>Um ou dois passos do vernier fora</translation>
        </message>
        <message>
            <source>The magneto came back from overhaul and was refitted by eye. Inside it is right.</source>
            <extracomment>exercises/a-step-or-two-out.json</extracomment>
            <translation>O magneto voltou da revisão e foi montado a olho. Por dentro está certo.</translation>
        </message>
        <message>
            <source>Time it to the engine at its toothed coupling.</source>
            <extracomment>exercises/a-step-or-two-out.json</extracomment>
            <translation>Calá-lo ao motor pelo acoplamento dentado.</translation>
        </message>
        <message>
            <source>With the switch off a sound lead keeps the lamp dark whatever the contacts do: wheels chocked and spark plugs out first, then switch on.</source>
            <extracomment>exercises/a-step-or-two-out.json, exercises/both-everything-wrong.json, exercises/fitted-at-neutral.json, exercises/left-and-right-apart.json, exercises/one-magneto-all-wrong.json, exercises/several-teeth-out.json, exercises/wrong-stroke.json</extracomment>
            <translation>Com o interruptor desligado, um cabo de massa são deixa a lâmpada apagada façam os contactos o que fizerem: primeiro rodas calçadas e velas fora, depois ligar.</translation>
        </message>
        <message>
            <source>Paint marks across the coupling before you draw the magneto back.</source>
            <extracomment>exercises/a-step-or-two-out.json</extracomment>
            <translation>Pintar marcas através do acoplamento antes de recuar o magneto.</translation>
        </message>
        <message>
            <source>Read the timing with lamp and disc, turning with rotation only.</source>
            <extracomment>exercises/a-step-or-two-out.json</extracomment>
            <translation>Ler o ponto com lâmpada e disco, rodando só no sentido de rotação.</translation>
        </message>
        <message>
            <source>One tooth with rotation at the magneto and one against it at the disc is the finest step.</source>
            <extracomment>exercises/a-step-or-two-out.json</extracomment>
            <translation>Um dente no sentido de rotação no magneto e um contra no disco é o passo mais fino.</translation>
        </message>
        <message>
            <source>Both magnetos, everything wrong</source>
            <extracomment>exercises/both-everything-wrong.json</extracomment>
            <translation>Ambos os magnetos, tudo errado</translation>
        </message>
        <message>
            <source>Two magnetos, two people, two opinions, and an engine that has not run since.</source>
            <extracomment>exercises/both-everything-wrong.json</extracomment>
            <translation>Dois magnetos, duas pessoas, duas opiniões, e um motor que não voltou a trabalhar.</translation>
        </message>
        <message>
            <source>Make both safe, set both inside, time both to the engine and to one another, and close up.</source>
            <extracomment>exercises/both-everything-wrong.json</extracomment>
            <translation>Pôr ambos seguros, regular ambos por dentro, calar ambos ao motor e um ao outro, e fechar.</translation>
        </message>
        <message>
            <source>Work to one order on each: safe, contacts, gap, lock screw, opening; then the engine.</source>
            <extracomment>exercises/both-everything-wrong.json</extracomment>
            <translation>Seguir em cada um a mesma ordem: seguro, contactos, folga, parafuso de fixação, abertura; depois o motor.</translation>
        </message>
        <message>
            <source>The switch of one magneto says nothing of the other.</source>
            <extracomment>exercises/both-everything-wrong.json</extracomment>
            <translation>O interruptor de um magneto não diz nada do outro.</translation>
        </message>
        <message>
            <source>Teeth last, for both together.</source>
            <extracomment>exercises/both-everything-wrong.json</extracomment>
            <translation>Os dentes no fim, para ambos juntos.</translation>
        </message>
        <message>
            <source>A lock screw that carries along</source>
            <extracomment>exercises/creeping-screw.json</extracomment>
            <translation>Um parafuso de fixação que arrasta</translation>
        </message>
        <message>
            <source>Whoever sets this magneto finds it out of adjustment the next day, and swears it was right.</source>
            <extracomment>exercises/creeping-screw.json</extracomment>
            <translation>Quem regula este magneto acha-o desregulado no dia seguinte e jura que estava certo.</translation>
        </message>
        <message>
            <source>Set gap and opening so that they are right with every screw tight.</source>
            <extracomment>exercises/creeping-screw.json</extracomment>
            <translation>Regular folga e abertura de modo que estejam certas com todos os parafusos apertados.</translation>
        </message>
        <message>
            <source>The lamp tells of the contacts only while nothing else grounds the coil: leave the plug in and the switch on. With the switch off it stays dark, and with the plug pulled too, but for paper under the spring tab.</source>
            <extracomment>exercises/creeping-screw.json, exercises/gap-wrong.json, exercises/one-lobe-low.json, exercises/opens-early-or-late.json, exercises/pips.json</extracomment>
            <translation>A lâmpada só fala dos contactos enquanto nada mais puser a bobina à massa: deixar a ficha metida e o interruptor ligado. Com o interruptor desligado fica apagada, e com a ficha tirada também, salvo com papel sob a lingueta de mola.</translation>
        </message>
        <message>
            <source>Measure, tighten the lock screw, measure again.</source>
            <extracomment>exercises/creeping-screw.json</extracomment>
            <translation>Medir, apertar o parafuso de fixação, medir outra vez.</translation>
        </message>
        <message>
            <source>The lock screw carries the contact screw along by the same amount each time: lead it by as much.</source>
            <extracomment>exercises/creeping-screw.json</extracomment>
            <translation>O parafuso de fixação arrasta o parafuso de contacto sempre o mesmo: adiantá-lo outro tanto.</translation>
        </message>
        <message>
            <source>Set the gap first, lock it, then bring the opening to the mark with the plate.</source>
            <extracomment>exercises/creeping-screw.json</extracomment>
            <translation>Regular primeiro a folga, fixar, depois levar a abertura à marca com a placa.</translation>
        </message>
        <message>
            <source>Find the E-gap</source>
            <extracomment>exercises/find-the-e-gap.json</extracomment>
            <translation>Achar o E-gap</translation>
        </message>
        <message>
            <source>A magneto stands on the bench with its breaker cover off. Left alone, the magnet keeps the rotor at neutral.</source>
            <extracomment>exercises/find-the-e-gap.json</extracomment>
            <translation>Um magneto está na bancada sem a tampa do ruptor. Deixado só, o íman mantém o rotor no neutro.</translation>
        </message>
        <message>
            <source>Turn the rotor to the E-gap and hold it there: the straightedge along the cam's step in line with a mark on the rim.</source>
            <extracomment>exercises/find-the-e-gap.json</extracomment>
            <translation>Rodar o rotor até ao E-gap e segurá-lo ali: a régua ao longo do degrau do came alinhada com uma marca do rebordo.</translation>
        </message>
        <message>
            <source>Turn the rotor with rotation; it pulls back as soon as you let go.</source>
            <extracomment>exercises/find-the-e-gap.json</extracomment>
            <translation>Rodar o rotor no sentido de rotação; puxa para trás mal se larga.</translation>
        </message>
        <message>
            <source>Lay the straightedge on and look square over it: from the side it seems to stand elsewhere.</source>
            <extracomment>exercises/find-the-e-gap.json</extracomment>
            <translation>Pousar a régua e olhar a direito por cima: de lado parece estar noutro sítio.</translation>
        </message>
        <message>
            <source>Leave the straightedge where it is when you hand in; it is your proof.</source>
            <extracomment>exercises/find-the-e-gap.json</extracomment>
            <translation>Deixar a régua onde está ao entregar; é a prova.</translation>
        </message>
        <message>
            <source>Fitted with the rotor at neutral</source>
            <extracomment>exercises/fitted-at-neutral.json</extracomment>
            <translation>Montado com o rotor no neutro</translation>
        </message>
        <message>
            <source>The magneto was fitted with No. 1 at its firing point, as it should be – but with the rotor left where the magnet holds it.</source>
            <extracomment>exercises/fitted-at-neutral.json</extracomment>
            <translation>O magneto foi montado com o n.º 1 no ponto de ignição, como deve ser – mas com o rotor onde o íman o segura.</translation>
        </message>
        <message>
            <source>Find how far it is out and time it.</source>
            <extracomment>exercises/fitted-at-neutral.json</extracomment>
            <translation>Achar quanto está fora e calá-lo.</translation>
        </message>
        <message>
            <source>The rotor at neutral is short of the E-gap: what does that make the timing, early or late?</source>
            <extracomment>exercises/fitted-at-neutral.json</extracomment>
            <translation>O rotor no neutro está aquém do E-gap: o ponto fica cedo ou tarde?</translation>
        </message>
        <message>
            <source>Paint marks first; the way back is counted in teeth.</source>
            <extracomment>exercises/fitted-at-neutral.json</extracomment>
            <translation>Primeiro pintar marcas; o regresso conta-se em dentes.</translation>
        </message>
        <message>
            <source>The gap is wrong</source>
            <extracomment>exercises/gap-wrong.json</extracomment>
            <translation>A folga está errada</translation>
        </message>
        <message>
            <source>After new contacts were fitted nobody set them: the gap is far out, and with it the place where they open.</source>
            <extracomment>exercises/gap-wrong.json</extracomment>
            <translation>Depois de montados contactos novos ninguém os regulou: a folga está muito fora, e com ela o lugar onde abrem.</translation>
        </message>
        <message>
            <source>Bring the largest gap within its limits and the opening to the mark.</source>
            <extracomment>exercises/gap-wrong.json</extracomment>
            <translation>Pôr a folga máxima dentro dos limites e a abertura na marca.</translation>
        </message>
        <message>
            <source>The contact screw moves gap and opening; the backplate moves the opening alone. Begin with the screw.</source>
            <extracomment>exercises/gap-wrong.json</extracomment>
            <translation>O parafuso de contacto move folga e abertura; a placa de base só a abertura. Começar pelo parafuso.</translation>
        </message>
        <message>
            <source>Wider contacts open earlier.</source>
            <extracomment>exercises/gap-wrong.json</extracomment>
            <translation>Contactos mais abertos abrem mais cedo.</translation>
        </message>
        <message>
            <source>Measure the gap where the contacts stand widest open.</source>
            <extracomment>exercises/gap-wrong.json</extracomment>
            <translation>Medir a folga onde os contactos estão abertos ao máximo.</translation>
        </message>
        <message>
            <source>Left and right apart</source>
            <extracomment>exercises/left-and-right-apart.json</extracomment>
            <translation>Esquerdo e direito separados</translation>
        </message>
        <message>
            <source>The drop on one magneto is larger than on the other. Both are right inside.</source>
            <extracomment>exercises/left-and-right-apart.json</extracomment>
            <translation>A queda num magneto é maior do que no outro. Ambos estão certos por dentro.</translation>
        </message>
        <message>
            <source>Time both magnetos, and bring them together.</source>
            <extracomment>exercises/left-and-right-apart.json</extracomment>
            <translation>Calar ambos os magnetos e pô-los de acordo.</translation>
        </message>
        <message>
            <source>Find the disc's zero once and keep it: both are read by the same disc.</source>
            <extracomment>exercises/left-and-right-apart.json</extracomment>
            <translation>Achar o zero do disco uma vez e mantê-lo: ambos se leem no mesmo disco.</translation>
        </message>
        <message>
            <source>Two readings that are each within limits may still be too far apart.</source>
            <extracomment>exercises/left-and-right-apart.json</extracomment>
            <translation>Duas leituras cada uma dentro dos limites podem ainda estar longe demais.</translation>
        </message>
        <message>
            <source>Choose the moves of both together.</source>
            <extracomment>exercises/left-and-right-apart.json</extracomment>
            <translation>Escolher os movimentos de ambos em conjunto.</translation>
        </message>
        <message>
            <source>Measure the gap</source>
            <extracomment>exercises/measure-the-gap.json</extracomment>
            <translation>Medir a folga</translation>
        </message>
        <message>
            <source>The work card asks for the largest gap between the contacts, and for nothing else.</source>
            <extracomment>exercises/measure-the-gap.json</extracomment>
            <translation>A ficha pede a folga máxima entre os contactos, e nada mais.</translation>
        </message>
        <message>
            <source>Turn the rotor until lobe 1 holds the contacts widest open, measure the gap with blades, and write it down.</source>
            <extracomment>exercises/measure-the-gap.json</extracomment>
            <translation>Rodar o rotor até o ressalto 1 manter os contactos abertos ao máximo, medir a folga com lâminas e anotá-la.</translation>
        </message>
        <message>
            <source>A blade that goes and the next that does not go stand on both sides of the gap.</source>
            <extracomment>exercises/measure-the-gap.json</extracomment>
            <translation>Uma lâmina que passa e a seguinte que não passa ficam dos dois lados da folga.</translation>
        </message>
        <message>
            <source>A blade that drags is within a hundredth of a millimetre of it.</source>
            <extracomment>exercises/measure-the-gap.json</extracomment>
            <translation>Uma lâmina que roça está a um centésimo de milímetro dela.</translation>
        </message>
        <message>
            <source>Two blades held together fill the steps between single ones.</source>
            <extracomment>exercises/measure-the-gap.json</extracomment>
            <translation>Duas lâminas juntas preenchem os degraus entre as simples.</translation>
        </message>
        <message>
            <source>One lobe is low</source>
            <extracomment>exercises/one-lobe-low.json</extracomment>
            <translation>Um ressalto está baixo</translation>
        </message>
        <message>
            <source>One cylinder of this engine misses now and then. The cam has worn, but not beyond use if it is set with care.</source>
            <extracomment>exercises/one-lobe-low.json</extracomment>
            <translation>Um cilindro deste motor falha de vez em quando. O came gastou-se, mas ainda serve se for regulado com cuidado.</translation>
        </message>
        <message>
            <source>Set the contacts so that the gap is within limits on every lobe, and the opening at the mark on every lobe.</source>
            <extracomment>exercises/one-lobe-low.json</extracomment>
            <translation>Regular os contactos de modo que a folga esteja dentro dos limites em todos os ressaltos, e a abertura na marca em todos.</translation>
        </message>
        <message>
            <source>Measure every lobe before you turn anything.</source>
            <extracomment>exercises/one-lobe-low.json</extracomment>
            <translation>Medir todos os ressaltos antes de rodar seja o que for.</translation>
        </message>
        <message>
            <source>Put the middle between the widest and the closest lobe in the middle of the limits.</source>
            <extracomment>exercises/one-lobe-low.json</extracomment>
            <translation>Pôr o meio entre o ressalto mais aberto e o mais fechado no meio dos limites.</translation>
        </message>
        <message>
            <source>Check every lobe again when all is tight.</source>
            <extracomment>exercises/one-lobe-low.json</extracomment>
            <translation>Verificar de novo todos os ressaltos quando tudo estiver apertado.</translation>
        </message>
        <message>
            <source>One magneto, everything wrong</source>
            <extracomment>exercises/one-magneto-all-wrong.json</extracomment>
            <translation>Um magneto, tudo errado</translation>
        </message>
        <message>
            <source>Bought as it stood. The logbook is silent on the ignition.</source>
            <extracomment>exercises/one-magneto-all-wrong.json</extracomment>
            <translation>Comprado como estava. O livro de registo nada diz da ignição.</translation>
        </message>
        <message>
            <source>Make it safe, set it inside, time it to the engine, and close it up.</source>
            <extracomment>exercises/one-magneto-all-wrong.json</extracomment>
            <translation>Pô-lo seguro, regulá-lo por dentro, calá-lo ao motor e fechá-lo.</translation>
        </message>
        <message>
            <source>Safe first, then inside, then the engine: what is set inside moves the timing.</source>
            <extracomment>exercises/one-magneto-all-wrong.json</extracomment>
            <translation>Primeiro seguro, depois por dentro, depois o motor: o que se regula por dentro move o ponto.</translation>
        </message>
        <message>
            <source>Contacts, gap, lock screw, opening: in this order.</source>
            <extracomment>exercises/one-magneto-all-wrong.json</extracomment>
            <translation>Contactos, folga, parafuso de fixação, abertura: por esta ordem.</translation>
        </message>
        <message>
            <source>Dead centre by the stop before anything is read from the disc.</source>
            <extracomment>exercises/one-magneto-all-wrong.json</extracomment>
            <translation>Ponto morto pelo batente antes de ler seja o que for no disco.</translation>
        </message>
        <message>
            <source>Opens early or late</source>
            <extracomment>exercises/opens-early-or-late.json</extracomment>
            <translation>Abre cedo ou tarde</translation>
        </message>
        <message>
            <source>The gap of this magneto is right, but its backplate has been moved.</source>
            <extracomment>exercises/opens-early-or-late.json</extracomment>
            <translation>A folga deste magneto está certa, mas a placa de base foi movida.</translation>
        </message>
        <message>
            <source>Set the backplate so that the contacts open at the mark, close everything up, and check again.</source>
            <extracomment>exercises/opens-early-or-late.json</extracomment>
            <translation>Regular a placa de base de modo que os contactos abram na marca, apertar tudo e verificar de novo.</translation>
        </message>
        <message>
            <source>Slacken the clamp screws, not the lock screw: the gap is not the trouble.</source>
            <extracomment>exercises/opens-early-or-late.json</extracomment>
            <translation>Aliviar os parafusos de aperto, não o de fixação: o mal não é a folga.</translation>
        </message>
        <message>
            <source>Turning the plate with rotation makes the contacts open later.</source>
            <extracomment>exercises/opens-early-or-late.json</extracomment>
            <translation>Rodar a placa no sentido de rotação faz os contactos abrir mais tarde.</translation>
        </message>
        <message>
            <source>What was checked before a screw was tightened has to be checked again after.</source>
            <extracomment>exercises/opens-early-or-late.json</extracomment>
            <translation>O que se verificou antes de apertar um parafuso tem de ser verificado de novo depois.</translation>
        </message>
        <message>
            <source>Pips on the contacts</source>
            <extracomment>exercises/pips.json</extracomment>
            <translation>Picos nos contactos</translation>
        </message>
        <message>
            <source>This magneto has run for a long time on the same contacts. The last one to set it measured the gap and found it right.</source>
            <extracomment>exercises/pips.json</extracomment>
            <translation>Este magneto trabalhou muito tempo com os mesmos contactos. O último que o regulou mediu a folga e achou-a certa.</translation>
        </message>
        <message>
            <source>See to the contacts, then set gap and opening.</source>
            <extracomment>exercises/pips.json</extracomment>
            <translation>Tratar dos contactos, depois regular folga e abertura.</translation>
        </message>
        <message>
            <source>A blade lies on the pip, not on the contact: the true gap is larger than it says.</source>
            <extracomment>exercises/pips.json</extracomment>
            <translation>Uma lâmina assenta no pico, não no contacto: a folga verdadeira é maior do que ela diz.</translation>
        </message>
        <message>
            <source>Dress the contacts before you measure anything.</source>
            <extracomment>exercises/pips.json</extracomment>
            <translation>Retificar os contactos antes de medir seja o que for.</translation>
        </message>
        <message>
            <source>Several teeth out, and a loose coupling</source>
            <extracomment>exercises/several-teeth-out.json</extracomment>
            <translation>Vários dentes fora, e um acoplamento com jogo</translation>
        </message>
        <message>
            <source>Starts badly, kicks back. The coupling rattles, and the crank disc has been put on by eye.</source>
            <extracomment>exercises/several-teeth-out.json</extracomment>
            <translation>Arranca mal, dá coices. O acoplamento chocalha e o disco da cambota foi posto a olho.</translation>
        </message>
        <message>
            <source>Find the disc's zero, read the timing as found and write it down, and time the magneto.</source>
            <extracomment>exercises/several-teeth-out.json</extracomment>
            <translation>Achar o zero do disco, ler o ponto como está e anotá-lo, e calar o magneto.</translation>
        </message>
        <message>
            <source>With play in the coupling a reading is true only when approached with rotation.</source>
            <extracomment>exercises/several-teeth-out.json</extracomment>
            <translation>Com jogo no acoplamento uma leitura só é verdadeira quando se chega no sentido de rotação.</translation>
        </message>
        <message>
            <source>If it fires after dead centre there is no pressure to feel: go by the finger.</source>
            <extracomment>exercises/several-teeth-out.json</extracomment>
            <translation>Se inflama depois do ponto morto não há pressão para sentir: guiar-se pelo rotor distribuidor.</translation>
        </message>
        <message>
            <source>Plan the move with the fewest teeth that comes within limits, and move one tooth at a time.</source>
            <extracomment>exercises/several-teeth-out.json</extracomment>
            <translation>Planear o movimento com menos dentes que fique dentro dos limites, e mover um dente de cada vez.</translation>
        </message>
        <message>
            <source>Is it safe?</source>
            <extracomment>exercises/switch-lead.json</extracomment>
            <translation>Está seguro?</translation>
        </message>
        <message>
            <source>A note in the cockpit says: switch check doubtful. Nobody has touched the aircraft since.</source>
            <extracomment>exercises/switch-lead.json</extracomment>
            <translation>Uma nota na cabina diz: verificação do interruptor duvidosa. Desde então ninguém tocou no avião.</translation>
        </message>
        <message>
            <source>Find out what the switch lead of this magneto suffers from, if anything, write down your finding, put it right, and prove it.</source>
            <extracomment>exercises/switch-lead.json</extracomment>
            <translation>Descobrir de que sofre o cabo de massa deste magneto, se de alguma coisa, anotar o que se achou, corrigir e provar.</translation>
        </message>
        <message>
            <source>Until you know better the propeller is live: chocks, and spark plugs out, before it is turned.</source>
            <extracomment>exercises/switch-lead.json</extracomment>
            <translation>Até se saber mais a hélice está viva: calços, e velas fora, antes de a rodar.</translation>
        </message>
        <message>
            <source>Plug pulled, the meter must see ground with the switch off, and none with it on.</source>
            <extracomment>exercises/switch-lead.json</extracomment>
            <translation>Com a ficha tirada, o multímetro deve ver massa com o interruptor desligado, e nenhuma ligado.</translation>
        </message>
        <message>
            <source>With the switch on the lamp must light as the contacts open; with the plug pulled the spring tab must keep it dark.</source>
            <extracomment>exercises/switch-lead.json</extracomment>
            <translation>Com o interruptor ligado a lâmpada deve acender quando os contactos abrem; com a ficha tirada a lingueta de mola deve mantê-la apagada.</translation>
        </message>
        <message>
            <source>True dead centre</source>
            <extracomment>exercises/true-dead-centre.json</extracomment>
            <translation>Ponto morto verdadeiro</translation>
        </message>
        <message>
            <source>The disc on the crank was put on by eye. Before anything is timed by it, its zero has to be found.</source>
            <extracomment>exercises/true-dead-centre.json</extracomment>
            <translation>O disco na cambota foi posto a olho. Antes de calar seja o que for por ele, há que achar o zero.</translation>
        </message>
        <message>
            <source>Find what the disc reads at the top dead centre of No. 1, write it down (after the zero: with a minus), and set the disc to zero.</source>
            <extracomment>exercises/true-dead-centre.json</extracomment>
            <translation>Achar o que o disco lê no ponto morto superior do n.º 1, anotá-lo (depois do zero: com menos) e pôr o disco a zero.</translation>
        </message>
        <message>
            <source>Chocks first, switch off, spark plugs out; then the propeller may be turned.</source>
            <extracomment>exercises/true-dead-centre.json</extracomment>
            <translation>Primeiro os calços, interruptor desligado, velas fora; depois pode-se rodar a hélice.</translation>
        </message>
        <message>
            <source>With the stop fitted, turn gently until the piston meets it, read the disc; turn back until it meets it from the other side, read again.</source>
            <extracomment>exercises/true-dead-centre.json</extracomment>
            <translation>Com o batente montado, rodar devagar até o êmbolo o encontrar, ler o disco; rodar para trás até o encontrar do outro lado, ler outra vez.</translation>
        </message>
        <message>
            <source>Half-way between the two readings is top dead centre.</source>
            <extracomment>exercises/true-dead-centre.json</extracomment>
            <translation>A meio das duas leituras está o ponto morto superior.</translation>
        </message>
        <message>
            <source>When do the contacts open?</source>
            <extracomment>exercises/when-do-they-open.json</extracomment>
            <translation>Quando abrem os contactos?</translation>
        </message>
        <message>
            <source>Somebody has set this magneto and left it closed up. Nothing is to be changed yet: first you want to know.</source>
            <extracomment>exercises/when-do-they-open.json</extracomment>
            <translation>Alguém regulou este magneto e deixou-o fechado. Ainda não se muda nada: primeiro quer-se saber.</translation>
        </message>
        <message>
            <source>Find where lobe 1 opens the contacts, by lamp and straightedge, and write down how far past the mark that is (short of it: with a minus).</source>
            <extracomment>exercises/when-do-they-open.json</extracomment>
            <translation>Achar onde o ressalto 1 abre os contactos, com lâmpada e régua, e anotar quanto depois da marca é (aquém: com menos).</translation>
        </message>
        <message>
            <source>If the lamp stays dark whatever you do, something grounds the primary: look at the switch.</source>
            <extracomment>exercises/when-do-they-open.json</extracomment>
            <translation>Se a lâmpada fica apagada faça-se o que se fizer, algo põe o primário à massa: ver o interruptor.</translation>
        </message>
        <message>
            <source>Turn with rotation, slowly, and stop where the lamp lights.</source>
            <extracomment>exercises/when-do-they-open.json</extracomment>
            <translation>Rodar no sentido de rotação, devagar, e parar onde a lâmpada acende.</translation>
        </message>
        <message>
            <source>The marks on the rim are half a millimetre apart; mark 1 belongs to lobe 1.</source>
            <extracomment>exercises/when-do-they-open.json</extracomment>
            <translation>As marcas no rebordo estão a meio milímetro umas das outras; a marca 1 é do ressalto 1.</translation>
        </message>
        <message>
            <source>The wrong stroke</source>
            <extracomment>exercises/wrong-stroke.json</extracomment>
            <translation>O tempo errado</translation>
        </message>
        <message>
            <source>It was timed with care: the lamp lights where it should. The engine spits back through the carburettor and will not run.</source>
            <extracomment>exercises/wrong-stroke.json</extracomment>
            <translation>Foi calado com cuidado: a lâmpada acende onde deve. O motor cospe pelo carburador e não pega.</translation>
        </message>
        <message>
            <source>Find out why, and put it right.</source>
            <extracomment>exercises/wrong-stroke.json</extracomment>
            <translation>Descobrir porquê e corrigir.</translation>
        </message>
        <message>
            <source>A thumb over No. 1's plug hole tells compression from exhaust.</source>
            <extracomment>exercises/wrong-stroke.json</extracomment>
            <translation>Um polegar no furo da vela do n.º 1 distingue compressão de escape.</translation>
        </message>
        <message>
            <source>Where does the distributor finger point when No. 1 comes up on compression?</source>
            <extracomment>exercises/wrong-stroke.json</extracomment>
            <translation>Para onde aponta o rotor distribuidor quando o n.º 1 sobe em compressão?</translation>
        </message>
        <message>
            <source>Half a turn of the finger cannot be had by teeth: the magneto has to come off. Pull the plug, mark, nuts off.</source>
            <extracomment>exercises/wrong-stroke.json</extracomment>
            <translation>Meia volta do rotor distribuidor não se obtém com dentes: o magneto tem de sair. Tirar a ficha, marcar, porcas fora.</translation>
        </message>
        <message>
            <source>Off the engine a slip of paper under the spring tab lets the lamp see the contacts.</source>
            <extracomment>exercises/wrong-stroke.json</extracomment>
            <translation>Fora do motor, uma tira de papel sob a lingueta de mola deixa a lâmpada ver os contactos.</translation>
        </message>
        <message>
            <source>A full job</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Um trabalho completo</translation>
        </message>
        <message>
            <source>From the chocks to the last nut: safe, inside, dead centre, coupling, closed up.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Dos calços à última porca: seguro, por dentro, ponto morto, acoplamento, fechado.</translation>
        </message>
        <message>
            <source>A magneto with its plate off, its coupling some fine steps out, and a lead nobody has looked at.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Um magneto com a placa fora do lugar, o acoplamento alguns passos finos fora, e um cabo que ninguém viu.</translation>
        </message>
        <message>
            <source>Follow the lesson.</source>
            <extracomment>lessons/a-full-job.json, lessons/contacts-and-lamp.json, lessons/measuring-the-gap.json, lessons/neutral-and-e-gap.json, lessons/one-vernier-step.json, lessons/plate-and-screw.json, lessons/the-switch-lead.json, lessons/top-dead-centre.json, lessons/what-the-parts-are.json</extracomment>
            <translation>Seguir a lição.</translation>
        </message>
        <message>
            <source>Chocks</source>
            <extracomment>lessons/a-full-job.json, lessons/top-dead-centre.json</extracomment>
            <translation>Calços</translation>
        </message>
        <message>
            <source>Put chocks at the wheels.</source>
            <extracomment>lessons/a-full-job.json, lessons/the-switch-lead.json</extracomment>
            <translation>Calçar as rodas.</translation>
        </message>
        <message>
            <source>Prove the lead</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Provar o cabo</translation>
        </message>
        <message>
            <source>Pull the plug, meter, and do what the meter tells you to, until the lead is proved.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Tirar a ficha, medir, e fazer o que o multímetro diz, até o cabo estar provado.</translation>
        </message>
        <message>
            <source>Broken inside: it had been live.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Partido por dentro: tinha estado vivo.</translation>
        </message>
        <message>
            <source>No ground with the switch off: a new lead.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Sem massa com o interruptor desligado: um cabo novo.</translation>
        </message>
        <message>
            <source>Plug in</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Ficha metida</translation>
        </message>
        <message>
            <source>Push the plug in again.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Meter de novo a ficha.</translation>
        </message>
        <message>
            <source>Spark plugs out</source>
            <extracomment>lessons/a-full-job.json, lessons/top-dead-centre.json</extracomment>
            <translation>Velas fora</translation>
        </message>
        <message>
            <source>Take the spark plugs out.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Retirar as velas de ignição.</translation>
        </message>
        <message>
            <source>Clip the lamp on and switch on: with the plugs out nothing can fire.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Ligar a lâmpada e o interruptor: com as velas fora nada pode inflamar.</translation>
        </message>
        <message>
            <source>Where do they open?</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Onde abrem?</translation>
        </message>
        <message>
            <source>Straightedge on, looked at square; turn the propeller with rotation until the lamp lights.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Régua colocada, vista a direito; rodar a hélice no sentido de rotação até a lâmpada acender.</translation>
        </message>
        <message>
            <source>Past the mark: the contacts open late.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Depois da marca: os contactos abrem tarde.</translation>
        </message>
        <message>
            <source>The gap</source>
            <extracomment>lessons/a-full-job.json, lessons/measuring-the-gap.json</extracomment>
            <translation>A folga</translation>
        </message>
        <message>
            <source>Turn until the contacts stand widest open and try blades: the gap may be right.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Rodar até os contactos estarem abertos ao máximo e experimentar lâminas: a folga pode estar certa.</translation>
        </message>
        <message>
            <source>The plate</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>A placa</translation>
        </message>
        <message>
            <source>Slacken the clamp screws, bring the opening to the mark with the backplate, and clamp it.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Aliviar os parafusos de aperto, levar a abertura à marca com a placa de base e apertá-la.</translation>
        </message>
        <message>
            <source>Late, so against rotation: about 3°.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Tarde, portanto contra a rotação: cerca de 3°.</translation>
        </message>
        <message>
            <source>Check inside</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Verificar por dentro</translation>
        </message>
        <message>
            <source>Turn with rotation until the lamp lights, and look at the straightedge.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Rodar no sentido de rotação até a lâmpada acender e olhar para a régua.</translation>
        </message>
        <message>
            <source>Dead centre</source>
            <extracomment>lessons/a-full-job.json, lessons/top-dead-centre.json</extracomment>
            <translation>Ponto morto</translation>
        </message>
        <message>
            <source>Fit the stop, meet it from both sides, set the disc to zero.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Montar o batente, encontrá-lo dos dois lados, pôr o disco a zero.</translation>
        </message>
        <message>
            <source>Half-way between the two readings, turned the other way.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>A meio das duas leituras, rodado no outro sentido.</translation>
        </message>
        <message>
            <source>Stop out</source>
            <extracomment>lessons/a-full-job.json, lessons/top-dead-centre.json</extracomment>
            <translation>Batente fora</translation>
        </message>
        <message>
            <source>Take the stop out.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Retirar o batente.</translation>
        </message>
        <message>
            <source>Read the timing</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Ler o ponto</translation>
        </message>
        <message>
            <source>With rotation to the lamp, finger at No. 1; write down what the disc reads.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>No sentido de rotação até à lâmpada, rotor distribuidor no n.º 1; anotar o que o disco lê.</translation>
        </message>
        <message>
            <source>Paint marks across the coupling.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Pintar marcas através do acoplamento.</translation>
        </message>
        <message>
            <source>Nuts off, move tooth by tooth until it fires where it should, nuts on.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Porcas fora, mover dente a dente até inflamar onde deve, porcas postas.</translation>
        </message>
        <message>
            <source>Each pair of teeth, magneto flange against rotation and disc with it, is about 1.1° of crank later.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Cada par de dentes, flange do magneto contra a rotação e disco a favor, atrasa cerca de 1,1° de cambota.</translation>
        </message>
        <message>
            <source>Check the timing</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Verificar o ponto</translation>
        </message>
        <message>
            <source>Turn the propeller with rotation until the lamp lights.</source>
            <extracomment>lessons/a-full-job.json, lessons/one-vernier-step.json</extracomment>
            <translation>Rodar a hélice no sentido de rotação até a lâmpada acender.</translation>
        </message>
        <message>
            <source>Close up</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Fechar</translation>
        </message>
        <message>
            <source>Switch off.</source>
            <extracomment>lessons/a-full-job.json, lessons/one-vernier-step.json</extracomment>
            <translation>Desligar.</translation>
        </message>
        <message>
            <source>Safe, set, timed, checked, closed. What is written in the log is what was read after the last nut.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Seguro, regulado, calado, verificado, fechado. O que se escreve no registo é o que se leu depois da última porca.</translation>
        </message>
        <message>
            <source>Contacts and timing lamp</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Contactos e lâmpada de calagem</translation>
        </message>
        <message>
            <source>The lamp tells when the contacts part – if nothing else grounds the coil.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>A lâmpada diz quando os contactos se separam – se nada mais ligar a bobina à massa.</translation>
        </message>
        <message>
            <source>Contacts and lamp</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Contactos e lâmpada</translation>
        </message>
        <message>
            <source>A magneto on the bench, its lead plugged in, the switch off.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Um magneto na bancada, com o cabo ligado e o interruptor desligado.</translation>
        </message>
        <message>
            <source>The lamp</source>
            <extracomment>lessons/contacts-and-lamp.json, lessons/one-vernier-step.json</extracomment>
            <translation>A lâmpada</translation>
        </message>
        <message>
            <source>Clip the timing lamp across the contacts.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Ligar a lâmpada de calagem aos contactos.</translation>
        </message>
        <message>
            <source>A grounded coil</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Uma bobina à massa</translation>
        </message>
        <message>
            <source>Turn the rotor right round with the lamp watched (turn until the lamp changes).</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Dar uma volta inteira ao rotor a olhar para a lâmpada (rodar até a lâmpada mudar).</translation>
        </message>
        <message>
            <source>The contacts opened and closed, and the lamp stayed dark: the switch is off and grounds the coil. A dark lamp proves nothing.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Os contactos abriram e fecharam e a lâmpada ficou apagada: o interruptor está desligado e põe a bobina à massa. Uma lâmpada apagada não prova nada.</translation>
        </message>
        <message>
            <source>Switch on</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Ligar</translation>
        </message>
        <message>
            <source>Switch the ignition on. On the bench that harms nobody; on an aircraft the propeller would now be live.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Ligar a ignição. Na bancada não faz mal a ninguém; num avião a hélice estaria agora viva.</translation>
        </message>
        <message>
            <source>They open</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Abrem</translation>
        </message>
        <message>
            <source>Turn with rotation until the lamp lights.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Rodar no sentido de rotação até a lâmpada acender.</translation>
        </message>
        <message>
            <source>Here the contacts part.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Aqui os contactos separam-se.</translation>
        </message>
        <message>
            <source>Widest open</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Abertos ao máximo</translation>
        </message>
        <message>
            <source>Turn on until the contacts stand widest open.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Continuar a rodar até os contactos estarem abertos ao máximo.</translation>
        </message>
        <message>
            <source>The top of the lobe: here the gap is measured.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>O topo do ressalto: é aqui que se mede a folga.</translation>
        </message>
        <message>
            <source>They close</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Fecham</translation>
        </message>
        <message>
            <source>Turn on until the lamp goes out.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Continuar a rodar até a lâmpada apagar.</translation>
        </message>
        <message>
            <source>Where exactly?</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Onde exatamente?</translation>
        </message>
        <message>
            <source>Lay the straightedge on, look square over it, and turn with rotation until the lamp lights.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Pousar a régua, olhar a direito por cima dela e rodar no sentido de rotação até a lâmpada acender.</translation>
        </message>
        <message>
            <source>Lamp and straightedge together say how far from the E-gap the contacts open.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Lâmpada e régua juntas dizem a que distância do E-gap os contactos abrem.</translation>
        </message>
        <message>
            <source>If the lamp is lit already, turn on until it goes out, and then until it lights.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Se a lâmpada já estiver acesa, rodar até apagar e depois até acender.</translation>
        </message>
        <message>
            <source>Measuring the gap</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Medir a folga</translation>
        </message>
        <message>
            <source>Blades say go, drag or no-go. Between go and no-go lies the gap.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>As lâminas dizem passa, roça ou não passa. A folga está entre passa e não passa.</translation>
        </message>
        <message>
            <source>A magneto whose gap nobody has measured.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Um magneto cuja folga ninguém mediu.</translation>
        </message>
        <message>
            <source>To the top</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Até ao topo</translation>
        </message>
        <message>
            <source>Turn the rotor until the contacts stand widest open.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Rodar o rotor até os contactos estarem abertos ao máximo.</translation>
        </message>
        <message>
            <source>A thin one</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Uma fina</translation>
        </message>
        <message>
            <source>Try a blade that surely goes, such as 0.2 mm.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>It goes: the gap is larger.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Passa: a folga é maior.</translation>
        </message>
        <message>
            <source>A thick one</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Uma grossa</translation>
        </message>
        <message>
            <source>Try one that does not go.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Experimentar uma que não passe.</translation>
        </message>
        <message>
            <source>The gap lies between the two. Halve what is left, and halve again.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>A folga está entre as duas. Dividir ao meio o que resta, e outra vez.</translation>
        </message>
        <message>
            <source>Drag</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Roça</translation>
        </message>
        <message>
            <source>Find the blade or stack that is just gripped.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Encontrar a lâmina ou o conjunto que fica apenas preso.</translation>
        </message>
        <message>
            <source>Within a hundredth of a millimetre. But of what?</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>A um centésimo de milímetro. Mas de quê?</translation>
        </message>
        <message>
            <source>Try 0.32 mm. Two blades held together fill the steps between single ones.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Look</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Olhar</translation>
        </message>
        <message>
            <source>Look at the faces of the contacts.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Olhar para as faces dos contactos.</translation>
        </message>
        <message>
            <source>A pip on one, a pit in the other: the blade lay on the pip, and the true gap is larger.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Um pico num, uma cova no outro: a lâmina assentou no pico e a folga verdadeira é maior.</translation>
        </message>
        <message>
            <source>Clean</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Limpar</translation>
        </message>
        <message>
            <source>Dress the contacts.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Retificar os contactos.</translation>
        </message>
        <message>
            <source>Once more</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Outra vez</translation>
        </message>
        <message>
            <source>Measure again until a blade or stack drags, and write the gap down.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Medir de novo até uma lâmina ou um conjunto roçar, e anotar a folga.</translation>
        </message>
        <message>
            <source>The same contacts, another number: only the second is the gap.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Os mesmos contactos, outro número: só o segundo é a folga.</translation>
        </message>
        <message>
            <source>Neutral, full register, E-gap</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Neutro, registo pleno, E-gap</translation>
        </message>
        <message>
            <source>The rotor by hand: where the magnet wants it, and where it gives the strongest spark.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>O rotor à mão: onde o íman o quer e onde dá a faísca mais forte.</translation>
        </message>
        <message>
            <source>The rotor by hand</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>O rotor à mão</translation>
        </message>
        <message>
            <source>A magneto on the bench, its rotor free.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Um magneto na bancada, com o rotor livre.</translation>
        </message>
        <message>
            <source>Out of neutral</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Fora do neutro</translation>
        </message>
        <message>
            <source>The rotor rests at neutral. Turn it with rotation to full register, where a pole stands square under the pole shoe.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>O rotor repousa no neutro. Rodá-lo no sentido de rotação até ao registo pleno, onde um polo fica bem debaixo da sapata polar.</translation>
        </message>
        <message>
            <source>You felt it pull back, and then less and less: at full register the pull is gone.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Sentiu-o puxar para trás e depois cada vez menos: no registo pleno a atração desaparece.</translation>
        </message>
        <message>
            <source>With four poles, full register lies 45° past neutral.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Com quatro polos, o registo pleno fica 45° depois do neutro.</translation>
        </message>
        <message>
            <source>Let go</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Largar</translation>
        </message>
        <message>
            <source>Take your hand off.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Tirar a mão.</translation>
        </message>
        <message>
            <source>The magnet took the rotor to a neutral. It always does.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>O íman levou o rotor para um neutro. Fá-lo sempre.</translation>
        </message>
        <message>
            <source>The straightedge</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>A régua</translation>
        </message>
        <message>
            <source>Lay the straightedge along the cam's step, and look square over it.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Pousar a régua ao longo do degrau do came e olhar a direito por cima dela.</translation>
        </message>
        <message>
            <source>Seen from the side, an edge above the rim seems to stand elsewhere.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Vista de lado, uma aresta acima do rebordo parece estar noutro sítio.</translation>
        </message>
        <message>
            <source>The E-gap</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>O E-gap</translation>
        </message>
        <message>
            <source>Turn the rotor with rotation until the straightedge is in line with a mark.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Rodar o rotor no sentido de rotação até a régua ficar alinhada com uma marca.</translation>
        </message>
        <message>
            <source>A few degrees past neutral: the current in the coil is at its strongest. Contacts that part here give the best spark.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Alguns graus depois do neutro: a corrente na bobina está no máximo. Contactos que se separam aqui dão a melhor faísca.</translation>
        </message>
        <message>
            <source>It falls back</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Volta para trás</translation>
        </message>
        <message>
            <source>Let go of the rotor here.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Largar o rotor aqui.</translation>
        </message>
        <message>
            <source>Back to neutral. Whoever fits a magneto has to hold the rotor at the E-gap, or pin it.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>De volta ao neutro. Quem monta um magneto tem de segurar o rotor no E-gap, ou travá-lo com um pino.</translation>
        </message>
        <message>
            <source>One step of the vernier</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Um passo do vernier</translation>
        </message>
        <message>
            <source>A disc with one tooth more on one side than on the other: two large steps that make one small one.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Um disco com mais um dente de um lado do que do outro: dois passos grandes que fazem um pequeno.</translation>
        </message>
        <message>
            <source>The coupling</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>O acoplamento</translation>
        </message>
        <message>
            <source>A magneto timed some fine steps early. The disc on the crank reads true.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Um magneto adiantado alguns passos finos. O disco na cambota lê certo.</translation>
        </message>
        <message>
            <source>Clip the timing lamp across the contacts. The plugs are out and the wheels chocked.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Ligar a lâmpada de calagem aos contactos. As velas estão fora e as rodas calçadas.</translation>
        </message>
        <message>
            <source>Read it</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Ler</translation>
        </message>
        <message>
            <source>Turn the propeller with rotation until the lamp lights with the finger at No. 1, and write down what the disc reads.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Rodar a hélice no sentido de rotação até a lâmpada acender com o rotor distribuidor no n.º 1 e anotar o que o disco lê.</translation>
        </message>
        <message>
            <source>Always with rotation: turned back, the play in the coupling lies on the other side.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Sempre no sentido de rotação: rodado para trás, o jogo do acoplamento fica do outro lado.</translation>
        </message>
        <message>
            <source>The finger comes to No. 1 once in two turns of the propeller.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>O rotor distribuidor chega ao n.º 1 uma vez em duas voltas da hélice.</translation>
        </message>
        <message>
            <source>Paint marks</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Pintar marcas</translation>
        </message>
        <message>
            <source>Paint marks across drive flange, disc and magneto flange.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Pintar marcas através da flange motriz, do disco e da flange do magneto.</translation>
        </message>
        <message>
            <source>Without marks, a disc that comes away with the magneto is a puzzle.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Sem marcas, um disco que sai com o magneto é um quebra-cabeças.</translation>
        </message>
        <message>
            <source>Nuts off</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Porcas fora</translation>
        </message>
        <message>
            <source>Take the nuts off and draw the magneto back.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Retirar as porcas e recuar o magneto.</translation>
        </message>
        <message>
            <source>Two teeth</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Dois dentes</translation>
        </message>
        <message>
            <source>It fires early, so the rotor has to go back. Move the magneto flange against rotation and the disc with rotation, as many times as it takes, one tooth each time.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Inflama cedo, portanto o rotor tem de recuar. Mover a flange do magneto contra a rotação e o disco a favor, as vezes que forem precisas, um dente de cada vez.</translation>
        </message>
        <message>
            <source>One tooth is more than 18° of rotor; one each way is less than one.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Um dente é mais de 18° de rotor; um para cada lado é menos de um.</translation>
        </message>
        <message>
            <source>A pair of teeth, −1 and +1, makes it about 1.1° of crank later. It is about 3° early.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Um par de dentes, −1 e +1, atrasa cerca de 1,1° de cambota. Está cerca de 3° adiantado.</translation>
        </message>
        <message>
            <source>Nuts on</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Porcas postas</translation>
        </message>
        <message>
            <source>Push the magneto home and tighten its nuts.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Empurrar o magneto até ao fundo e apertar as porcas.</translation>
        </message>
        <message>
            <source>Check</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Verificar</translation>
        </message>
        <message>
            <source>The reading with everything tight is the one that is signed for.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>A leitura com tudo apertado é a que se assina.</translation>
        </message>
        <message>
            <source>Safe</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Seguro</translation>
        </message>
        <message>
            <source>Plate and screw</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Placa e parafuso</translation>
        </message>
        <message>
            <source>The contact screw moves gap and opening, the backplate the opening alone. In this order they bring both right.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>O parafuso de contacto move folga e abertura, a placa de base só a abertura. Por esta ordem ficam ambas certas.</translation>
        </message>
        <message>
            <source>Set by somebody in a hurry: gap too wide, opening late.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Regulado por alguém com pressa: folga a mais, abertura tarde.</translation>
        </message>
        <message>
            <source>Slacken the lock screw</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Aliviar o parafuso de fixação</translation>
        </message>
        <message>
            <source>The gap comes first. Slacken the lock screw.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Primeiro a folga. Aliviar o parafuso de fixação.</translation>
        </message>
        <message>
            <source>Closer</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Mais perto</translation>
        </message>
        <message>
            <source>Turn the contact screw so that the contacts come closer, 3° at least.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Rodar o parafuso de contacto para aproximar os contactos, pelo menos 3°.</translation>
        </message>
        <message>
            <source>The gap is smaller now, and the contacts open later still: the screw moves both.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>A folga é agora menor e os contactos abrem ainda mais tarde: o parafuso move ambas.</translation>
        </message>
        <message>
            <source>Tighten and measure</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Apertar e medir</translation>
        </message>
        <message>
            <source>Bring the gap within limits with the lock screw tight.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Pôr a folga dentro dos limites com o parafuso de fixação apertado.</translation>
        </message>
        <message>
            <source>Did you notice? Tightening carried the screw along. What counts is the gap with everything tight.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Reparou? O aperto arrastou o parafuso. O que conta é a folga com tudo apertado.</translation>
        </message>
        <message>
            <source>Limits are 0.30 to 0.36 mm. The lock screw carries the contact screw about 2° closer each time it is tightened.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Blades say so</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>As lâminas dizem-no</translation>
        </message>
        <message>
            <source>Turn until the contacts stand widest open, and try a blade.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Rodar até os contactos estarem abertos ao máximo e experimentar uma lâmina.</translation>
        </message>
        <message>
            <source>Slacken the clamps</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Aliviar o aperto</translation>
        </message>
        <message>
            <source>The opening is late. Slacken the clamp screws.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>A abertura está tarde. Aliviar os parafusos de aperto.</translation>
        </message>
        <message>
            <source>Against rotation</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Contra a rotação</translation>
        </message>
        <message>
            <source>Turn the backplate against rotation, a degree at least.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Rodar a placa de base contra a rotação, pelo menos um grau.</translation>
        </message>
        <message>
            <source>The contacts now open earlier. The gap is what it was.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Os contactos abrem agora mais cedo. A folga é a que era.</translation>
        </message>
        <message>
            <source>To the mark</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Até à marca</translation>
        </message>
        <message>
            <source>Bring the opening to the mark, and clamp the plate.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Levar a abertura à marca e apertar a placa.</translation>
        </message>
        <message>
            <source>Lay the straightedge on, look square over it, and watch the lamp. Half a millimetre at the rim is about 0.8° here.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Check again</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Verificar de novo</translation>
        </message>
        <message>
            <source>With all tight: turn with rotation until the lamp lights, the straightedge on and looked at square.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Com tudo apertado: rodar no sentido de rotação até a lâmpada acender, com a régua colocada e vista a direito.</translation>
        </message>
        <message>
            <source>Only what was checked after the last screw was tightened is known.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Só se sabe o que foi verificado depois de apertado o último parafuso.</translation>
        </message>
        <message>
            <source>Is the switch lead sound?</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>O cabo de massa está bom?</translation>
        </message>
        <message>
            <source>A magneto is live unless it is grounded. The lead that grounds it can be broken where nobody sees it.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Um magneto está vivo se não estiver à massa. O cabo que o põe à massa pode estar partido onde ninguém vê.</translation>
        </message>
        <message>
            <source>The switch lead</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>O cabo de massa</translation>
        </message>
        <message>
            <source>An aircraft back from a long lay-up.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Um avião que volta de uma longa paragem.</translation>
        </message>
        <message>
            <source>Chocks first</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Primeiro os calços</translation>
        </message>
        <message>
            <source>Pull the plug</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Tirar a ficha</translation>
        </message>
        <message>
            <source>With the switch off, pull the plug of the switch lead. A spring tab now grounds the magneto – if it touches.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Com o interruptor desligado, tirar a ficha do cabo de massa. Uma lingueta de mola põe agora o magneto à massa – se tocar.</translation>
        </message>
        <message>
            <source>Meter</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Multímetro</translation>
        </message>
        <message>
            <source>Meter from the lead's plug to the case, switch off.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Multímetro da ficha do cabo à carcaça, interruptor desligado.</translation>
        </message>
        <message>
            <source>No ground with the switch off: this magneto was live all the time it was thought safe.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Sem massa com o interruptor desligado: este magneto esteve vivo todo o tempo em que se julgou seguro.</translation>
        </message>
        <message>
            <source>A new lead</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Um cabo novo</translation>
        </message>
        <message>
            <source>Put in a new lead.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Montar um cabo novo.</translation>
        </message>
        <message>
            <source>Prove it</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Provar</translation>
        </message>
        <message>
            <source>Meter again, switch off.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Medir outra vez, interruptor desligado.</translation>
        </message>
        <message>
            <source>Ground. That is half of the proof.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Massa. É metade da prova.</translation>
        </message>
        <message>
            <source>The other half</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>A outra metade</translation>
        </message>
        <message>
            <source>Switch on, and meter again.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Ligar e medir outra vez.</translation>
        </message>
        <message>
            <source>No ground with the switch on: the switch works both ways.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Sem massa com o interruptor ligado: o interruptor funciona nos dois sentidos.</translation>
        </message>
        <message>
            <source>Leave it safe</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Deixar seguro</translation>
        </message>
        <message>
            <source>Switch off, and push the plug in.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Desligar e meter a ficha.</translation>
        </message>
        <message>
            <source>Now, and not before, the switch can be trusted – until the next time.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Agora, e não antes, se pode confiar no interruptor – até à próxima vez.</translation>
        </message>
        <message>
            <source>Top dead centre by the stop</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Ponto morto superior pelo batente</translation>
        </message>
        <message>
            <source>Near the top the piston hardly moves: dead centre is found from both sides, not by looking for it.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Perto do topo o êmbolo quase não se move: o ponto morto encontra-se dos dois lados, não a procurá-lo.</translation>
        </message>
        <message>
            <source>An engine with a disc on its crank, put on by eye.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Um motor com um disco na cambota, posto a olho.</translation>
        </message>
        <message>
            <source>Put chocks at the wheels. The propeller is treated as live.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Calçar as rodas. A hélice é tratada como viva.</translation>
        </message>
        <message>
            <source>Take the spark plugs out: nothing can fire, nothing is compressed.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Retirar as velas: nada pode inflamar, nada é comprimido.</translation>
        </message>
        <message>
            <source>The stop</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>O batente</translation>
        </message>
        <message>
            <source>Fit the piston stop in No. 1. If the piston stands too high, turn the propeller on first.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Montar o batente do êmbolo no n.º 1. Se o êmbolo estiver demasiado alto, rodar primeiro a hélice.</translation>
        </message>
        <message>
            <source>From one side</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>De um lado</translation>
        </message>
        <message>
            <source>Turn the propeller gently with rotation until the piston meets the stop, and read the disc.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Rodar a hélice devagar no sentido de rotação até o êmbolo encontrar o batente e ler o disco.</translation>
        </message>
        <message>
            <source>From the other</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Do outro</translation>
        </message>
        <message>
            <source>Turn back until it meets the stop from the other side, and read the disc again.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Rodar para trás até encontrar o batente do outro lado e ler o disco outra vez.</translation>
        </message>
        <message>
            <source>Dead centre lies half-way between the two readings.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>O ponto morto fica a meio das duas leituras.</translation>
        </message>
        <message>
            <source>Write it down</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Anotar</translation>
        </message>
        <message>
            <source>Write down what the disc reads at top dead centre.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Anotar o que o disco lê no ponto morto superior.</translation>
        </message>
        <message>
            <source>Set the disc</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Acertar o disco</translation>
        </message>
        <message>
            <source>Turn the disc on the crank so that it reads zero there.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Rodar o disco na cambota para que ali leia zero.</translation>
        </message>
        <message>
            <source>The half-way reading, turned the other way.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>A leitura do meio, rodada no outro sentido.</translation>
        </message>
        <message>
            <source>Take the stop out, or the next turn of the propeller ends at it.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Retirar o batente, ou a próxima volta da hélice acaba nele.</translation>
        </message>
        <message>
            <source>From here the disc tells the truth.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Daqui em diante o disco diz a verdade.</translation>
        </message>
        <message>
            <source>What the parts are</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>O que são as peças</translation>
        </message>
        <message>
            <source>The breaker end of a magneto, part by part. Point at each part in the picture as it is asked for.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>O lado do ruptor de um magneto, peça por peça. Apontar cada peça na imagem quando for pedida.</translation>
        </message>
        <message>
            <source>The parts</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>As peças</translation>
        </message>
        <message>
            <source>A magneto with its breaker cover off, seen from the breaker end.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Um magneto sem a tampa do ruptor, visto do lado do ruptor.</translation>
        </message>
        <message>
            <source>The rotor</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>O rotor</translation>
        </message>
        <message>
            <source>A magnet with north and south poles that alternate round it. The engine turns it. Point at the rotor.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Um íman com polos norte e sul alternados à volta. O motor fá-lo rodar. Apontar o rotor.</translation>
        </message>
        <message>
            <source>Its field runs through the iron of the coil, one way and then the other.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>O seu campo atravessa o ferro da bobina, num sentido e depois no outro.</translation>
        </message>
        <message>
            <source>The pole shoe</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>A sapata polar</translation>
        </message>
        <message>
            <source>The iron that leads the magnet's field up to the coil and back. Point at a pole shoe.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>O ferro que leva o campo do íman à bobina e de volta. Apontar uma sapata polar.</translation>
        </message>
        <message>
            <source>Halfway between two poles the field in the iron changes its sense: that place is called neutral.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>A meio entre dois polos o campo no ferro muda de sentido: esse lugar chama-se neutro.</translation>
        </message>
        <message>
            <source>The cam</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>O came</translation>
        </message>
        <message>
            <source>It turns with the rotor and has a lobe for each spark of a turn. Point at the cam.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Roda com o rotor e tem um ressalto para cada faísca de uma volta. Apontar o came.</translation>
        </message>
        <message>
            <source>Its lobes push the breaker arm outwards.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Os ressaltos empurram o braço do ruptor para fora.</translation>
        </message>
        <message>
            <source>The heel</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>O calcador</translation>
        </message>
        <message>
            <source>The block on the breaker arm that rides on the cam. Point at the heel.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>O bloco do braço do ruptor que desliza no came. Apontar o calcador.</translation>
        </message>
        <message>
            <source>When the heel wears, the contacts open later and less wide.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Quando o calcador se gasta, os contactos abrem mais tarde e menos.</translation>
        </message>
        <message>
            <source>The breaker arm</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>O braço do ruptor</translation>
        </message>
        <message>
            <source>It swings about its pivot and carries the moving contact. Point at the breaker arm.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Oscila no seu eixo e leva o contacto móvel. Apontar o braço do ruptor.</translation>
        </message>
        <message>
            <source>A spring presses it towards the cam.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Uma mola aperta-o contra o came.</translation>
        </message>
        <message>
            <source>While they touch, the coil's primary current flows; as they part, it breaks and the spark jumps. Point at the contacts.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Enquanto se tocam, passa a corrente primária da bobina; ao separarem-se, interrompe-se e salta a faísca. Apontar os contactos.</translation>
        </message>
        <message>
            <source>When they part, and how far, is what this program is about.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Quando se separam, e quanto, é o tema deste programa.</translation>
        </message>
        <message>
            <source>The contact screw</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>O parafuso de contacto</translation>
        </message>
        <message>
            <source>It moves the fixed contact nearer or further off. Point at the contact screw.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Aproxima ou afasta o contacto fixo. Apontar o parafuso de contacto.</translation>
        </message>
        <message>
            <source>Nearer: the contacts open later and less wide.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Mais perto: os contactos abrem mais tarde e menos.</translation>
        </message>
        <message>
            <source>The lock screw</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>O parafuso de fixação</translation>
        </message>
        <message>
            <source>It holds the contact screw. Point at the lock screw.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Segura o parafuso de contacto. Apontar o parafuso de fixação.</translation>
        </message>
        <message>
            <source>Tightening it can carry the contact screw along: measure again afterwards.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Apertá-lo pode arrastar o parafuso de contacto: medir de novo depois.</translation>
        </message>
        <message>
            <source>The backplate</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>A placa de base</translation>
        </message>
        <message>
            <source>It carries contacts and breaker arm, and can be turned about the cam. Point at the backplate.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Leva os contactos e o braço do ruptor e pode rodar à volta do came. Apontar a placa de base.</translation>
        </message>
        <message>
            <source>With rotation: the contacts open later. The gap does not change.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>No sentido de rotação: os contactos abrem mais tarde. A folga não muda.</translation>
        </message>
        <message>
            <source>The clamp screw</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>O parafuso de aperto</translation>
        </message>
        <message>
            <source>They hold the backplate. Point at a clamp screw.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Seguram a placa de base. Apontar um parafuso de aperto.</translation>
        </message>
        <message>
            <source>A plate that is not clamped will not stay.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Uma placa que não está apertada não fica no lugar.</translation>
        </message>
        <message>
            <source>The step</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>O degrau</translation>
        </message>
        <message>
            <source>A flat edge on the cam along which a straightedge is laid. Point at the step.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Uma aresta plana no came ao longo da qual se pousa uma régua. Apontar o degrau.</translation>
        </message>
        <message>
            <source>It turns with the cam and shows where the rotor stands.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Roda com o came e mostra onde está o rotor.</translation>
        </message>
        <message>
            <source>The rim mark</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>A marca do rebordo</translation>
        </message>
        <message>
            <source>A mark on the housing's rim: with the step in line, the rotor is at the E-gap. Point at a rim mark.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Uma marca no rebordo da carcaça: com o degrau alinhado, o rotor está no E-gap. Apontar uma marca do rebordo.</translation>
        </message>
        <message>
            <source>There the contacts should just begin to open.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Ali os contactos devem apenas começar a abrir.</translation>
        </message>
    </context>
</TS>
