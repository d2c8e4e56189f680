<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="pt" sourcelanguage="en">
    <context>
        <name>magview</name>
        <message>
            <source>the backplate's angle is {value}; it must be a finite number of degrees</source>
            <extracomment>bench/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the contact screw's angle is {value}; it must be a finite number of degrees</source>
            <extracomment>bench/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the lamp's reading is {value}; it must be a finite number of degrees</source>
            <extracomment>bench/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{to} is not a length; wear must be a finite number of millimetres</source>
            <extracomment>bench/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>this magneto's file gives no heel arm, so it cannot be said what a worn heel does</source>
            <extracomment>bench/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the clamp screws are tight: slacken them before turning the backplate</source>
            <extracomment>bench/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the lock screw is tight: slacken it before turning the contact screw</source>
            <extracomment>bench/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>this magneto is not on an engine: open an installation first</source>
            <extracomment>bench/apply.py, bench/sureness.py, ui/uncertainty_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>with this setting the contacts never open and close, so the lamp tells no timing</source>
            <extracomment>bench/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>“{fault}” is not a fault of the switch lead; it is shorted, broken or tab</source>
            <extracomment>bench/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the wanted timing is {value}; it must be a finite number of degrees</source>
            <extracomment>bench/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the rotor's angle is {value}; it must be a finite number of degrees</source>
            <extracomment>bench/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the clock cannot run {steps} steps; it takes 0 to {most} at a time</source>
            <extracomment>bench/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the crank's angle is {value}; it must be a finite number of degrees</source>
            <extracomment>bench/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>a whole turn of teeth brings the coupling back to where it was, with the finger off</source>
            <extracomment>bench/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>there are {most} trials already; strike one out first</source>
            <extracomment>bench/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>there is no trial {place}; there are {count}</source>
            <extracomment>bench/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>there are {most} inspections already; strike one out first</source>
            <extracomment>bench/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>there is no inspection {place}; there are {count}</source>
            <extracomment>bench/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{name}: is not a kept bench; its format must be "{wanted}"</source>
            <extracomment>bench/autosave.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{name}: is damaged: an angle is not a finite number</source>
            <extracomment>bench/autosave.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{name}: is damaged: {reason}</source>
            <extracomment>bench/autosave.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{name}: cannot be used: {reason}</source>
            <extracomment>bench/autosave.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Another magneto is on the bench: {magneto}.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Wear or pips of the magneto are others.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The rotor is held.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The rotor was let go.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The lock screw is tight.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The lock screw is slack.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The clamp screws are tight.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The clamp screws are slack.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The switch is on.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The switch is off.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The lead's plug is in.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The lead's plug is out.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The switch lead is in another condition.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The magneto flange stands in other teeth of the disc.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The disc stands in other teeth of the drive flange.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The magneto stands for itself now.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The magneto is on an engine now.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The magneto is on the engine.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The magneto is off the engine.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The left magneto is in view.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The right magneto is in view.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The contacts open now.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The contacts never open now.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>It is within its limits now.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>It is out of its limits now.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The rotor was turned {angle} with rotation.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The rotor was turned {angle} against rotation.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The rotor was turned with rotation.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The rotor was turned against rotation.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The backplate was turned {angle} with rotation.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The backplate was turned {angle} against rotation.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The backplate was turned with rotation.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The backplate was turned against rotation.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The contact screw was turned {angle}, contacts closer.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The contact screw was turned {angle}, contacts wider.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The contact screw was turned, contacts closer.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The contact screw was turned, contacts wider.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The largest gap is {length} wider: {gap}.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The largest gap is {length} narrower: {gap}.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The largest gap is wider.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The largest gap is narrower.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The contacts open {angle} of rotor later.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The contacts open {angle} of rotor earlier.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The contacts open later.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The contacts open earlier.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Assumed: constant speed, linear core without losses, contacts that make and break at once, no load on the secondary while they are closed; illustrative unless the file's values are measured. At running speed this model's best opening lies past the E-gap: the maker's E-gap governs.</source>
            <extracomment>bench/curves.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>put in a short inside the magneto</source>
            <extracomment>bench/describe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>take away a short inside the magneto</source>
            <extracomment>bench/describe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>put in a break in the switch lead</source>
            <extracomment>bench/describe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>take away a break in the switch lead</source>
            <extracomment>bench/describe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>put in a bent spring tab</source>
            <extracomment>bench/describe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>take away a bent spring tab</source>
            <extracomment>bench/describe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>let go of the rotor</source>
            <extracomment>bench/describe.py, practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>grow a pip of {pip_height} mm</source>
            <extracomment>bench/describe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>wear the heel to {heel_wear} mm</source>
            <extracomment>bench/describe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>move teeth</source>
            <extracomment>bench/describe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>move the magneto flange {flange} and the disc {disc}</source>
            <extracomment>bench/describe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>move the magneto flange {teeth}</source>
            <extracomment>bench/describe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>move the disc {teeth}</source>
            <extracomment>bench/describe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>move the coupling</source>
            <extracomment>bench/describe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>place the {magneto}</source>
            <extracomment>bench/describe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>set backplate and contact screw</source>
            <extracomment>bench/describe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turn the rotor {angle}° against rotation</source>
            <extracomment>bench/describe.py, practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>hold the rotor</source>
            <extracomment>bench/describe.py, practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>wait</source>
            <extracomment>bench/describe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>note the trial at plate {backplate}°</source>
            <extracomment>bench/describe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>note the inspection at {hours} h</source>
            <extracomment>bench/describe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>strike out trial {place}</source>
            <extracomment>bench/describe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>strike out inspection {place}</source>
            <extracomment>bench/describe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turn the crank {angle}° against rotation</source>
            <extracomment>bench/describe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>read the lamp: right fires {btdc}° before top dead centre</source>
            <extracomment>bench/describe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>want right at {btdc}° before top dead centre</source>
            <extracomment>bench/describe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>paint new marks on the coupling</source>
            <extracomment>bench/describe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>tighten the lock screw</source>
            <extracomment>bench/describe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>slacken the lock screw</source>
            <extracomment>bench/describe.py, ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>tighten the clamp screws</source>
            <extracomment>bench/describe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>slacken the clamp screws</source>
            <extracomment>bench/describe.py, ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turn the rotor {angle}° with rotation</source>
            <extracomment>bench/describe.py, practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>pull the switch lead's plug</source>
            <extracomment>bench/describe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>push in the switch lead's plug</source>
            <extracomment>bench/describe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>switch on</source>
            <extracomment>bench/describe.py, bench/lead_picture.py, ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>switch off</source>
            <extracomment>bench/describe.py, bench/lead_picture.py, practice/advice.py, practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turn the crank</source>
            <extracomment>bench/describe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turn the crank {angle}° with rotation</source>
            <extracomment>bench/describe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>refit the magneto by its marks</source>
            <extracomment>bench/describe.py, practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>take the magneto off the engine</source>
            <extracomment>bench/describe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>read the lamp: left fires {btdc}° before top dead centre</source>
            <extracomment>bench/describe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>want left at {btdc}° before top dead centre</source>
            <extracomment>bench/describe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>look at the left magneto</source>
            <extracomment>bench/describe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>look at the right magneto</source>
            <extracomment>bench/describe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>contacts just open</source>
            <extracomment>bench/events.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>contacts just close</source>
            <extracomment>bench/events.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>top of lobe</source>
            <extracomment>bench/events.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>E-gap</source>
            <extracomment>bench/events.py, bench/own_magneto_fields.py, practice/paper.py, ui/breaker_view.py, ui/plot_lift.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>neutral</source>
            <extracomment>bench/events.py, ui/breaker_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>“{kind}” is not something to stop at; there are {known}</source>
            <extracomment>bench/events.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Grounded by the switch, through its lead. No spark; the lamp sees “closed” whatever the contacts do.</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Grounded by the switch, through its lead. A short inside the magneto grounds it too. No spark; the lamp sees “closed” whatever the contacts do.</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Grounded by the spring tab: the plug is out. No spark; the lamp sees “closed” whatever the contacts do.</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Grounded by the spring tab: the plug is out. A short inside the magneto grounds it too. No spark; the lamp sees “closed” whatever the contacts do.</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Meter on the lead: no ground</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Meter: pull the plug to read the lead</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Meter on the lead: ground</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>coil</source>
            <extracomment>bench/lead_picture.py, bench/told.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>contacts</source>
            <extracomment>bench/lead_picture.py, bench/told.py, bench/words.py, practice/state.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>plug</source>
            <extracomment>bench/lead_picture.py, bench/told.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>lead</source>
            <extracomment>bench/lead_picture.py, bench/told.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>spring tab</source>
            <extracomment>bench/lead_picture.py, bench/told.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Grounded only by a short inside the magneto, not by the switch: no spark now, but DANGER: without the short it would be live.</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>DANGER: live with the plug out: its tab does not touch the case. Any turn can fire a plug.</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Live: the switch is on. A turn of the propeller can fire a plug.</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>broken inside</source>
            <extracomment>bench/lead_picture.py, ui/practice_notebook.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>short</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>DANGER: live with the switch off: the lead is broken inside. Any turn can fire a plug.</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{first} and {second}</source>
            <extracomment>bench/own.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>“{text}” could not be taken: type it again</source>
            <extracomment>bench/own.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the magneto in this window is not complete yet: its own pages say what is missing</source>
            <extracomment>bench/own.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the engine in this window is not complete yet: its own pages say what is missing</source>
            <extracomment>bench/own.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>cannot be had</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Lobe 1 opens, past neutral</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Off the E-gap</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Largest gap on lobe 1</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Gap of all lobes, least</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Gap of all lobes, most</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Contacts closed before lobe 1</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Contact lift at the top</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>At the rim for 1° late</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Plate for the least gap allowed</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Plate for the most gap allowed</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Between two sparks</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Dead centres uneven by up to</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Left before right</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>One tooth, at the crank</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>One vernier step, at the crank</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Finest step, at the crank</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Wanted, before top dead centre</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>E-gap, at the crank</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>No. 1 down at the left spark</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>No. 1 down at the right spark</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Cylinders and firing order</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>From the engine's data plate and the maker's manual.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Timing wanted</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>From the maker's current manual, which governs.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Stroke and rod</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>From the manual; they tell how far the piston stands down at the timing.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Link rods</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>For a radial engine with a master rod. None, or not known? Leave all empty.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Magneto and engine</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The two that belong together: those in this window, shipped ones, or files of yours.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Coupling and drive</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Count the teeth on both faces of the coupling's disc; paint a mark before you begin.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Name</source>
            <extracomment>bench/own_engine_fields.py, bench/own_magneto_fields.py, classroom/worksheet.py, job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>What you call this engine: type, number, aircraft.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>One line of up to 120 characters.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Cylinders</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>How many cylinders the two magnetos fire.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A whole number.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Arrangement</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>How the cylinders stand round the crank.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Only a radial engine can have link rods on a master rod.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Rotation of the crank</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Which way the crank turns, seen from the propeller end.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Clockwise or anticlockwise.</source>
            <extracomment>bench/own_engine_fields.py, bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Firing order</source>
            <extracomment>bench/own_engine_fields.py, practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The cylinders in the order they fire, such as 1-3-5-2-4.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Begins with 1 and names each cylinder once.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Left magneto fires before top dead centre</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Crank degrees before top dead centre at which the left magneto should fire No. 1.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Larger is earlier; staggered settings, left unlike right, are allowed.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Right magneto fires before top dead centre</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Crank degrees before top dead centre at which the right magneto should fire No. 1.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>An engine with a single magneto has the same figure twice.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Timing tolerance</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>How far off the wanted timing either magneto may fire, either way.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Above 0: no reading is ever exact.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Synchronising tolerance</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>How far apart the two magnetos may fire, beyond a wanted stagger.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Stroke</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>How far the piston travels from one dead centre to the other.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Above 0, and below twice the rod's length.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Connecting rod</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>From the centre of its big end to that of its piston pin; the master rod's in a radial.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Longer than half the stroke, or the crank could not turn.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Cylinder of the master rod</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The cylinder whose rod carries all others.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>One of the engine's cylinders.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Radius of the knuckle pins</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>From the crank pin's centre to the pins of the link rods.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>0 or more; 0 gives evenly spaced dead centres.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>From the knuckle pin's centre to the piston pin's.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Longer than half the stroke and the knuckle radius together.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Angles of the knuckle pins</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>By cylinder number, from the master rod's axis in the direction of rotation.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>One for each cylinder, or none: then they stand as the cylinders do.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Magneto</source>
            <extracomment>bench/own_engine_fields.py, classroom/key.py, job/document.py, job/parts.py, job/sheet.py, practice/paper.py, spec/formats.py, ui/menus.py, ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The magneto that is mounted.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A complete magneto: of this window, shipped, or a file.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Engine</source>
            <extracomment>bench/own_engine_fields.py, job/document.py, job/sheet.py, practice/paper.py, spec/formats.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The engine that it is mounted on.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A complete engine: of this window, shipped, or a file.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Mounted</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Which of the engine's magnetos it is, seen from the pilot's seat.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Left or right of two, or the single one.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Teeth on the magneto's side</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Teeth of the disc's face that the magneto's flange sits in.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A whole number; one more or fewer than the other side makes the finest steps.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Teeth on the drive's side</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Teeth of the disc's face that the drive's flange sits in.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Rotor turns per crank turn</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>How fast the drive turns the rotor; cylinders over twice the poles, for a spark a pole.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Above 0: count ten turns of the propeller, plugs out, to be sure.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>radial</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>in line</source>
            <extracomment>bench/own_engine_fields.py, job/readings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>opposed</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>vee</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>clockwise</source>
            <extracomment>bench/own_engine_fields.py, bench/own_magneto_fields.py, bench/words.py, classroom/drawings.py, ui/crank_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>anticlockwise</source>
            <extracomment>bench/own_engine_fields.py, bench/own_magneto_fields.py, bench/words.py, classroom/drawings.py, ui/crank_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>left</source>
            <extracomment>bench/own_engine_fields.py, classroom/key.py, job/document.py, job/readings.py, ui/class_editor.py, ui/class_editor_rows.py, ui/job_drift_sheet.py, ui/job_kinds.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>right</source>
            <extracomment>bench/own_engine_fields.py, classroom/key.py, job/document.py, job/readings.py, ui/class_editor.py, ui/class_editor_rows.py, ui/job_kinds.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>single</source>
            <extracomment>bench/own_engine_fields.py, job/document.py, ui/class_editor.py, ui/job_kinds.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>“{piece}” is not one number: separate the values by semicolons, such as 0; 90.5; 180</source>
            <extracomment>bench/own_entry.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>maker's manual</source>
            <extracomment>bench/own_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>measured</source>
            <extracomment>bench/own_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>worked out</source>
            <extracomment>bench/own_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>assumed</source>
            <extracomment>bench/own_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>from a shipped file</source>
            <extracomment>bench/own_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{file}: is neither a magneto's nor an engine's nor an installation's file</source>
            <extracomment>bench/own_files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>this is not complete yet: what is missing or refused is marked at its field</source>
            <extracomment>bench/own_files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{file}: holds no drafts; its format must be "{format}"</source>
            <extracomment>bench/own_files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Allowed: {low} to {high}.</source>
            <extracomment>bench/own_limits.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Allowed: between {low} and {high}, neither included.</source>
            <extracomment>bench/own_limits.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Allowed: above {low}, up to {high}.</source>
            <extracomment>bench/own_limits.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Allowed: {low} and more, below {high}.</source>
            <extracomment>bench/own_limits.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>What it is</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>From the data plate and the maker's manual; no tools yet.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Cam and lobes</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Degree disc on the cam, dial gauge at the heel or at the contacts.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Breaker arm</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Calliper or rule on the arm, taken out. With a traced lift only the contact arm is needed.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Contacts and screw</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Dial gauge on the fixed contact while the screw is turned, lock screw slack.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Plate and setting</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The scale on the plate, and the gap by blades when the contacts open exactly at the E-gap.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>E-gap and limits</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>From the maker's current manual, which governs; radius of the rim marks by calliper.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Pull of the magnet</source>
            <extracomment>bench/own_magneto_fields.py, ui/plot_coil.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Spring balance on an arm at the drive shaft. Not known? Leave all three empty.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Coil</source>
            <extracomment>bench/own_magneto_fields.py, ui/plot_coil.py, ui/plot_pane.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Bridge and ohmmeter at the primary, if you have them. Not known? Leave all five empty.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Condition</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>What wear and handling have done. New or not known? Leave it empty.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>What you call this magneto: type, number, aircraft.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>One line of up to 120 characters, so that it fits on sheets and titles.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Notes</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Anything that the next person should know.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Up to 4000 characters.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Rotation</source>
            <extracomment>bench/own_magneto_fields.py, practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Which way the rotor turns in service, seen from the drive end.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Clockwise or anticlockwise; the breaker end sees the mirror image.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Poles of the rotor</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>How many magnet poles the rotor has: the magnet's pull holds it at as many places a turn.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>An even number, as north and south poles take turns.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Tops of the lobes</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>How far the cam turns from the top of lobe 1 to each top after it, in firing order.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Begins with 0 and increases below 360°; neighbouring lobes must not overlap.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Cam turns per rotor turn</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>1 for a cam on the rotor's shaft, less for one on the distributor's shaft.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Counted by turning the rotor ten times by hand.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The lift is known as</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Either a lobe drawn by a law of motion, or a table of lift traced with a gauge.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A traced lift needs fewer sizes of the arm; a drawn one needs fewer readings.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Base circle's radius</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>From the cam's centre to its low part: half of what a calliper reads across it.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Above 0; with the heel's radius it must be within the arm's reach.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Height of the lobe</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>How much further from the centre the top stands than the low part.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Its lift at the contacts must exceed the gap, or they would never close.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Rise</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Cam degrees from the low part to the top, on the side that meets the heel first.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Rise, dwell and fall together must fit between two tops.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Flat at the top</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Cam degrees over which the lobe stays at its full height.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>May be 0; rise, dwell and fall together must fit between two tops.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Fall</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Cam degrees from the top down to the low part again.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Law of motion</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>How the lobe's height grows along the rise; take modified sine if nobody knows.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>One of the standard laws: they differ little near the middle of the flank.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Angles of the traced lift</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Cam degrees from the lobe's top, before it below 0, as many as there are lifts.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Five values or more that increase; 0 lies on the top.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Lifts at the contacts</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>How far the moving contact is lifted at each of those angles.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Begins and ends with 0, rises to one top and falls again without dips.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Pivot to contact</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>From the pivot's centre to the middle of the moving contact.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Above 0: it tells how much the contacts lift when the heel does.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Pivot to heel</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>From the pivot's centre to the centre of the heel's rounding.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Such that the heel reaches the cam, from its low part to the lobe's top.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Pivot to cam</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>From the pivot's centre to the cam's centre.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The pivot must stand outside the lobe's top.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Rounding of the heel</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Radius of the rubbing face that rides on the cam.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Not so large that it would ride over a hollow of the cam.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Pivot stands</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Behind: the turning cam passes the pivot first and then the heel, which trails.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Behind or ahead: it decides which way the heel wanders along the cam.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Pivot's place in the drawing</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Clockwise from the top, seen from the breaker end with the plate at 0.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Any angle: only the drawing needs it, no reading does.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Contact screw</source>
            <extracomment>bench/own_magneto_fields.py, job/parts.py, practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>What the screw does: turn an eccentric, or drive the contact by its thread.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Eccentric or threaded.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Throw of the eccentric</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>How far the fixed contact moves from the middle when the screw turns a quarter.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Above 0: half of the whole to and fro.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Lead of the thread</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>How far the fixed contact moves in one whole turn of the screw.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Above 0.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Screw's travel, towards wider</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>How far the screw can be turned from its middle so that the contacts open.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>0 or below: the middle, 0, must lie within the travel.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Screw's travel, towards closer</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>How far the screw can be turned from its middle so that the contacts close.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>0 or above: the middle, 0, must lie within the travel.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Contacts come closer</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Which way the screw is turned to bring them closer, looking at its head.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Plate against rotation, to</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>How far the slots let the plate turn against the cam's rotation, below 0.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Below the other end.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Plate with rotation, to</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>How far the slots let the plate turn with the cam's rotation, above 0.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Above the other end.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Plate as set</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Where the plate stood in a setting that opened exactly at the E-gap, screw at 0.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Within the plate's slots.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Gap as set</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The largest gap that this setting had, by blades on lobe 1.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Below the contact lift at the lobe's top, or the contacts would never close.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Rotor degrees past neutral at which the contacts should open.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Above 0 and short of full register, half of the way to the next neutral.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Smallest gap allowed</source>
            <extracomment>bench/own_magneto_fields.py, job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The maker's lower limit of the largest gap.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Below the upper limit.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Largest gap allowed</source>
            <extracomment>bench/own_magneto_fields.py, job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The maker's upper limit of the largest gap.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Above the lower limit.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Radius of the rim marks</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>From the cam's centre to the marks that the straightedge is laid against.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Above 0: it turns degrees into what is seen at the rim.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Tolerance at the marks</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>How far beside the mark the straightedge may point when the contacts open.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Above 0: the maker's figure, or the width of the mark.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Greatest pull</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Torque needed to turn the rotor out of neutral at its worst place.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>0 or more: force times arm.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Inertia of the rotor</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>How sluggish the rotor is, with what hangs on its shaft.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Above 0, or it would swing without end of speed.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Damping</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Friction that grows with speed: what brings the swing to rest.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>0 or more; only the swing on the screen needs it.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Turns of the primary</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>How many turns of thick wire the primary winding has.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>1 or more.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Inductance of the primary</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Read with a bridge, the rotor at neutral and the contacts held open.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Resistance of the primary</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Read with an ohmmeter that resolves hundredths, leads taken off the reading.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>0 or more.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Greatest flux</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Flux through the core at full register.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>0 or more; illustrative unless it was measured.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Third harmonic of the flux</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>How far the flux departs from a plain sine: 0 is a plain one.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Between −1 and 1; illustrative unless it was measured.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Heel worn by</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>How much of the rubbing face has gone since new.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>0 or more; needs the length from pivot to heel, to know what wear does.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Pip on the contacts</source>
            <extracomment>bench/own_magneto_fields.py, job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>How high metal has built up on one contact: a blade feels so much less gap.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Lobes late by</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>How far each lobe stands from its place, in cam degrees, late above 0.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>As many values as there are lobes, or none; lobes must not overlap.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Lobes high by</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>How much more than lobe 1 as new each lobe lifts the contacts.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>As many values as there are lobes, or none; some lift must be left.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Screw creeps by</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>How far tightening the lock screw carries the contact screw along, closer above 0.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Small: a quarter turn would be a broken screw.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Play of the coupling</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>How far the rotor can be rocked with the drive held still.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>a law of motion</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>a traced table</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>harmonic</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>cycloidal</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>polynomial 3-4-5</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>polynomial 4-5-6-7</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>modified sine</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>modified trapezoid</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>behind the heel</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>ahead of the heel</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turns an eccentric</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>is threaded</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>evenly spaced, one a spark of the rotor's turns</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>poles over lobes, for a spark at every pole</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>cylinders over twice the poles</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>connecting rod less the knuckle pins' radius</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>one trial on the bench</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{count} trials on the bench</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>there are no trials on the bench: note some on its page Trials first</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>trials correct a complete magneto: begin from a shipped one and fill in what is known</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>give the poles of the rotor and the cam's turns per rotor turn first</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>poles over the cam's turns per rotor turn is {lobes}; it must be a whole number from 1 to 36</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>give the poles of the rotor and the tops of the lobes first</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>give the connecting rod and the knuckle pins' radius first</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>this magneto is not on an engine</source>
            <extracomment>bench/state.py, practice/actions.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>with this setting the contacts never open and close, so there is nothing to read</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Reading the offset</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Straightedge</source>
            <extracomment>bench/sureness.py, ui/class_editor.py, ui/practice_sight.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Feeler blades</source>
            <extracomment>bench/sureness.py, ui/practice_tray.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Drag of the blade</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Opening shown by</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Turning the rotor</source>
            <extracomment>bench/sureness.py, ui/practice_sight.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Turning the crank</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Crank disc</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Play</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Tightening</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{name}: {value} ± {spread} (k = {k}); limits {low} to {high}: {percent} likely within them.</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>What matters most: {name}, {share} of the variance ({source}).</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>With {instead} instead of {was}: {after} likely all in limits, now {before}.</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>under 1 %</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>over 99 %</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Breaker end</source>
            <extracomment>bench/told.py, ui/breaker_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Drive end: the coupling</source>
            <extracomment>bench/told.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Crank, timing disc and piston of No. 1</source>
            <extracomment>bench/told.py, ui/crank_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Switch lead</source>
            <extracomment>bench/told.py, classroom/blanks.py, ui/practice_notebook.py, ui/practice_work.py, ui/window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>rotor</source>
            <extracomment>bench/told.py, bench/words.py, ui/breaker_hands.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>pole shoe</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>cam</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>heel</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>breaker arm</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>pivot</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>spring</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>contact screw</source>
            <extracomment>bench/told.py, bench/words.py, ui/breaker_hands.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>lock screw</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>backplate</source>
            <extracomment>bench/told.py, bench/words.py, ui/breaker_hands.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>clamp screw</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>step</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>rim mark</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A magnet whose poles alternate round it; the engine turns it.</source>
            <extracomment>bench/told.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Iron that leads the magnet's field through the coil's core and back.</source>
            <extracomment>bench/told.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>It turns with the rotor, or in a fixed ratio to it, and has a lobe for each spark.</source>
            <extracomment>bench/told.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The block on the breaker arm that rides on the cam; it wears.</source>
            <extracomment>bench/told.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>It swings about its pivot and carries the moving contact.</source>
            <extracomment>bench/told.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The pin the breaker arm swings about.</source>
            <extracomment>bench/told.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>It presses the arm towards the cam and closes the contacts.</source>
            <extracomment>bench/told.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>As they part, the primary current breaks and the spark jumps.</source>
            <extracomment>bench/told.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>It moves the fixed contact: nearer or further off, later or earlier.</source>
            <extracomment>bench/told.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>It holds the contact screw, and may carry it along as it is tightened.</source>
            <extracomment>bench/told.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>It carries contacts and arm; turned about the cam it shifts the opening alone.</source>
            <extracomment>bench/told.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The clamp screws hold the backplate in its slots.</source>
            <extracomment>bench/told.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>An edge on the cam along which a straightedge is laid.</source>
            <extracomment>bench/told.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>With the straightedge in line with it, the rotor stands at the E-gap.</source>
            <extracomment>bench/told.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>drive flange</source>
            <extracomment>bench/told.py, bench/words.py, ui/drive_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>disc</source>
            <extracomment>bench/told.py, bench/words.py, practice/state.py, ui/drive_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>magneto flange</source>
            <extracomment>bench/told.py, bench/words.py, ui/drive_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>painted mark</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The engine turns it; its slots take the disc's outer teeth.</source>
            <extracomment>bench/told.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>It joins both flanges, with one more tooth or fewer on one face than on the other.</source>
            <extracomment>bench/told.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>It sits on the rotor's shaft, in the disc's inner teeth.</source>
            <extracomment>bench/told.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Paint across all three before anything is taken apart.</source>
            <extracomment>bench/told.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>crank</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>connecting rod</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>piston pin</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>piston</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>cylinder</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>timing disc</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>pointer</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>It turns once for each up and down of the piston.</source>
            <extracomment>bench/told.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>It joins crank and piston.</source>
            <extracomment>bench/told.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The rod swings about it in the piston.</source>
            <extracomment>bench/told.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>About top dead centre it hardly moves while the crank does.</source>
            <extracomment>bench/told.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>No. 1 is the one that the timing is read on.</source>
            <extracomment>bench/told.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Degrees before and after top dead centre, set to zero by the piston stop.</source>
            <extracomment>bench/told.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Fixed to the engine: it reads the disc.</source>
            <extracomment>bench/told.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>switch</source>
            <extracomment>bench/told.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The primary winding, grounded at one end.</source>
            <extracomment>bench/told.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Closed, they carry the primary current; open, they break it.</source>
            <extracomment>bench/told.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>It joins the lead to the magneto, and pulled, lets the spring tab touch the case.</source>
            <extracomment>bench/told.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>With the plug out it grounds the coil on the case – if it touches.</source>
            <extracomment>bench/told.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The wire to the switch; broken inside, it leaves the magneto live.</source>
            <extracomment>bench/told.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Off, it is closed and grounds the primary: no spark.</source>
            <extracomment>bench/told.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Check the marks: disc in line with the drive flange's mark, magneto flange in line with the disc's mark.</source>
            <extracomment>bench/tooth_steps.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Check the marks: disc in line with the drive flange's mark, magneto flange {flange} from the disc's mark.</source>
            <extracomment>bench/tooth_steps.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Check the marks: disc {disc} from the drive flange's mark, magneto flange in line with the disc's mark.</source>
            <extracomment>bench/tooth_steps.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Check the marks: disc {disc} from the drive flange's mark, magneto flange {flange} from the disc's mark.</source>
            <extracomment>bench/tooth_steps.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{magneto_teeth} teeth at the magneto, {drive_teeth} at the drive. The disc's marked tooth sits in magneto slot {magneto_slots} and in drive slot {drive_slots}.</source>
            <extracomment>bench/tooth_steps.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Move the magneto flange {teeth} on the disc.</source>
            <extracomment>bench/tooth_steps.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Move the disc {teeth} on the drive flange, the magneto flange with it.</source>
            <extracomment>bench/tooth_steps.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>compensated cam: the opening is judged on lobe 1</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>never: they stay open</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>never: they stay closed</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{offset} past</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{offset} short</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>opening of every lobe</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>opening of lobe {lobes}</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>gap of every lobe</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>gap of lobe {lobes}</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>After {hours} h: opens at the E-gap, largest gap {gap}; within limits.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>After {hours} h: opens at the E-gap, largest gap {gap}; out of limits.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>After {hours} h: opens {angle} late, largest gap {gap}; within limits.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>After {hours} h: opens {angle} late, largest gap {gap}; out of limits.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>After {hours} h: opens {angle} early, largest gap {gap}; within limits.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>After {hours} h: opens {angle} early, largest gap {gap}; out of limits.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Leaves its limits: {limits}.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The blade gap closes by {rate}.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>opens late</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>opens late after {hours} h</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>opens early</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>opens early after {hours} h</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>gap too small</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>gap too small after {hours} h</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>gap too wide</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>gap too wide after {hours} h</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>blade gap too small</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>blade gap too small after {hours} h</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>never opens</source>
            <extracomment>bench/wear_words.py, classroom/blanks.py, practice/debrief.py, practice/goals.py, practice/readings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>never opens after {hours} h</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>After {hours} h the contacts would not open and close any more.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A blade would find {gap}: it rides on the pip, {pip} high, and the true gap is wider.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Out of limits already: {limits}. Set it first.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>At these rates nothing leaves its limits within {hours} h.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{value} per 100 h ({low} to {high}, {probability} times in 100)</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Of that the heel wears {heel}, and the pip grows {pip}.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Note where it opened, too, to tell the heel's part from the pip's.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turn the backplate {angle}° with rotation (clockwise seen from the breaker end)</source>
            <extracomment>bench/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turn the backplate {angle}° with rotation (anticlockwise seen from the breaker end)</source>
            <extracomment>bench/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turn the backplate {angle}° against rotation (clockwise seen from the breaker end)</source>
            <extracomment>bench/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turn the backplate {angle}° against rotation (anticlockwise seen from the breaker end)</source>
            <extracomment>bench/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turn the backplate {angle}° against rotation</source>
            <extracomment>bench/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turn the contact screw {angle}° clockwise (contacts closer)</source>
            <extracomment>bench/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turn the contact screw {angle}° clockwise (contacts wider)</source>
            <extracomment>bench/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turn the contact screw {angle}° anticlockwise (contacts closer)</source>
            <extracomment>bench/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turn the contact screw {angle}° anticlockwise (contacts wider)</source>
            <extracomment>bench/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{count} teeth against rotation</source>
            <extracomment>bench/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{move} (clockwise seen from the drive end)</source>
            <extracomment>bench/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{move} (anticlockwise seen from the drive end)</source>
            <extracomment>bench/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{move} (clockwise seen from the breaker end)</source>
            <extracomment>bench/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{move} (anticlockwise seen from the breaker end)</source>
            <extracomment>bench/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>direction of rotation</source>
            <extracomment>bench/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>plate scale</source>
            <extracomment>bench/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>rim</source>
            <extracomment>bench/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>rotor scale</source>
            <extracomment>bench/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>straightedge</source>
            <extracomment>bench/words.py, practice/state.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turn the backplate {angle}° with rotation</source>
            <extracomment>bench/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>not moved</source>
            <extracomment>bench/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{count} teeth with rotation</source>
            <extracomment>bench/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{count} with</source>
            <extracomment>bench/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{count} against</source>
            <extracomment>bench/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>1 tooth with rotation</source>
            <extracomment>bench/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>1 tooth against rotation</source>
            <extracomment>bench/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{table}: left magneto</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{mm} mm = {inch} in</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>within {length}</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{low} to {high}</source>
            <extracomment>classroom/blanks.py, job/document.py, job/readings.py, practice/debrief.py, ui/trials_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>off, and meshed anew</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{table}: right magneto</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>sound, and proved</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Plug out. A lead without ground while the switch is off leaves the magneto live.</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>in line, within {length}</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The rotor at the E-gap</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Held by hand, looked at square over the straightedge, reached with rotation.</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>a pip of {length}</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>clean and flat</source>
            <extracomment>classroom/blanks.py, practice/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Look before measuring: a blade on a pip reads too small a gap.</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{amount} mm past</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{amount} mm short</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Turn with rotation. Lobe 1 opens for No. 1; the gap is measured with the heel on top of the lobe.</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Top dead centre of No. 1</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Bring the piston to the stop gently, by hand, from both sides; readings after zero count as negative.</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Fires before top dead centre</source>
            <extracomment>classroom/blanks.py, ui/practice_notebook.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{angle}° within {allowed}°</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>within {allowed}°</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Timing to the engine</source>
            <extracomment>classroom/blanks.py, ui/uncertainty_panel.py, ui/window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Lamp and disc, approached with rotation; teeth as seen from the drive end.</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Magneto flange moved on the disc</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Disc moved on the drive flange</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>never</source>
            <extracomment>classroom/blanks.py, practice/debrief.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{angle}°, on the wrong stroke</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>one never fires</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{angle}° and a turn of the crank</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>ground</source>
            <extracomment>classroom/blanks.py, practice/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>no ground</source>
            <extracomment>classroom/blanks.py, practice/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the lead is broken inside</source>
            <extracomment>classroom/blanks.py, practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>a short inside the magneto grounds it</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the spring tab does not touch the case</source>
            <extracomment>classroom/blanks.py, practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>nothing: it is sound</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Reading</source>
            <extracomment>classroom/blanks.py, job/document.py, ui/uncertainty_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>As found</source>
            <extracomment>classroom/blanks.py, classroom/preview.py, job/document.py, job/sheet.py, practice/report.py, ui/debrief_view.py, ui/job_sources.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>As left</source>
            <extracomment>classroom/blanks.py, job/document.py, practice/report.py, ui/job_sources.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Try</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Straightedge from the rim mark</source>
            <extracomment>classroom/blanks.py, job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Short of it or past it</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The contacts</source>
            <extracomment>classroom/blanks.py, lessons/what-the-parts-are.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Looked at</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Opening and gap, lobe by lobe</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Lobe</source>
            <extracomment>classroom/blanks.py, job/document.py, ui/job_table.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Disc reads</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Disc set anew</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Left magneto flange moved on the disc</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Left disc moved on the drive flange</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Meter from plug to case, switch off</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Meter from plug to case, switch on</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>What it suffers from</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Faces of the contacts</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Opens from the mark, as found</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Largest gap, as found</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>At the stop, turned with rotation</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>At the stop, turned against rotation</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Half-way between: true top dead centre</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Left fires before top dead centre</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Right fires before top dead centre</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Apart from one another</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Right magneto flange moved on the disc</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Right disc moved on the drive flange</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Opens from the mark, as left</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Largest gap, as left</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>0°</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{count} symbols; at most {most} can be checked</source>
            <extracomment>classroom/code.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>No code was given; it looks like 8K2M-4TXN-0QZ7-5C</source>
            <extracomment>classroom/code.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The code “{code}” was mistyped: its check characters do not fit</source>
            <extracomment>classroom/code.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Character {place} of the code is “{letter}”; codes have digits and letters without U</source>
            <extracomment>classroom/code.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The code has {count} characters; codes have at most {most}</source>
            <extracomment>classroom/code.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The code is cut short: it has {count} characters</source>
            <extracomment>classroom/code.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{value} does not fit {bits} bits</source>
            <extracomment>classroom/code.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{left} bits are left, {wanted} are wanted</source>
            <extracomment>classroom/code.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>“{exercise}” is not in this set, or was done with other settings</source>
            <extracomment>classroom/desk.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turns {way}</source>
            <extracomment>classroom/drawings.py, ui/breaker_view.py, ui/drive_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Largest gap</source>
            <extracomment>classroom/drawings.py, job/document.py, job/parts.py, practice/paper.py, ui/practice_notebook.py, ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Straightedge and rim mark</source>
            <extracomment>classroom/drawings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>This magneto is not on an engine: there is no such picture of it</source>
            <extracomment>classroom/drawings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{magneto}, seen from the breaker end; the rotor turns {way}. Rotor and pole shoes are diagrammatic; cam, arm, contacts and marks are to scale.</source>
            <extracomment>classroom/drawings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{magneto}, seen from the drive end; the rotor turns {way}. Both faces of the disc are drawn, the drive face outside, the magneto face inside.</source>
            <extracomment>classroom/drawings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{engine}, seen from the propeller end; it turns {way}.</source>
            <extracomment>classroom/drawings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The primary circuit with its switch lead; the switch is off.</source>
            <extracomment>classroom/drawings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>mm</source>
            <extracomment>classroom/drawings.py, ui/class_editor_rows.py, ui/job_kinds.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{folder}: the folder cannot be read: {reason}</source>
            <extracomment>classroom/gather.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The digest finds damage in copying. It is no protection against a determined cheat: the acts are marked again, but who did them, and when, is believed as written.</source>
            <extracomment>classroom/handed.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{file}: was changed or damaged after it was handed in: its digest does not fit</source>
            <extracomment>classroom/handed.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the attempt has not been handed in</source>
            <extracomment>classroom/handed.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>another file has its name</source>
            <extracomment>classroom/handed.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{folder}: the attempt cannot be written there: {reason}</source>
            <extracomment>classroom/handed.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Exercise</source>
            <extracomment>classroom/key.py, classroom/summary.py, spec/formats.py, ui/class_desk.py, ui/class_paper_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Pupil</source>
            <extracomment>classroom/key.py, classroom/summary.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>What</source>
            <extracomment>classroom/key.py, practice/report.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Answer</source>
            <extracomment>classroom/key.py, ui/job_bars.py, ui/practice_sight.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{number}. {name}</source>
            <extracomment>classroom/key.py, classroom/summary.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Each pupil of this set has a fault of their own: name the pupils the key is for</source>
            <extracomment>classroom/key.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>contacts open {amount}° of rotor late</source>
            <extracomment>classroom/key.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>largest gap {length} too wide</source>
            <extracomment>classroom/key.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>backplate {amount}° off, with cam rotation</source>
            <extracomment>classroom/key.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>lock screw carries the contact screw {amount}° along, contacts closer</source>
            <extracomment>classroom/key.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>crank disc reads {reading}° at top dead centre</source>
            <extracomment>classroom/key.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>fitted with the rotor at neutral</source>
            <extracomment>classroom/key.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>lobe {lobe} lifts {length} less</source>
            <extracomment>classroom/key.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>pip of {length} on the contacts</source>
            <extracomment>classroom/key.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{amount}° of rotor play in the coupling</source>
            <extracomment>classroom/key.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>switch lead broken: no ground</source>
            <extracomment>classroom/key.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>switch lead shorted: always grounded</source>
            <extracomment>classroom/key.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>spring tab does not touch: the coil is not joined</source>
            <extracomment>classroom/key.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>switch lead sound</source>
            <extracomment>classroom/key.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>everyone</source>
            <extracomment>classroom/key.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Answer key: {title}</source>
            <extracomment>classroom/key.py, classroom/set_papers.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Answer key</source>
            <extracomment>classroom/key.py, classroom/set_papers.py, ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Code {code}</source>
            <extracomment>classroom/key.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{number}. {name} – {who} (draws from {seed})</source>
            <extracomment>classroom/key.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>contacts open {amount}° of rotor early</source>
            <extracomment>classroom/key.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>largest gap {length} too narrow</source>
            <extracomment>classroom/key.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>backplate {amount}° off, against cam rotation</source>
            <extracomment>classroom/key.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>lock screw carries the contact screw {amount}° along, contacts wider</source>
            <extracomment>classroom/key.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>fires on the wrong stroke</source>
            <extracomment>classroom/key.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>one tooth early at the magneto flange</source>
            <extracomment>classroom/key.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{count} teeth early at the magneto flange</source>
            <extracomment>classroom/key.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>one tooth late at the magneto flange</source>
            <extracomment>classroom/key.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{count} teeth late at the magneto flange</source>
            <extracomment>classroom/key.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>one tooth early at the drive flange</source>
            <extracomment>classroom/key.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{count} teeth early at the drive flange</source>
            <extracomment>classroom/key.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>one tooth late at the drive flange</source>
            <extracomment>classroom/key.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{count} teeth late at the drive flange</source>
            <extracomment>classroom/key.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>one vernier step early</source>
            <extracomment>classroom/key.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{count} vernier steps early</source>
            <extracomment>classroom/key.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>one vernier step late</source>
            <extracomment>classroom/key.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{count} vernier steps late</source>
            <extracomment>classroom/key.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Fault</source>
            <extracomment>classroom/key.py, ui/class_editor_rows.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>   • no fault: it is as it should be</source>
            <extracomment>classroom/key.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>none</source>
            <extracomment>classroom/key.py, practice/debrief.py, practice/report.py, ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A name or a number is needed: each pupil's fault is drawn from it</source>
            <extracomment>classroom/names.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{why}; and it cannot be kept on this machine either ({here}): save the attempt by hand</source>
            <extracomment>classroom/outbox.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>About {minutes} minutes; {percent} % are needed.</source>
            <extracomment>classroom/preview.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Hidden, for this seed</source>
            <extracomment>classroom/preview.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>What the pupil reads</source>
            <extracomment>classroom/preview.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Hints, one at a time</source>
            <extracomment>classroom/preview.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Nothing on the tray can prove “{goal}”.</source>
            <extracomment>classroom/preview.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>No goal asks for “{fault}”.</source>
            <extracomment>classroom/preview.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>no fault</source>
            <extracomment>classroom/preview.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{file}: cannot be marked: {reason}</source>
            <extracomment>classroom/results.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{file}: is not handed in yet</source>
            <extracomment>classroom/results.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Worksheets</source>
            <extracomment>classroom/set_papers.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Each pupil of this set has a fault of their own: name the pupils the sheets are for</source>
            <extracomment>classroom/set_papers.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Class code {code}.</source>
            <extracomment>classroom/set_papers.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{number}. {exercise}</source>
            <extracomment>classroom/set_papers.py, classroom/worksheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A code holds {most} exercises at most; this set needs its file</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>“{exercise}” is not a shipped exercise; this set needs its file</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>This is no class code: it looks like 8K2M-4TXN-0QZ7-5C</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>This code was made by a newer magview, which is needed to use it</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Exercise {number} of this code is not shipped with this magview; both sides need the same version</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>This code was made with another version of its exercises; both sides need the same magview</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>exercise {number} is not in this set, which has {count}</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>pupils[{i}] is “{name}”, which has neither a letter nor a digit</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>pupils has “{one}” and “{other}”, who cannot be told apart; capitals, accents and spaces do not count</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Marks %</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Verdict</source>
            <extracomment>classroom/summary.py, job/document.py, ui/debrief_view.py, ui/job_table.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Minutes</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Acts</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Found</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Missed</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Dangers</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Handed in</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Counts</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Remarks</source>
            <extracomment>classroom/summary.py, job/parts.py, job/sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>File</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Done</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Passed</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Weakest step</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Step</source>
            <extracomment>classroom/summary.py, ui/lesson_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Attempts</source>
            <extracomment>classroom/summary.py, ui/class_gather.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Wrong</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Nearly right</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Right, not proved</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>What goes wrong</source>
            <extracomment>classroom/summary.py, ui/class_gather.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Pupils</source>
            <extracomment>classroom/summary.py, ui/class_gather.py, ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>its exercise is not the set's</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>its fault was not drawn for this pupil</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>not on the list of pupils</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>DANGER: {what}</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>missed: {fault}</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>yes</source>
            <extracomment>classroom/summary.py, job/readings.py, ui/job_kinds.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>no</source>
            <extracomment>classroom/summary.py, job/readings.py, ui/job_kinds.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>a copy of {file}</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the same acts, to the second, as {pupil} in {file}</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>there is a later attempt</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>of another set</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>saved by hand, not handed in with a class</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>rotor held at the E-gap</source>
            <extracomment>classroom/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>contacts open at the mark</source>
            <extracomment>classroom/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>largest gap within its limits</source>
            <extracomment>classroom/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>contacts clean and flat</source>
            <extracomment>classroom/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>disc set to top dead centre</source>
            <extracomment>classroom/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>timed to the engine</source>
            <extracomment>classroom/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>both magnetos together</source>
            <extracomment>classroom/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>switch lead sound and proved</source>
            <extracomment>classroom/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>coupling marked first</source>
            <extracomment>classroom/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>everything tight and closed up</source>
            <extracomment>classroom/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>opening, as written down</source>
            <extracomment>classroom/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>largest gap, as written down</source>
            <extracomment>classroom/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>firing, as written down</source>
            <extracomment>classroom/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>disc's zero, as written down</source>
            <extracomment>classroom/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>switch lead, as written down</source>
            <extracomment>classroom/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>opens early or late</source>
            <extracomment>classroom/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>gap too wide or narrow</source>
            <extracomment>classroom/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>backplate off</source>
            <extracomment>classroom/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>lock screw carries the contact screw along</source>
            <extracomment>classroom/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>a low lobe</source>
            <extracomment>classroom/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>pip on the contacts</source>
            <extracomment>classroom/words.py, physics/setting_uncertainty.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>play in the coupling</source>
            <extracomment>classroom/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>teeth out at the magneto flange</source>
            <extracomment>classroom/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>teeth out at the drive flange</source>
            <extracomment>classroom/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>vernier steps out</source>
            <extracomment>classroom/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>disc not at zero</source>
            <extracomment>classroom/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>on the wrong stroke</source>
            <extracomment>classroom/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>fitted at neutral</source>
            <extracomment>classroom/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>switch lead</source>
            <extracomment>classroom/words.py, practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>took the magneto off unmarked</source>
            <extracomment>classroom/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turned the propeller with no chocks at the wheels</source>
            <extracomment>classroom/words.py, practice/evidence.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turned the propeller with a live magneto and the plugs in</source>
            <extracomment>classroom/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turned the propeller, plugs in, without proving the switch</source>
            <extracomment>classroom/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>handed in with screws or nuts slack</source>
            <extracomment>classroom/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>handed in with the switch on</source>
            <extracomment>classroom/words.py, practice/marking.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{step}: wrong</source>
            <extracomment>classroom/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{step}: nearly right</source>
            <extracomment>classroom/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{step}: right, not proved by instruments</source>
            <extracomment>classroom/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{what} (left)</source>
            <extracomment>classroom/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{what} (right)</source>
            <extracomment>classroom/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>newer version</source>
            <extracomment>classroom/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>not handed in</source>
            <extracomment>classroom/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>damaged</source>
            <extracomment>classroom/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>passed</source>
            <extracomment>classroom/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>not passed</source>
            <extracomment>classroom/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>On a real magneto: treat the propeller as live; switch off, its lead grounded and proved; plugs out; wheels chocked. The maker's current manual and local rules govern; work on a certified aircraft is done or released by a licensed person. This sheet is for training; its magneto is invented.</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{magneto}: pictures</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{title} · magview {version} · treat the propeller as live</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>In the program: begin this exercise with the code {seed}.</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Name the parts: key</source>
            <extracomment>classroom/worksheet.py, ui/class_paper_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Name the parts</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Answer key: {exercise}</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>In the program: class code {code}, under this name.</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>In the program: class code {code}.</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The straightedge (dashed) as the contacts open, and the rim mark: how far apart, short or past?</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The case</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>About {minutes} minutes. Done when:</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Data sheet</source>
            <extracomment>classroom/worksheet.py, ui/practice_task.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Readings</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>What was wrong, and what put it right</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{side} magneto: {fault}</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Class</source>
            <extracomment>classroom/worksheet.py, ui/class_desk.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Date</source>
            <extracomment>classroom/worksheet.py, job/document.py, job/history.py, job/parts.py, job/sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Hints</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{number}. {table}</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Into the pictures: lobe 1 as found</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The contacts at their widest. Not to scale.</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>For {pupil}.</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>For everyone.</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Nothing needs to be put right.</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Name the parts – {picture}</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Part</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>What it does</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>not installed; install magview again</source>
            <extracomment>cli_check.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{count} magnetos and {more} installations can be read</source>
            <extracomment>cli_check.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>opens ({platform}, screen of {width} × {height})</source>
            <extracomment>cli_check.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Qt does not start: {reason}</source>
            <extracomment>cli_check.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>good</source>
            <extracomment>cli_check.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>MISSING</source>
            <extracomment>cli_check.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>no magnetos in {folder}; install magview again</source>
            <extracomment>cli_check.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Qt needs it for a window; the package {package} of Debian and Ubuntu has it</source>
            <extracomment>cli_check.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>opens, but where nobody sees it: QT_QPA_PLATFORM is {platform}</source>
            <extracomment>cli_check.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>there are no fonts, so words are boxes; the package fonts-dejavu-core of Debian and Ubuntu has some</source>
            <extracomment>cli_check.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Qt has no working platform plugin “{chosen}”, which QT_QPA_PLATFORM asks for; unset it, or choose one of: {known}</source>
            <extracomment>cli_check.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>folder of work under way</source>
            <extracomment>cli_check.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>folder of the log</source>
            <extracomment>cli_check.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>folder of fault reports</source>
            <extracomment>cli_check.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>folder for the time being</source>
            <extracomment>cli_check.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{trouble}; make the folder writable, or set XDG_DATA_HOME and XDG_STATE_HOME to ones that are</source>
            <extracomment>cli_check.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{folder} has only {free} MB free; make room</source>
            <extracomment>cli_check.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{folder} can be written, {free} MB free</source>
            <extracomment>cli_check.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>versions</source>
            <extracomment>cli_check.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>shipped files</source>
            <extracomment>cli_check.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>window</source>
            <extracomment>cli_check.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>printing</source>
            <extracomment>cli_check.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>files</source>
            <extracomment>cli_check.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>desktop</source>
            <extracomment>cli_check.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>PDF is written, with {count} families of type</source>
            <extracomment>cli_check.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>it gave no reason</source>
            <extracomment>cli_check.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>not in the menu; `magview desktop` puts it there</source>
            <extracomment>cli_check.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Nothing is missing.</source>
            <extracomment>cli_check.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Something is missing.</source>
            <extracomment>cli_check.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Qt writes no PDF or reads no SVG; install magview again</source>
            <extracomment>cli_check.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Qt did not answer within {seconds} s; try again</source>
            <extracomment>cli_check.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>in the menu; `magview desktop --remove` takes it away</source>
            <extracomment>cli_check.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>could not be looked at: {reason}</source>
            <extracomment>cli_check.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>about {minutes} minutes</source>
            <extracomment>cli_class.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A fault of their own for each pupil.</source>
            <extracomment>cli_class.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The same faults for everyone.</source>
            <extracomment>cli_class.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the set</source>
            <extracomment>cli_class.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{count} attempts count, of {files} files.</source>
            <extracomment>cli_class.py, ui/class_gather.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{name}: {percent} %, {passed} of {done} passed</source>
            <extracomment>cli_class.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>a code for a class, its answer key, and its attempts gathered</source>
            <extracomment>cli_class.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>make a class code, or say what one stands for</source>
            <extracomment>cli_class.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>shipped exercises or files, in order; or one code or set</source>
            <extracomment>cli_class.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the same seed makes the same code; left out: drawn</source>
            <extracomment>cli_class.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>a fault of their own for each pupil</source>
            <extracomment>cli_class.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the exercises' hints are not given</source>
            <extracomment>cli_class.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>straightedge, and blades beside the exercise's</source>
            <extracomment>cli_class.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the time allowed for each exercise</source>
            <extracomment>cli_class.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>for the file and the key</source>
            <extracomment>cli_class.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>a pupil; again for each</source>
            <extracomment>cli_class.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>write the set as a file, pupils and own exercises included</source>
            <extracomment>cli_class.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the answer key of a code or a set's file</source>
            <extracomment>cli_class.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>a code or a file</source>
            <extracomment>cli_class.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>write it as CSV</source>
            <extracomment>cli_class.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>mark every attempt in a folder</source>
            <extracomment>cli_class.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>hold them against a code or a set's file</source>
            <extracomment>cli_class.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>write every attempt as CSV</source>
            <extracomment>cli_class.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>keep the marks there, for the next time</source>
            <extracomment>cli_class.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>put a finished attempt's file into the class's folder</source>
            <extracomment>cli_class.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>a file saved from a practice window</source>
            <extracomment>cli_class.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>--seed is {seed}; it must be from 0 to {most}</source>
            <extracomment>cli_class.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Most often:</source>
            <extracomment>cli_class.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Nothing from: {names}</source>
            <extracomment>cli_class.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Handed in as {file}.</source>
            <extracomment>cli_class.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>passed over: {why}</source>
            <extracomment>cli_class.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>weakest: {step}</source>
            <extracomment>cli_class.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>magview is in the desktop's menu, and opens files whose names end in {ending}. `magview desktop --remove` takes it away again. Put there, in {folder}:</source>
            <extracomment>cli_desktop.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>magview is taken off the desktop. Deleted, in {folder}:</source>
            <extracomment>cli_desktop.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>There was nothing to take away in {folder}.</source>
            <extracomment>cli_desktop.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Menu entries of this kind are for Linux desktops. Here, pin {program} to the task bar or Dock, and choose it under Open with for files of the program.</source>
            <extracomment>cli_desktop.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the guide, as one HTML file or as PDF; or what is in it</source>
            <extracomment>cli_guide.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>write it as HTML</source>
            <extracomment>cli_guide.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>write it as PDF</source>
            <extracomment>cli_guide.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>paper size; left out: a4</source>
            <extracomment>cli_guide.py, cli_paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>words to search for</source>
            <extracomment>cli_guide.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>no PDF: {reason} For HTML, which needs no Qt, use --html.</source>
            <extracomment>cli_guide.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>F1 in the window opens it; --html and --pdf write it to a file.</source>
            <extracomment>cli_guide.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>with --set: for whom; may be given again; left out: those of the set's file</source>
            <extracomment>cli_paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Wrote {file}: 1 page.</source>
            <extracomment>cli_paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>a worksheet of an exercise, or its answer key, as PDF</source>
            <extracomment>cli_paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>a file or a shipped one (gap-wrong), or:</source>
            <extracomment>cli_paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>a class's set instead, by its code or its file</source>
            <extracomment>cli_paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the code that draws the faults; left out: 0</source>
            <extracomment>cli_paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the answer key instead of the worksheet</source>
            <extracomment>cli_paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>print the exercise's hints, too</source>
            <extracomment>cli_paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>leave out the pictures whose parts are named</source>
            <extracomment>cli_paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>whose sheet it is; left out: a line for it</source>
            <extracomment>cli_paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>pictures of a magneto or installation as PDF</source>
            <extracomment>cli_paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>a file or a shipped magneto or installation</source>
            <extracomment>cli_paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>which; may be given again; left out: all there are</source>
            <extracomment>cli_paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>what stands beside the parts</source>
            <extracomment>cli_paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>add what there is to say of each part</source>
            <extracomment>cli_paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the file to write</source>
            <extracomment>cli_paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>give either an EXERCISE or --set with a class's code or file</source>
            <extracomment>cli_paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>--seed is “{seed}”; it must be a whole number from 0 on, of at most 16 digits</source>
            <extracomment>cli_paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>no PDF: {reason}</source>
            <extracomment>cli_paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Wrote {file}: {pages} pages.</source>
            <extracomment>cli_paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>“{name}” is neither a file nor one of the shipped: {known}</source>
            <extracomment>cli_paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>How sure the readings are: each may be out by the half-width of the instrument or habit it was taken with, all values within it equally likely. These were propagated linearly (JCGM 100:2008); the interval stated is the expanded uncertainty with its coverage factor k, and holds the true value 95 times in 100 unless stated otherwise. It does not allow for mistakes, nor for a magneto that differs from the file it was compared with.</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Breaker end as found</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Breaker end as left</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Coupling as found</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Coupling as left</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>open</source>
            <extracomment>job/document.py, ui/plot_lift.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>done</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>skipped</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{sheet} · magview {version} · treat the propeller as live</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>OUT OF LIMITS</source>
            <extracomment>job/document.py, job/readings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>NOT AS IT MUST BE</source>
            <extracomment>job/document.py, job/readings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>found out of limits</source>
            <extracomment>job/document.py, job/readings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Trial</source>
            <extracomment>job/document.py, ui/job_table.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Backplate</source>
            <extracomment>job/document.py, job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Gap at least</source>
            <extracomment>job/document.py, job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Gap at most</source>
            <extracomment>job/document.py, job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Opening from the E-gap</source>
            <extracomment>job/document.py, job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Opening from its place</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Contacts closed</source>
            <extracomment>job/document.py, ui/contact_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>backplate {angle}</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>contact screw {angle}</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Seen from the breaker end, rotation clockwise.</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Seen from the breaker end, rotation anticlockwise.</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>magneto flange {teeth}</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>disc {teeth}</source>
            <extracomment>job/document.py, ui/plan_box.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Aircraft</source>
            <extracomment>job/document.py, job/sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Manual</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Limits</source>
            <extracomment>job/document.py, job/sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Next check</source>
            <extracomment>job/document.py, job/sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Program</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>magview {version}</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>missing in {stage}</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Value</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Verdict ({limits})</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>How sure</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Best estimate ± expanded uncertainty</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Likely in limits</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>What matters most</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>opens {angle} against the E-gap</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>largest gap {gap}</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>fires {angle}</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Thick lines: the painted marks.</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Earlier sheets of this magneto</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Signature</source>
            <extracomment>job/document.py, job/sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Magneto job sheet</source>
            <extracomment>job/document.py, job/report.py, ui/print_pdf.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>INVENTED FOR DEMONSTRATION: no such aircraft, engine, magneto or person.</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>taken from: {source}</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>OUT OF LIMITS OR NOT AS IT MUST BE: {what}.</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>open: {stages}</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>NOT FINISHED: {words}.</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>CHANGED SINCE IT WAS SIGNED: the signature does not cover this sheet.</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Finished; as left, all readings that have limits are within them.</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Skipped: {reason}</source>
            <extracomment>job/document.py, ui/job_bars.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Note: {note}</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Done by: {by}</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Nothing entered.</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>As found and as left: breaker end, contacts just opening</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>As found and as left: coupling, seen from the drive end</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The signature covers the sheet with the digest {covers}.</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Cautions.</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{hours} h total</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>serial {serial}</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{hours} h since overhaul</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{hours} h of the magneto</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>no blade refused</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>No drawings: {error}</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Work done and released by</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Licence no.</source>
            <extracomment>job/document.py, job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Independent check by</source>
            <extracomment>job/document.py, job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>opening {limits}</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>gap {limits}</source>
            <extracomment>job/document.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the bench</source>
            <extracomment>job/feeds.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>file of the {name}</source>
            <extracomment>job/feeds.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>this gap cannot be had: {reason}</source>
            <extracomment>job/feeds.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>this magneto is not on an engine: there is no coupling to mark</source>
            <extracomment>job/feeds.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>with this setting the contacts never open and close, so there is nothing to plan</source>
            <extracomment>job/feeds.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>with the plug in and the contacts closed nothing tells of the lead: open the contacts</source>
            <extracomment>job/feeds.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The gap moved {change} in 100 h (± {spread}); after 100 h more, at {at} h, it should read {value}, between {low} and {high} 95 times in 100.</source>
            <extracomment>job/history.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The gap may leave its limits from {hours} h on.</source>
            <extracomment>job/history.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The opening moved {change} in 100 h (± {spread}); after 100 h more, at {at} h, it should read {value}, between {low} and {high} 95 times in 100.</source>
            <extracomment>job/history.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The opening may leave its limits from {hours} h on.</source>
            <extracomment>job/history.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Next check as entered: at {hours} h or {day}.</source>
            <extracomment>job/history.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Next check as entered: {day}.</source>
            <extracomment>job/history.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Next check as entered: at {hours} h.</source>
            <extracomment>job/history.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>this magneto</source>
            <extracomment>job/history.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Next check of {name}: due at {at} h of the magneto, in {hours} h.</source>
            <extracomment>job/history.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>magneto hours [h]</source>
            <extracomment>job/history.py, ui/job_drift_sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{title} over the magneto's hours. Open: as found; filled: as left; dashed: limits.</source>
            <extracomment>job/history.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{title} over the magneto's hours. Open: as found; filled: as left; dashed: limits; grey: where the next reading should lie, 95 times in 100.</source>
            <extracomment>job/history.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Hours</source>
            <extracomment>job/history.py, job/parts.py, ui/wear_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Gap found</source>
            <extracomment>job/history.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Gap left</source>
            <extracomment>job/history.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Opens found</source>
            <extracomment>job/history.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Opens left</source>
            <extracomment>job/history.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Fires found</source>
            <extracomment>job/history.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Fires left</source>
            <extracomment>job/history.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Largest gap [mm]</source>
            <extracomment>job/history.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Opening from the E-gap [rotor °]</source>
            <extracomment>job/history.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the magneto has no serial number on this sheet, so that no earlier one can be told to be its own</source>
            <extracomment>job/history.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{name}: holds {count} files; only the first {most} were looked at</source>
            <extracomment>job/history.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Look again at {when} h of the magneto, or sooner as the manual says.</source>
            <extracomment>job/history.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Next check of {name}: due at {at} h of the magneto, {hours} h ago.</source>
            <extracomment>job/history.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Next check of {name}: due on {day}, in {days} days.</source>
            <extracomment>job/history.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{name}: cannot be read: {reason}</source>
            <extracomment>job/history.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Next check of {name}: due on {day}, {days} days ago.</source>
            <extracomment>job/history.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{stage} is not done yet; missing: {lacks}</source>
            <extracomment>job/judge.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{stage} comes after {others}: do that first, or skip it with a reason</source>
            <extracomment>job/judge.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the lobes</source>
            <extracomment>job/judge.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>meter or lamp, switch off</source>
            <extracomment>job/judge.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>meter or lamp, switch on</source>
            <extracomment>job/judge.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>“{name}” is neither a file nor one of the shipped jobs: {known}</source>
            <extracomment>job/library.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Registration</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Type</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Serial no.</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Hours since overhaul</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Position</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Straightedge from the rim mark, either way</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Left should fire</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Right should fire</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Timing to the engine, either way</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Left against right, either way</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Largest drop on one magneto</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Largest difference of the drops</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Taken from</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>At magneto hours</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Or on</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Left fires</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Right fires</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Left error less right error</source>
            <extracomment>job/parts.py, job/readings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Propeller treated as live; its arc kept clear</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Ignition switch off, key out</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Switch lead grounded, to be proved at the next stage</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Plugs out: at least one from every cylinder</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Wheels chocked</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The maker's current manual and local rules at hand</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Manual and revision</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Meter on the lead, switch off: grounded</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Meter on the lead, switch on: grounded</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Lamp, plug in, switch off: grounded</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Lamp, plug in, switch on: grounded</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Lamp, plug out: grounded by the tab</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Disc at the stop, one way</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Disc at the stop, the other way</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Stroke of No. 1 before it fires</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Disc</source>
            <extracomment>job/parts.py, ui/plan_box.py, ui/practice_sight.py, ui/practice_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Opening from the E-gap, rotor</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Wear of the heel</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Read with</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Clean and dry</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Faces meet squarely</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Cam felt oiled as the manual says</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Faces dressed</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Contacts replaced</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Spring, at the contacts</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Backplate planned</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Contact screw planned</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Gap planned</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Read again after tightening</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Opening from its place, rotor</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Contacts closed, rotor</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Drive flange marked</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Disc marked</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Magneto flange marked</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Magneto marked on the engine's pad</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Magneto flange's mark from the disc's, with rotation</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Disc's mark from the drive flange's, with rotation</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Fires, as read</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Wanted</source>
            <extracomment>job/parts.py, practice/report.py, ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Planned: magneto flange on the disc</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Planned: disc on the drive flange</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Planned: fires</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Moved: magneto flange on the disc</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Moved: disc on the drive flange</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Fires, afterwards</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Lock screw and clamp screws tight</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Coupling pins and split pins fitted</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Nuts torqued as the manual says</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Safety wire fitted</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Plug leads connected, each to its cylinder</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Switch lead connected and proved again</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Tools, timing pins and stop counted back</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Engine speed</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Drop, running on left</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Drop, running on right</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Stops firing with the switch off, at idle</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Trials</source>
            <extracomment>job/parts.py, ui/plot_pane.py, ui/plot_trials.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Uncertainty</source>
            <extracomment>job/parts.py, ui/job_form.py, ui/plot_pane.py, ui/uncertainty_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Lobes</source>
            <extracomment>job/parts.py, practice/paper.py, ui/plot_lift.py, ui/plot_pane.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>gap_low_mm is {low}; it must not be above gap_high_mm, {high}</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>reason is missing; a stage can be skipped only with a reason</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>reason is given, but the stage is not skipped; write it as a note</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>gap_low_mm is {gap_low}; it must not be above gap_high_mm</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>“{text}” is not a date; write it as 2026-11-25</source>
            <extracomment>job/parts.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{label}: expanded uncertainty</source>
            <extracomment>job/readings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{label}: probability in limits</source>
            <extracomment>job/readings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>intake</source>
            <extracomment>job/readings.py, ui/job_kinds.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>compression</source>
            <extracomment>job/readings.py, ui/job_kinds.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>power</source>
            <extracomment>job/readings.py, ui/job_kinds.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>exhaust</source>
            <extracomment>job/readings.py, ui/job_kinds.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>in limits</source>
            <extracomment>job/readings.py, ui/plot_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>within ±{limit}</source>
            <extracomment>job/readings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{angle} late</source>
            <extracomment>job/readings.py, ui/plot_window.py, ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{angle} early</source>
            <extracomment>job/readings.py, ui/plot_window.py, ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{label}: best estimate</source>
            <extracomment>job/readings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{label}: coverage factor</source>
            <extracomment>job/readings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>as it must be</source>
            <extracomment>job/readings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>at most {limit}</source>
            <extracomment>job/readings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>at least {limit}</source>
            <extracomment>job/readings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{angle} before top dead centre</source>
            <extracomment>job/readings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{angle} after top dead centre</source>
            <extracomment>job/readings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Disc at true top dead centre</source>
            <extracomment>job/readings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Difference of the drops</source>
            <extracomment>job/readings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Trial {number}: {reading}</source>
            <extracomment>job/readings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Lobe {number}: {reading}</source>
            <extracomment>job/readings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Treat the propeller as live at all times: keep out of its arc, and let nobody else near it.</source>
            <extracomment>job/sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Ignition switch off; switch lead grounded and proved with a meter or lamp, not taken for granted.</source>
            <extracomment>job/sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Plugs out: at least one from every cylinder.</source>
            <extracomment>job/sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Wheels chocked; the aircraft cannot move.</source>
            <extracomment>job/sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The manufacturer's current manual and local rules govern, not this sheet.</source>
            <extracomment>job/sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Work on a certified aircraft is done or released by a licensed person.</source>
            <extracomment>job/sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>magview is a training and planning aid; the magnetos it ships are invented.</source>
            <extracomment>job/sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>this sheet</source>
            <extracomment>job/sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Invented for demonstration</source>
            <extracomment>job/sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Cautions and making safe</source>
            <extracomment>job/sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Switch-lead proof</source>
            <extracomment>job/sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Top dead centre and stroke</source>
            <extracomment>job/sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Condition of the contacts</source>
            <extracomment>job/sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Internal timing, as left</source>
            <extracomment>job/sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Every lobe</source>
            <extracomment>job/sheet.py, ui/job_sources.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Marks before removal</source>
            <extracomment>job/sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Tooth shift</source>
            <extracomment>job/sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Synchronising</source>
            <extracomment>job/sheet.py, ui/job_sources.py, ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Closing checks</source>
            <extracomment>job/sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Ground run</source>
            <extracomment>job/sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>“{name}” is no stage of a job; stages are {known}</source>
            <extracomment>job/sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>“{part}” is no part of a job</source>
            <extracomment>job/sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>a signature takes a name and a date</source>
            <extracomment>job/sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>done is {done}; it must be at most the number of steps, {count}</source>
            <extracomment>job/sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>magneto_file and installation are both given; the installation has a magneto of its own</source>
            <extracomment>job/sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{error}. What you entered is kept here and tried again with your next step; a copy is in {folder}</source>
            <extracomment>job/store.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{error}. What you entered is kept here and tried again with your next step</source>
            <extracomment>job/store.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{error}. What you entered is kept here; a copy is in {folder}</source>
            <extracomment>job/store.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{error}. What you entered is kept here</source>
            <extracomment>job/store.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{name} may only be read; save it under another name to change it</source>
            <extracomment>job/store.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{name}: is there already; open it, or choose another name</source>
            <extracomment>job/store.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{name}: is there already; choose another name</source>
            <extracomment>job/store.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{name} is open in another window or program: it can be read here, and changed there; save it under another name to change it here</source>
            <extracomment>job/store.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{name} can only be read: its folder takes no files ({reason}); save it elsewhere to change it</source>
            <extracomment>job/store.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{name}: cannot be written: its folder or drive is gone; put it back, or save elsewhere</source>
            <extracomment>job/store.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{name}: was changed by another program and is left as it is; reload it, or save under another name</source>
            <extracomment>job/store.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>this sheet is larger than {most} MB, the most that is read again; shorten it</source>
            <extracomment>job/store.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{name}: is no name of a file</source>
            <extracomment>job/store.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>this step of the history is damaged; it cannot be undone or done again</source>
            <extracomment>job/store.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{name}: cannot be written; choose another name</source>
            <extracomment>job/store.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{name} has shape {shape}; an axis of a map is one-dimensional</source>
            <extracomment>physics/adjustment_map.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{name} holds a value that is not finite</source>
            <extracomment>physics/adjustment_map.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The trials ask for {scale} times the file's lift: check that this is the file for this cam.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The trials ask for {scale} times the file's rise: check that this is the file for this cam.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The gap of trial {behind} is smaller than that of trial {ahead}, though its plate stands further with rotation; openings off the mark but within the tolerance explain it: set them closer to the mark.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{mm} mm ({inches} in)</source>
            <extracomment>physics/advice.py, physics/setting.py, practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{low} to {high} mm ({low_in} to {high_in} in)</source>
            <extracomment>physics/advice.py, practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Done: the gap, {span}, is in limits.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{gap}; {probability} times in 100 it will be {span}</source>
            <extracomment>physics/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Start with the plate at {plate}° and the contacts set to open at the E-gap: by the file the gap should be {expected}.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The gap cannot be brought into limits within the slot ({low}° to {high}°): that would take about {aim}°. The nearest is the end of the slot at {plate}°, where the gap should be {expected}.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Leave the plate at {plate}° and set the opening again, closer to the mark: an opening off the mark but within the tolerance explains this gap, which should be {expected}.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Trials {first} and {second} stood at the same plate and give different gaps; openings off the mark but within the tolerance explain it: set them closer to the mark.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The gap of trial {behind} is smaller than that of trial {ahead}, though its plate stands further with rotation, more than openings within the tolerance explain: check that the clamping screws hold, that lobe 1 was used, and which blades were, and repeat one of the two.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>above {length}</source>
            <extracomment>physics/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the limits are {low} to {high} mm; they must be above 0, the low one first</source>
            <extracomment>physics/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the wanted gap is {wanted} mm; the limits are {low} to {high} mm</source>
            <extracomment>physics/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Turn the plate {turn}° with cam rotation, to {plate}°: the gap should be {expected}.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Turn the plate {turn}° against cam rotation, to {plate}°: the gap should be {expected}.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The aim is about {aim}°, but that is too far from what was tried to be sure of.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The gap, {span}, may be in limits, but the blades cannot tell: the plate is right where it is, so try finer blades, or set the opening again, closer to the mark.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Leave the plate at the end of the slot and set the opening again, closer to the mark: an opening off the mark but within the tolerance explains this gap, which should be {expected}.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Trial {trial} does not fit the others and is left out: its gap is larger than any opening within the tolerance explains; check it.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Trial {trial} does not fit the others and is left out: its gap is smaller than any opening within the tolerance explains; check it.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Trials {first} and {second} stood at the same plate and give different gaps, more than openings within the tolerance explain: check that the clamping screws hold, that lobe 1 was used, and which blades were, and repeat one of the two.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The trials contradict each other; clear that up before going on.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>It is not what the other trials lead to expect, so try the blades once more.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>That is the end of the slot; the gap may just come into limits there.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{hidden} mm of lift</source>
            <extracomment>physics/breaker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>a part of it altogether</source>
            <extracomment>physics/breaker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>breaker.heel_radius_mm: the heel cannot follow the cam's flank, which is too hollow for its radius or too steep for its arm: it misses {missed}, where at most {most} mm is allowed; a smaller heel, a longer rise_deg or fall_deg, or another law would fit</source>
            <extracomment>physics/breaker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>closed_deg is {closed}; it must be 0 or more</source>
            <extracomment>physics/coil.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{name} has no electrical values</source>
            <extracomment>physics/coil.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>readings have shape {shape}; those of one setting are needed</source>
            <extracomment>physics/coil.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>poles is {poles}; it must be an even number from 2 on</source>
            <extracomment>physics/coil.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>speed_rpm is {speed}; it must be above 0 and at most {most}</source>
            <extracomment>physics/coil.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>an angle is infinite</source>
            <extracomment>physics/coil.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the nearest this coupling comes is {residual}° of crank late, outside the tolerance of {tolerance}°</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>rotor_turns_per_crank_turn is {given}; {cylinders} cylinders and {poles} poles need {cylinders}/{twice}, which is {needed}</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the nearest this coupling comes is {residual}° of crank early, outside the tolerance of {tolerance}°</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the list of moves must be allowed at least 1 move, not {most}</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the reading is {value}° before top dead centre; it must lie within ±3600°</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the wanted timing is {value}° before top dead centre; it must lie within ±3600°</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the rotor turns {ratio} times per crank turn; it must be 0.05 to 20 times</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the coupling has {count} teeth at the magneto; it must have 1 to {most}</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the coupling has {count} teeth at the drive; it must have 1 to {most}</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{cylinders} cylinders and {poles} poles have no speed ratio; both must be at least 1</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the left magneto's reading is {value}; it must be a number of degrees</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the right magneto's reading is {value}; it must be a number of degrees</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the knots of a rising curve must increase in x and in y</source>
            <extracomment>physics/curve.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>firing_order puts cylinder {cylinder} {away}° from where its piston is at the top; with all rods on one crank pin it cannot fire in that place</source>
            <extracomment>physics/engine.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>there is no cylinder {cylinder}; the engine has 1 to {cylinders}</source>
            <extracomment>physics/engine.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>both stop readings are {first}°; for the second the crank is turned to the stop the other way</source>
            <extracomment>physics/engine.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>stop readings of {first}° and {second}° have no middle that can be told from its opposite; they must be numbers, and not 180° apart</source>
            <extracomment>physics/engine.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>there are {count} openings; there must be one for each of the {lobes} lobes</source>
            <extracomment>physics/engine.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the cam gives {sparks} sparks in two crank turns; the engine needs {n}</source>
            <extracomment>physics/engine.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the timing is {btdc}° before top dead centre; it must lie within ±90°</source>
            <extracomment>physics/engine.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the piston of cylinder {cylinder} does not reach {wanted} mm below top dead centre</source>
            <extracomment>physics/engine.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the scaled magneto</source>
            <extracomment>physics/flank.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the scaled cam cannot be: {reason}</source>
            <extracomment>physics/flank.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Fitted from {trials}: lift × {lift_scale} ± {lift_spread}, rise × {rise_scale} ± {rise_spread}, index {index}° ± {index_spread}° (95 in 100). Law of motion, dwell and fall are the first file's.</source>
            <extracomment>physics/flank_fit.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>1 trial</source>
            <extracomment>physics/flank_fit.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{count} trials</source>
            <extracomment>physics/flank_fit.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{name}, fitted from {trials}</source>
            <extracomment>physics/flank_fit.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{count} trials are given; at most {most} are used</source>
            <extracomment>physics/flank_fit.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the probability is {probability}; it must lie between 0 and 1</source>
            <extracomment>physics/flank_fit.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>fitted from {trials}</source>
            <extracomment>physics/flank_fit.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>a cam nothing like the file's</source>
            <extracomment>physics/flank_fit.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>an inspection at {hours} h; hours lie between 0 and {most}</source>
            <extracomment>physics/inspection.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the gap is {value} mm; it must lie between 0 and 100</source>
            <extracomment>physics/inspection.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the gap's half-width is {value} mm; it must lie between 0 and 100</source>
            <extracomment>physics/inspection.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the opening's error is {value}°; it must lie within 90°</source>
            <extracomment>physics/inspection.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the opening's half-width is {value}°; it must lie within 90°</source>
            <extracomment>physics/inspection.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>common practice</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>resolution: read to the nearest division, half of one to each side</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>resolution: between the blade that passes and the next</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>straightedge held by hand</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>straightedge clamped to the cam</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>rule to 1 mm</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>rule to 1/32 in</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>rule to 0.5 mm</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>rule to 1/64 in</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>magnifier with a scale to 0.1 mm</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>blades in steps of 0.05 mm</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>blades in steps of 0.001 in</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>blades in steps of 0.0005 in</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>blades in steps of 0.01 mm</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>drag judged by one blade</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>drag compared with the next blade's</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>strip of thin paper, just free</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>ohmmeter across the contacts</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>timing lamp</source>
            <extracomment>physics/instruments.py, ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>rotor turned by hand</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>rotor turned with a bar, against a stop</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>propeller turned by hand</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>propeller tapped round</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>disc to 1°</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>disc to 0.5°</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>angle indicator to 0.1°</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turned to and fro</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>anywhere within the play</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>always led in with rotation</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the play is taken up</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>read before tightening</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>either way, as the file</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>read again after tightening</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>as found</source>
            <extracomment>physics/instruments.py, ui/drive_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the table's lift comes to {lift} mm at the contacts, and {least} to {most} mm is allowed: are its unit and the kind of reading right?</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the readings stand high off the lobe and fall on it: say that the dial falls with lift</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the table shows {count} tops, near {places}; it must show one lobe, from base circle to base circle</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the readings scatter by {noise} mm about any smooth curve, {share} % of the lift; at most {most} % is taken for a lobe</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the table covers one side of the lobe only; it must go over the top and down again</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>neither end of the table lies on the base circle; measure from base circle to base circle</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The table begins on the flank; its foot is drawn, not measured.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The table ends on the flank; its foot is drawn, not measured.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The base circle reads {difference} mm more after the lobe than before it (the dial slipped, or the cam runs out); each flank was taken from its own side.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The base circle reads {difference} mm more before the lobe than after it (the dial slipped, or the cam runs out); each flank was taken from its own side.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Only {count} rows lie on the rise; between them it is a guess.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Only {count} rows lie on the fall; between them it is a guess.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The readings scatter by {noise} mm about the curve, {share} % of the lift.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Below {lift} mm of lift the contacts were closed; the foot is drawn, not measured.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The base circle before the lobe is uneven by {uneven} mm.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The base circle after the lobe is uneven by {uneven} mm.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>table of the lift</source>
            <extracomment>physics/measured.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the measured lift</source>
            <extracomment>physics/measured.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The table has {columns} columns; two of them were used.</source>
            <extracomment>physics/measured.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Turned both ways, the readings lie {backlash}° of cam apart, as backlash makes them; the middle of the two was taken.</source>
            <extracomment>physics/measured.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{outliers} of {count} rows, far off their neighbours, were left out.</source>
            <extracomment>physics/measured.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the table tells the lift at {places} different angles; it must be at {least} or more, better at 20</source>
            <extracomment>physics/measured.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the cam's turns per rotor turn is {value}; it must be 0.01 to 100</source>
            <extracomment>physics/measured.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the contact arm over the heel arm is {value}; it must be 0.01 to 100</source>
            <extracomment>physics/measured.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the stop is {stop} mm; it must be 0 to {most} mm</source>
            <extracomment>physics/measured.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the measured lift: {reason}</source>
            <extracomment>physics/measured.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>no lobe can be drawn through the table: {reason}</source>
            <extracomment>physics/measured.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{count} instruments are given for {role}; there must be one</source>
            <extracomment>physics/measurement.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>nothing was read with an instrument for {role}</source>
            <extracomment>physics/measurement.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>linear and Monte Carlo agree: the ends of their intervals differ by {worst} at most, where {tolerance} is allowed</source>
            <extracomment>physics/monte_carlo.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>linear and Monte Carlo agree: the ends of their intervals differ by {worst} at most, where {tolerance} is allowed; more trials are needed to be sure</source>
            <extracomment>physics/monte_carlo.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>linear and Monte Carlo disagree: the ends of their intervals differ by {worst} at most, where {tolerance} is allowed</source>
            <extracomment>physics/monte_carlo.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>linear and Monte Carlo disagree: the ends of their intervals differ by {worst} at most, where {tolerance} is allowed; more trials are needed to be sure</source>
            <extracomment>physics/monte_carlo.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>a Monte Carlo of {trials} trials tells nothing; it takes at least 1</source>
            <extracomment>physics/monte_carlo.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{count} values are too few for an interval of probability {probability}</source>
            <extracomment>physics/monte_carlo.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>a standard uncertainty of {uncertainty} has no digits</source>
            <extracomment>physics/monte_carlo.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>intervals of {probability} and {other} cannot be compared</source>
            <extracomment>physics/monte_carlo.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the backplate would stand at {value}°, {beyond}° beyond the end of its slot ({low}° to {high}°)</source>
            <extracomment>physics/setting.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the contact screw would stand at {value}°, {beyond}° beyond the end of its travel ({low}° to {high}°)</source>
            <extracomment>physics/setting.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the nearest gap that can be had is {gap}</source>
            <extracomment>physics/setting.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the gap is {gap} mm; it must be 0 or more</source>
            <extracomment>physics/setting.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>lobe 1 lifts the contacts {both} in all, so they would never close</source>
            <extracomment>physics/setting.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>no gap within reach opens at the E-gap</source>
            <extracomment>physics/setting.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the nearest gap that can be had is {gap}, with the backplate at the end of its slot</source>
            <extracomment>physics/setting.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the nearest gap that can be had is {gap}, with the contact screw at the end of its travel</source>
            <extracomment>physics/setting.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the contact screw's eccentric does not reach that far</source>
            <extracomment>physics/setting.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>disc, left magneto</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turning the crank, left</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>gap when it shows, left</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>play not taken up, left</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>left magneto fires</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>disc, right magneto</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turning the crank, right</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>gap when it shows, right</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>play not taken up, right</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>right magneto fires</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>straightedge from the mark</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>straightedge along the step</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>blade</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>drag of the blade</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>gap when it shows</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turning the rotor</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>play not taken up</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>creep of the screw</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>a gap of {gap} mm cannot be: lobe 1 lifts the contacts {top} mm, and below {parting} mm nothing would show that they part</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>a gap of {gap} mm cannot be: lobe 1 lifts the contacts {top} mm</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>neither magneto was read; at least one must be</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>disc at the first stop</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>disc at the second stop</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>left less right, beyond the {design}° wanted</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>left less right</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>as given</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>opening from the E-gap</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>widest gap</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the radius of the slot is {value}; it must be above 0</source>
            <extracomment>physics/trials.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the angle between two marks is {value}; it must be above 0</source>
            <extracomment>physics/trials.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the plate stands at {backplate}°; it must lie within ±3600°</source>
            <extracomment>physics/trials.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the opening is {opening_error}° off; it must lie within ±45°</source>
            <extracomment>physics/trials.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the gap is given as {low} to {high} mm; it must be above 0, within 1000 mm, low end first</source>
            <extracomment>physics/trials.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>a gap of 0 mm or more says nothing; give the blade that passes or the one that does not</source>
            <extracomment>physics/trials.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the gap is known to within {within} mm; it must be 0 or more</source>
            <extracomment>physics/trials.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the errors of a trial must be numbers, 0 or more</source>
            <extracomment>physics/trials.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>doubt in lift and rise must be above 0 and at most 1, in the index at most 90°</source>
            <extracomment>physics/trials.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>no coverage factor for a probability of {probability} and {dof} degrees of freedom</source>
            <extracomment>physics/uncertainty.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the second-order terms leave no variance: the expansion does not hold for this model</source>
            <extracomment>physics/uncertainty.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{name}: {estimate} ± {spread} is no estimate with a spread</source>
            <extracomment>physics/uncertainty.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{name}: {dof} degrees of freedom; there must be at least 1</source>
            <extracomment>physics/uncertainty.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{name}: a {distribution} distribution has no half-width</source>
            <extracomment>physics/uncertainty.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{name}: a t distribution needs its degrees of freedom</source>
            <extracomment>physics/uncertainty.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>hours since the setting must be 0 or more, and finite</source>
            <extracomment>physics/wear.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>after {hours} h the heel would have lost {heel} mm and the pip be {pip} mm high</source>
            <extracomment>physics/wear.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>a rate takes inspections at two different hours at least</source>
            <extracomment>physics/wear.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>heel wear is {rate} mm per 100 h; it must be 0 or more</source>
            <extracomment>physics/wear.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the pip's growth is {rate} mm per 100 h; it must be 0 or more</source>
            <extracomment>physics/wear.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>breaker.heel_arm_mm is missing in the magneto's file: it tells what heel wear does</source>
            <extracomment>physics/wear.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>that is not to be had in practice: here hands and instruments do the work</source>
            <extracomment>practice/actions.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the coupling is moved one tooth at a time, at one face</source>
            <extracomment>practice/actions.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>On {name}, renew the lead, and prove it again.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>On {name}, renew the insulation, and prove it again.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>On {name}, renew the tab, and prove it again.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Stop in No. 1, met gently from both sides; half-way between the two readings is top dead centre.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>On {name}: paint marks, nuts off; magneto flange on the disc {flange}; disc on the drive flange {disc}; nuts on. {residual}° remain. Lamp and disc, approached with rotation.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Lay the straightedge on, look square over it, turn to the mark with rotation, and hold.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Close up: screws, nuts, plug in, switch off; and look once more at what tightening can shift.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Make it safe: {words}.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>On {name}, prove the lead: plug pulled, meter with the switch off and on, lamp for tab and coil.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>On {name}, dress the contacts before measuring.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>On {name}, no setting puts gap and opening right at once.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>On {name}, slacken the clamp screws, {move}, tighten; lamp and straightedge.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Turn the disc {error}° later, to read zero there. Stop out.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Turn the disc {error}° earlier, to read zero there. Stop out.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>On {name}: paint marks, plug out, nuts off, lift it off.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>No. 1 on compression at {wanted}° before top dead centre, the rotor where the contacts open with the finger at No. 1; mesh to the nearest tooth.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>On {name}, no tooth needs to move; lamp and disc with rotation say so.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>On {name}, slacken the lock screw, {turn}, tighten (tightening carries it {creep}° on); blades on both limits.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>On {name}, slacken the lock screw, {turn}, tighten; blades on both limits.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>chocks</source>
            <extracomment>practice/advice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>spark plugs out</source>
            <extracomment>practice/advice.py, practice/seen.py, ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>there is no piston stop on the tray</source>
            <extracomment>practice/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the attempt has been handed in</source>
            <extracomment>practice/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>there is no meter on the tray</source>
            <extracomment>practice/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the stop goes into No. 1's plug hole: take the spark plugs out first</source>
            <extracomment>practice/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the piston of No. 1 stands too high for the stop: turn the propeller on first</source>
            <extracomment>practice/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>there is no engine here</source>
            <extracomment>practice/apply.py, practice/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the piston stop is in No. 1's plug hole: take it out first</source>
            <extracomment>practice/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the magneto is off the engine</source>
            <extracomment>practice/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>there is no {side} magneto here</source>
            <extracomment>practice/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the magneto is off the engine already</source>
            <extracomment>practice/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the nuts hold the magneto: take them off first</source>
            <extracomment>practice/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the switch lead holds the magneto: pull its plug first</source>
            <extracomment>practice/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the magneto is on the engine already</source>
            <extracomment>practice/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the coupling is moved one tooth at a time, at its magneto or its disc face</source>
            <extracomment>practice/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the coupling is closed: take the nuts off and draw the magneto back first</source>
            <extracomment>practice/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the pin holds the rotor: take it out to turn the flange</source>
            <extracomment>practice/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>“{kind}” is no kind of reading</source>
            <extracomment>practice/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the notebook is full: it holds {most} lines</source>
            <extracomment>practice/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>a note is one line of at most {most} characters</source>
            <extracomment>practice/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>a finding on the switch lead is sound, broken, shorted or tab</source>
            <extracomment>practice/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>a finding in words takes no number</source>
            <extracomment>practice/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>a reading needs its number</source>
            <extracomment>practice/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>there is no lobe {lobe}; the cam has {lobes}</source>
            <extracomment>practice/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the backplate is at the end of its slot</source>
            <extracomment>practice/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the contact screw is at the end of its travel</source>
            <extracomment>practice/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>what can be renewed is the lead, the tab or the insulation</source>
            <extracomment>practice/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>there is no straightedge on the tray</source>
            <extracomment>practice/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>there is no timing lamp on the tray</source>
            <extracomment>practice/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>there is no {kind} set of blades on the tray</source>
            <extracomment>practice/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>there is no crank disc on the tray</source>
            <extracomment>practice/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>no marks were painted to refit it by: it can only go on as its rotor stands</source>
            <extracomment>practice/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>a part's name is one line of at most {most} characters</source>
            <extracomment>practice/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the pin holds the rotor</source>
            <extracomment>practice/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>that is the {part}</source>
            <extracomment>practice/apply.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{where}.{field} is {found}; it must be true or false</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{where}.{field} is {found}; it must be a whole number</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{where}.{field} is {found}; it must be text</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{where}.{field} is {found}; it must be a list</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{source}: holds no attempt; it must be one JSON object in braces</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{source}: format is {found}; it must be "{wanted}"</source>
            <extracomment>practice/attempt.py, spec/files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{source}: {name} is missing</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{source}: {name} is not a known name</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{source}: events must be a list of at most {most}</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{where} must be an object in braces</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{where}.at_s is {found}; it must be a number of seconds from 0 on</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{where}.do is {found}, which is no act this program knows</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{where}.{field} is {found}; it must be {allowed}</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{where}.{field} is {found}; it must be a number</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{where}.{field} is {found}; it must be what the act takes</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the time is {at_s}; it must be a number of seconds</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the record is full at {most} acts: hand in</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{source}: format is {found} (a newer magview wrote it; it is left as it was); it must be "{wanted}"</source>
            <extracomment>practice/attempt.py, spec/files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{source}: {name} is {found}; it must be text of at most {most} characters</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{source}: events[{i}].at_s is {at_s}; time does not run backwards</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{where}.{field} is not a known name of {name}</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{where}.{field} is missing</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Done with version {version}, shown with {here}: what followed from an act may differ.</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{mm} mm past</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{mm} mm short</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>off the engine</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{fires}° (the wrong stroke)</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the attempt has not been handed in: until then nothing true is shown</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Opening from the mark, {name}</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>within {tolerance} mm</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Largest gap, {name}</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Pip on the contacts, {name}</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Lock screw carries the contact screw along, {name}</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>to be allowed for</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Switch lead, {name}</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>sound</source>
            <extracomment>practice/debrief.py, practice/words.py, ui/class_editor_rows.py, ui/practice_notebook.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Disc at top dead centre of No. 1</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Fires before top dead centre, {name}</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{wanted}° within {allowed}°</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Play in the coupling, {name}</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>taken up with rotation</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the lock screw was tightened</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the clamp screws were tightened</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the contacts were dressed</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the backplate was turned</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the contact screw was turned</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>took the magneto off with no marks across its coupling</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turned the propeller with a live magneto and the spark plugs in</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>a tooth was moved</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the magneto was refitted</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turned the propeller, plugs in, without proving that the switch grounds</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>rotor degrees, positive = opens late</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>millimetres, positive = too wide; it opens at the E-gap all the same</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>degrees the plate is off, positive with cam rotation</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>degrees the contact screw goes along with its lock screw, positive = contacts closer</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>millimetres one lobe lifts less</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>millimetres of pip on the contacts</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>rotor degrees of play in the coupling</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>whole teeth at the magneto flange, positive = fires early</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>whole teeth at the drive flange, positive = fires early</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>whole vernier steps, positive = fires early</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>crank degrees the disc reads at top dead centre</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>size is [{low}, {high}]; it must run upwards from 0 or more (way gives the sign)</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>among is for kind lead, which needs it: a list of sound, broken, shorted, tab</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>way of {kind} must be left out or "plus"</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>reading is for goal "reading", which needs it</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>within is for a reading in numbers, which needs it</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>magneto or installation: an exercise has one of the two</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>both_sides needs an installation with two magnetos</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>faults[{i}]</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>goals[{i}]</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>goals: synchronised needs both_sides</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>faults has {twice} twice; give each kind once for a magneto</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>size of {kind} ends at {high}; it must be above 0 and at most {most} ({unit})</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>size of {kind} is [{low}, {high}]; it must be whole numbers</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>size is not for {kind}, which is there or is not</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{what}.side is {side}, a magneto this exercise does not have</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>faults[{i}].lobe is {lobe}; the cam has {lobes}</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>faults[{i}].kind is {kind}, which needs an installation</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>goals[{i}] is {goal} of an engine, which needs an installation</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the seed is {seed}; it must be a whole number from 0 to {most}</source>
            <extracomment>practice/faults.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>lobe-low takes {lobe_low} mm off a lobe that lifts {top_lift} mm</source>
            <extracomment>practice/faults.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{name} cannot be set for a gap of {wanted} mm: {reason}</source>
            <extracomment>practice/faults.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>blades on both sides of the limits were tried on every lobe after the last change</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>blades on both sides of the limits were not tried on every lobe after {why}</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>blades on both sides of the limits were not tried on every lobe</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>blades on both sides of the limits were tried on a lobe after the last change</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>blades on both sides of the limits were not tried on a lobe after {why}</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>blades on both sides of the limits were not tried on a lobe</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{low} to {high} over the lobes</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>fires {error}° of crank early, {allowed}° are allowed</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>fires {error}° of crank early, {allowed}° are allowed: on the wrong stroke</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>fires {error}° of crank late, {allowed}° are allowed</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>fires {error}° of crank late, {allowed}° are allowed: on the wrong stroke</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{magneto}: coupling marked before it was taken apart</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{magneto}: closed up</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the edge stands {offset} mm from the mark, {allowed} mm are allowed</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the rotor stands near no mark</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the straightedge lay on it, looked at square</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the straightedge was not looked at square there</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Rotor at the E-gap</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>opens {worst} mm from the mark, {allowed} mm are allowed</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{magneto}: contacts open at the mark</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The largest gap is {span}, limits {low} to {high}; {how}.</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The contacts are clean</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A pip of {pip} stands on the contacts</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>they were looked at</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>they were not looked at as they are now</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Contacts clean and flat</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the piston met its stop from both sides</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the stop was not met from both sides</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Crank disc at zero</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The disc reads {error}° at top dead centre, {allowed}° are allowed; {how}.</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the magneto is off the engine, or never opens</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{magneto}: timed to the engine</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>both were read with lamp and disc after the last change</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>not both were read after the last change</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>left and right are {apart}° apart, {allowed}° are allowed</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>one does not fire</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Left and right together</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the meter with the switch off and on</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>proved by {checks}</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>not proved by {checks}</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The switch lead is sound</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{magneto}: switch lead sound</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Marks were painted first.</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>It was taken apart with no marks painted across it.</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>lock screw tight</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>clamp screws tight</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Everything is closed up.</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Not so: {missing}.</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>checked by lamp and straightedge, looked at square, after the last change</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>checked only with the eye to one side of the straightedge</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>never checked by lamp and straightedge, looked at square</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{magneto}: largest gap within limits on every lobe</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{magneto}: largest gap within limits</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the disc's zero was never found by the stop from both sides</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>checked by lamp and disc, approached with rotation, after the last change</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>checked only approached against rotation, with the play on the wrong side</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>never checked by lamp and disc, approached with rotation</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the lamp lighting</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the lamp staying dark with the plug out</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The coupling was not taken apart and is marked.</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The coupling was not taken apart, and not marked either.</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>magneto on the engine</source>
            <extracomment>practice/goals.py, practice/seen.py, ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>nuts tight</source>
            <extracomment>practice/goals.py, practice/seen.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>pin out</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>paper out</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>plug in</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>piston stop out</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>not checked again after {why}</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the primary is shorted inside</source>
            <extracomment>practice/goals.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{angle}° before the disc's zero</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{angle}° after the disc's zero</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>nearest to No. {cylinder}</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>not connected</source>
            <extracomment>practice/instruments.py, ui/debrief_view.py, ui/practice_sight.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>not laid on</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>no mark near the edge</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>in line with the mark (mark {mark})</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>in line with the mark</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{size} {unit} past the mark (mark {mark})</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{size} {unit} past the mark</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{size} {unit} short of the mark (mark {mark})</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{size} {unit} short of the mark</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>“{kind}” is not a set of blades; there are {known}</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{blades} blades cannot be held together; take 1 to {most}</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>no-go</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>drag</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>go</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>a pip stands on one contact, a pit in the other</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>no disc on the crank</source>
            <extracomment>practice/instruments.py, ui/debrief_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>with the plug in, the meter sees lead and coil at once: pull the plug first</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>no distributor on the bench</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the spark plug is in its hole: take the plugs out first</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>pressure: No. 1 is on compression</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>no pressure</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>light</source>
            <extracomment>practice/instruments.py, ui/practice_sight.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>dark</source>
            <extracomment>practice/instruments.py, ui/practice_sight.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the {kind} set has no blade {blade} left to take</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>a lesson is not handed in</source>
            <extracomment>practice/lesson.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>what is {what}; for {that} it must be {known}</source>
            <extracomment>practice/lesson.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{name} is missing, which {that} needs</source>
            <extracomment>practice/lesson.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{name} is not for {that}</source>
            <extracomment>practice/lesson.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the lamp light</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the lamp dark</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the lamp not connected</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the rotor at neutral</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the rotor at full register</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the rotor at the E-gap</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the contacts widest open</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the contact screw turned {angle}° closer or more</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the contact screw turned {angle}° wider or more</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the backplate turned {angle}° with rotation or more</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the backplate turned {angle}° against rotation or more</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the rotor to be let go</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the lamp across the contacts</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the lamp taken off</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the lamp to go from dark to light while you turn with rotation</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the straightedge laid on and looked at square</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the eye away from square</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the lock screw tight</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the lock screw slack</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the clamp screws tight</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the clamp screws slack</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the contacts to open at the mark</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the largest gap within its limits</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the switch on</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the switch off</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the plug pulled out</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the plug in</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>chocks at the wheels</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the chocks away</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the spark plugs out</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the spark plugs in</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the lead proved: meter, plug out, switch off</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the piston stop in</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the piston stop out</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the disc to read zero at top dead centre</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>marks painted across the coupling</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the nuts tight</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the nuts off</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the magneto on the engine</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the magneto off the engine</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>it to fire where it should</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>That is the {part}. The step waits for {wanted}.</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>That undid {undone}. The step waits for {wanted}.</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Not yet. The step waits for {wanted}.</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the {part} to be pointed at</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>this to be done: {act}</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the answer “{answer}”</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the crank {value}° before top dead centre</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>a line in the notebook: {act}</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the piston to meet the stop with rotation</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the piston to meet the stop against rotation</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>“{name}” is neither a file nor one of the shipped exercises: {known}</source>
            <extracomment>practice/library.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>“{name}” is neither a file nor one of the shipped lessons: {known}</source>
            <extracomment>practice/library.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{file}: {field} is “{given}”; it must be a file's path or one of {known}</source>
            <extracomment>practice/library.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>handed in with the lock screw slack</source>
            <extracomment>practice/marking.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>handed in with the clamp screws slack</source>
            <extracomment>practice/marking.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>handed in with the nuts slack</source>
            <extracomment>practice/marking.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>handed in with the lock screw and the clamp screws slack</source>
            <extracomment>practice/marking.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>handed in with the lock screw and the nuts slack</source>
            <extracomment>practice/marking.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>handed in with the clamp screws and the nuts slack</source>
            <extracomment>practice/marking.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>handed in with the lock screw and the clamp screws and the nuts slack</source>
            <extracomment>practice/marking.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Not passed: {danger}.</source>
            <extracomment>practice/marking.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Not passed: {percent} % of the marks, and {pass_percent} % are needed.</source>
            <extracomment>practice/marking.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Passed with {percent} %.</source>
            <extracomment>practice/marking.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the rotor is held at the E-gap, the straightedge on it and looked at square</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the contacts open at the mark, seen by lamp and straightedge</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the largest gap is within its limits, measured with blades</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the contacts are clean and flat, and were looked at</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the disc reads zero at No. 1's top dead centre, found from both sides</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>it fires where it should, read by lamp and disc with rotation</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>both magnetos fire together within what is allowed</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the switch lead is sound and proved</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the coupling was marked before it was taken apart</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>every screw and nut is tight, the plug in, the switch off</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the rotor is held at the E-gap, the straightedge on it and looked at square, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the contacts open at the mark, seen by lamp and straightedge, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the largest gap is within its limits, measured with blades, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the contacts are clean and flat, and were looked at, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the disc reads zero at No. 1's top dead centre, found from both sides, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>it fires where it should, read by lamp and disc with rotation, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>both magnetos fire together within what is allowed, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the switch lead is sound and proved, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the coupling was marked before it was taken apart, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>every screw and nut is tight, the plug in, the switch off, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>written down: how far past the mark the contacts open</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>written down: the largest gap</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>written down: where it fires before top dead centre</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>written down: what the disc reads at top dead centre</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>written down: what the switch lead suffers from</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>eccentric, {size} mm throw; clockwise brings the contacts closer</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>eccentric, {size} mm throw; anticlockwise brings the contacts closer</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>threaded, {size} mm a turn; clockwise brings the contacts closer</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>threaded, {size} mm a turn; anticlockwise brings the contacts closer</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{goal}, left magneto</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{goal}, right magneto</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{angle}° (left)</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{angle}° (right)</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{reading}, within {within}</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{e_gap}° of rotor past neutral</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Rim mark</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>within {tolerance} mm, at {radius} mm radius</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{name}; No. 1 fires {fires} before top dead centre</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Allowed</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{tolerance}° of crank</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Coupling</source>
            <extracomment>practice/paper.py, ui/plot_coupling.py, ui/plot_pane.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{magneto_teeth} teeth at the magneto, {drive_teeth} at the drive</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Rotor</source>
            <extracomment>practice/paper.py, ui/lift_dialog.py, ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{turns} turns a turn of the crank</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>clockwise seen from the breaker end</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>anticlockwise seen from the breaker end</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{lobes}, unequally spaced</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Together</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>within {tolerance}° of one another</source>
            <extracomment>practice/paper.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>“{name}” is no predicate</source>
            <extracomment>practice/predicates.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Written: {value} {unit}; true: {truth}; {within} {unit} are allowed; {how}.</source>
            <extracomment>practice/readings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Where the contacts open, as read, {magneto}</source>
            <extracomment>practice/readings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Largest gap, as read, {magneto}</source>
            <extracomment>practice/readings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Firing, as read, {magneto}</source>
            <extracomment>practice/readings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The disc's zero, as read</source>
            <extracomment>practice/readings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>What the switch lead suffers from, {magneto}</source>
            <extracomment>practice/readings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>read with lamp and straightedge, looked at square before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>not read with lamp and straightedge, looked at square before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>read with blades before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>not read with blades before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>read with lamp, and a disc whose zero was found before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>not read with lamp, and a disc whose zero was found before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>read with the stop from both sides before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>not read with the stop from both sides before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>read with meter and lamp before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>not read with meter and lamp before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>read with nothing before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>not read with nothing before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>It was not written down.</source>
            <extracomment>practice/readings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Written: {text}; true: {truth}; {how}.</source>
            <extracomment>practice/readings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>There was nothing to read: the contacts never open; {how}.</source>
            <extracomment>practice/readings.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Code {seed}, {time} minutes.</source>
            <extracomment>practice/report.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Dangerous acts</source>
            <extracomment>practice/report.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Marks</source>
            <extracomment>practice/report.py, ui/class_plots.py, ui/debrief_view.py, lessons/a-full-job.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>True values</source>
            <extracomment>practice/report.py, ui/debrief_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Own readings</source>
            <extracomment>practice/report.py, ui/debrief_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Time line</source>
            <extracomment>practice/report.py, ui/debrief_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>An efficient path</source>
            <extracomment>practice/report.py, ui/debrief_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>When</source>
            <extracomment>practice/report.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Times</source>
            <extracomment>practice/report.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Weight</source>
            <extracomment>practice/report.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Got</source>
            <extracomment>practice/report.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Why</source>
            <extracomment>practice/report.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Written</source>
            <extracomment>practice/report.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>True then</source>
            <extracomment>practice/report.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Off by</source>
            <extracomment>practice/report.py, ui/plan_box.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Danger</source>
            <extracomment>practice/report.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>lock screw tight, clamp screws tight</source>
            <extracomment>practice/seen.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>lock screw tight, clamp screws slack</source>
            <extracomment>practice/seen.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>lock screw slack, clamp screws tight</source>
            <extracomment>practice/seen.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>lock screw slack, clamp screws slack</source>
            <extracomment>practice/seen.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>plug in, paper under the spring tab; switch on</source>
            <extracomment>practice/seen.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>plug in, paper under the spring tab; switch off</source>
            <extracomment>practice/seen.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>plug in; switch on</source>
            <extracomment>practice/seen.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>plug in; switch off</source>
            <extracomment>practice/seen.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>plug pulled, paper under the spring tab; switch on</source>
            <extracomment>practice/seen.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>plug pulled, paper under the spring tab; switch off</source>
            <extracomment>practice/seen.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>plug pulled; switch on</source>
            <extracomment>practice/seen.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>plug pulled; switch off</source>
            <extracomment>practice/seen.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>from {eye}° behind against rotation</source>
            <extracomment>practice/seen.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>square over the edge</source>
            <extracomment>practice/seen.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>from {eye}° ahead with rotation</source>
            <extracomment>practice/seen.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>no marks to count by</source>
            <extracomment>practice/seen.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>by the marks: magneto flange {i}, disc {j} teeth</source>
            <extracomment>practice/seen.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the marks stand in line</source>
            <extracomment>practice/seen.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turned {plate_turned}° since you came</source>
            <extracomment>practice/seen.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turned {screw_turned}° since you came</source>
            <extracomment>practice/seen.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>wheels chocked</source>
            <extracomment>practice/seen.py, ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>no chocks</source>
            <extracomment>practice/seen.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>spark plugs in</source>
            <extracomment>practice/seen.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>magneto off the engine</source>
            <extracomment>practice/seen.py, ui/drive_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>nuts off</source>
            <extracomment>practice/seen.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>coupling marked</source>
            <extracomment>practice/seen.py, ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>no marks on the coupling</source>
            <extracomment>practice/seen.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>piston stop in No. 1</source>
            <extracomment>practice/seen.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>rotor pinned</source>
            <extracomment>practice/seen.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>lamp</source>
            <extracomment>practice/state.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>blades</source>
            <extracomment>practice/state.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>meter</source>
            <extracomment>practice/state.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>finger</source>
            <extracomment>practice/state.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>thumb</source>
            <extracomment>practice/state.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>stop</source>
            <extracomment>practice/state.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>hand</source>
            <extracomment>practice/state.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>“{what}” is nothing to turn to: lamp, mark, widest or stop</source>
            <extracomment>practice/turning.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the magneto is on the engine: turn the propeller, or lift it off</source>
            <extracomment>practice/turning.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the rotor is pinned: take the pin out first</source>
            <extracomment>practice/turning.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>there is no engine here: turn the rotor</source>
            <extracomment>practice/turning.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>there is no disc on the crank to read</source>
            <extracomment>practice/turning.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{value} is not a move a hand makes; it must lie within ±{most}</source>
            <extracomment>practice/turning.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>no piston stop is fitted</source>
            <extracomment>practice/turning.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>clip the lamp across the contacts first</source>
            <extracomment>practice/turning.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>lay the straightedge along the cam's step first</source>
            <extracomment>practice/turning.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>a magneto is drawn back from its drive: tighten its nuts before turning the propeller</source>
            <extracomment>practice/turning.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>a pin holds a magneto's rotor: take it out before turning the propeller</source>
            <extracomment>practice/turning.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>light all the way round</source>
            <extracomment>practice/turning.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>dark all the way round</source>
            <extracomment>practice/turning.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the piston meets the stop</source>
            <extracomment>practice/turning.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turn the propeller with rotation until the lamp changes</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turn the propeller against rotation until the lamp changes</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turn the rotor with rotation until the lamp changes</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turn the rotor against rotation until the lamp changes</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turn the propeller with rotation until the straightedge comes in line</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turn the propeller against rotation until the straightedge comes in line</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turn the rotor with rotation until the straightedge comes in line</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turn the rotor against rotation until the straightedge comes in line</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turn the propeller with rotation until the contacts stand widest open</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turn the propeller against rotation until the contacts stand widest open</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turn the rotor with rotation until the contacts stand widest open</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turn the rotor against rotation until the contacts stand widest open</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turn the propeller with rotation until the piston meets the stop</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turn the propeller against rotation until the piston meets the stop</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turn the rotor with rotation until the piston meets the stop</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turn the rotor against rotation until the piston meets the stop</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the left magneto</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the right magneto</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>put in a new lead</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>put in a new tab</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>renew the insulation inside</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>move the magneto flange on the disc 1 tooth with rotation</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>move the magneto flange on the disc 1 tooth against rotation</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>move the disc on the drive flange 1 tooth with rotation</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>move the disc on the drive flange 1 tooth against rotation</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>straightedge past the mark as the contacts open</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>largest gap</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>fires before top dead centre</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>disc reads at top dead centre</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>note</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>broken</source>
            <extracomment>practice/words.py, ui/class_editor_rows.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>shorted</source>
            <extracomment>practice/words.py, ui/class_editor_rows.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>tab</source>
            <extracomment>practice/words.py, spec/lift_table.py, ui/class_editor_rows.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>thumb over No. 1's plug hole</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the magneto</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>largest gap, lobe {lobe}</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>point at {part}</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>write down – {note}</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>hand in</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>look at the contacts</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>dress the contacts</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>try {blades} {unit}</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>meter from the lead's plug to the case</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>lift the magneto off</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>paint marks across the coupling</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turn the propeller {angle}° with rotation</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turn the propeller {angle}° against rotation</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turn the propeller with rotation to {reading}° on the disc</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turn the propeller against rotation to {reading}° on the disc</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>lay the straightedge on</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>take the straightedge away</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>look square over the straightedge</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>look from {eye}° to the side</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>clip the lamp across the contacts</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>take the lamp off</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>screw the piston stop in</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>take the piston stop out</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turn the disc on the crank {by}° earlier</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>turn the disc on the crank {by}° later</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>slip paper under the spring tab</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>take the paper from the spring tab</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>chock the wheels</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>take the chocks away</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>take the spark plugs out</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>put the spark plugs in</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>tighten the magneto's nuts</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>take the nuts off and draw the magneto back</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>pin the rotor</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>take the pin out</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>refit the magneto as its rotor stands</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>go to the left magneto</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>go to the right magneto</source>
            <extracomment>practice/words.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>firing_order is {order}; it must name each cylinder from 1 to {n} once</source>
            <extracomment>spec/engine.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>firing_order begins with {first}; it must begin with cylinder 1</source>
            <extracomment>spec/engine.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>rod_mm is {rod:g}; it must be longer than half the stroke, {crank:g}</source>
            <extracomment>spec/engine.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>articulation is for a radial engine; this one is {arrangement}</source>
            <extracomment>spec/engine.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>articulation.master_cylinder is {master_cylinder}; the engine has {cylinders} cylinders</source>
            <extracomment>spec/engine.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>articulation.knuckle_angles_deg has {count} values; it must have one for each of the {cylinders} cylinders</source>
            <extracomment>spec/engine.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>articulation.link_rod_mm is {rod:g}; it must be longer than half the stroke and the knuckle radius together, {reach:g}</source>
            <extracomment>spec/engine.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>not a number (NaN)</source>
            <extracomment>spec/files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>infinite</source>
            <extracomment>spec/files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{field} is {found}; it must be at least {ge:g}</source>
            <extracomment>spec/files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{field} is {found}; it must be above {gt:g}</source>
            <extracomment>spec/files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{field} is {found}; it must be at most {le:g}</source>
            <extracomment>spec/files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{field} is {found}; it must be below {lt:g}</source>
            <extracomment>spec/files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{field} is {found}; it must be a multiple of {multiple_of:g}</source>
            <extracomment>spec/files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{field} is {found}; it must be a whole number</source>
            <extracomment>spec/files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{field} is {found}; it must be text</source>
            <extracomment>spec/files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{field} is {found}; it must be text without broken characters</source>
            <extracomment>spec/files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{field} is {found}; it must have at least {min_length} characters</source>
            <extracomment>spec/files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{field} is {found}; it must have at most {max_length} characters</source>
            <extracomment>spec/files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{field} is {found}; it must be one line of text</source>
            <extracomment>spec/files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{field} is {found}; it must be true or false</source>
            <extracomment>spec/files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{field} is {found}; it must be {expected}</source>
            <extracomment>spec/files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{field} is {found}; it must have at least {min_length} values</source>
            <extracomment>spec/files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{field} is {found}; it must have at most {max_length} values</source>
            <extracomment>spec/files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{field} is {found}; it must be a list</source>
            <extracomment>spec/files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{field} is {found}; it must be an object in braces</source>
            <extracomment>spec/files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{field} is {found}; it must be a finite number of millimetres</source>
            <extracomment>spec/files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{field} is {found}; it must be a finite number of degrees</source>
            <extracomment>spec/files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{field} is {found}; it must be a finite number of newton metres</source>
            <extracomment>spec/files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{field} is {found}; it must be a finite number of ohms</source>
            <extracomment>spec/files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{field} is {found}; it must be a finite number</source>
            <extracomment>spec/files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{field} is missing</source>
            <extracomment>spec/files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{field} is not a known name (known here: {known})</source>
            <extracomment>spec/files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{field} is {found}; it must {rule}</source>
            <extracomment>spec/files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{file}: is larger than {most:g} MB, the most that is read</source>
            <extracomment>spec/files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>“{repeated}” is given twice in one place; give it once</source>
            <extracomment>spec/files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{source}: holds no {kind} object; it must be one JSON object in braces</source>
            <extracomment>spec/files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{source}: format is missing; it must be "{wanted}"</source>
            <extracomment>spec/files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{field} is not a known name (did you mean {close}?)</source>
            <extracomment>spec/files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{field}.kind is {found}; it must be {tags}</source>
            <extracomment>spec/files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{field}.kind is missing; it must be {tags}</source>
            <extracomment>spec/files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>it is not a file</source>
            <extracomment>spec/files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{file}: cannot be read: {reason}</source>
            <extracomment>spec/files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{file}: is not a text file (byte {byte} is not UTF-8)</source>
            <extracomment>spec/files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{file}: line {line}, column {column}: not JSON: {reason}</source>
            <extracomment>spec/files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{file}: is nested too deeply</source>
            <extracomment>spec/files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>holds a list of {count} values; at most {most} are read</source>
            <extracomment>spec/files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{file}: cannot be written: {reason}</source>
            <extracomment>spec/files.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Magneto on its engine</source>
            <extracomment>spec/formats.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Lesson</source>
            <extracomment>spec/formats.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Attempt at an exercise</source>
            <extracomment>spec/formats.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Set of exercises for a class</source>
            <extracomment>spec/formats.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Job sheet of a magneto</source>
            <extracomment>spec/formats.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{file}: is not a file of this program; its format must be one of {known}</source>
            <extracomment>spec/formats.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{others} or {last}</source>
            <extracomment>spec/language.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{first} or {other}</source>
            <extracomment>spec/language.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{first} and {other}</source>
            <extracomment>spec/language.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>“{name}” is neither a file nor one of the shipped magnetos: {known}</source>
            <extracomment>spec/library.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>“{name}” is neither a file nor one of the shipped engines: {known}</source>
            <extracomment>spec/library.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>“{name}” is neither a file nor one of the shipped installations: {known}</source>
            <extracomment>spec/library.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{where} has no angle in column {column} (columns separated by {separator})</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{where} has no reading in column {column} (columns separated by {separator})</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>semicolon</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>comma</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>space</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the table</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{source}: its commas may be decimal signs or stand between columns: say which, or save it with semicolons between columns</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{source}: is longer than {most:g} million characters, the most that is read</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{source}: the decimal sign must be a point or a comma, the columns two of the first hundred</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{source}: has {count} rows of numbers; it must have at least {least} (“{numbered}” is none: write numbers alone, without their units)</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{where}: “{field}” is not a number (columns separated by {separator}, decimal sign “{decimal}”)</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{where}: {field} is too large; at most {most:g} is read</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{source}: line {line}</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{source}: has more than {most} rows, the most that are read</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{source}: has no row of numbers in its first 100 lines</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{source}: has {count} rows of numbers; it must have at least {least}</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{source}: line {line}: “{row}” is not a row of numbers</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{source}: has both points and commas in its numbers: say which is the decimal sign</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{field} is [{low:g}, {high:g}]; the first must be below the second</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>lobes {lobe} and {next} overlap: their tops are {apart:g}° apart and a lobe is {width:g}° wide</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>angle_deg has {angles} values and contact_lift_mm {lifts}; they must be as many</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>contact_lift_mm must begin and end with 0 (the heel off the lobe)</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>contact_lift_mm never rises; the top must be at least 0.001</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the top of contact_lift_mm is at {angle:g}°; angle_deg counts from it</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>contact_lift_mm must rise to one top and fall again, without steps or dips</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>lobe_peaks_deg begins with {first:g}; it must begin with 0 (lobe 1)</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>lobe_peaks_deg: {overlap}</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>e_gap_deg is {e_gap:g}; with {poles} poles it must be below {most:g}, where full register lies</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>contact_screw.range_deg is [{low:g}, {high:g}]; it must contain 0</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>designed_setting.backplate_deg is {backplate:g}; it must lie in backplate.range_deg, [{low:g}, {high:g}]</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>breaker.pivot_distance_mm is {distance:g}; the pivot must stand outside the lobe's top, {top:g} from the cam's centre</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>designed_setting.gap_mm is {gap:g}; it must be below the contact lift at the top of the lobe, {top_lift:.4g}</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>angle_deg goes from {before:g} to {after:g}; it must increase</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>lobe_peaks_deg goes from {before:g} to {after:g}; it must increase</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>condition.heel_wear_mm needs breaker.heel_arm_mm, to know what wear does</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>breaker.{field} is missing; only a measured profile can do without it</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>breaker.heel_arm_mm is {arm:g}; with it the heel reaches from {near:g} to {far:g} of the cam's centre, and must reach {radius:g}</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>condition.{field} has {count} values; it must have one for each of the {lobes} lobes</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>condition.lobe_lift_error_mm takes {error:g} off lobe {lobe}, which has only {top_lift:.4g} of contact lift</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>condition.lobe_angle_error_deg: {overlap}</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>sources[{i}].field is “{field}”; it must be the name of a field of this file, such as “{such}”</source>
            <extracomment>spec/sources.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>sources[{i}].field is “{field}”, which has a source already; give it one</source>
            <extracomment>spec/sources.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>“{text}” is not a length: write a number and a unit, such as 0.23mm, 0.009in or 9thou</source>
            <extracomment>spec/units.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>“{text}” has no unit: write one, such as 0.23mm, 0.009in or 9thou</source>
            <extracomment>spec/units.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>“{unit}” is not a unit of length: use {known}</source>
            <extracomment>spec/units.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>“{text}” is not an angle: write a number and a unit, such as 1.5°</source>
            <extracomment>spec/units.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>“{text}” has no unit: write one, such as 1.5°</source>
            <extracomment>spec/units.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>“{unit}” is not a unit of angle: use {known}</source>
            <extracomment>spec/units.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{length} in</source>
            <extracomment>spec/units.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>“{text}” is too large</source>
            <extracomment>spec/units.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>“{text}” is not a number: write one such as {example}</source>
            <extracomment>spec/units.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The program had not been closed as it should; the bench is as you left it.</source>
            <extracomment>ui/app.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Your work is not kept for after a crash: {reason}</source>
            <extracomment>ui/app.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Drafts of a magneto of your own wait for you: File, A magneto of your own…</source>
            <extracomment>ui/app.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>SVG (*.svg);;PDF (*.pdf);;PNG (*.png)</source>
            <extracomment>ui/asking.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Save the picture</source>
            <extracomment>ui/asking.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>In hand: {part}.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Rotor and pole shoes are diagrammatic; cam, arm, contacts and marks are to scale.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Breaker end of the magneto</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Seen from the drive end, through the magneto, rotation {way}.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Seen from the breaker end, rotation {way}.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Rotor {rotor} past neutral, held; backplate {backplate}, contact screw {screw}; {contacts}.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Rotor {rotor} past neutral, let go; backplate {backplate}, contact screw {screw}; {contacts}.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The gap is drawn {factor} times its size, the arm lifted with it off the cam.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Arm and heel in plain proportions: this magneto's file gives only the measured lift.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Cam on the distributor shaft, {ratio} turn a rotor turn; drawn on the rotor's axis.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>contacts closed</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>contacts open {gap}</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Seen through from the drive end</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>gap drawn {factor}×</source>
            <extracomment>ui/breaker_view.py, ui/contact_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>at: {place}</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>rotor let go, but the engine holds it</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>rotor free</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Rotor held.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Rotor let go.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Kept on this machine, and tried again every {seconds} seconds: {why}</source>
            <extracomment>ui/class_delivery.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Handed in: {file} stands in {folder}.</source>
            <extracomment>ui/class_delivery.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Exercises of the class</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Begin</source>
            <extracomment>ui/class_desk.py, ui/practice_choice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Hand in a &amp;saved attempt…</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Try again now</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Deliver to &amp;another folder…</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>as the instructor gives it; capitals and hyphens do not matter</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Name or number</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the folder the whole class hands in to</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Code</source>
            <extracomment>ui/class_desk.py, ui/class_paper_dialog.py, ui/practice_choice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Name or number</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Hand in to</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Open a class's file</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Class sets (*.json);;All files (*)</source>
            <extracomment>ui/class_desk.py, ui/class_gather.py, ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{number}. {name} (about {minutes} minutes)</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>under way</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Hand in a saved attempt</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{count} delivered.</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Hand in to</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Deliver to another folder</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>How it stands</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Open file…</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Choose &amp;folder…</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Type the class's code, or open its file; then your name, and begin.</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Everyone has a fault of their own: it hangs on the name as you type it.</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Everyone has the same fault.</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Hints are not given.</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>not begun</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Type your name or number first: the attempt is handed in under it</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Choose the folder to hand in to first; your instructor knows it</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{count} attempts wait on this machine to be delivered.</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Type the class's code first</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{count} still wait: {why}</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>closed without handing in</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Exercise editor</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Add a fault</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A&amp;dd a goal</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Whether the exercise is valid</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Name</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Level, 1 to 5</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>M&amp;inutes, a guide</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Marks &amp;needed</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Story: what is told of the case</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Tas&amp;k: what is to be done</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Hints, one a line</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Magneto, alone or on its engine</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Magnet&amp;o</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Both magnetos of the engine</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Rotor, off the engine</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>As it is found</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>screws slack</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>switch lead proved</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>disc at zero</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>On the tray</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Crank disc, read to</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Preview of seed</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Preview</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Begin from a shipped exercise</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Begin from a shipped one…</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Save &amp;as…</source>
            <extracomment>ui/class_editor.py, ui/job_bars.py, ui/job_menus.py, ui/own_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Into the class's &amp;set</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Tr&amp;y it</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{magneto}, on {engine} ({position})</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Open an exercise</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Magneto or installation</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>JSON (*.json);;All files (*)</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Save the exercise</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Saved {file}.</source>
            <extracomment>ui/class_editor.py, ui/class_gather.py, ui/class_maker.py, ui/class_plots.py, ui/own_files_work.py, ui/report_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>This exercise has not been saved.</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Back to the editor</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Text</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Magneto and tray</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Faults</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Goals</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>From a fil&amp;e…</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>blades in inches</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>metric blades</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>piston stop</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>meter for the switch lead</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Open…</source>
            <extracomment>ui/class_editor.py, ui/class_gather.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>this exercise</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>An exercise that is not valid yet is not saved</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>at neutral</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>anywhere</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>at the E-gap</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Not valid yet: {why}.</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Valid. {advice}</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Valid.</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Save…</source>
            <extracomment>ui/class_editor.py, ui/practice_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Go on &amp;without saving</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>rotor °</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>°</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>teeth</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>steps</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>crank °</source>
            <extracomment>ui/class_editor_rows.py, ui/job_kinds.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>late</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>early</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>too wide</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>too narrow</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>with cam rotation</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>against cam rotation</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>closer</source>
            <extracomment>ui/class_editor_rows.py, ui/practice_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>wider</source>
            <extracomment>ui/class_editor_rows.py, ui/practice_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>plus</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>minus</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Remove this row</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>each magneto</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>On which magneto</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Size from</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Size to</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Which way</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>any lobe</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>lobe </source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Which lobe</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>How likely it is there [%]</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>What counts</source>
            <extracomment>ui/class_editor_rows.py, ui/practice_task.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Weight among the marks</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>on every lobe</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>How near to the truth it must be</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>% likely</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Size to, at most {most} {unit}</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>weight</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{unit} allowed</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>either</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Marks, dangers, and faults found and missed are worked out here from the acts in each file. Names and times are believed as the pupils' machines wrote them.</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Class gathered</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the folder the class hands in to</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Progress</source>
            <extracomment>ui/class_gather.py, ui/job_bars.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Folder</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Se&amp;t</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Steps</source>
            <extracomment>ui/class_gather.py, ui/lesson_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>P&amp;lots</source>
            <extracomment>ui/class_gather.py, ui/menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Replay</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The debrief of the attempt that is chosen, with its replay</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Save as CS&amp;V…</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Cancelled. What was marked so far is kept for the next time.</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{pupil}, {exercise}: {percent} % in {minutes} minutes. Replay shows how.</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The class's folder</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Open a set</source>
            <extracomment>ui/class_gather.py, ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Save the attempts</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Tables (*.csv)</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the set made in this session</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>a code, or a set's file; may be left out</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Gather</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>C&amp;ancel</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Pupils</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Atte&amp;mpts</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Steps</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;What goes wrong</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Choose the folder the class hands in to first</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{count} were passed over; the table of attempts says why.</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Nothing from: {names}.</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Choose an attempt first</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Choose…</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>there is nothing to replay</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Text (*.txt);;Table (*.csv)</source>
            <extracomment>ui/class_maker.py, ui/practice_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Class set</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Set</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Answer &amp;key</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Class code</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Co&amp;py</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Gather…</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Exercises there are</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Exercises of the set, in order</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A&amp;dd ▶</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>From a &amp;file…</source>
            <extracomment>ui/class_maker.py, ui/class_paper_dialog.py, ui/practice_choice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Write one…</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Remove</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Settings</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Hints may be asked for</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A straightedge of this unit, and blades of it beside the exercise's own</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>as the exercise says</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Shown to the pupils as a guide; time is not marked</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The same number draws the same faults</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>one name or number a line</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Title</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Fau&amp;lts</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Blades, edge</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Minutes</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Number</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Level {level} · {name}</source>
            <extracomment>ui/class_maker.py, ui/class_paper_dialog.py, ui/practice_choice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Exercise from a file</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Exercises (*.json);;All files (*)</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>this set</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Title and pupils are not in the code; they travel in the set's file.</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The key is being made…</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The code is on the clipboard.</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Save the set</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Class sets (*.json)</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Save the answer key</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Save set &amp;as…</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Open set…</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Up</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Do&amp;wn</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Exercises</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;In this set, in order</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the same for everyone</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>one of their own for each pupil</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>as the exercise has them</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>metric, too</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>in inches, too</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Pu&amp;pils (not in the code; for the key, and to see who is missing)</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Draw ane&amp;w</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>For the instructor: it tells every hidden fault.</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Save &amp;key…</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Add an exercise: a set has one at least</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>There is no set yet.</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Worksheet of an exercise</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Answer key of an exercise</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Name the parts: sheet</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Pictures of the bench as it stands</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Names</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Numbers, with lines to write on</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Numbers, filled in</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Nothing</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A4</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Letter</source>
            <extracomment>ui/class_paper_dialog.py, ui/job_preview.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Saved {file}: 1 page.</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>JSON files (*.json);;All files (*)</source>
            <extracomment>ui/class_paper_dialog.py, ui/practice_choice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Paper for a class</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>With the exercise's &amp;hints</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>With pictures whose &amp;parts are to be named</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>With what there is to sa&amp;y of each part</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;What</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Exercise</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Beside the &amp;parts</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Paper si&amp;ze</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Save as PDF…</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Close</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>PDF (*.pdf)</source>
            <extracomment>ui/class_paper_dialog.py, ui/job_reports.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A code is a whole number, such as 4711.</source>
            <extracomment>ui/class_paper_dialog.py, ui/practice_choice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Saved {file}: {pages} pages.</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Pictures</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Choose at least one picture.</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Plots of the class</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Save plots…</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{count} attempts of {pupils} pupils count; {passed} passed. ● passed, × not passed.</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>marks [%]</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>attempts</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>minutes, by the pupils' clocks</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Marks against time</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>mean marks [%]</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Steps, the weakest above</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>missed (hatched), then found</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Faults</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Save the plots</source>
            <extracomment>ui/class_plots.py, ui/plot_sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Contacts, magnified</source>
            <extracomment>ui/contact_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Contacts closed.</source>
            <extracomment>ui/contact_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Contacts open {gap}.</source>
            <extracomment>ui/contact_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Contacts open {gap}</source>
            <extracomment>ui/contact_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>breaker end, magnified</source>
            <extracomment>ui/contact_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>No measure in practice: try blades.</source>
            <extracomment>ui/contact_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Contacts</source>
            <extracomment>ui/contact_view.py, ui/practice_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>on its intake stroke</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>on its compression stroke</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>on its power stroke</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>on its exhaust stroke</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>intake stroke</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>compression stroke</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>power stroke</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>exhaust stroke</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>No. 1 {stroke}, {where}, piston {drop} down.</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>No. 1: {stroke}, {where}, piston {drop} down</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Seen from the propeller end. No. 1 cut open; its stroke is felt at the plug hole.</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{degrees}° before top dead centre</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{degrees}° after top dead centre</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{degrees}° BTDC</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{degrees}° ATDC</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>No engine</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>No. 1 cut open. Its stroke is felt at the plug hole.</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>approached against rotation, play of {play}° of rotor not taken up</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>No engine.</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Propeller end</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>wanted</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>opens</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>rod drawn on the crank pin</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Mar&amp;ks</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Tr&amp;uth</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Readings</source>
            <extracomment>ui/debrief_view.py, ui/own_pictures.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Time line</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>P&amp;ath</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Play</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Moment of the attempt</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Choose a line to see that moment</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Pause</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>lamp {lamp}</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>disc {disc}</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{danger} ({times} times)</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Drag the rotor or cam, the backplate, or the contact screw; or take one in hand with 1, 2, 3 and turn it with the arrow keys, Page Up and Page Down, or the wheel: ten times finer with Shift, coarser with Alt. A dragged rotor catches at contacts just open, top of lobe, E-gap and neutral; Alt lets it pass. Double-click puts a part back. Space holds the rotor or lets it go. In the drive end, left and right move the magneto flange, up and down the disc, one tooth at a time. Ctrl and the wheel zoom, the middle button pans. Numbers can be typed with their unit: 1.5°, 9 thou, 0.23 mm.

Positive angles go the way the rotor turns in service; a positive contact-screw angle brings the contacts closer.</source>
            <extracomment>ui/doors.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Keys and cautions</source>
            <extracomment>ui/doors.py, ui/job_reports.py, ui/practice_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Both faces of the disc: drive flange outside, magneto flange inside.</source>
            <extracomment>ui/drive_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Drive end of the magneto: the toothed coupling</source>
            <extracomment>ui/drive_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>No marks on it.</source>
            <extracomment>ui/drive_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Seen from the drive end, rotation {way}.</source>
            <extracomment>ui/drive_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Drive end</source>
            <extracomment>ui/drive_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>This magneto is not on an engine.</source>
            <extracomment>ui/drive_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Left magneto, drive end</source>
            <extracomment>ui/drive_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Right magneto, drive end</source>
            <extracomment>ui/drive_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>This magneto is not on an engine. Open an installation to time it to one.</source>
            <extracomment>ui/drive_view.py, ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>after</source>
            <extracomment>ui/drive_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{name}: a picture's name must end in {kinds}</source>
            <extracomment>ui/export.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{name}: cannot be written: {reason}</source>
            <extracomment>ui/export.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the picture could not be saved</source>
            <extracomment>ui/export.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Find in this page</source>
            <extracomment>ui/guide_find.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Match &amp;case</source>
            <extracomment>ui/guide_find.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Previous</source>
            <extracomment>ui/guide_find.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Ne&amp;xt</source>
            <extracomment>ui/guide_find.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>C&amp;lose</source>
            <extracomment>ui/guide_find.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>From the other end</source>
            <extracomment>ui/guide_find.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Not on this page</source>
            <extracomment>ui/guide_find.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Page of the guide</source>
            <extracomment>ui/guide_page.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Guide – magview</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Search the guide</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Contents of the guide</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>What was found</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Guide</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>◀ Back</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Forward ▶</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Contents</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Search</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Find in page</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Smaller</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Larger</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Usual size</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Find next</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Find previous</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>End searching, or close</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Close the guide</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{page} – guide – magview</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{percent} %</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Nothing found.</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>One section found.</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{count} sections found.</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Nothing found. Try fewer words, or the beginning of one.</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{text} is outside {low} to {high}: {taken} is taken</source>
            <extracomment>ui/inputs.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Aircraft, engine, magneto</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Next check, signature</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Earlier sheets</source>
            <extracomment>ui/job_bars.py, ui/job_history.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>As printed</source>
            <extracomment>ui/job_bars.py, ui/job_preview.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>→ skipped: {reason}</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>○ not begun</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>✗ begun; out of limits</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>◐ begun; {count} missing</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>◐ nothing missing; not marked done</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>✗ done, but {count} missing</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>✗ done, but out of limits</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>✓ done</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Stages done or skipped</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Stages of the job</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>○ not signed</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{come} of {count} stages done or skipped</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>State of the file</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Reload</source>
            <extracomment>ui/job_bars.py, ui/job_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>✗ Not saved: {sentence}.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>✓ signed</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>✗ changed since signed</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>missing in {count}</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{count} readings out</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Still missing</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Mark as &amp;done</source>
            <extracomment>ui/job_bars.py, ui/job_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>S&amp;kip…</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Open a&amp;gain</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Ne&amp;xt page</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Try again</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Read only: {sentence}.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Still missing: {what}.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{file} was changed by another program while it was open here; reload it, or save elsewhere.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>✓ Nothing is missing.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>✓ Done.</source>
            <extracomment>ui/job_bars.py, ui/lesson_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Drift of gap and timing</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>largest gap [mm]</source>
            <extracomment>ui/job_drift_sheet.py, ui/plot_lift.py, ui/plot_trials.py, ui/plot_wear.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>opens late [rotor deg]</source>
            <extracomment>ui/job_drift_sheet.py, ui/plot_coil.py, ui/plot_lift.py, ui/plot_wear.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>largest gap [{unit}]</source>
            <extracomment>ui/job_drift_sheet.py, ui/plot_lift.py, ui/plot_trials.py, ui/plot_wear.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>at {hours} h: gap {value}, between {low} and {high} 95 times in 100</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>at {hours} h: opening {value}, between {low} and {high} 95 times in 100</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>largest gap found [mm]</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>largest gap left [mm]</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>opening found [rotor deg]</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>opening left [rotor deg]</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>found</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>predicted</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>interval</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>“{text}” is not a whole number of teeth</source>
            <extracomment>ui/job_edits.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>year-month-day</source>
            <extracomment>ui/job_edits.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Today</source>
            <extracomment>ui/job_edits.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Missing in {what}.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Not done yet: {stages}.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Out of limits, or not as it must be: see {stage}.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Not signed.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>What is missing, next check, signature</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>What is missing</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Signed by {who}</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Signature taken back</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Changed since it was signed: the signature does not cover this sheet; sign again.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Sign the sheet</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Take the signature back</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>✓ Finished: every stage is done or skipped, in limits as left, and signed.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>✓ Signed; the sheet is as it was signed.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>✗ Changed since it was signed.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{mark} {verdict} ({limits})</source>
            <extracomment>ui/job_form.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{value} ± {spread} (k = {k}, {probability}); {odds} likely within {low} to {high}; what matters most: {most}</source>
            <extracomment>ui/job_form.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{typed} is outside {low} to {high} and was not taken</source>
            <extracomment>ui/job_form.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Strike out the uncertainty</source>
            <extracomment>ui/job_form.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Verdict: {field}</source>
            <extracomment>ui/job_form.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{field} [{unit}]</source>
            <extracomment>ui/job_form.py, ui/job_table.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{field}: {sentence}</source>
            <extracomment>ui/job_form.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>How sure: {quantity}</source>
            <extracomment>ui/job_form.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>not read</source>
            <extracomment>ui/job_form.py, ui/job_kinds.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>none given</source>
            <extracomment>ui/job_form.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Earlier sheets of the same magneto</source>
            <extracomment>ui/job_history.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Double-click, or Return, opens a sheet</source>
            <extracomment>ui/job_history.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Looking in {folder}…</source>
            <extracomment>ui/job_history.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{count} earlier sheets of this magneto in {folder}.</source>
            <extracomment>ui/job_history.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Another folder…</source>
            <extracomment>ui/job_history.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Look again</source>
            <extracomment>ui/job_history.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Passed over: {sentence}.</source>
            <extracomment>ui/job_history.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Title</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Note</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Done by</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>in</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>crank ° before top dead centre</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>°, + late</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>°, + with rotation</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>°, + closer</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>rpm</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>h</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>teeth, + with rotation</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>in, + late</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>mm, + late</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;New job sheet…</source>
            <extracomment>ui/job_menus.py, ui/menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Open job sheet…</source>
            <extracomment>ui/job_menus.py, ui/menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Try again to save</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Reload from the file</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Close</source>
            <extracomment>ui/job_menus.py, ui/lift_dialog.py, ui/own_menus.py, ui/practice_menus.py, ui/report_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Undo</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/own_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Redo</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/own_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Steps taken…</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Skip for a reason…</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Open again</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Next page</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Previous page</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Print to PDF, &amp;A4…</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Print to PDF, &amp;Letter…</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Save as &amp;HTML…</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Save readings as &amp;CSV…</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Save readings as &amp;JSON…</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>With &amp;earlier sheets of this magneto</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Lengths in &amp;inches</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Light colours</source>
            <extracomment>ui/job_menus.py, ui/menu_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Dark colours</source>
            <extracomment>ui/job_menus.py, ui/menu_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>High contrast colours</source>
            <extracomment>ui/job_menus.py, ui/menu_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Keys and cautions</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/practice_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Steps taken</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Text size</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/practice_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Undo: {step}</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/own_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Redo: {step}</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/own_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>No step has been taken yet.</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Job</source>
            <extracomment>ui/job_menus.py, ui/menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Edit</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/own_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Stage</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Note on the job sheet</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Report</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;View</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/practice_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Help</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/own_menus.py, ui/practice_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{n} %</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Job sheet</source>
            <extracomment>ui/job_model.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{part}: {field}</source>
            <extracomment>ui/job_model.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{stage}: skipped</source>
            <extracomment>ui/job_model.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{stage}: done</source>
            <extracomment>ui/job_model.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{stage}: opened again</source>
            <extracomment>ui/job_model.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Cautions</source>
            <extracomment>ui/job_page.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Note from the bench: {what}</source>
            <extracomment>ui/job_page.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Aircraft, engine, magneto and limits</source>
            <extracomment>ui/job_page.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The sheet does not say yet which magneto the bench worked with; without it there are no drawings, and limits are as entered from the maker's manual.</source>
            <extracomment>ui/job_page.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Note from the bench:</source>
            <extracomment>ui/job_page.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>On the bench: {magneto}, on {engine}.</source>
            <extracomment>ui/job_page.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>On the bench: {magneto}.</source>
            <extracomment>ui/job_page.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Page {number} of {count}</source>
            <extracomment>ui/job_preview.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Paper</source>
            <extracomment>ui/job_preview.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Print to PDF…</source>
            <extracomment>ui/job_preview.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>1 page</source>
            <extracomment>ui/job_preview.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{count} pages</source>
            <extracomment>ui/job_preview.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Ctrl+Page Down and Ctrl+Page Up turn the pages, Ctrl+Return marks a stage as done. Every change is in the file at once; Ctrl+Z takes the last one back, also after the sheet was closed and opened again, and Ctrl+Shift+Z does it again. Numbers take a decimal point or comma and their unit: 9 thou, 0,23 mm. Escape puts back what stood in a field; an empty one was not read.</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Print the job sheet to PDF</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Save the job sheet as HTML</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>HTML (*.html)</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Save the readings</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Table (*.csv)</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Readings (*.json)</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>✓ Saved {file}.</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{file} is the job sheet itself; choose another name</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>✓ Printed 1 page to {file}.</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>✓ Printed {count} pages to {file}.</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>this sheet ships with the program and stays as it is; save it under a name of your own to work on it</source>
            <extracomment>ui/job_room.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Where is the new job sheet to be kept?</source>
            <extracomment>ui/job_room.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Job sheets (*.json)</source>
            <extracomment>ui/job_room.py, ui/job_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Open a job sheet</source>
            <extracomment>ui/job_room.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Job sheets (*.json);;All files (*)</source>
            <extracomment>ui/job_room.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>No job sheet is open: open one, or begin a new one, from the Job menu.</source>
            <extracomment>ui/job_room.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Magneto, engine and limits</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>What is on the bench, and the limits its files give</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Switch lead as it stands</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>What meter and lamp say on the bench with plug and switch as they are now</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Stop readings</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The two stop readings of the Engine page</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Stroke of No. 1 now</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Set the crank before No. 1 fires: its stroke there is noted</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Setting and timing as the bench has them</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>As found, by instruments</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>As the instruments chosen on the Uncertainty page read it</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Wear and pips</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>As the bench has them</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Trials made</source>
            <extracomment>ui/job_sources.py, ui/trials_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>All trials on the bench's list</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Setting planned</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Where backplate and screw belong for the gap wanted on the Internal page</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The setting as the bench has it now</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>As left, by instruments</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>How sure the setting is</source>
            <extracomment>ui/job_sources.py, ui/window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>What the Uncertainty page shows of internal timing</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Opening, gap and dwell of each lobe</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Marks as painted</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>How the coupling's marks stand apart</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Tooth shift planned</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Reading as found, timing wanted, and the move chosen in the planner, or its first</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Tooth shift made</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Teeth moved, and where it fires now</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Where both magnetos fire now</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>How sure the timing is</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>What the Uncertainty page shows of timing to the engine</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the bench has “{bench}” on it and this sheet is of “{sheet}”: put that one on the bench, or take over magneto and limits anew</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>this magneto is not on an engine: open an installation on the bench first</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>no stop readings were entered yet; they belong on the Engine page of the bench</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>no trial has been made on the bench yet; they are noted on its Trials page</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the bench's Uncertainty page does not show internal timing; choose it there first</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the bench's Uncertainty page does not show timing to the engine; choose it there first</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Add a trial</source>
            <extracomment>ui/job_table.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Add a lobe</source>
            <extracomment>ui/job_table.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Strike out the chosen trial</source>
            <extracomment>ui/job_table.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Strike out the chosen lobe</source>
            <extracomment>ui/job_table.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{row} {number} waits for: {field}</source>
            <extracomment>ui/job_table.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{row} {number}, {field}: outside {low} to {high}, not taken</source>
            <extracomment>ui/job_table.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{what}, from the bench</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{name} – job sheet – magview</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{count} found</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Skip a stage</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Why is “{stage}” skipped?</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Skip it</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Save the job sheet as</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Reload the sheet from its file?</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>What was entered here and is not in the file is given up; save it elsewhere first.</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Keep what is here</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Not saved: {sentence}.</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Save as…</source>
            <extracomment>ui/job_window.py, ui/report_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Close &amp;without saving</source>
            <extracomment>ui/job_window.py, ui/practice_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Go on</source>
            <extracomment>ui/job_window.py, ui/practice_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Read only: {file}</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>✓ Noted from the bench: {what}.</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Undone: {step}.</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Done again: {step}.</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>✓ Done: {stage}.</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Skipped: {stage}.</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Opened again; its readings stand.</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Saved; from now on in {file}.</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>✗ Not saved</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>✓ Saved in {file}</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Prove the lead before touching the propeller: plug out, meter from the lead's plug to the case: ground with the switch off, none with it on. A lead that shows no ground with the switch off leaves the magneto live. Treat the propeller as live all the same.</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Switch lead, drawn as a circuit</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Lamp: open</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Lamp: closed</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Ignition switch &amp;on</source>
            <extracomment>ui/lead_panel.py, ui/practice_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Plug o&amp;ut of the magneto</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Lead &amp;broken inside</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Short inside the magneto</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Spring tab bent clear of the c&amp;ase</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Hands on</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Faults to try</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A hint</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>What came of it</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{name}: done</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Step {step} of {steps} – {title}</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>What you have learnt: {told}</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>All steps are done.</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Hint: {hint}</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Lift of the contacts</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Gap between the contacts</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Dial at the heel</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>found out</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>point: 0.25</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>comma: 0,25</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Lift from {name}</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>What comes of the table</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>grow with rotation</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>falls as the contacts lift</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Contact lift at which the contacts just touch: needed where gaps were read</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Contact arm over heel arm: what the contacts lift for a millimetre at the heel</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Readings and the smooth lift through them</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{readings} readings; the contacts lift {top} mm; scatter {noise} mm.</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Save the magneto</source>
            <extracomment>ui/lift_dialog.py, ui/window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Magneto (*.json)</source>
            <extracomment>ui/lift_dialog.py, ui/trials_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Saved {name}.</source>
            <extracomment>ui/lift_dialog.py, ui/plot_sheet.py, ui/practice_window.py, ui/window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Put on the &amp;bench</source>
            <extracomment>ui/lift_dialog.py, ui/own_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Save as magneto…</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Cam</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>choose…</source>
            <extracomment>ui/lift_dialog.py, ui/own_field.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Angles of the</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Readings are</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Their &amp;unit</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Contacts touch at</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Contact arm / heel arm</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Decimal sign</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Column of angles</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Column of readings</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>cam past the top [deg]</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>contact lift [mm]</source>
            <extracomment>ui/lift_dialog.py, ui/plot_lift.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The magneto with the measured lift is on the bench.</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>say in which unit the readings are</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Guide</source>
            <extracomment>ui/menu_maker.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Open magneto or installation…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Save magneto as…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A magneto of &amp;your own…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Lift from &amp;measurements…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Paper for a class…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Quit</source>
            <extracomment>ui/menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Hold the rotor</source>
            <extracomment>ui/menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Magneto on the &amp;engine</source>
            <extracomment>ui/menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Snap to openings, lobes and marks</source>
            <extracomment>ui/menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Reduced motion</source>
            <extracomment>ui/menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>New &amp;exercise…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Lessons…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Open attempt…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Join a class…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Make a class set…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Gather a class…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Exercise e&amp;ditor…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Look at the &amp;shipped job sheet</source>
            <extracomment>ui/menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Names of parts</source>
            <extracomment>ui/menus.py, ui/practice_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>See the breaker from the &amp;drive end</source>
            <extracomment>ui/menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Draw the &amp;gap 5× its size</source>
            <extracomment>ui/menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Follow the contacts when zoomed</source>
            <extracomment>ui/menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Zoom &amp;in</source>
            <extracomment>ui/menus.py, ui/practice_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Zoom &amp;out</source>
            <extracomment>ui/menus.py, ui/practice_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Whole picture</source>
            <extracomment>ui/menus.py, ui/practice_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Projector mode</source>
            <extracomment>ui/menus.py, ui/practice_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>L&amp;anguage</source>
            <extracomment>ui/menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>P&amp;resent to a class</source>
            <extracomment>ui/menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Fault reports…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Bench</source>
            <extracomment>ui/menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Magneto on the bench</source>
            <extracomment>ui/menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Unit of length</source>
            <extracomment>ui/menus.py, ui/own_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>As the &amp;desktop</source>
            <extracomment>ui/menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Save picture of the breaker end…</source>
            <extracomment>ui/menus.py, ui/practice_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Save picture of the drive end…</source>
            <extracomment>ui/menus.py, ui/practice_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Save picture of the crank…</source>
            <extracomment>ui/menus.py, ui/practice_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>No&amp;te on the job sheet</source>
            <extracomment>ui/menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Recent job sheets</source>
            <extracomment>ui/menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Millimetres</source>
            <extracomment>ui/menus.py, ui/own_window.py, ui/practice_tray.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Inches</source>
            <extracomment>ui/menus.py, ui/own_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Lengths in</source>
            <extracomment>ui/menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;File</source>
            <extracomment>ui/menus.py, ui/own_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Ben&amp;ch</source>
            <extracomment>ui/menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Practice</source>
            <extracomment>ui/menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>something in the program went wrong; look whether what you did last is done. A report was kept: Help, Fault reports</source>
            <extracomment>ui/mishaps.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>magview: a report of a fault in the program was kept: {file}</source>
            <extracomment>ui/mishaps.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>something in the program went wrong; look whether what you did last is done. No report of it could be kept: {reason}</source>
            <extracomment>ui/mishaps.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>with this setting there is no “{place}” to run to</source>
            <extracomment>ui/model.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{file} is an engine, and the bench holds a magneto: open an installation, which has both, or see the engine with `magview engine {file}`</source>
            <extracomment>ui/opening.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{file} is a bench that the program keeps for itself and finds again after a crash; it is not to be opened</source>
            <extracomment>ui/opening.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the magneto in this window</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the engine in this window</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>where from?</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Source of: {field}</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>page, instrument, who</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Note on the source of: {field}</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Work it out</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Refused: {sentence}</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>a file…</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>May be left out.</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>⚠ {sentence}.</source>
            <extracomment>ui/own_field.py, ui/own_pictures.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{field} – still needed</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>my-magneto.json</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>my-engine.json</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>my-installation.json</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>beginning anew</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Open a file of your own</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{file} is open.</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Save</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{file} is there already, and holds something else. Replace it?</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Replace it</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Open a table of the lift</source>
            <extracomment>ui/own_files_work.py, ui/window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Use this lift</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the bench's trials</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Lift, rise and setting are filled in from the trials, marked measured.</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>working out</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>opening {file}</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Leave it</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>table {file}</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>there is no engine on the bench: open an installation there first</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the lift from a table</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The lift is filled in from {file}, marked measured.</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Open magneto, engine or installation…</source>
            <extracomment>ui/own_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Save</source>
            <extracomment>ui/own_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Undo</source>
            <extracomment>ui/own_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Redo</source>
            <extracomment>ui/own_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>An engine comes to the bench with an installation</source>
            <extracomment>ui/own_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Put on the bench</source>
            <extracomment>ui/own_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>a source</source>
            <extracomment>ui/own_model.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Lift from a &amp;table…</source>
            <extracomment>ui/own_page.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Lift from the t&amp;rials</source>
            <extracomment>ui/own_page.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Angles and dial readings of one lobe become its lift, marked measured</source>
            <extracomment>ui/own_page.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Lift, rise and setting as the trials noted on the bench tell them, marked measured</source>
            <extracomment>ui/own_page.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Dra&amp;wn</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Compared</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>What the draft comes to</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Shipped file to compare with</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Fields that differ</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Readings that differ</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>✓ Complete: drawn as designed to be set.</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Compared with “{name}”. Fields that differ: {differ}; given so far: {given} of {all}.</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Reading as designed</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>comes to</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Field</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>yours</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>shipped</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The nearest shipped file</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Drawn as it last was complete; what is missing or refused is marked at its field.</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Nothing to draw yet: it is drawn once everything needed is there.</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Nothing to compare yet.</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>What you drafted is on the bench; Undo brings the former back.</source>
            <extracomment>ui/own_room.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The drafts are as you left them.</source>
            <extracomment>ui/own_room.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The drafts cannot be kept for after a crash: {reason}</source>
            <extracomment>ui/own_room.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;1 Magneto</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;2 Engine</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;3 Installation</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A magneto of your own – magview</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>What is drafted</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Pages</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>How far it has come</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Next o&amp;pen field</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Go to the next field that is still needed, or refused</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Drafts</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Begin from</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>B&amp;egin</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The draft becomes this one; Undo brings the former back</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>What is on the bench</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Nothing: empty fields</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Still needed: {missing}
Refused: {refused}
Without a source: {bare}</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>◂ &amp;Back</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Next ▸</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>  Begin from </source>
            <extracomment>ui/own_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>   Lengths in </source>
            <extracomment>ui/own_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{magneto}, mounted {side}</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>⚠ {page}: {count} refused</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{page}: {count} needed</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>✓ {page}</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Moves that would put it right, best first</source>
            <extracomment>ui/plan_box.py, ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Moves of the coupling, best first</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Move the ne&amp;xt tooth</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Teeth of the magneto flange on the disc, and of the disc on the drive flange, from as found; with rotation is {along}, against is {against} seen from the drive end.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Flange</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Fires at</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>There is no reading to plan from.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Point at a move to see where it brings the marks; choose one to step through it.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{first} or {second}</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>✗ Nothing reaches it within tolerance: {outside}. The nearest two: {nearest}.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Magneto flange {teeth}</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>1 single step to go.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{steps} single steps to go.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The move is made. Check the marks, tighten, and read the lamp again, approaching with rotation; enter what it says as the new reading.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>✓ The first is within ±{tolerance}° of crank.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>By the present reading the first would come within ±{tolerance}° of crank; set the contacts first, read the lamp again, then plan.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Uncertainty budget</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{name}: {share} of the variance; {source}</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>share of the variance [%]</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>how often, per unit</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Quantity whose budget is shown</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Nothing is judged yet.</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Choose readings and instruments on the Uncertainty page.</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>linear</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Monte Carlo</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Quantity</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>rotor {rotor}: {torque} N m with rotation</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>rotor {rotor}: {torque} N m against rotation</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Let go, the rotor swings on, with rotation, {angle} to neutral.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Let go, the rotor swings back, against rotation, {angle} to neutral.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Let go, off the engine, the rotor swings on, with rotation, {angle} to neutral.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Let go, off the engine, the rotor swings back, against rotation, {angle} to neutral.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>rotor past neutral [deg]</source>
            <extracomment>ui/plot_coil.py, ui/plot_lift.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>rotor {rotor}: flux {flux} mWb (static {static}), current {current} A</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>At {rpm} turns a minute the present opening leaves {now} mJ, the E-gap {at} mJ.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>core flux [mWb]</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>primary current [A]</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>energy at opening [mJ]</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>best here</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Speed of the rotor</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>From turning by hand to full speed</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>opening {angle} from the E-gap leaves {energy} mJ</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>There is no coil to show, or the contacts never work.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>torque with rotation [N m]</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>This magneto's file gives no pull.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The rotor stands at neutral: it stays there by itself.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>This magneto's file gives no coil.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>resultant</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>static</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Rotor speed</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>now {energy} mJ</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>rests: neutral</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>balances but does not rest: full register</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{fires} BTDC, {off} early: magneto flange {magneto}, disc {disc}</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{fires} BTDC, {off} late: magneto flange {magneto}, disc {disc}</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{moves} timings near the wanted one; the nearest: {nearest}.</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>fires [crank deg BTDC], earlier to the right</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>teeth moved, both faces</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>now</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>wanted {wanted} ± {tolerance}°</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>No timing can be planned.</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>What if the disc had other teeth: the installation stays as it is</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>This magneto is not on an engine: open an installation.</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The contacts never open and close: there is no timing to plan from.</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>nearest</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Teeth at the magneto, what if</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Teeth at the drive, what if</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>now, nearest</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Teeth: magneto</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>drive</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>present</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>designed</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>before</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Lift and gap</source>
            <extracomment>ui/plot_lift.py, ui/plot_pane.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>rotor {rotor}: lift {lift}, {what}</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Contacts open at {opens} and close at {closes} of rotor; largest gap {max_gap}.</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>lobe {lobe}: {opens}, largest gap {max_gap}</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{good} of {lobes} lobes have their largest gap within limits.</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>gap [mm]</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>contact lift [{unit}]</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>gap [{unit}]</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>stop: contacts touch</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>limits of the largest gap</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>gap {gap}</source>
            <extracomment>ui/plot_lift.py, ui/plot_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>closed</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>at the mark: judged on lobe 1</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>at the mark</source>
            <extracomment>ui/plot_lift.py, ui/trials_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>limits</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>never works the contacts</source>
            <extracomment>ui/plot_lift.py, ui/plot_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{error} from its place</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The contacts never open on lobe 1.</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The contacts never close.</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>lobe, in firing order</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Window</source>
            <extracomment>ui/plot_pane.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Magnet</source>
            <extracomment>ui/plot_pane.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Wear</source>
            <extracomment>ui/plot_pane.py, ui/plot_wear.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The plots are coming…</source>
            <extracomment>ui/plot_pane.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>SVG (*.svg);;PNG (*.png);;Values as CSV (*.csv)</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Values under the pointer</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Copy the plots as a picture</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Save the plots as SVG or PNG, or their values as CSV</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The plots are copied.</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Cop&amp;y</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Save…</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>there are no values to save here</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{name}: plots are saved as .svg or .png, their values as .csv</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{name}: the picture could not be saved</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>plate {plate}: expect {gap}, 19 times in 20 between {low} and {high}</source>
            <extracomment>ui/plot_trials.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>backplate, positive with rotation [deg]</source>
            <extracomment>ui/plot_trials.py, ui/plot_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>here: done</source>
            <extracomment>ui/plot_trials.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>next</source>
            <extracomment>ui/plot_trials.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>through the trials</source>
            <extracomment>ui/plot_trials.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>as the file has it</source>
            <extracomment>ui/plot_trials.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>19 times in 20</source>
            <extracomment>ui/plot_trials.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>running hours from now [h]</source>
            <extracomment>ui/plot_wear.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>next inspection</source>
            <extracomment>ui/plot_wear.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>true gap</source>
            <extracomment>ui/plot_wear.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>what a blade finds</source>
            <extracomment>ui/plot_wear.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Adjustment window</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>plate {plate}, screw {screw}: {opens}, largest gap {gap}</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>You are at {place}.</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>contact screw [deg]</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Heel wear</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Wear the heel and see the window move: what is set now opens later, with a smaller gap</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>(no heel arm in the file)</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>opens {off} late</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>opens {off} early</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Heel worn</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>kept in the attempt's file</source>
            <extracomment>ui/practice_choice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>left empty: drawn at random; the same code gives the same faults</source>
            <extracomment>ui/practice_choice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Lessons</source>
            <extracomment>ui/practice_choice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>New exercise</source>
            <extracomment>ui/practice_choice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Trainee</source>
            <extracomment>ui/practice_choice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{steps} steps.</source>
            <extracomment>ui/practice_choice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>About {minutes} minutes.</source>
            <extracomment>ui/practice_choice.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{part}: by how much</source>
            <extracomment>ui/practice_controls.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>With Shift a tenth of the amount, with Alt ten times</source>
            <extracomment>ui/practice_controls.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Drag rotor, backplate and contact screw in the picture, or take one in hand with 1, 2, 3 and turn it with the arrow keys or the wheel: finer with Shift. Everything else is a button at the right; Alt and the underlined letter reaches it, Alt with 1 to 4 the tabs. Nothing here shows a true value: read the instruments. There is no undo.</source>
            <extracomment>ui/practice_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Save picture of the contacts…</source>
            <extracomment>ui/practice_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Save attempt as…</source>
            <extracomment>ui/practice_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Hand in…</source>
            <extracomment>ui/practice_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Save &amp;debrief…</source>
            <extracomment>ui/practice_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Practice</source>
            <extracomment>ui/practice_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Atte&amp;mpt</source>
            <extracomment>ui/practice_menus.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>put a hand on the propeller first, and treat it as live: nobody else in its arc</source>
            <extracomment>ui/practice_model.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>this is a replay: nothing in it can be changed</source>
            <extracomment>ui/practice_model.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Straightedge past the mark as the contacts open</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Disc reads at top dead centre</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Remark</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>short inside the magneto</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>spring tab does not touch</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>such as 0.8 mm or −30 thou; short of it: with a minus</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>such as 0.25 mm or 9 thou</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>such as 25.5°</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>such as −3.25°; after the zero: with a minus</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>one line</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Write down</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>What is wrong with the entry</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Writ&amp;e it down</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Wha&amp;t</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Ma&amp;gneto</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Lo&amp;be</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Reading</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Finding</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Notebook</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Left magneto</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Right magneto</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Left: {line}</source>
            <extracomment>ui/practice_notebook.py, ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Right: {line}</source>
            <extracomment>ui/practice_notebook.py, ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>there is nothing to write down yet</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Attempts (*.json);;All files (*)</source>
            <extracomment>ui/practice_room.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Open an attempt</source>
            <extracomment>ui/practice_room.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>An attempt at “{name}” was under way when the program ended.</source>
            <extracomment>ui/practice_room.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Go on with it</source>
            <extracomment>ui/practice_room.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Discard it</source>
            <extracomment>ui/practice_room.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Treat the propeller as live: switch off and its lead proved, plugs out, wheels chocked, nobody in its arc.</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>by so much</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>until lamp changes</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>until edge in line</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>until widest open</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>until piston stops</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>to a disc reading</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>propeller by so much</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Timing lamp</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>What you see</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Turning</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Hol&amp;d the rotor</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>How far to turn</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>By how many degrees, or to which reading before the disc's zero</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Hand on the &amp;propeller</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Lamp</source>
            <extracomment>ui/practice_sight.py, lessons/a-full-job.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Finger</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Magneto in view</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>◀ &amp;Against</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;With ▶</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Turn against rotation</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Turn with rotation</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{way}; by so much: with Shift a tenth of it, with Alt ten times</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Turning the propeller</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Left</source>
            <extracomment>ui/practice_sight.py, ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Right</source>
            <extracomment>ui/practice_sight.py, ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>About {minutes} minutes. Time is a guide and is not marked.</source>
            <extracomment>ui/practice_task.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>No more hints</source>
            <extracomment>ui/practice_task.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A hi&amp;nt ({left} left)</source>
            <extracomment>ui/practice_task.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Another hi&amp;nt ({left} left)</source>
            <extracomment>ui/practice_task.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{percent} % are needed, and no dangerous act. Right, and proved by instruments since the last act that could have changed it, counts whole; right but not proved, half.</source>
            <extracomment>ui/practice_task.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Set of blades</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Straightedge, marks of {divisions}</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Laid along the &amp;step</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Look s&amp;quare over it</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>From where the eye looks over the straightedge</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Behind, square over the edge, ahead</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Electrical</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Crank</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Th&amp;umb over No. 1's plug hole</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Try them</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Put &amp;back</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Blade {blade}</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>In hand: {blades}</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Pick up to three</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Lamp a&amp;cross the contacts</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Meter the &amp;lead to the case</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>From the pulled plug of the switch lead to the case</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Disc on the cra&amp;nk</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Turn the disc on the crank, so that it reads earlier or later under its pointer</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Piston st&amp;op in No. 1</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Thousandths of an inch</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>There is nothing on the tray: eyes and hands are enough here.</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>behind</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>ahead</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>reads later</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>reads earlier</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>magview {version}: a training aid.</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;2 Tray</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;3 Work</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;4 Notebook</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Hand &amp;in…</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Hand in</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Hand in now?</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Then the true values are shown, and nothing more can be done.</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Hand in</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Go on working</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Save the attempt</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Attempts (*.json)</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Save the debrief</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>This attempt has not been saved.</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;1 Lesson</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;1 Task</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>practice</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The attempt cannot be kept for after a crash: {error}</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Loc&amp;k screw tight</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>C&amp;lamp screws tight</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Contact &amp;screw</source>
            <extracomment>ui/practice_work.py, ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Backplate</source>
            <extracomment>ui/practice_work.py, ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Look at the &amp;contacts</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>D&amp;ress them</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Plu&amp;g pulled out</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Paper under the spring tab</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Engine and magneto</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Wh&amp;eels chocked</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Spark plugs o&amp;ut</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Nuts tight</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Rotor pinned</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Lift the magneto o&amp;ff</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Refit by its marks</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Refit as the rotor stands</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Coupling, one tooth at a time</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Paint marks across i&amp;t</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Screw {screw}; plate {plate}.</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>◀ against</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>with ▶</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>New lead</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>New spring tab</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>New insulation</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Magneto flange</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Present</source>
            <extracomment>ui/present.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>◀ Previous</source>
            <extracomment>ui/present.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Name the part before</source>
            <extracomment>ui/present.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Next ▶</source>
            <extracomment>ui/present.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Name the next part; or click a part</source>
            <extracomment>ui/present.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Spotlight</source>
            <extracomment>ui/present.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Dim all but the part that is named</source>
            <extracomment>ui/present.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Freeze</source>
            <extracomment>ui/present.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The picture stands; the bench moves on</source>
            <extracomment>ui/present.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Hide numbers</source>
            <extracomment>ui/present.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>No numbers until they are asked for</source>
            <extracomment>ui/present.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Keep this moment</source>
            <extracomment>ui/present.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Remember the bench as it is</source>
            <extracomment>ui/present.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Before and after</source>
            <extracomment>ui/present.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The kept moment beside now</source>
            <extracomment>ui/present.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>End</source>
            <extracomment>ui/present.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Put away what is shown, then end</source>
            <extracomment>ui/present.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>  {number} of {count}  </source>
            <extracomment>ui/present.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{part}: {told}</source>
            <extracomment>ui/present.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>No part is named yet</source>
            <extracomment>ui/present.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>This moment is kept: “Before and after” shows it beside the bench.</source>
            <extracomment>ui/present.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>FROZEN · the bench has moved on</source>
            <extracomment>ui/present_covers.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>FROZEN · as on the bench</source>
            <extracomment>ui/present_covers.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>This is the moment that was kept: it does not move.</source>
            <extracomment>ui/present_covers.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Before</source>
            <extracomment>ui/present_covers.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Now</source>
            <extracomment>ui/present_covers.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{title}: breaker end of the magneto</source>
            <extracomment>ui/present_covers.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Nothing has changed.</source>
            <extracomment>ui/present_covers.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>there are no fonts to print with; on Debian or Ubuntu fonts-dejavu-core has some</source>
            <extracomment>ui/print_guide.py, ui/print_pdf.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{title} · magview {version} · page {number} of {count}</source>
            <extracomment>ui/print_guide.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>page {page} of {pages}</source>
            <extracomment>ui/print_pdf.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{language} from the next start: other windows are open now.</source>
            <extracomment>ui/renewal.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Reports stay on this computer and are sent nowhere; they hold no names and no words you typed. Whoever looks after the program can make use of one: save it, and hand it on if you wish.</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Fault reports</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>When the program ran last, something in it went wrong. A report of it was kept.</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>What went wrong in the program itself.</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Report</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>What the report says</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Delete</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Save the report</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Deleted.</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>There is no report.</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{file}: cannot be deleted: {reason}</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Training and planning aid with invented magnetos. Treat the propeller as live: switch off, switch lead grounded and proved, plugs out, wheels chocked. The maker's current manual and local rules govern; work on a certified aircraft is done or released by a licensed person.</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>just open</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>just close</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Plate and screw both move the opening, only the screw moves the gap: check both again after tightening.</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Setting</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>From the neutral before No. 1 fires, positive as it turns in service</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Positive with cam rotation; it stops at the end of its slot</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Positive brings the contacts closer</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Hol&amp;d</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Let go, and the magnet pulls the rotor to where it wants it</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>To the E-gap</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>To &amp;opening</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Clamp screws of the backplate tight</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Clamp screws: the plate turns only while they are slack</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Lock screw of the contact screw tight</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Lock screw: the contact screw turns only while it is slack; tightening can shift it</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Go</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Turn</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Run until</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>on and on</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Speed of the run</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Ru&amp;n</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Readings, lobe 1</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>What would put it right</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>For a l&amp;argest gap of</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Set it so</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Every lobe, in firing order</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Rotor degrees; the gap is the largest, at the top of the lobe</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Readings of every lobe</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{gap} (blade {blade})</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>tight</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Opens</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Error</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Closes</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Dwell</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Gap</source>
            <extracomment>ui/setting_panel.py, ui/trials_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{low}° to {high}°</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{opens} of rotor</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>✗ Out of limits: {faults}</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>✓ Within limits</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>within limits, {limit}</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>out of limits, {limit}</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A largest gap of {gap} with opening at the E-gap cannot be had: {reason}.</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Nothing: the contacts open at the E-gap and the largest gap is {gap}.</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>slacken the clamp screws and the lock screw</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{first}, then {then}</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Stop</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>With this setting lobe 1 never opens or never closes the contacts.</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Contacts open at</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>From the E-gap</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Straightedge off mark</source>
            <extracomment>ui/setting_panel.py, ui/uncertainty_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Closed for (dwell)</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>at it</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Top dead centre from two stop readings</source>
            <extracomment>ui/stop_box.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Top dead centre on the disc</source>
            <extracomment>ui/stop_box.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>True top dead centre is at {middle}° on the disc; set the pointer to zero there. (Disc numbered 0 to 360°, or to both sides with what is before zero negative. If the stop was met about bottom dead centre, the top is at {opposite}°. Exact for a rod on the crank pin: use the master rod's.)</source>
            <extracomment>ui/stop_box.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>First</source>
            <extracomment>ui/stop_box.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Second</source>
            <extracomment>ui/stop_box.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Before turning the crank: switch off, switch lead grounded and proved, plugs out, wheels chocked, nobody in the propeller's arc. Paint marks on disc, both flanges and engine before taking anything apart; move one tooth at a time; approach every reading in the direction of rotation, so that backlash is taken up. The maker's current manual and local rules govern.</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{crank}° of crank early = {rotor}° of rotor = {piston} of piston travel.</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{crank}° of crank late = {rotor}° of rotor = {piston} of piston travel.</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Teeth moved from as found</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Teeth moved from as found, left magneto</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Moves that would put it right, best first, left magneto</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Teeth moved from as found, right magneto</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Moves that would put it right, best first, right magneto</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Left fires {left}°, right {right}° before top dead centre: {apart}. Wanted: {wanted}. That is {difference}° from it, {tolerance}° allowed.</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>both together</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>left {angle}° earlier</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>right {angle}° earlier</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>⚠ Treat the propeller as live: switch off, lead proved, plugs out, wheels chocked.</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Where it fires, crank degrees before top dead centre</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Crank from No. 1's firing top dead centre, positive the way the engine turns</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Cran&amp;k</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;As found</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Paint new &amp;marks</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Marks in line across drive flange, disc and magneto flange, as they stand now</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>At the timing wanted.</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Lamp reads</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Fires now</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Show this magneto's coupling</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>To firing</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>To TDC</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{name}: one tooth against rotation</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{name}: one tooth with rotation</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>⚠ The internal timing is out of limits: put that right first, no tooth makes up for it.</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>⚠ The installation does not fit together: {mismatch}.</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The magneto is off the engine: all this holds once it is refitted by its marks.</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The contacts were set anew since the lamp was read: with the teeth as found it would now read {found}. Both magnetos are shown with this one's internal setting.</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>With this setting the contacts never open and close: there is no timing to read.</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Tolerance ±{tolerance}° of crank.</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>left magneto, lamp reads</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>right magneto, lamp reads</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>left magneto, wanted</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>right magneto, wanted</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>left magneto fires now</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>right magneto fires now</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Magneto flange on the disc</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Disc on the drive</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Single</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>With rotation is {way} seen from the drive end.</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Take care: {mismatch}.</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Plate</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Opened</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Degrees</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Millimetres along the slot</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Scale marks</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A trial: set to open at the E-gap</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The thickest blade that passes at the top of lobe 1; 0 if none does</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The thinnest blade that does not pass; 0 if every blade did</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>How far past the E-gap the contacts opened, if the straightedge showed it</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Plate rea&amp;d in</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The plate as it stands, and what blades in steps of a thousandth of an inch would find</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Stri&amp;ke out</source>
            <extracomment>ui/trials_panel.py, ui/wear_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Strike out the trial that is chosen, or the last</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>What to do next</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>T&amp;urn the plate there</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Save what was found…</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Turn the plate on the bench; then set the contacts to open at the E-gap again</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Save a magneto file of your own, with lift, rise and index as the trials tell</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Save what was found</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Saved {name}: open it from the File menu.</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Plate, with rotation +</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Along the slot</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Slot's radius</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Marks, with rotation +</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Between two marks</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Blade that passes</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Blade that does n&amp;ot</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Opened late by</source>
            <extracomment>ui/trials_panel.py, ui/wear_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Fro&amp;m the bench</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Note the trial</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>the blade that passes must be thinner than the one that does not</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>No advice: {refusal}.</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>over {low}</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>✓ Done</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{chance} % likely within limits there</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Comes to</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Share</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>What was read</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Measurement</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Straightedge from the rim mark, positive past it: the contacts open late</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The thickest blade that passes the widest gap</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Take from the &amp;bench</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>What these instruments would read of the bench as it stands</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>With what</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>How sure it is</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Number of Monte Carlo draws</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Draw every reading at random within what its instrument allows, and count</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Progress of the Monte Carlo</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Uncertainty budget of the least sure quantity</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>by Monte Carlo</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{name}, the least sure of them</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>by linear propagation</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{chance} likely within limits ({how})</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Internal timing</source>
            <extracomment>ui/uncertainty_panel.py, ui/window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Blade that passes</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Disc at the first stop</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Disc at the second stop</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Disc, left opens</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Disc, right opens</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>M&amp;onte Carlo</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Ca&amp;ncel</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>where they disagree, go by the Monte Carlo</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Linear propagation (JCGM 100); the Monte Carlo (JCGM 101) checks it.</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Next to improve: {name}.</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>No finer instrument on the list would help.</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Blade gap</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Opens late</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Wear from now on</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Off the heel of the breaker arm in 100 running hours: it opens later, the gap closes</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A pip on one contact in 100 running hours: the blade finds less than the true gap</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Heel, i&amp;n 100 h</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Pip, in 100 h</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Next inspection &amp;after</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Wear the bench by the&amp;se hours</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>See on the bench what those hours would do to it</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Inspections of this setting</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Inspections</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The thickest blade that passed, and half a step more</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>How far past the E-gap it opened, in degrees of rotor</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>At, since it was set</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Gap by blades</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Use these rates</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>From the &amp;bench</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>N&amp;ote</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Two inspections at different hours give rates.</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Magneto and installation files (*.json);;All files (*)</source>
            <extracomment>ui/window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Tables (*.csv *.tsv *.txt);;All files (*)</source>
            <extracomment>ui/window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Internal</source>
            <extracomment>ui/window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>En&amp;gine</source>
            <extracomment>ui/window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Lead</source>
            <extracomment>ui/window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Trials</source>
            <extracomment>ui/window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Trials, and what to try next</source>
            <extracomment>ui/window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Unce&amp;rtainty</source>
            <extracomment>ui/window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>&amp;Wear</source>
            <extracomment>ui/window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Wear and drift</source>
            <extracomment>ui/window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>magview {version}: a training and planning aid; the maker's current manual governs.</source>
            <extracomment>ui/window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Open a magneto or an installation</source>
            <extracomment>ui/window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The bench cannot be kept for after a crash: {error}</source>
            <extracomment>ui/window.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>{file}: cannot be changed: {reason}</source>
            <extracomment>upkeep/desktop.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>nothing can be kept in {folder}: {reason}</source>
            <extracomment>upkeep/places.py, upkeep/reports.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>not known: the system ended the program at once</source>
            <extracomment>upkeep/reports.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>nothing</source>
            <extracomment>upkeep/reports.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>magview: report of a fault</source>
            <extracomment>upkeep/reports.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Kept on this computer; nothing is sent anywhere by itself.</source>
            <extracomment>upkeep/reports.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>When: {when}</source>
            <extracomment>upkeep/reports.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Versions:</source>
            <extracomment>upkeep/reports.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>What and where:</source>
            <extracomment>upkeep/reports.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>What was done last:</source>
            <extracomment>upkeep/reports.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Four-cylinder practice magneto</source>
            <extracomment>magnetos/four-opposed.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Invented for practice; no real magneto has these dimensions. Two poles, two lobes, threaded contact screw.</source>
            <extracomment>magnetos/four-opposed.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Nine-cylinder practice magneto</source>
            <extracomment>magnetos/nine-radial.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Invented for practice; no real magneto has these dimensions. Four poles; compensated cam, one lobe per cylinder, on the distributor shaft at half crank speed. Its lobes are spaced for the shipped nine-cylinder engine.</source>
            <extracomment>magnetos/nine-radial.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Seven-cylinder practice magneto</source>
            <extracomment>magnetos/seven-radial.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Invented for practice; no real magneto has these dimensions. Four poles, one lobe per spark of a rotor turn (uncompensated cam on the rotor shaft).</source>
            <extracomment>magnetos/seven-radial.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Six-cylinder practice magneto, traced lift</source>
            <extracomment>magnetos/traced-six.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Invented for practice; no real magneto has these dimensions. Two poles, two lobes; the lift was traced at the contacts with a dial gauge every 2°, so the arm's other dimensions are not known.</source>
            <extracomment>magnetos/traced-six.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Four-cylinder practice engine</source>
            <extracomment>engines/four-opposed.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Nine-cylinder practice engine</source>
            <extracomment>engines/nine-radial.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Seven-cylinder practice engine</source>
            <extracomment>engines/seven-radial.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Six-cylinder practice engine</source>
            <extracomment>engines/six-inline.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A vernier step or two out</source>
            <extracomment>exercises/a-step-or-two-out.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The magneto came back from overhaul and was refitted by eye. Inside it is right.</source>
            <extracomment>exercises/a-step-or-two-out.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Time it to the engine at its toothed coupling.</source>
            <extracomment>exercises/a-step-or-two-out.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Paint marks across the coupling before you draw the magneto back.</source>
            <extracomment>exercises/a-step-or-two-out.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Read the timing with lamp and disc, turning with rotation only.</source>
            <extracomment>exercises/a-step-or-two-out.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>One tooth with rotation at the magneto and one against it at the disc is the finest step.</source>
            <extracomment>exercises/a-step-or-two-out.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Both magnetos, everything wrong</source>
            <extracomment>exercises/both-everything-wrong.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Two magnetos, two people, two opinions, and an engine that has not run since.</source>
            <extracomment>exercises/both-everything-wrong.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Make both safe, set both inside, time both to the engine and to one another, and close up.</source>
            <extracomment>exercises/both-everything-wrong.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Work to one order on each: safe, contacts, gap, lock screw, opening; then the engine.</source>
            <extracomment>exercises/both-everything-wrong.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The switch of one magneto says nothing of the other.</source>
            <extracomment>exercises/both-everything-wrong.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Teeth last, for both together.</source>
            <extracomment>exercises/both-everything-wrong.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A lock screw that carries along</source>
            <extracomment>exercises/creeping-screw.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Whoever sets this magneto finds it out of adjustment the next day, and swears it was right.</source>
            <extracomment>exercises/creeping-screw.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Set gap and opening so that they are right with every screw tight.</source>
            <extracomment>exercises/creeping-screw.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Measure, tighten the lock screw, measure again.</source>
            <extracomment>exercises/creeping-screw.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The lock screw carries the contact screw along by the same amount each time: lead it by as much.</source>
            <extracomment>exercises/creeping-screw.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Set the gap first, lock it, then bring the opening to the mark with the plate.</source>
            <extracomment>exercises/creeping-screw.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Find the E-gap</source>
            <extracomment>exercises/find-the-e-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A magneto stands on the bench with its breaker cover off. Left alone, the magnet keeps the rotor at neutral.</source>
            <extracomment>exercises/find-the-e-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Turn the rotor to the E-gap and hold it there: the straightedge along the cam's step in line with a mark on the rim.</source>
            <extracomment>exercises/find-the-e-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Turn the rotor with rotation; it pulls back as soon as you let go.</source>
            <extracomment>exercises/find-the-e-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Lay the straightedge on and look square over it: from the side it seems to stand elsewhere.</source>
            <extracomment>exercises/find-the-e-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Leave the straightedge where it is when you hand in; it is your proof.</source>
            <extracomment>exercises/find-the-e-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Fitted with the rotor at neutral</source>
            <extracomment>exercises/fitted-at-neutral.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The magneto was fitted with No. 1 at its firing point, as it should be – but with the rotor left where the magnet holds it.</source>
            <extracomment>exercises/fitted-at-neutral.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Find how far it is out and time it.</source>
            <extracomment>exercises/fitted-at-neutral.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The rotor at neutral is short of the E-gap: what does that make the timing, early or late?</source>
            <extracomment>exercises/fitted-at-neutral.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Paint marks first; the way back is counted in teeth.</source>
            <extracomment>exercises/fitted-at-neutral.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The gap is wrong</source>
            <extracomment>exercises/gap-wrong.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>After new contacts were fitted nobody set them: the gap is far out, and with it the place where they open.</source>
            <extracomment>exercises/gap-wrong.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Bring the largest gap within its limits and the opening to the mark.</source>
            <extracomment>exercises/gap-wrong.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The contact screw moves gap and opening; the backplate moves the opening alone. Begin with the screw.</source>
            <extracomment>exercises/gap-wrong.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Wider contacts open earlier.</source>
            <extracomment>exercises/gap-wrong.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Measure the gap where the contacts stand widest open.</source>
            <extracomment>exercises/gap-wrong.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Left and right apart</source>
            <extracomment>exercises/left-and-right-apart.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The drop on one magneto is larger than on the other. Both are right inside.</source>
            <extracomment>exercises/left-and-right-apart.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Time both magnetos, and bring them together.</source>
            <extracomment>exercises/left-and-right-apart.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Find the disc's zero once and keep it: both are read by the same disc.</source>
            <extracomment>exercises/left-and-right-apart.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Two readings that are each within limits may still be too far apart.</source>
            <extracomment>exercises/left-and-right-apart.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Choose the moves of both together.</source>
            <extracomment>exercises/left-and-right-apart.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Measure the gap</source>
            <extracomment>exercises/measure-the-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The work card asks for the largest gap between the contacts, and for nothing else.</source>
            <extracomment>exercises/measure-the-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Turn the rotor until lobe 1 holds the contacts widest open, measure the gap with blades, and write it down.</source>
            <extracomment>exercises/measure-the-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A blade that goes and the next that does not go stand on both sides of the gap.</source>
            <extracomment>exercises/measure-the-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A blade that drags is within a hundredth of a millimetre of it.</source>
            <extracomment>exercises/measure-the-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Two blades held together fill the steps between single ones.</source>
            <extracomment>exercises/measure-the-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>One lobe is low</source>
            <extracomment>exercises/one-lobe-low.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>One cylinder of this engine misses now and then. The cam has worn, but not beyond use if it is set with care.</source>
            <extracomment>exercises/one-lobe-low.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Set the contacts so that the gap is within limits on every lobe, and the opening at the mark on every lobe.</source>
            <extracomment>exercises/one-lobe-low.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Measure every lobe before you turn anything.</source>
            <extracomment>exercises/one-lobe-low.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Put the middle between the widest and the closest lobe in the middle of the limits.</source>
            <extracomment>exercises/one-lobe-low.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Check every lobe again when all is tight.</source>
            <extracomment>exercises/one-lobe-low.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>One magneto, everything wrong</source>
            <extracomment>exercises/one-magneto-all-wrong.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Bought as it stood. The logbook is silent on the ignition.</source>
            <extracomment>exercises/one-magneto-all-wrong.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Make it safe, set it inside, time it to the engine, and close it up.</source>
            <extracomment>exercises/one-magneto-all-wrong.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Safe first, then inside, then the engine: what is set inside moves the timing.</source>
            <extracomment>exercises/one-magneto-all-wrong.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Contacts, gap, lock screw, opening: in this order.</source>
            <extracomment>exercises/one-magneto-all-wrong.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Dead centre by the stop before anything is read from the disc.</source>
            <extracomment>exercises/one-magneto-all-wrong.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Opens early or late</source>
            <extracomment>exercises/opens-early-or-late.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The gap of this magneto is right, but its backplate has been moved.</source>
            <extracomment>exercises/opens-early-or-late.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Set the backplate so that the contacts open at the mark, close everything up, and check again.</source>
            <extracomment>exercises/opens-early-or-late.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Slacken the clamp screws, not the lock screw: the gap is not the trouble.</source>
            <extracomment>exercises/opens-early-or-late.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Turning the plate with rotation makes the contacts open later.</source>
            <extracomment>exercises/opens-early-or-late.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>What was checked before a screw was tightened has to be checked again after.</source>
            <extracomment>exercises/opens-early-or-late.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Pips on the contacts</source>
            <extracomment>exercises/pips.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>This magneto has run for a long time on the same contacts. The last one to set it measured the gap and found it right.</source>
            <extracomment>exercises/pips.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>See to the contacts, then set gap and opening.</source>
            <extracomment>exercises/pips.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A blade lies on the pip, not on the contact: the true gap is larger than it says.</source>
            <extracomment>exercises/pips.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Dress the contacts before you measure anything.</source>
            <extracomment>exercises/pips.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Several teeth out, and a loose coupling</source>
            <extracomment>exercises/several-teeth-out.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Starts badly, kicks back. The coupling rattles, and the crank disc has been put on by eye.</source>
            <extracomment>exercises/several-teeth-out.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Find the disc's zero, read the timing as found and write it down, and time the magneto.</source>
            <extracomment>exercises/several-teeth-out.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>With play in the coupling a reading is true only when approached with rotation.</source>
            <extracomment>exercises/several-teeth-out.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>If it fires after dead centre there is no pressure to feel: go by the finger.</source>
            <extracomment>exercises/several-teeth-out.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Plan the move with the fewest teeth that comes within limits, and move one tooth at a time.</source>
            <extracomment>exercises/several-teeth-out.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Is it safe?</source>
            <extracomment>exercises/switch-lead.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A note in the cockpit says: switch check doubtful. Nobody has touched the aircraft since.</source>
            <extracomment>exercises/switch-lead.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Find out what the switch lead of this magneto suffers from, if anything, write down your finding, put it right, and prove it.</source>
            <extracomment>exercises/switch-lead.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Until you know better the propeller is live: chocks, and spark plugs out, before it is turned.</source>
            <extracomment>exercises/switch-lead.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Plug pulled, the meter must see ground with the switch off, and none with it on.</source>
            <extracomment>exercises/switch-lead.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>With the switch on the lamp must light as the contacts open; with the plug pulled the spring tab must keep it dark.</source>
            <extracomment>exercises/switch-lead.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>True dead centre</source>
            <extracomment>exercises/true-dead-centre.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The disc on the crank was put on by eye. Before anything is timed by it, its zero has to be found.</source>
            <extracomment>exercises/true-dead-centre.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Find what the disc reads at the top dead centre of No. 1, write it down (after the zero: with a minus), and set the disc to zero.</source>
            <extracomment>exercises/true-dead-centre.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Chocks first, switch off, spark plugs out; then the propeller may be turned.</source>
            <extracomment>exercises/true-dead-centre.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>With the stop fitted, turn gently until the piston meets it, read the disc; turn back until it meets it from the other side, read again.</source>
            <extracomment>exercises/true-dead-centre.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Half-way between the two readings is top dead centre.</source>
            <extracomment>exercises/true-dead-centre.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>When do the contacts open?</source>
            <extracomment>exercises/when-do-they-open.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Somebody has set this magneto and left it closed up. Nothing is to be changed yet: first you want to know.</source>
            <extracomment>exercises/when-do-they-open.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Find where lobe 1 opens the contacts, by lamp and straightedge, and write down how far past the mark that is (short of it: with a minus).</source>
            <extracomment>exercises/when-do-they-open.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>If the lamp stays dark whatever you do, something grounds the primary: look at the switch.</source>
            <extracomment>exercises/when-do-they-open.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Turn with rotation, slowly, and stop where the lamp lights.</source>
            <extracomment>exercises/when-do-they-open.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The marks on the rim are half a millimetre apart; mark 1 belongs to lobe 1.</source>
            <extracomment>exercises/when-do-they-open.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The wrong stroke</source>
            <extracomment>exercises/wrong-stroke.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>It was timed with care: the lamp lights where it should. The engine spits back through the carburettor and will not run.</source>
            <extracomment>exercises/wrong-stroke.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Find out why, and put it right.</source>
            <extracomment>exercises/wrong-stroke.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A thumb over No. 1's plug hole tells compression from exhaust.</source>
            <extracomment>exercises/wrong-stroke.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Where does the distributor finger point when No. 1 comes up on compression?</source>
            <extracomment>exercises/wrong-stroke.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Half a turn of the finger cannot be had by teeth: the magneto has to come off. Pull the plug, mark, nuts off.</source>
            <extracomment>exercises/wrong-stroke.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Off the engine a slip of paper under the spring tab lets the lamp see the contacts.</source>
            <extracomment>exercises/wrong-stroke.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A full job</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>From the chocks to the last nut: safe, inside, dead centre, coupling, closed up.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A magneto with its plate off, its coupling some fine steps out, and a lead nobody has looked at.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Follow the lesson.</source>
            <extracomment>lessons/a-full-job.json, lessons/contacts-and-lamp.json, lessons/measuring-the-gap.json, lessons/neutral-and-e-gap.json, lessons/one-vernier-step.json, lessons/plate-and-screw.json, lessons/the-switch-lead.json, lessons/top-dead-centre.json, lessons/what-the-parts-are.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Chocks</source>
            <extracomment>lessons/a-full-job.json, lessons/top-dead-centre.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Put chocks at the wheels.</source>
            <extracomment>lessons/a-full-job.json, lessons/the-switch-lead.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Prove the lead</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Pull the plug, meter, and do what the meter tells you to, until the lead is proved.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Broken inside: it had been live.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>No ground with the switch off: a new lead.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Plug in</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Push the plug in again.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Spark plugs out</source>
            <extracomment>lessons/a-full-job.json, lessons/top-dead-centre.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Take the spark plugs out.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Clip the lamp on and switch on: with the plugs out nothing can fire.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Where do they open?</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Straightedge on, looked at square; turn the propeller with rotation until the lamp lights.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Past the mark: the contacts open late.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The gap</source>
            <extracomment>lessons/a-full-job.json, lessons/measuring-the-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Turn until the contacts stand widest open and try blades: the gap may be right.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The plate</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Slacken the clamp screws, bring the opening to the mark with the backplate, and clamp it.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Late, so against rotation: about 3°.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Check inside</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Turn with rotation until the lamp lights, and look at the straightedge.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Dead centre</source>
            <extracomment>lessons/a-full-job.json, lessons/top-dead-centre.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Fit the stop, meet it from both sides, set the disc to zero.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Half-way between the two readings, turned the other way.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Stop out</source>
            <extracomment>lessons/a-full-job.json, lessons/top-dead-centre.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Take the stop out.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Read the timing</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>With rotation to the lamp, finger at No. 1; write down what the disc reads.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Paint marks across the coupling.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Teeth</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Nuts off, move tooth by tooth until it fires where it should, nuts on.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Each pair of teeth, magneto flange against rotation and disc with it, is about 1.1° of crank later.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Check the timing</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Turn the propeller with rotation until the lamp lights.</source>
            <extracomment>lessons/a-full-job.json, lessons/one-vernier-step.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Close up</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Switch off.</source>
            <extracomment>lessons/a-full-job.json, lessons/one-vernier-step.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Safe, set, timed, checked, closed. What is written in the log is what was read after the last nut.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Contacts and timing lamp</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The lamp tells when the contacts part – if nothing else grounds the coil.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Contacts and lamp</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A magneto on the bench, its lead plugged in, the switch off.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The lamp</source>
            <extracomment>lessons/contacts-and-lamp.json, lessons/one-vernier-step.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Clip the timing lamp across the contacts.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A grounded coil</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Turn the rotor right round with the lamp watched (turn until the lamp changes).</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The contacts opened and closed, and the lamp stayed dark: the switch is off and grounds the coil. A dark lamp proves nothing.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Switch on</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Switch the ignition on. On the bench that harms nobody; on an aircraft the propeller would now be live.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>They open</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Turn with rotation until the lamp lights.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Here the contacts part.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Widest open</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Turn on until the contacts stand widest open.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The top of the lobe: here the gap is measured.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>They close</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Turn on until the lamp goes out.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Where exactly?</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Lay the straightedge on, look square over it, and turn with rotation until the lamp lights.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Lamp and straightedge together say how far from the E-gap the contacts open.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>If the lamp is lit already, turn on until it goes out, and then until it lights.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Measuring the gap</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Blades say go, drag or no-go. Between go and no-go lies the gap.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A magneto whose gap nobody has measured.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>To the top</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Turn the rotor until the contacts stand widest open.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A thin one</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Try a blade that surely goes, such as 5 thousandths of an inch.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>It goes: the gap is larger.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A thick one</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Try one that does not go.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The gap lies between the two. Halve what is left, and halve again.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Drag</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Find the blade or stack that is just gripped.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Within a hundredth of a millimetre. But of what?</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Try 8 and a half: two blades held together fill the steps between single ones.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Look</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Look at the faces of the contacts.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A pip on one, a pit in the other: the blade lay on the pip, and the true gap is larger.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Clean</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Dress the contacts.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Once more</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Measure again until a blade or stack drags, and write the gap down.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The same contacts, another number: only the second is the gap.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Neutral, full register, E-gap</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The rotor by hand: where the magnet wants it, and where it gives the strongest spark.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The rotor by hand</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A magneto on the bench, its rotor free.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Out of neutral</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The rotor rests at neutral. Turn it with rotation to full register, where a pole stands square under the pole shoe.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>You felt it pull back, and then less and less: at full register the pull is gone.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>With four poles, full register lies 45° past neutral.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Let go</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Take your hand off.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The magnet took the rotor to a neutral. It always does.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The straightedge</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Lay the straightedge along the cam's step, and look square over it.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Seen from the side, an edge above the rim seems to stand elsewhere.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The E-gap</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Turn the rotor with rotation until the straightedge is in line with a mark.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A few degrees past neutral: the current in the coil is at its strongest. Contacts that part here give the best spark.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>It falls back</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Let go of the rotor here.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Back to neutral. Whoever fits a magneto has to hold the rotor at the E-gap, or pin it.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>One step of the vernier</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A disc with one tooth more on one side than on the other: two large steps that make one small one.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The coupling</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A magneto timed some fine steps early. The disc on the crank reads true.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Clip the timing lamp across the contacts. The plugs are out and the wheels chocked.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Read it</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Turn the propeller with rotation until the lamp lights with the finger at No. 1, and write down what the disc reads.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Always with rotation: turned back, the play in the coupling lies on the other side.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The finger comes to No. 1 once in two turns of the propeller.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Paint marks</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Paint marks across drive flange, disc and magneto flange.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Without marks, a disc that comes away with the magneto is a puzzle.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Nuts off</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Take the nuts off and draw the magneto back.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Two teeth</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>It fires early, so the rotor has to go back. Move the magneto flange against rotation and the disc with rotation, as many times as it takes, one tooth each time.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>One tooth is more than 18° of rotor; one each way is less than one.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A pair of teeth, −1 and +1, makes it about 1.1° of crank later. It is about 3° early.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Nuts on</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Push the magneto home and tighten its nuts.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Check</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The reading with everything tight is the one that is signed for.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Safe</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Plate and screw</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The contact screw moves gap and opening, the backplate the opening alone. In this order they bring both right.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Set by somebody in a hurry: gap too wide, opening late.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Slacken the lock screw</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The gap comes first. Slacken the lock screw.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Closer</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Turn the contact screw so that the contacts come closer, 3° at least.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The gap is smaller now, and the contacts open later still: the screw moves both.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Tighten and measure</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Bring the gap within limits with the lock screw tight.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Did you notice? Tightening carried the screw along. What counts is the gap with everything tight.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Limits are 8 to 10 thousandths of an inch. The lock screw carries the contact screw about 2° closer each time it is tightened.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Blades say so</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Turn until the contacts stand widest open, and try a blade.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Slacken the clamps</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The opening is late. Slacken the clamp screws.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Against rotation</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Turn the backplate against rotation, a degree at least.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The contacts now open earlier. The gap is what it was.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>To the mark</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Bring the opening to the mark, and clamp the plate.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Lay the straightedge on, look square over it, and watch the lamp. A thirty-second of an inch at the rim is about 1¼° here.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Check again</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>With all tight: turn with rotation until the lamp lights, the straightedge on and looked at square.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Only what was checked after the last screw was tightened is known.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Is the switch lead sound?</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A magneto is live unless it is grounded. The lead that grounds it can be broken where nobody sees it.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The switch lead</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>An aircraft back from a long lay-up.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Chocks first</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Pull the plug</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>With the switch off, pull the plug of the switch lead. A spring tab now grounds the magneto – if it touches.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Meter</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Meter from the lead's plug to the case, switch off.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>No ground with the switch off: this magneto was live all the time it was thought safe.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A new lead</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Put in a new lead.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Prove it</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Meter again, switch off.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Ground. That is half of the proof.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The other half</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Switch on, and meter again.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>No ground with the switch on: the switch works both ways.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Leave it safe</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Switch off, and push the plug in.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Now, and not before, the switch can be trusted – until the next time.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Top dead centre by the stop</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Near the top the piston hardly moves: dead centre is found from both sides, not by looking for it.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>An engine with a disc on its crank, put on by eye.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Put chocks at the wheels. The propeller is treated as live.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Take the spark plugs out: nothing can fire, nothing is compressed.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The stop</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Fit the piston stop in No. 1. If the piston stands too high, turn the propeller on first.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>From one side</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Turn the propeller gently with rotation until the piston meets the stop, and read the disc.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>From the other</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Turn back until it meets the stop from the other side, and read the disc again.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Dead centre lies half-way between the two readings.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Write it down</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Write down what the disc reads at top dead centre.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Set the disc</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Turn the disc on the crank so that it reads zero there.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The half-way reading, turned the other way.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Take the stop out, or the next turn of the propeller ends at it.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>From here the disc tells the truth.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>What the parts are</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The breaker end of a magneto, part by part. Point at each part in the picture as it is asked for.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The parts</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A magneto with its breaker cover off, seen from the breaker end.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The rotor</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A magnet with north and south poles that alternate round it. The engine turns it. Point at the rotor.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Its field runs through the iron of the coil, one way and then the other.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The pole shoe</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The iron that leads the magnet's field up to the coil and back. Point at a pole shoe.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Halfway between two poles the field in the iron changes its sense: that place is called neutral.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The cam</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>It turns with the rotor and has a lobe for each spark of a turn. Point at the cam.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Its lobes push the breaker arm outwards.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The heel</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The block on the breaker arm that rides on the cam. Point at the heel.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>When the heel wears, the contacts open later and less wide.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The breaker arm</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>It swings about its pivot and carries the moving contact. Point at the breaker arm.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A spring presses it towards the cam.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>While they touch, the coil's primary current flows; as they part, it breaks and the spark jumps. Point at the contacts.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>When they part, and how far, is what this program is about.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The contact screw</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>It moves the fixed contact nearer or further off. Point at the contact screw.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Nearer: the contacts open later and less wide.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The lock screw</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>It holds the contact screw. Point at the lock screw.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Tightening it can carry the contact screw along: measure again afterwards.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The backplate</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>It carries contacts and breaker arm, and can be turned about the cam. Point at the backplate.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>With rotation: the contacts open later. The gap does not change.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The clamp screw</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>They hold the backplate. Point at a clamp screw.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A plate that is not clamped will not stay.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The step</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A flat edge on the cam along which a straightedge is laid. Point at the step.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>It turns with the cam and shows where the rotor stands.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>The rim mark</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>A mark on the housing's rim: with the step in line, the rotor is at the E-gap. Point at a rim mark.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>There the contacts should just begin to open.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
    </context>
</TS>
