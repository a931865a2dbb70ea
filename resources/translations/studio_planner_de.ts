<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>after missing</name>
    <message>
        <source>touch-test it and pour</source>
        <translation>Fingerprobe machen und gießen</translation>
    </message>
    <message>
        <source>pour it on the firm film</source>
        <translation>auf den festen Film gießen</translation>
    </message>
    <message>
        <source>wash and sand it</source>
        <translation>waschen und anschleifen</translation>
    </message>
    <message>
        <source>put a lock coat on</source>
        <translation>eine Schutzschicht auftragen</translation>
    </message>
    <message>
        <source>strip it back to the blank</source>
        <translation>bis auf den Rohling abtragen</translation>
    </message>
    <message>
        <source>The studio is another one now; plan them again.</source>
        <translation>Das Studio ist jetzt ein anderes; plane sie noch einmal.</translation>
    </message>
</context>
<context>
    <name>away</name>
    <message>
        <source>Away from</source>
        <translation>Abwesend von</translation>
    </message>
    <message>
        <source>Back at</source>
        <translation>Zurück um</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Away this evening</source>
        <translation>Heute Abend weg</translation>
    </message>
    <message>
        <source>Away today</source>
        <translation>Heute weg</translation>
    </message>
    <message>
        <source>Add an absence</source>
        <translation>Abwesenheit eintragen</translation>
    </message>
    <message>
        <source>Remove what has gone by</source>
        <translation>Vergangenes entfernen</translation>
    </message>
    <message>
        <source>Nobody is missed.</source>
        <translation>Niemand fehlt.</translation>
    </message>
    <message>
        <source>{name} is always there.</source>
        <translation>{name} ist immer da.</translation>
    </message>
    <message>
        <source>Hide what has gone by</source>
        <translation>Vergangenes ausblenden</translation>
    </message>
    <message>
        <source>Gone by: {count}</source>
        <translation>Vergangen: {count}</translation>
    </message>
</context>
<context>
    <name>backups</name>
    <message>
        <source>Its newest backup is {path}: open that and save a copy of it.</source>
        <translation>Die neueste Sicherung ist {path}: diese öffnen und eine Kopie davon speichern.</translation>
    </message>
    <message>
        <source>Today&apos;s backup was not made. {why}</source>
        <translation>Die Sicherung für heute wurde nicht gemacht. {why}</translation>
    </message>
    <message>
        <source>Backed up. It is with the others of this studio.</source>
        <translation>Gesichert. Die Sicherung liegt bei den anderen dieses Studios.</translation>
    </message>
    <message>
        <source>Bring back the backup of {when}</source>
        <translation>Sicherung von {when} zurückholen</translation>
    </message>
    <message>
        <source>The studio is as it was on {when}. How it was before is in a backup, and can be undone.</source>
        <translation>Das Studio ist wie am {when}. Der Stand davor ist gesichert, und das Zurückholen lässt sich rückgängig machen.</translation>
    </message>
    <message>
        <source>Back up now</source>
        <translation>Jetzt sichern</translation>
    </message>
    <message>
        <source>Backups</source>
        <translation>Sicherungen</translation>
    </message>
    <message>
        <source>Look at it</source>
        <translation>Ansehen</translation>
    </message>
    <message>
        <source>Bring this one back</source>
        <translation>Diese zurückholen</translation>
    </message>
    <message>
        <source>The whole studio, plan included, is backed up once on each day on which it is opened, whenever you ask, and before one is brought back. The ten newest stay, and for thirty days the last of each day.</source>
        <translation>Das ganze Studio samt Plan wird an jedem Tag, an dem es geöffnet wird, einmal gesichert, außerdem auf Wunsch und bevor eine Sicherung zurückgeholt wird. Die zehn neuesten bleiben, und dreißig Tage lang die letzte jedes Tages.</translation>
    </message>
    <message>
        <source>They are in {folder}.</source>
        <translation>Sie liegen in {folder}.</translation>
    </message>
    <message>
        <source>There is no folder here to keep backups in.</source>
        <translation>Hier gibt es keinen Ordner für Sicherungen.</translation>
    </message>
    <message>
        <source>There is no backup of this studio yet.</source>
        <translation>Von diesem Studio gibt es noch keine Sicherung.</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>nicht lesbar</translation>
    </message>
    <message>
        <source>1 piece</source>
        <translation>1 Stück</translation>
    </message>
    <message>
        <source>{count} pieces</source>
        <translation>{count} Stücke</translation>
    </message>
    <message>
        <source>1 order</source>
        <translation>1 Auftrag</translation>
    </message>
    <message>
        <source>{count} orders</source>
        <translation>{count} Aufträge</translation>
    </message>
    <message>
        <source>not planned</source>
        <translation>nicht geplant</translation>
    </message>
    <message>
        <source>planned {when}</source>
        <translation>geplant {when}</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Stücke</translation>
    </message>
    <message>
        <source>Orders</source>
        <translation>Aufträge</translation>
    </message>
    <message>
        <source>Products</source>
        <translation>Produkte</translation>
    </message>
    <message>
        <source>Hands</source>
        <translation>Hände</translation>
    </message>
    <message>
        <source>Spots</source>
        <translation>Plätze</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>It is the studio as it is now.</source>
        <translation>Es ist das Studio, wie es jetzt ist.</translation>
    </message>
    <message>
        <source>Pieces, orders, products and hands are as they are now.</source>
        <translation>Stücke, Aufträge, Produkte und Hände sind wie jetzt.</translation>
    </message>
    <message>
        <source>Places</source>
        <translation>Räume</translation>
    </message>
    <message>
        <source>would come back: {names}</source>
        <translation>käme zurück: {names}</translation>
    </message>
    <message>
        <source>would go: {names}</source>
        <translation>es fiele weg: {names}</translation>
    </message>
    <message>
        <source>would be as before: {names}</source>
        <translation>wäre wie vorher: {names}</translation>
    </message>
    <message>
        <source>{names} and {count} more</source>
        <translation>{names} und {count} weitere</translation>
    </message>
</context>
<context>
    <name>bars</name>
    <message>
        <source>{bar}, coat {number} of {count}, pinned</source>
        <translation>{bar}, Schicht {number} von {count}, festgesteckt</translation>
    </message>
    <message>
        <source>{bar}, coat {number} of {count}</source>
        <translation>{bar}, Schicht {number} von {count}</translation>
    </message>
    <message>
        <source>spot {spots}</source>
        <translation>Platz {spots}</translation>
    </message>
    <message>
        <source>Not planned: {reason}</source>
        <translation>Nicht geplant: {reason}</translation>
    </message>
    <message>
        <source>Poured {when}</source>
        <translation>Gegossen {when}</translation>
    </message>
    <message>
        <source>Hands {when}</source>
        <translation>Hände {when}</translation>
    </message>
    <message>
        <source>{product}, {film}, spot {spot}.</source>
        <translation>{product}, {film}, Platz {spot}.</translation>
    </message>
    <message>
        <source>Joint: {joint}.</source>
        <translation>Verbund: {joint}.</translation>
    </message>
    <message>
        <source>Pinned: planning leaves it at this time until you let it go.</source>
        <translation>Festgesteckt: Planen lässt es an dieser Zeit, bis es losgelassen wird.</translation>
    </message>
    <message>
        <source>Touch the coat below first: it must be tacky and leave no mark.</source>
        <translation>Vorher die Schicht darunter berühren: Sie muss kleben, ohne am Finger zu bleiben.</translation>
    </message>
    <message>
        <source>Dew-point margin unknown: no humidity was read.</source>
        <translation>Abstand zum Taupunkt unbekannt: Es wurde keine Luftfeuchte gelesen.</translation>
    </message>
    <message>
        <source>Likely: {stages}.</source>
        <translation>Wahrscheinlich: {stages}.</translation>
    </message>
    <message>
        <source>stays open</source>
        <translation>bleibt offen</translation>
    </message>
    <message>
        <source>closes {when}</source>
        <translation>schließt {when}</translation>
    </message>
    <message>
        <source>Window for the next coat opens {opens}, {closes}.</source>
        <translation>Das Fenster für die nächste Schicht öffnet {opens}, {closes}.</translation>
    </message>
    <message>
        <source>Nobody can work {spans}.</source>
        <translation>Niemand kann arbeiten: {spans}.</translation>
    </message>
    <message>
        <source>Safe to: {stages}.</source>
        <translation>Sicher ab: {stages}.</translation>
    </message>
    <message>
        <source>Between {span}.</source>
        <translation>Im Zeitraum {span}.</translation>
    </message>
    <message>
        <source>For the coat: {coat}.</source>
        <translation>Für die Schicht: {coat}.</translation>
    </message>
</context>
<context>
    <name>bench</name>
    <message>
        <source>Bench - Studio planner</source>
        <translation>Werkbank - Studio planner</translation>
    </message>
    <message>
        <source>Leave the bench</source>
        <translation>Werkbank verlassen</translation>
    </message>
    <message>
        <source>Nothing needs hands.</source>
        <translation>Nichts braucht Hände.</translation>
    </message>
    <message>
        <source>All poured: write it down</source>
        <translation>Alles gegossen: aufschreiben</translation>
    </message>
    <message>
        <source>Not yet: forget the start</source>
        <translation>Noch nicht: Start vergessen</translation>
    </message>
    <message>
        <source>A met B: start</source>
        <translation>A trifft B: Start</translation>
    </message>
    <message>
        <source>I begin now</source>
        <translation>Ich fange jetzt an</translation>
    </message>
    <message>
        <source>{what}: done now</source>
        <translation>{what}: jetzt erledigt</translation>
    </message>
    <message>
        <source>Touch test</source>
        <translation>Fingerprobe</translation>
    </message>
    <message>
        <source>{touch}: {verdict}</source>
        <translation>{touch}: {verdict}</translation>
    </message>
    <message>
        <source>No test after all</source>
        <translation>Doch keine Probe</translation>
    </message>
    <message>
        <source>Undo the last tap</source>
        <translation>Letzten Tipp zurück</translation>
    </message>
    <message>
        <source>Next thing</source>
        <translation>Nächste Aufgabe</translation>
    </message>
    <message>
        <source>Weigh it</source>
        <translation>Abwiegen</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Then</source>
        <translation>Danach</translation>
    </message>
    <message>
        <source>Windows closing</source>
        <translation>Schließt bald</translation>
    </message>
    <message>
        <source>Ready</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>Poured: {piece}</source>
        <translation>Gegossen: {piece}</translation>
    </message>
    <message>
        <source>left</source>
        <translation>übrig</translation>
    </message>
    <message>
        <source>until it begins</source>
        <translation>bis es losgeht</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>overdue</source>
        <translation>überfällig</translation>
    </message>
    <message>
        <source>since A met B</source>
        <translation>seit A auf B traf</translation>
    </message>
    <message>
        <source>since you began</source>
        <translation>seit Beginn</translation>
    </message>
    <message>
        <source>Else: {what}</source>
        <translation>Sonst: {what}</translation>
    </message>
    <message>
        <source>else sand</source>
        <translation>sonst anschleifen</translation>
    </message>
    <message>
        <source>cannot be saved later</source>
        <translation>später nicht zu retten</translation>
    </message>
    <message>
        <source>{closes}  {piece}, {coat}: closes {left}, {saved}</source>
        <translation>{closes}  {piece}, {coat}: schließt {left}, {saved}</translation>
    </message>
    <message>
        <source>may be displayed</source>
        <translation>darf ausgestellt werden</translation>
    </message>
    <message>
        <source>may be packed</source>
        <translation>darf verpackt werden</translation>
    </message>
    <message>
        <source>fully cured</source>
        <translation>ausgehärtet</translation>
    </message>
</context>
<context>
    <name>calendar</name>
    <message>
        <source>Pour: {whom}</source>
        <translation>Gießen: {whom}</translation>
    </message>
    <message>
        <source>Mix: {product}</source>
        <translation>Mischung: {product}</translation>
    </message>
    <message>
        <source>{coat}: on {spot}</source>
        <translation>{coat}: auf {spot}</translation>
    </message>
    <message>
        <source>It has to begin by {until}.</source>
        <translation>Es muss bis {until} beginnen.</translation>
    </message>
    <message>
        <source>Last start: {whom}</source>
        <translation>Letzter Beginn: {whom}</translation>
    </message>
    <message>
        <source>After that no bond, and no sanding helps.</source>
        <translation>Danach kein Verbund, und Schleifen hilft nicht.</translation>
    </message>
    <message>
        <source>{what}: {piece}</source>
        <translation>{what}: {piece}</translation>
    </message>
    <message>
        <source>{order} leaves ({promise})</source>
        <translation>{order} geht ab ({promise})</translation>
    </message>
    <message>
        <source>Does the phone ring?</source>
        <translation>Klingelt das Telefon?</translation>
    </message>
    <message>
        <source>It should have rung five minutes before this starts. If it did not, see the calendar&apos;s own settings for notifications. This event can be taken away.</source>
        <translation>Es sollte fünf Minuten vor diesem Beginn geklingelt haben. Wenn nicht, sieh in den Einstellungen des Kalenders nach den Mitteilungen. Dieser Termin kann gelöscht werden.</translation>
    </message>
    <message>
        <source>A test</source>
        <translation>Eine Probe</translation>
    </message>
    <message>
        <source>{name} holds one event, for which the phone should ring in five minutes: bring it there at once.</source>
        <translation>{name} enthält einen Termin, zu dem das Telefon in fünf Minuten klingeln sollte: Bring die Datei gleich dorthin.</translation>
    </message>
    <message>
        <source>There is no plan yet to put into a calendar: plan first.</source>
        <translation>Es gibt noch keinen Plan für einen Kalender: Plane zuerst.</translation>
    </message>
    <message>
        <source>{name} is being written…</source>
        <translation>{name} wird geschrieben…</translation>
    </message>
    <message>
        <source>{name} is not written: nothing that is planned for then or for it lies ahead.</source>
        <translation>{name} wurde nicht geschrieben: Dafür ist nichts geplant, was noch bevorsteht.</translation>
    </message>
    <message>
        <source>{count} event</source>
        <translation>{count} Termin</translation>
    </message>
    <message>
        <source>{count} events</source>
        <translation>{count} Termine</translation>
    </message>
    <message>
        <source>{name} holds {events}.</source>
        <translation>{name} enthält {events}.</translation>
    </message>
    <message>
        <source>{name} holds {events}, and {gone} that were called off.</source>
        <translation>{name} enthält {events} und {gone} abgesagte.</translation>
    </message>
    <message>
        <source>Import it into a calendar of its own.</source>
        <translation>Importiere die Datei in einen eigenen Kalender.</translation>
    </message>
    <message>
        <source>The whole &amp;plan…</source>
        <translation>Den ganzen &amp;Plan…</translation>
    </message>
    <message>
        <source>This &amp;week…</source>
        <translation>Diese &amp;Woche…</translation>
    </message>
    <message>
        <source>One &amp;order</source>
        <translation>Einen &amp;Auftrag</translation>
    </message>
    <message>
        <source>A &amp;test event…</source>
        <translation>Einen Probe&amp;termin…</translation>
    </message>
    <message>
        <source>{target} is there already and is no calendar file that was written here; choose another name.</source>
        <translation>{target} ist schon da und keine Kalenderdatei von hier; wähle einen anderen Namen.</translation>
    </message>
</context>
<context>
    <name>caution</name>
    <message>
        <source>The product&apos;s safety data sheet, its label, local rules and a qualified adviser decide.</source>
        <translation>Maßgeblich sind Sicherheitsdatenblatt und Etikett des Produkts, örtliche Vorschriften und fachkundiger Rat.</translation>
    </message>
</context>
<context>
    <name>changes</name>
    <message>
        <source>Undone: {words}.</source>
        <translation>Rückgängig: {words}.</translation>
    </message>
    <message>
        <source>Done again: {words}.</source>
        <translation>Wiederholt: {words}.</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>&amp;Do again</source>
        <translation>&amp;Wiederholen</translation>
    </message>
    <message>
        <source>Somebody</source>
        <translation>Jemand</translation>
    </message>
    <message>
        <source>Add {name}</source>
        <translation>{name} hinzufügen</translation>
    </message>
    <message>
        <source>Remove {person}</source>
        <translation>{person} entfernen</translation>
    </message>
    <message>
        <source>{person}, place in the list</source>
        <translation>{person}, Stelle in der Liste</translation>
    </message>
    <message>
        <source>{person}, {what}</source>
        <translation>{person}, {what}</translation>
    </message>
    <message>
        <source>working hours</source>
        <translation>Arbeitszeiten</translation>
    </message>
    <message>
        <source>away</source>
        <translation>Abwesenheit</translation>
    </message>
    <message>
        <source>away, what has gone by</source>
        <translation>Abwesenheit, Vergangenes</translation>
    </message>
    <message>
        <source>away this evening</source>
        <translation>heute Abend weg</translation>
    </message>
    <message>
        <source>away today</source>
        <translation>heute weg</translation>
    </message>
    <message>
        <source>Studio, {what}</source>
        <translation>Studio, {what}</translation>
    </message>
    <message>
        <source>Rule of thumb, {what}</source>
        <translation>Faustregel, {what}</translation>
    </message>
    <message>
        <source>{person} is away</source>
        <translation>{person} ist weg</translation>
    </message>
    <message>
        <source>Heat {place} tonight</source>
        <translation>{place} heute Nacht heizen</translation>
    </message>
    <message>
        <source>{person} works more on {day}</source>
        <translation>{person} arbeitet am {day} länger</translation>
    </message>
    <message>
        <source>Add spot {name}</source>
        <translation>Platz {name} hinzufügen</translation>
    </message>
    <message>
        <source>{film}, at another time</source>
        <translation>{film}, zu anderer Zeit</translation>
    </message>
    <message>
        <source>Remove {place}</source>
        <translation>{place} entfernen</translation>
    </message>
    <message>
        <source>{place}, place in the list</source>
        <translation>{place}, Stelle in der Liste</translation>
    </message>
    <message>
        <source>{place}, {label}</source>
        <translation>{place}, {label}</translation>
    </message>
    <message>
        <source>Remove {spot}</source>
        <translation>{spot} entfernen</translation>
    </message>
    <message>
        <source>{spot}, place on the shelf</source>
        <translation>{spot}, Stelle im Regal</translation>
    </message>
    <message>
        <source>{spot}, {label}</source>
        <translation>{spot}, {label}</translation>
    </message>
    <message>
        <source>{place}, expected air from its readings</source>
        <translation>{place}, erwartete Luft aus den Messwerten</translation>
    </message>
    <message>
        <source>{place}, readings of {look}</source>
        <translation>{place}, Messwerte aus {look}</translation>
    </message>
    <message>
        <source>{place}, a reading</source>
        <translation>{place}, ein Messwert</translation>
    </message>
    <message>
        <source>{place}, all readings</source>
        <translation>{place}, alle Messwerte</translation>
    </message>
    <message>
        <source>{place}, the last reading</source>
        <translation>{place}, der letzte Messwert</translation>
    </message>
    <message>
        <source>Reminders, {what}</source>
        <translation>Erinnerungen, {what}</translation>
    </message>
</context>
<context>
    <name>costs</name>
    <message>
        <source>mix</source>
        <translation>Mischung</translation>
    </message>
    <message>
        <source>colourants</source>
        <translation>Farbmittel</translation>
    </message>
    <message>
        <source>leaf</source>
        <translation>Blattmetall</translation>
    </message>
    <message>
        <source>blank</source>
        <translation>Rohling</translation>
    </message>
    <message>
        <source>consumables</source>
        <translation>Verbrauchsmaterial</translation>
    </message>
    <message>
        <source>attended time</source>
        <translation>Arbeitszeit</translation>
    </message>
    <message>
        <source>overhead</source>
        <translation>Gemeinkosten</translation>
    </message>
    <message>
        <source>scrap share</source>
        <translation>Ausschussanteil</translation>
    </message>
    <message>
        <source>mixing</source>
        <translation>Mischen</translation>
    </message>
    <message>
        <source>pouring</source>
        <translation>Gießen</translation>
    </message>
    <message>
        <source>washing and sanding</source>
        <translation>Waschen und Anschleifen</translation>
    </message>
    <message>
        <source>turning</source>
        <translation>Wenden</translation>
    </message>
    <message>
        <source>tape and drips</source>
        <translation>Klebeband und Tropfen</translation>
    </message>
    <message>
        <source>packing</source>
        <translation>Verpacken</translation>
    </message>
    <message>
        <source>{agreed} were agreed on, {lacking} less than what the order costs.</source>
        <translation>Vereinbart sind {agreed}, {lacking} weniger, als der Auftrag kostet.</translation>
    </message>
    <message>
        <source>Attended time is not in it: enter what an hour costs.</source>
        <translation>Die Arbeitszeit ist nicht enthalten: Eintragen, was eine Stunde kostet.</translation>
    </message>
    <message>
        <source>{name} is not in it: enter it as a pigment with its price.</source>
        <translation>{name} ist nicht enthalten: als Pigment mit Preis eintragen.</translation>
    </message>
    <message>
        <source>{name} is not in it: enter the side and the price of one leaf under Products.</source>
        <translation>{name} ist nicht dabei: Gib unter Produkte die Seite und den Preis eines Blatts ein.</translation>
    </message>
    <message>
        <source>{stuff} is not in it: enter a bottle with its price.</source>
        <translation>{stuff} ist nicht enthalten: eine Flasche mit Preis eintragen.</translation>
    </message>
    <message>
        <source>in all</source>
        <translation>insgesamt</translation>
    </message>
    <message>
        <source>{what} {minutes}</source>
        <translation>{what} {minutes}</translation>
    </message>
    <message>
        <source>No attended time.</source>
        <translation>Keine Arbeitszeit.</translation>
    </message>
    <message>
        <source>{minutes} min of attended time: {spent}.</source>
        <translation>{minutes} min Arbeitszeit: {spent}.</translation>
    </message>
    <message>
        <source>What it costs</source>
        <translation>Was es kostet</translation>
    </message>
    <message>
        <source>Price agreed on, {currency}</source>
        <translation>Vereinbarter Preis, {currency}</translation>
    </message>
    <message>
        <source>Floor price {floor}, which leaves nothing over. By your rule you ask {asked}, of which {margin} ({share}) stay.</source>
        <translation>Mindestpreis {floor}, dabei bleibt nichts übrig. Nach deiner Regel verlangst du {asked}, davon bleiben {margin} ({share}).</translation>
    </message>
    <message>
        <source>{agreed} were agreed on, of which {left} stay.</source>
        <translation>Vereinbart sind {agreed}, davon bleiben {left}.</translation>
    </message>
    <message>
        <source>As a rush, with mixes of its own and a quick parcel, it would cost {extra} more.</source>
        <translation>Als Eilauftrag, mit eigenen Mischungen und schnellem Paket, würde er {extra} mehr kosten.</translation>
    </message>
    <message>
        <source>One more joint to scuff would cost up to {extra} more.</source>
        <translation>Einmal mehr anschleifen würde bis zu {extra} mehr kosten.</translation>
    </message>
    <message>
        <source>{cost} and {minutes} min</source>
        <translation>{cost} und {minutes} min</translation>
    </message>
    <message>
        <source>Floor price {floor}; by your rule {asked} for the piece, or for the whole set.</source>
        <translation>Mindestpreis {floor}; nach deiner Regel {asked} für das Stück oder den ganzen Satz.</translation>
    </message>
</context>
<context>
    <name>days</name>
    <message>
        <source>Mon</source>
        <translation>Mo</translation>
    </message>
    <message>
        <source>Tue</source>
        <translation>Di</translation>
    </message>
    <message>
        <source>Wed</source>
        <translation>Mi</translation>
    </message>
    <message>
        <source>Thu</source>
        <translation>Do</translation>
    </message>
    <message>
        <source>Fri</source>
        <translation>Fr</translation>
    </message>
    <message>
        <source>Sat</source>
        <translation>Sa</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>So</translation>
    </message>
    <message>
        <source>Monday</source>
        <translation>Montag</translation>
    </message>
    <message>
        <source>Tuesday</source>
        <translation>Dienstag</translation>
    </message>
    <message>
        <source>Wednesday</source>
        <translation>Mittwoch</translation>
    </message>
    <message>
        <source>Thursday</source>
        <translation>Donnerstag</translation>
    </message>
    <message>
        <source>Friday</source>
        <translation>Freitag</translation>
    </message>
    <message>
        <source>Saturday</source>
        <translation>Samstag</translation>
    </message>
    <message>
        <source>Sunday</source>
        <translation>Sonntag</translation>
    </message>
    <message>
        <source>{day} {month}</source>
        <translation>{day}. {month}</translation>
    </message>
</context>
<context>
    <name>dialogs</name>
    <message>
        <source>Studios</source>
        <translation>Studios</translation>
    </message>
    <message>
        <source>All files</source>
        <translation>Alle Dateien</translation>
    </message>
    <message>
        <source>Open a studio</source>
        <translation>Studio öffnen</translation>
    </message>
    <message>
        <source>New studio</source>
        <translation>Neues Studio</translation>
    </message>
    <message>
        <source>Save a copy</source>
        <translation>Kopie speichern</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>Choose a logger&apos;s file</source>
        <translation>Datei eines Loggers wählen</translation>
    </message>
    <message>
        <source>Save the sheet as PDF</source>
        <translation>Blatt als PDF speichern</translation>
    </message>
    <message>
        <source>Save the calendar file</source>
        <translation>Kalenderdatei speichern</translation>
    </message>
    <message>
        <source>Calendar files (*.ics)</source>
        <translation>Kalenderdateien (*.ics)</translation>
    </message>
</context>
<context>
    <name>difference</name>
    <message>
        <source>Nothing else moved</source>
        <translation>Sonst bewegt sich nichts</translation>
    </message>
    <message>
        <source>{count} pour moved</source>
        <translation>{count} Guss verschoben</translation>
    </message>
    <message>
        <source>{count} pours moved</source>
        <translation>{count} Güsse verschoben</translation>
    </message>
    <message>
        <source>{count} promise later</source>
        <translation>{count} Zusage später</translation>
    </message>
    <message>
        <source>{count} promises later</source>
        <translation>{count} Zusagen später</translation>
    </message>
    <message>
        <source>{count} promise sooner</source>
        <translation>{count} Zusage früher</translation>
    </message>
    <message>
        <source>{count} promises sooner</source>
        <translation>{count} Zusagen früher</translation>
    </message>
    <message>
        <source>{count} joint worse</source>
        <translation>{count} Verbund schlechter</translation>
    </message>
    <message>
        <source>{count} joints worse</source>
        <translation>{count} Verbünde schlechter</translation>
    </message>
    <message>
        <source>{count} joint better</source>
        <translation>{count} Verbund besser</translation>
    </message>
    <message>
        <source>{count} joints better</source>
        <translation>{count} Verbünde besser</translation>
    </message>
    <message>
        <source>{count} piece not planned</source>
        <translation>{count} Stück nicht geplant</translation>
    </message>
    <message>
        <source>{count} pieces not planned</source>
        <translation>{count} Stücke nicht geplant</translation>
    </message>
    <message>
        <source>{count} piece planned again</source>
        <translation>{count} Stück wieder geplant</translation>
    </message>
    <message>
        <source>{count} pieces planned again</source>
        <translation>{count} Stücke wieder geplant</translation>
    </message>
</context>
<context>
    <name>due</name>
    <message>
        <source>Nothing due</source>
        <translation>Nichts fällig</translation>
    </message>
    <message>
        <source>{count} due</source>
        <translation>{count} fällig</translation>
    </message>
    <message>
        <source>{count} due, reminders stopped</source>
        <translation>{count} fällig, Erinnerungen stehen still</translation>
    </message>
    <message>
        <source>Reminders stopped</source>
        <translation>Erinnerungen stehen still</translation>
    </message>
    <message>
        <source>Nothing is due</source>
        <translation>Nichts ist fällig</translation>
    </message>
    <message>
        <source>{count} thing is due</source>
        <translation>{count} Sache ist fällig</translation>
    </message>
    <message>
        <source>{count} things are due</source>
        <translation>{count} Sachen sind fällig</translation>
    </message>
    <message>
        <source>{things}, {urgent} of them can&apos;t be saved later</source>
        <translation>{things}, {urgent} davon später nicht mehr zu retten</translation>
    </message>
    <message>
        <source>What is due</source>
        <translation>Was fällig ist</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Close the list of what is due</source>
        <translation>Liste des Fälligen schließen</translation>
    </message>
    <message>
        <source>Due now</source>
        <translation>Jetzt fällig</translation>
    </message>
    <message>
        <source>Take off all that is too late</source>
        <translation>Alles streichen, was zu spät ist</translation>
    </message>
    <message>
        <source>Put it back</source>
        <translation>Zurück auf die Liste</translation>
    </message>
    <message>
        <source>How the studio reminds…</source>
        <translation>Wie die Werkstatt erinnert…</translation>
    </message>
    <message>
        <source>{count} more come up as these are answered.</source>
        <translation>{count} weitere rücken nach, sobald diese beantwortet sind.</translation>
    </message>
    <message>
        <source>Taken off the list: {what}.</source>
        <translation>Von der Liste genommen: {what}.</translation>
    </message>
    <message>
        <source>Looking what is due…</source>
        <translation>Es wird nachgesehen, was fällig ist…</translation>
    </message>
    <message>
        <source>What comes due is listed here and stays until you have answered it.</source>
        <translation>Was fällig wird, steht hier und bleibt, bis du es beantwortet hast.</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Erledigt</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Später</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Can&apos;t be saved later.</source>
        <translation>Später nicht mehr zu retten.</translation>
    </message>
    <message>
        <source>There is no tray on this system to show it in.</source>
        <translation>Dieses System hat keinen Infobereich, in dem es erscheinen könnte.</translation>
    </message>
    <message>
        <source>The tray of this system shows no messages.</source>
        <translation>Der Infobereich dieses Systems zeigt keine Meldungen.</translation>
    </message>
    <message>
        <source>Open the desk</source>
        <translation>Fenster öffnen</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Beenden</translation>
    </message>
    <message>
        <source>The studio goes on reminding you</source>
        <translation>Die Werkstatt erinnert dich weiter</translation>
    </message>
    <message>
        <source>The window is closed and the desk stays here, in the tray. Leave, in its menu, ends it.</source>
        <translation>Das Fenster ist geschlossen, das Programm bleibt hier im Infobereich. „Beenden“ in seinem Menü beendet es.</translation>
    </message>
    <message>
        <source>The window was too busy to show it.</source>
        <translation>Das Fenster war zu beschäftigt, um es zu zeigen.</translation>
    </message>
    <message>
        <source>This did not work: {error}</source>
        <translation>Das ging nicht: {error}</translation>
    </message>
    <message>
        <source>No later moment would help.</source>
        <translation>Kein späterer Zeitpunkt würde helfen.</translation>
    </message>
    <message>
        <source>Later: {later}.</source>
        <translation>Später: {later}.</translation>
    </message>
    <message>
        <source>Later: {later}; it helps until {until}.</source>
        <translation>Später: {later}; es hilft bis {until}.</translation>
    </message>
    <message>
        <source>The plan has moved it: told again {when}.</source>
        <translation>Der Plan hat es verschoben: wieder {when}.</translation>
    </message>
    <message>
        <source>Put off: told again {when}.</source>
        <translation>Aufgeschoben: wieder {when}.</translation>
    </message>
    <message>
        <source>Next: {what}, {when}.</source>
        <translation>Als Nächstes: {what}, {when}.</translation>
    </message>
    <message>
        <source>Rings all the same: {what}, {when}.</source>
        <translation>Klingelt trotzdem: {what}, {when}.</translation>
    </message>
    <message>
        <source>Waits until {when}: {what}.</source>
        <translation>Wartet bis {when}: {what}.</translation>
    </message>
    <message>
        <source>{count} reminders</source>
        <translation>{count} Erinnerungen</translation>
    </message>
    <message>
        <source>This desk does not remind.</source>
        <translation>Dieses Fenster erinnert nicht.</translation>
    </message>
    <message>
        <source>Reminders cannot be written down: {why}</source>
        <translation>Erinnerungen lassen sich nicht festhalten: {why}</translation>
    </message>
</context>
<context>
    <name>fields</name>
    <message>
        <source>part A</source>
        <translation>Teil A</translation>
    </message>
    <message>
        <source>grams of A</source>
        <translation>Gramm A</translation>
    </message>
    <message>
        <source>area</source>
        <translation>Fläche</translation>
    </message>
    <message>
        <source>time</source>
        <translation>Zeitpunkt</translation>
    </message>
    <message>
        <source>part B</source>
        <translation>Teil B</translation>
    </message>
    <message>
        <source>grams of B</source>
        <translation>Gramm B</translation>
    </message>
    <message>
        <source>band of temperature</source>
        <translation>Spanne der Temperatur</translation>
    </message>
    <message>
        <source>band</source>
        <translation>Spanne</translation>
    </message>
    <message>
        <source>batch</source>
        <translation>Ansatz</translation>
    </message>
    <message>
        <source>price of the blank</source>
        <translation>Preis des Rohlings</translation>
    </message>
    <message>
        <source>thickness of the body</source>
        <translation>Dicke des Körpers</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>clearance</source>
        <translation>Abstand</translation>
    </message>
    <message>
        <source>coat</source>
        <translation>Schicht</translation>
    </message>
    <message>
        <source>coats</source>
        <translation>Schichten</translation>
    </message>
    <message>
        <source>share of colourant</source>
        <translation>Anteil des Farbmittels</translation>
    </message>
    <message>
        <source>colours</source>
        <translation>Farben</translation>
    </message>
    <message>
        <source>entry that is corrected</source>
        <translation>berichtigter Eintrag</translation>
    </message>
    <message>
        <source>number</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <source>counts</source>
        <translation>Zählungen</translation>
    </message>
    <message>
        <source>cover</source>
        <translation>Haube</translation>
    </message>
    <message>
        <source>most in one cup</source>
        <translation>höchstens in einem Becher</translation>
    </message>
    <message>
        <source>currency</source>
        <translation>Währung</translation>
    </message>
    <message>
        <source>last hand-over</source>
        <translation>letzte Übergabe</translation>
    </message>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>density</source>
        <translation>Dichte</translation>
    </message>
    <message>
        <source>density of A</source>
        <translation>Dichte von A</translation>
    </message>
    <message>
        <source>density of B</source>
        <translation>Dichte von B</translation>
    </message>
    <message>
        <source>deepest coat</source>
        <translation>tiefste Schicht</translation>
    </message>
    <message>
        <source>size of grain</source>
        <translation>Korngröße</translation>
    </message>
    <message>
        <source>end</source>
        <translation>Ende</translation>
    </message>
    <message>
        <source>faces</source>
        <translation>Flächen</translation>
    </message>
    <message>
        <source>fees</source>
        <translation>Gebühren</translation>
    </message>
    <message>
        <source>film</source>
        <translation>Schichtdicke</translation>
    </message>
    <message>
        <source>first day</source>
        <translation>erster Tag</translation>
    </message>
    <message>
        <source>footprint</source>
        <translation>Platzbedarf</translation>
    </message>
    <message>
        <source>earliest</source>
        <translation>frühestens</translation>
    </message>
    <message>
        <source>grams</source>
        <translation>Gramm</translation>
    </message>
    <message>
        <source>heat loss</source>
        <translation>Wärmeverlust</translation>
    </message>
    <message>
        <source>most humidity</source>
        <translation>höchste Feuchte</translation>
    </message>
    <message>
        <source>humidity</source>
        <translation>Feuchte</translation>
    </message>
    <message>
        <source>joint</source>
        <translation>Verbund</translation>
    </message>
    <message>
        <source>kept for an order</source>
        <translation>für einen Auftrag aufgehoben</translation>
    </message>
    <message>
        <source>key</source>
        <translation>Schlüssel</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>number on the label</source>
        <translation>Nummer auf dem Etikett</translation>
    </message>
    <message>
        <source>days to deliver</source>
        <translation>Tage bis zur Lieferung</translation>
    </message>
    <message>
        <source>side of a leaf</source>
        <translation>Seite eines Blatts</translation>
    </message>
    <message>
        <source>price of a leaf</source>
        <translation>Preis eines Blatts</translation>
    </message>
    <message>
        <source>waste of leaf</source>
        <translation>Verschnitt an Blattmetall</translation>
    </message>
    <message>
        <source>what is left</source>
        <translation>Rest</translation>
    </message>
    <message>
        <source>likely time</source>
        <translation>wahrscheinliche Zeit</translation>
    </message>
    <message>
        <source>margin</source>
        <translation>Aufschlag</translation>
    </message>
    <message>
        <source>mass of the test</source>
        <translation>Masse der Prüfung</translation>
    </message>
    <message>
        <source>highest temperature</source>
        <translation>höchste Temperatur</translation>
    </message>
    <message>
        <source>lowest temperature</source>
        <translation>niedrigste Temperatur</translation>
    </message>
    <message>
        <source>most in one mix</source>
        <translation>höchstens in einer Mischung</translation>
    </message>
    <message>
        <source>mixes</source>
        <translation>Mischungen</translation>
    </message>
    <message>
        <source>how far it moved</source>
        <translation>wie weit es gerückt ist</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>what was in it when new</source>
        <translation>Inhalt, als sie neu war</translation>
    </message>
    <message>
        <source>opened</source>
        <translation>geöffnet</translation>
    </message>
    <message>
        <source>days after opening</source>
        <translation>Tage nach dem Öffnen</translation>
    </message>
    <message>
        <source>opens</source>
        <translation>öffnet</translation>
    </message>
    <message>
        <source>order</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>overheads</source>
        <translation>Gemeinkosten</translation>
    </message>
    <message>
        <source>minutes of packing</source>
        <translation>Minuten zum Packen</translation>
    </message>
    <message>
        <source>part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>week</source>
        <translation>Woche</translation>
    </message>
    <message>
        <source>length around</source>
        <translation>Umfang</translation>
    </message>
    <message>
        <source>photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>piece</source>
        <translation>Stück</translation>
    </message>
    <message>
        <source>minutes for each piece</source>
        <translation>Minuten je Stück</translation>
    </message>
    <message>
        <source>pieces</source>
        <translation>Stücke</translation>
    </message>
    <message>
        <source>minute of pouring</source>
        <translation>Minute des Gießens</translation>
    </message>
    <message>
        <source>pours</source>
        <translation>Güsse</translation>
    </message>
    <message>
        <source>price</source>
        <translation>Preis</translation>
    </message>
    <message>
        <source>price of 100 g</source>
        <translation>Preis für 100 g</translation>
    </message>
    <message>
        <source>product</source>
        <translation>Produkt</translation>
    </message>
    <message>
        <source>ratio</source>
        <translation>Verhältnis</translation>
    </message>
    <message>
        <source>band of the readings</source>
        <translation>Spanne der Messwerte</translation>
    </message>
    <message>
        <source>readings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>hours without readings</source>
        <translation>Stunden ohne Messwerte</translation>
    </message>
    <message>
        <source>reserve</source>
        <translation>Reserve</translation>
    </message>
    <message>
        <source>rim</source>
        <translation>Rand</translation>
    </message>
    <message>
        <source>rounding</source>
        <translation>Rundung</translation>
    </message>
    <message>
        <source>rule</source>
        <translation>Regel</translation>
    </message>
    <message>
        <source>rush wage</source>
        <translation>Eilzuschlag</translation>
    </message>
    <message>
        <source>scrap</source>
        <translation>Ausschuss</translation>
    </message>
    <message>
        <source>minutes of setting up</source>
        <translation>Minuten zum Vorbereiten</translation>
    </message>
    <message>
        <source>share of the mix</source>
        <translation>Anteil der Mischung</translation>
    </message>
    <message>
        <source>against the sheet</source>
        <translation>gegenüber dem Datenblatt</translation>
    </message>
    <message>
        <source>goes to sleep</source>
        <translation>geht schlafen</translation>
    </message>
    <message>
        <source>temperatures for a time</source>
        <translation>Temperaturen auf Zeit</translation>
    </message>
    <message>
        <source>spot</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>stack</source>
        <translation>Aufbau</translation>
    </message>
    <message>
        <source>stage</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>start</source>
        <translation>Beginn</translation>
    </message>
    <message>
        <source>taken</source>
        <translation>aufgenommen</translation>
    </message>
    <message>
        <source>what touch tests taught</source>
        <translation>was Fingerproben gelehrt haben</translation>
    </message>
    <message>
        <source>touch tests</source>
        <translation>Fingerproben</translation>
    </message>
    <message>
        <source>latest</source>
        <translation>spätestens</translation>
    </message>
    <message>
        <source>days on the way</source>
        <translation>Tage unterwegs</translation>
    </message>
    <message>
        <source>viscosity</source>
        <translation>Viskosität</translation>
    </message>
    <message>
        <source>gets up</source>
        <translation>steht auf</translation>
    </message>
    <message>
        <source>first day of the week</source>
        <translation>erster Tag der Woche</translation>
    </message>
    <message>
        <source>weight</source>
        <translation>Gewicht</translation>
    </message>
    <message>
        <source>time zone</source>
        <translation>Zeitzone</translation>
    </message>
    <message>
        <source>bottle {name}</source>
        <translation>Flasche {name}</translation>
    </message>
    <message>
        <source>piece {name}</source>
        <translation>Stück {name}</translation>
    </message>
    <message>
        <source>coat {name}</source>
        <translation>Schicht {name}</translation>
    </message>
    <message>
        <source>order {name}</source>
        <translation>Auftrag {name}</translation>
    </message>
    <message>
        <source>stack pattern {name}</source>
        <translation>Vorlage {name}</translation>
    </message>
    <message>
        <source>pin of {name}</source>
        <translation>Feststecken von {name}</translation>
    </message>
    <message>
        <source>pour of {name}</source>
        <translation>Guss von {name}</translation>
    </message>
    <message>
        <source>pours of {name}</source>
        <translation>Güsse von {name}</translation>
    </message>
    <message>
        <source>entry {name}</source>
        <translation>Eintrag {name}</translation>
    </message>
    <message>
        <source>mix {name}</source>
        <translation>Mischung {name}</translation>
    </message>
</context>
<context>
    <name>figures</name>
    <message>
        <source>1,000.5</source>
        <translation>1.000,5</translation>
    </message>
    <message>
        <source>“{text}”</source>
        <translation>„{text}“</translation>
    </message>
</context>
<context>
    <name>files</name>
    <message>
        <source>{source} is not UTF-8 text; export it again.</source>
        <translation>{source} ist kein UTF-8-Text; noch einmal exportieren.</translation>
    </message>
    <message>
        <source>{source}: {error}</source>
        <translation>{source}: {error}</translation>
    </message>
    <message>
        <source>{path} cannot be read: {error}.</source>
        <translation>{path} ist nicht lesbar: {error}.</translation>
    </message>
    <message>
        <source>{path} is larger than {size} MiB, which is too large.</source>
        <translation>{path} ist größer als {size} MiB, das ist zu groß.</translation>
    </message>
    <message>
        <source>is damaged; open a copy of it if you have one. It was left as it is.</source>
        <translation>ist beschädigt; wenn vorhanden, eine Kopie öffnen. Die Datei blieb, wie sie war.</translation>
    </message>
    <message>
        <source>cannot be written: the disk is full. Nothing was changed; free some space and try again.</source>
        <translation>kann nicht geschrieben werden: Der Datenträger ist voll. Nichts wurde geändert; Platz schaffen und noch einmal versuchen.</translation>
    </message>
    <message>
        <source>is in use by another window; close it there or try again in a moment.</source>
        <translation>ist in einem anderen Fenster in Gebrauch; dort schließen oder gleich noch einmal versuchen.</translation>
    </message>
    <message>
        <source>cannot be written there; check that the folder and the file are yours to change, or choose another folder.</source>
        <translation>kann dort nicht geschrieben werden; prüfen, ob Ordner und Datei geändert werden dürfen, oder einen anderen Ordner wählen.</translation>
    </message>
    <message>
        <source>cannot be read; check that the file and its folder are yours to read, or choose another.</source>
        <translation>kann nicht gelesen werden; prüfen, ob Datei und Ordner gelesen werden dürfen, oder eine andere wählen.</translation>
    </message>
    <message>
        <source>is not there; check the name and the folder.</source>
        <translation>ist nicht da; Namen und Ordner prüfen.</translation>
    </message>
    <message>
        <source>cannot be read or written: the disk reported an error. Nothing was changed.</source>
        <translation>kann nicht gelesen oder geschrieben werden: Der Datenträger meldete einen Fehler. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>was not changed: two entries contradict each other</source>
        <translation>wurde nicht geändert: Zwei Einträge widersprechen sich</translation>
    </message>
    <message>
        <source>is a folder, not a studio file.</source>
        <translation>ist ein Ordner, keine Studiodatei.</translation>
    </message>
    <message>
        <source>is there already; choose another name.</source>
        <translation>ist schon da; einen anderen Namen wählen.</translation>
    </message>
    <message>
        <source>has too long a name; choose a shorter one.</source>
        <translation>hat einen zu langen Namen; einen kürzeren wählen.</translation>
    </message>
    <message>
        <source>cannot be found or made: there is no folder {folder}; check its name.</source>
        <translation>ist nicht zu finden oder anzulegen: Den Ordner {folder} gibt es nicht; seinen Namen prüfen.</translation>
    </message>
    <message>
        <source>{path} is damaged; it holds no studio.</source>
        <translation>{path} ist beschädigt; es ist kein Studio darin.</translation>
    </message>
    <message>
        <source>{path}: {error}</source>
        <translation>{path}: {error}</translation>
    </message>
    <message>
        <source>{path} could not be brought up to date: an entry names another one that is gone. It was left as it is.</source>
        <translation>{path} konnte nicht auf den neuen Stand gebracht werden: Ein Eintrag nennt einen anderen, den es nicht mehr gibt. Die Datei blieb, wie sie war.</translation>
    </message>
    <message>
        <source>{path} needs SQLite 3.37 or newer, but Python has {sqlite_version} here; install a newer Python.</source>
        <translation>{path} braucht SQLite 3.37 oder neuer, aber Python hat hier {sqlite_version}; ein neueres Python installieren.</translation>
    </message>
    <message>
        <source>{path} is a folder, not a studio file.</source>
        <translation>{path} ist ein Ordner, keine Studiodatei.</translation>
    </message>
    <message>
        <source>{path} is not a file; choose a studio file.</source>
        <translation>{path} ist keine Datei; eine Studiodatei wählen.</translation>
    </message>
    <message>
        <source>{path} was made by a newer version of this program (file version {version}, this one knows up to {newest}); install the newer version. The file is left untouched.</source>
        <translation>{path} stammt von einer neueren Version dieses Programms (Dateiversion {version}, diese kennt bis {newest}); die neuere Version installieren. Die Datei bleibt unberührt.</translation>
    </message>
    <message>
        <source>{path} is empty; open a copy of it if you have one.</source>
        <translation>{path} ist leer; wenn vorhanden, eine Kopie öffnen.</translation>
    </message>
    <message>
        <source>{path} is not a studio file; choose another one.</source>
        <translation>{path} ist keine Studiodatei; eine andere wählen.</translation>
    </message>
    <message>
        <source>{path} is cut short; open a copy of it if you have one.</source>
        <translation>{path} ist abgeschnitten; wenn vorhanden, eine Kopie öffnen.</translation>
    </message>
    <message>
        <source>{path} belongs to another program; choose a studio file.</source>
        <translation>{path} gehört zu einem anderen Programm; eine Studiodatei wählen.</translation>
    </message>
    <message>
        <source>{path} is damaged; open a copy of it if you have one.</source>
        <translation>{path} ist beschädigt; wenn vorhanden, eine Kopie öffnen.</translation>
    </message>
    <message>
        <source>{path} was changed by another program, which keeps its changes in a second file; open a copy of it if you have one.</source>
        <translation>{path} wurde von einem anderen Programm geändert, das seine Änderungen in einer zweiten Datei hält; wenn vorhanden, eine Kopie öffnen.</translation>
    </message>
    <message>
        <source>{path} has been changed by another program (its tables are not the ones made here), so it is not opened; open a copy of it if you have one.</source>
        <translation>{path} wurde von einem anderen Programm geändert (die Tabellen sind nicht die hier angelegten) und wird darum nicht geöffnet; wenn vorhanden, eine Kopie öffnen.</translation>
    </message>
    <message>
        <source>{path} is damaged; open a copy of it if you have one. It was left as it is.</source>
        <translation>{path} ist beschädigt; wenn vorhanden, eine Kopie öffnen. Die Datei blieb, wie sie war.</translation>
    </message>
    <message>
        <source>{target} is a folder; give the name of a file.</source>
        <translation>{target} ist ein Ordner; den Namen einer Datei angeben.</translation>
    </message>
    <message>
        <source>{target} is there already; choose another name.</source>
        <translation>{target} ist schon da; einen anderen Namen wählen.</translation>
    </message>
    <message>
        <source>{target} is no plain file; give another name.</source>
        <translation>{target} ist keine gewöhnliche Datei; gib einen anderen Namen an.</translation>
    </message>
    <message>
        <source>{target} is a studio file, which only a studio is ever written over; choose another name.</source>
        <translation>{target} ist eine Studiodatei, über die nur ein Studio geschrieben wird; wähle einen anderen Namen.</translation>
    </message>
    <message>
        <source>{target} is the name of a file that may hold changes of the studio {studio}; choose another name.</source>
        <translation>{target} ist der Name einer Datei, in der Änderungen des Studios {studio} stehen können; wähle einen anderen Namen.</translation>
    </message>
    <message>
        <source>{what} is empty.</source>
        <translation>{what} ist leer.</translation>
    </message>
    <message>
        <source>{what} is not text; save it as CSV and try again.</source>
        <translation>{what} ist kein Text; als CSV speichern und noch einmal versuchen.</translation>
    </message>
    <message>
        <source>{what} is cut short or damaged: {error}.</source>
        <translation>{what} ist abgeschnitten oder beschädigt: {error}.</translation>
    </message>
    <message>
        <source>The file has no studio in it; open a copy of it if you have one.</source>
        <translation>In der Datei ist kein Studio; wenn vorhanden, eine Kopie öffnen.</translation>
    </message>
    <message>
        <source>The file breaks a rule of the craft: {error}</source>
        <translation>Die Datei bricht eine Regel des Handwerks: {error}</translation>
    </message>
    <message>
        <source>The file cannot be understood at {where}: {error}.</source>
        <translation>Die Datei ist an dieser Stelle nicht zu verstehen: {where}: {error}.</translation>
    </message>
    <message>
        <source>{path} is the open studio itself; choose another name.</source>
        <translation>{path} ist das offene Studio selbst; einen anderen Namen wählen.</translation>
    </message>
    <message>
        <source>{path} was changed in another window; load it again and repeat the change.</source>
        <translation>{path} wurde in einem anderen Fenster geändert; neu laden und die Änderung wiederholen.</translation>
    </message>
    <message>
        <source>what was poured or done</source>
        <translation>was gegossen oder getan wurde</translation>
    </message>
    <message>
        <source>the rooms or their readings</source>
        <translation>die Räume oder ihre Messwerte</translation>
    </message>
    <message>
        <source>pieces</source>
        <translation>Stücke</translation>
    </message>
    <message>
        <source>orders</source>
        <translation>Aufträge</translation>
    </message>
    <message>
        <source>hands</source>
        <translation>Hände</translation>
    </message>
    <message>
        <source>products</source>
        <translation>Produkte</translation>
    </message>
    <message>
        <source>pinned pours</source>
        <translation>festgesteckte Schichten</translation>
    </message>
    <message>
        <source>rules of work</source>
        <translation>die Arbeitsregeln</translation>
    </message>
    <message>
        <source>It is changed faster than it can be planned.</source>
        <translation>Es wird schneller geändert, als geplant werden kann.</translation>
    </message>
    <message>
        <source>{name} was changed while it was planned ({what}), and the plan that was found no longer holds, so it is not kept; plan again. {why}</source>
        <translation>{name} wurde während des Planens geändert ({what}), und der gefundene Plan hält nicht mehr, darum wird er nicht behalten; plane neu. {why}</translation>
    </message>
</context>
<context>
    <name>flags</name>
    <message>
        <source>handle</source>
        <translation>griffest</translation>
    </message>
    <message>
        <source>pack</source>
        <translation>verpackbar</translation>
    </message>
    <message>
        <source>full</source>
        <translation>ausgehärtet</translation>
    </message>
</context>
<context>
    <name>forms</name>
    <message>
        <source>Write a number here.</source>
        <translation>Hier steht eine Zahl.</translation>
    </message>
    <message>
        <source>Write a whole number here.</source>
        <translation>Hier steht eine ganze Zahl.</translation>
    </message>
    <message>
        <source>{label}, time</source>
        <translation>{label}, Uhrzeit</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Anlegen</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Kopieren</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>{text} is not a number; write for example 1.5.</source>
        <translation>{text} ist keine Zahl; zum Beispiel 1,5 schreiben.</translation>
    </message>
    <message>
        <source>ddd d MMM yyyy</source>
        <translation>ddd d. MMM yyyy</translation>
    </message>
    <message>
        <source>ddd d MMM</source>
        <translation>ddd d. MMM</translation>
    </message>
    <message>
        <source>Another one has this name, too. A word more tells the two apart everywhere.</source>
        <translation>Noch etwas heißt so. Ein Wort mehr hält die beiden überall auseinander.</translation>
    </message>
</context>
<context>
    <name>hands</name>
    <message>
        <source>Hands</source>
        <translation>Hände</translation>
    </message>
    <message>
        <source>Nobody is named yet. Add yourself, then paint your hours.</source>
        <translation>Noch niemand eingetragen. Sich selbst hinzufügen, dann die Stunden malen.</translation>
    </message>
    <message>
        <source>no weekly hours</source>
        <translation>keine Wochenstunden</translation>
    </message>
    <message>
        <source>{hours} a week</source>
        <translation>{hours} pro Woche</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Wakes</source>
        <translation>Steht auf</translation>
    </message>
    <message>
        <source>Goes to bed</source>
        <translation>Geht schlafen</translation>
    </message>
    <message>
        <source>Add hours on the day</source>
        <translation>Stunden eintragen</translation>
    </message>
    <message>
        <source>Remove the chosen hours</source>
        <translation>Gewählte Stunden entfernen</translation>
    </message>
    <message>
        <source>The same Monday to Friday</source>
        <translation>Montag bis Freitag ebenso</translation>
    </message>
    <message>
        <source>Working hours</source>
        <translation>Arbeitszeiten</translation>
    </message>
    <message>
        <source>Drag over a day to add hours, an end to change them, the middle to move them. Keys: Up and Down for the day, Left and Right for the hours, Enter adds, Shift or Alt with Left and Right moves an end, Ctrl all of it, Delete removes.</source>
        <translation>Über einen Tag ziehen trägt Stunden ein, ein Ende ändert sie, die Mitte verschiebt sie. Tasten: Auf und Ab wechseln den Tag, Links und Rechts die Stunden, Eingabe trägt ein, Umschalt oder Alt mit Links und Rechts bewegt ein Ende, Strg alles, Entf entfernt.</translation>
    </message>
    <message>
        <source>The same hours in rows</source>
        <translation>Dieselben Stunden in Zeilen</translation>
    </message>
    <message>
        <source>Away</source>
        <translation>Abwesend</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>waking hours</source>
        <translation>wache Stunden</translation>
    </message>
</context>
<context>
    <name>happened</name>
    <message>
        <source>What happened, newest first</source>
        <translation>Was geschehen ist, das Neueste zuerst</translation>
    </message>
    <message>
        <source>wrong: {what}</source>
        <translation>falsch: {what}</translation>
    </message>
    <message>
        <source>known before there was a log</source>
        <translation>bekannt, bevor es ein Werkstattbuch gab</translation>
    </message>
    <message>
        <source>{what}; for {coats}</source>
        <translation>{what}; für {coats}</translation>
    </message>
    <message>
        <source>corrected {when}; before it said:</source>
        <translation>berichtigt {when}; vorher stand da:</translation>
    </message>
    <message>
        <source>withdrawn {when}: it never happened</source>
        <translation>zurückgenommen {when}: ist nie geschehen</translation>
    </message>
    <message>
        <source>written down {when}</source>
        <translation>aufgeschrieben {when}</translation>
    </message>
    <message>
        <source>{name} (taken out)</source>
        <translation>{name} (herausgenommen)</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>nicht gesagt</translation>
    </message>
    <message>
        <source>as planned, or where it lies</source>
        <translation>wie geplant, oder wo es liegt</translation>
    </message>
    <message>
        <source>as planned</source>
        <translation>wie geplant</translation>
    </message>
    <message>
        <source>Planned for about now; one tap says that it is done:</source>
        <translation>Etwa für jetzt geplant; ein Tipp sagt, dass es getan ist:</translation>
    </message>
    <message>
        <source>No step of the plan began lately or begins soon: nothing can be written down with one tap.</source>
        <translation>Kein Schritt des Plans hat eben begonnen oder beginnt bald: Mit einem Tipp lässt sich nichts aufschreiben.</translation>
    </message>
    <message>
        <source>It is in the log. Undo takes it back.</source>
        <translation>Es steht im Werkstattbuch. Rückgängig nimmt es zurück.</translation>
    </message>
    <message>
        <source>planned {when}</source>
        <translation>geplant {when}</translation>
    </message>
    <message>
        <source>Correct</source>
        <translation>Berichtigen</translation>
    </message>
    <message>
        <source>Withdraw</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <source>Weights</source>
        <translation>Gewichte</translation>
    </message>
    <message>
        <source>Where did it come from?</source>
        <translation>Wo kam es her?</translation>
    </message>
    <message>
        <source>Show the piece</source>
        <translation>Stück zeigen</translation>
    </message>
    <message>
        <source>Show on the plan</source>
        <translation>Im Plan zeigen</translation>
    </message>
    <message>
        <source>Choose an entry to correct it or to follow it up.</source>
        <translation>Wähle einen Eintrag, um ihn zu berichtigen oder ihm nachzugehen.</translation>
    </message>
    <message>
        <source>Correct the weights</source>
        <translation>Gewichte berichtigen</translation>
    </message>
    <message>
        <source>Write down its weights</source>
        <translation>Gewichte aufschreiben</translation>
    </message>
    <message>
        <source>Withdrawn; it stays to be read. Undo takes that back.</source>
        <translation>Zurückgenommen; es bleibt lesbar. Rückgängig macht das ungeschehen.</translation>
    </message>
    <message>
        <source>Entry {number}, written {when}.</source>
        <translation>Eintrag {number}, geschrieben {when}.</translation>
    </message>
    <message>
        <source>Write it down</source>
        <translation>Aufschreiben</translation>
    </message>
    <message>
        <source>Leave it as it is</source>
        <translation>So lassen</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Stück</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Coat</source>
        <translation>Schicht</translation>
    </message>
    <message>
        <source>A met B, or it was begun</source>
        <translation>A traf B, oder Beginn</translation>
    </message>
    <message>
        <source>The last film was spread</source>
        <translation>Der letzte Film war verteilt</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Touch test</source>
        <translation>Fingerprobe</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>Spot</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>On the coat below</source>
        <translation>Auf der Schicht darunter</translation>
    </message>
    <message>
        <source>Note (may be empty)</source>
        <translation>Notiz (darf leer sein)</translation>
    </message>
    <message>
        <source>The old entry stays to be read, struck through.</source>
        <translation>Der alte Eintrag bleibt lesbar, durchgestrichen.</translation>
    </message>
    <message>
        <source>{order} leaves with all of its pieces.</source>
        <translation>{order} geht mit allen Stücken hinaus.</translation>
    </message>
    <message>
        <source>It is a bare blank again and is planned from there.</source>
        <translation>Es ist wieder ein roher Rohling und wird von da an geplant.</translation>
    </message>
    <message>
        <source>Nothing more is planned for it until it is stripped.</source>
        <translation>Bis es abgetragen ist, wird nichts mehr dafür geplant.</translation>
    </message>
    <message>
        <source>What happened?</source>
        <translation>Was ist geschehen?</translation>
    </message>
    <message>
        <source>Correct: {what}</source>
        <translation>Berichtigen: {what}</translation>
    </message>
    <message>
        <source>Write the correction</source>
        <translation>Berichtigung aufschreiben</translation>
    </message>
    <message>
        <source>Show older ones</source>
        <translation>Ältere zeigen</translation>
    </message>
    <message>
        <source>Show all</source>
        <translation>Alle zeigen</translation>
    </message>
    <message>
        <source>Writing down</source>
        <translation>Aufschreiben</translation>
    </message>
    <message>
        <source>Open a studio first.</source>
        <translation>Öffne erst ein Studio.</translation>
    </message>
    <message>
        <source>Nothing in the log is like that.</source>
        <translation>So etwas steht nicht im Werkstattbuch.</translation>
    </message>
    <message>
        <source>Nothing was written down yet. What happens is told beside this, and is read here.</source>
        <translation>Noch wurde nichts aufgeschrieben. Was geschieht, wird daneben eingetragen und hier gelesen.</translation>
    </message>
    <message>
        <source>find: piece, coat, note, mix 12</source>
        <translation>suchen: Stück, Schicht, Notiz, mix 12</translation>
    </message>
    <message>
        <source>Find in the log</source>
        <translation>Im Werkstattbuch suchen</translation>
    </message>
    <message>
        <source>Of which piece</source>
        <translation>Von welchem Stück</translation>
    </message>
    <message>
        <source>Of which order</source>
        <translation>Von welchem Auftrag</translation>
    </message>
    <message>
        <source>Of which kind</source>
        <translation>Von welcher Art</translation>
    </message>
    <message>
        <source>Of which day</source>
        <translation>Von welchem Tag</translation>
    </message>
    <message>
        <source>all pieces</source>
        <translation>alle Stücke</translation>
    </message>
    <message>
        <source>all orders</source>
        <translation>alle Aufträge</translation>
    </message>
    <message>
        <source>all kinds</source>
        <translation>alle Arten</translation>
    </message>
    <message>
        <source>all days</source>
        <translation>alle Tage</translation>
    </message>
    <message>
        <source>{shown} of {every}</source>
        <translation>{shown} von {every}</translation>
    </message>
    <message>
        <source>What does the thermometer say?</source>
        <translation>Was sagt das Thermometer?</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>Humidity (may be empty)</source>
        <translation>Feuchte (darf leer sein)</translation>
    </message>
    <message>
        <source>Write the reading down</source>
        <translation>Messwert aufschreiben</translation>
    </message>
    <message>
        <source>The reading is kept: {reading}. Undo takes it back.</source>
        <translation>Der Messwert ist behalten: {reading}. Rückgängig nimmt ihn zurück.</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Was geschehen ist</translation>
    </message>
    <message>
        <source>Of the log</source>
        <translation>Vom Werkstattbuch</translation>
    </message>
    <message>
        <source>At another &amp;time, moved, with a note…</source>
        <translation>Zu anderer &amp;Zeit, umgestellt, mit Notiz…</translation>
    </message>
    <message>
        <source>&amp;Where did it come from?</source>
        <translation>&amp;Wo kam es her?</translation>
    </message>
    <message>
        <source>Touch test: {coat}</source>
        <translation>Fingerprobe: {coat}</translation>
    </message>
    <message>
        <source>In the log: {what}. Undo takes it back.</source>
        <translation>Im Werkstattbuch: {what}. Rückgängig nimmt es zurück.</translation>
    </message>
    <message>
        <source>No piece is there yet to which something could have happened. Enter what you coat, and its coats: then it is written down here when they were poured, how they felt to the touch, and when they were turned, packed and shipped.</source>
        <translation>Noch ist kein Stück da, mit dem etwas geschehen sein könnte. Trag ein, was du beschichtest, und seine Schichten: Dann wird hier aufgeschrieben, wann sie gegossen wurden, wie sie sich anfühlten und wann die Stücke gewendet, verpackt und verschickt wurden.</translation>
    </message>
    <message>
        <source>Enter a piece</source>
        <translation>Ein Stück eintragen</translation>
    </message>
</context>
<context>
    <name>harm</name>
    <message>
        <source>tonight</source>
        <translation>heute Nacht</translation>
    </message>
    <message>
        <source>a day</source>
        <translation>einen Tag</translation>
    </message>
    <message>
        <source>two days</source>
        <translation>zwei Tage</translation>
    </message>
    <message>
        <source>cannot be saved</source>
        <translation>nicht zu retten</translation>
    </message>
    <message>
        <source>is saved only by washing and sanding</source>
        <translation>nur durch Waschen und Anschleifen zu retten</translation>
    </message>
    <message>
        <source>can be mended</source>
        <translation>lässt sich ausbessern</translation>
    </message>
    <message>
        <source>can wait</source>
        <translation>kann warten</translation>
    </message>
</context>
<context>
    <name>hours</name>
    <message>
        <source>Days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>Every so many weeks</source>
        <translation>Alle so viele Wochen</translation>
    </message>
    <message>
        <source>First date</source>
        <translation>Erster Tag</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>{rule}: {start} to {end}. Kept as it is.</source>
        <translation>{rule}: {start} bis {end}. Bleibt, wie es ist.</translation>
    </message>
    <message>
        <source>Add a row of hours</source>
        <translation>Zeile mit Stunden hinzufügen</translation>
    </message>
</context>
<context>
    <name>if left</name>
    <message>
        <source>later heat leaves dimples</source>
        <translation>spätere Hitze hinterlässt Dellen</translation>
    </message>
    <message>
        <source>dust settles in the film</source>
        <translation>Staub setzt sich in den Film</translation>
    </message>
    <message>
        <source>its dust delays the next coat</source>
        <translation>sein Staub hält die nächste Schicht auf</translation>
    </message>
    <message>
        <source>the next coat has to wait</source>
        <translation>die nächste Schicht muss warten</translation>
    </message>
    <message>
        <source>it has to be cut out with a knife</source>
        <translation>es muss mit dem Messer ausgeschnitten werden</translation>
    </message>
    <message>
        <source>drips have to be ground off</source>
        <translation>Tropfen müssen abgeschliffen werden</translation>
    </message>
    <message>
        <source>its next coats move later</source>
        <translation>seine nächsten Schichten rücken nach hinten</translation>
    </message>
    <message>
        <source>if not poured: {what}</source>
        <translation>wenn nicht gegossen: {what}</translation>
    </message>
    <message>
        <source>the film below is no longer wet</source>
        <translation>der Film darunter ist nicht mehr nass</translation>
    </message>
    <message>
        <source>wash and sand the one below first</source>
        <translation>erst die darunter waschen und anschleifen</translation>
    </message>
    <message>
        <source>no bond, and no sanding helps</source>
        <translation>kein Verbund, und Schleifen hilft nicht</translation>
    </message>
    <message>
        <source>it stays on the shelf</source>
        <translation>es bleibt im Regal</translation>
    </message>
    <message>
        <source>{order} leaves without it</source>
        <translation>{order} geht ohne es ab</translation>
    </message>
</context>
<context>
    <name>kinds</name>
    <message>
        <source>prime</source>
        <translation>Grundierung</translation>
    </message>
    <message>
        <source>seal</source>
        <translation>Versiegelung</translation>
    </message>
    <message>
        <source>flood</source>
        <translation>Flutschicht</translation>
    </message>
    <message>
        <source>colour pour</source>
        <translation>Farbguss</translation>
    </message>
    <message>
        <source>glitter</source>
        <translation>Glitzer</translation>
    </message>
    <message>
        <source>size</source>
        <translation>Anlegemilch</translation>
    </message>
    <message>
        <source>leaf</source>
        <translation>Blattmetall</translation>
    </message>
    <message>
        <source>lock coat</source>
        <translation>Schutzschicht</translation>
    </message>
    <message>
        <source>top coat</source>
        <translation>Deckschicht</translation>
    </message>
    <message>
        <source>on bare</source>
        <translation>auf roh</translation>
    </message>
    <message>
        <source>wet in wet</source>
        <translation>nass in nass</translation>
    </message>
    <message>
        <source>in the window</source>
        <translation>im Fenster</translation>
    </message>
    <message>
        <source>scuffed</source>
        <translation>angeschliffen</translation>
    </message>
    <message>
        <source>on dry</source>
        <translation>auf trocken</translation>
    </message>
    <message>
        <source>mdf</source>
        <translation>MDF</translation>
    </message>
    <message>
        <source>timber</source>
        <translation>Massivholz</translation>
    </message>
    <message>
        <source>plywood</source>
        <translation>Sperrholz</translation>
    </message>
    <message>
        <source>slate</source>
        <translation>Schiefer</translation>
    </message>
    <message>
        <source>stone</source>
        <translation>Stein</translation>
    </message>
    <message>
        <source>metal</source>
        <translation>Metall</translation>
    </message>
    <message>
        <source>glass</source>
        <translation>Glas</translation>
    </message>
    <message>
        <source>plastic</source>
        <translation>Kunststoff</translation>
    </message>
    <message>
        <source>two-part mix</source>
        <translation>Zweikomponenten-Mischung</translation>
    </message>
    <message>
        <source>one-part primer</source>
        <translation>einkomponentige Grundierung</translation>
    </message>
    <message>
        <source>room</source>
        <translation>Raum</translation>
    </message>
    <message>
        <source>warm box</source>
        <translation>Wärmebox</translation>
    </message>
    <message>
        <source>wash and sand</source>
        <translation>waschen und anschleifen</translation>
    </message>
    <message>
        <source>turn over</source>
        <translation>wenden</translation>
    </message>
    <message>
        <source>pull tape</source>
        <translation>Klebeband abziehen</translation>
    </message>
    <message>
        <source>trim drips</source>
        <translation>Tropfen abnehmen</translation>
    </message>
    <message>
        <source>pack</source>
        <translation>verpacken</translation>
    </message>
    <message>
        <source>weigh and pour</source>
        <translation>abwiegen und gießen</translation>
    </message>
    <message>
        <source>last torch</source>
        <translation>letztes Abflammen</translation>
    </message>
    <message>
        <source>cover</source>
        <translation>abdecken</translation>
    </message>
    <message>
        <source>window closes</source>
        <translation>Fenster schließt</translation>
    </message>
    <message>
        <source>display</source>
        <translation>ausstellen</translation>
    </message>
    <message>
        <source>full cure</source>
        <translation>ausgehärtet</translation>
    </message>
    <message>
        <source>arrive by</source>
        <translation>Ankunft bis</translation>
    </message>
    <message>
        <source>ship by</source>
        <translation>Versand bis</translation>
    </message>
    <message>
        <source>market</source>
        <translation>Markt</translation>
    </message>
    <message>
        <source>decorative, not for food</source>
        <translation>dekorativ, nicht für Lebensmittel</translation>
    </message>
    <message>
        <source>declaration on file</source>
        <translation>Erklärung liegt vor</translation>
    </message>
    <message>
        <source>customer&apos;s own use, no claim</source>
        <translation>eigener Gebrauch des Kunden, ohne Zusage</translation>
    </message>
    <message>
        <source>string</source>
        <translation>zieht Fäden</translation>
    </message>
    <message>
        <source>tape-tack</source>
        <translation>klebt wie Klebeband</translation>
    </message>
    <message>
        <source>no mark</source>
        <translation>kein Abdruck</translation>
    </message>
    <message>
        <source>thumbnail no mark</source>
        <translation>Daumennagel ohne Abdruck</translation>
    </message>
    <message>
        <source>already</source>
        <translation>schon</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>noch nicht</translation>
    </message>
    <message>
        <source>poured</source>
        <translation>gegossen</translation>
    </message>
    <message>
        <source>weighed</source>
        <translation>abgewogen</translation>
    </message>
    <message>
        <source>touched</source>
        <translation>Fingerprobe</translation>
    </message>
    <message>
        <source>tape pulled</source>
        <translation>Klebeband abgezogen</translation>
    </message>
    <message>
        <source>drips trimmed</source>
        <translation>Tropfen abgenommen</translation>
    </message>
    <message>
        <source>turned over</source>
        <translation>gewendet</translation>
    </message>
    <message>
        <source>moved</source>
        <translation>umgestellt</translation>
    </message>
    <message>
        <source>washed and sanded</source>
        <translation>gewaschen und angeschliffen</translation>
    </message>
    <message>
        <source>packed</source>
        <translation>verpackt</translation>
    </message>
    <message>
        <source>shipped</source>
        <translation>abgeschickt</translation>
    </message>
    <message>
        <source>spoiled</source>
        <translation>verdorben</translation>
    </message>
    <message>
        <source>stripped</source>
        <translation>abgetragen</translation>
    </message>
    <message>
        <source>withdrawn</source>
        <translation>zurückgenommen</translation>
    </message>
</context>
<context>
    <name>late</name>
    <message>
        <source>leave out {coats} (this changes the piece, so it is for you and the customer to decide)</source>
        <translation>{coats} weglassen (das ändert das Stück, die Entscheidung liegt bei Werkstatt und Kundschaft)</translation>
    </message>
    <message>
        <source>pour {coats} (this changes the piece, so it is for you and the customer to decide)</source>
        <translation>{coats} gießen (das ändert das Stück, die Entscheidung liegt bei Werkstatt und Kundschaft)</translation>
    </message>
    <message>
        <source>the {lower} and {upper} as one of {film:g} mm</source>
        <translation>{lower} und {upper} als eine Schicht von {film:g} mm</translation>
    </message>
    <message>
        <source>{count} change was tried.</source>
        <translation>{count} Änderung wurde versucht.</translation>
    </message>
    <message>
        <source>{count} changes were tried.</source>
        <translation>{count} Änderungen wurden versucht.</translation>
    </message>
    <message>
        <source>None of the {count} changes that were tried keeps the promise.</source>
        <translation>Keine der {count} versuchten Änderungen hält die Zusage.</translation>
    </message>
    <message>
        <source>makes {names} late</source>
        <translation>macht {names} zu spät</translation>
    </message>
    <message>
        <source>{names} would leave later still</source>
        <translation>{names} ginge noch später ab</translation>
    </message>
    <message>
        <source>pour it where there is room between the others; nothing else moves</source>
        <translation>es gießen, wo zwischen den anderen Platz ist; sonst bewegt sich nichts</translation>
    </message>
    <message>
        <source>pour it before all others</source>
        <translation>es vor allen anderen gießen</translation>
    </message>
    <message>
        <source>one window then closes while nobody can work</source>
        <translation>ein Fenster schließt dann, während niemand arbeiten kann</translation>
    </message>
    <message>
        <source>{count} windows then close while nobody can work</source>
        <translation>{count} Fenster schließen dann, während niemand arbeiten kann</translation>
    </message>
    <message>
        <source>No hands: even with nothing else to do, the working hours come too far apart for its coats.</source>
        <translation>Keine Hände: Auch wenn sonst nichts zu tun ist, liegen die Arbeitszeiten für die Schichten zu weit auseinander.</translation>
    </message>
    <message>
        <source>The working hours miss a window</source>
        <translation>Die Arbeitszeiten verfehlen ein Fenster</translation>
    </message>
    <message>
        <source>{name} is away from {start} to {end}.</source>
        <translation>{name} ist von {start} bis {end} weg.</translation>
    </message>
    <message>
        <source>Even with nothing else to pour, hands day and night and a warm room it leaves {when} at the soonest.</source>
        <translation>Auch wenn sonst nichts zu gießen wäre, mit Händen bei Tag und Nacht und einem warmen Raum, geht es frühestens {when} ab.</translation>
    </message>
    <message>
        <source>Only with nothing else to pour, hands day and night and a warm room would it be kept.</source>
        <translation>Gehalten würde sie nur, wenn sonst nichts zu gießen wäre, mit Händen bei Tag und Nacht und einem warmen Raum.</translation>
    </message>
    <message>
        <source>plan again: {change}</source>
        <translation>neu planen: {change}</translation>
    </message>
    <message>
        <source>it is planned so once its being late counts {weight}</source>
        <translation>so wird geplant, sobald seine Verspätung das Gewicht {weight} hat</translation>
    </message>
    <message>
        <source>after the pick-up {when}</source>
        <translation>nach der Abholung {when}</translation>
    </message>
    <message>
        <source>Packing {piece}</source>
        <translation>Verpacken von {piece}</translation>
    </message>
    <message>
        <source>{what} has to wait from {since} to {until}, because the room is outside the limits of {product} (temperature, humidity, dew point) or the air warms while it would be bare.</source>
        <translation>{what} muss von {since} bis {until} warten, weil der Raum außerhalb der Grenzen von {product} liegt (Temperatur, Luftfeuchte, Taupunkt) oder die Luft wärmer wird, solange es roh wäre.</translation>
    </message>
    <message>
        <source>{what} has to wait from {since} to {until}, because the room is outside the limits of {product} (temperature, humidity, dew point).</source>
        <translation>{what} muss von {since} bis {until} warten, weil der Raum außerhalb der Grenzen von {product} liegt (Temperatur, Luftfeuchte, Taupunkt).</translation>
    </message>
    <message>
        <source>The longest wait is {length} from {lower} until it is packed.</source>
        <translation>Am längsten dauert es, {length}, von {lower} bis zum Verpacken.</translation>
    </message>
    <message>
        <source>The longest wait is {length} from {lower} until {upper}.</source>
        <translation>Am längsten dauert es, {length}, von {lower} bis {upper}.</translation>
    </message>
    <message>
        <source>work every {day} evening too, from 18:00 to 22:00</source>
        <translation>auch am {day} abends arbeiten, von 18:00 bis 22:00</translation>
    </message>
    <message>
        <source>have one more spot in the warm box</source>
        <translation>einen Platz mehr in der Wärmebox haben</translation>
    </message>
    <message>
        <source>{first}, and {second}</source>
        <translation>{first}, und {second}</translation>
    </message>
    <message>
        <source>{first}, {second}, and {third}</source>
        <translation>{first}, {second}, und {third}</translation>
    </message>
    <message>
        <source>work every evening from 18:00 to 22:00</source>
        <translation>jeden Abend von 18:00 bis 22:00 arbeiten</translation>
    </message>
    <message>
        <source>have one more level spot</source>
        <translation>einen ebenen Platz mehr haben</translation>
    </message>
    <message>
        <source>have two more level spots</source>
        <translation>zwei ebene Plätze mehr haben</translation>
    </message>
    <message>
        <source>work every day from 8:00 to 22:00</source>
        <translation>jeden Tag von 8:00 bis 22:00 arbeiten</translation>
    </message>
    <message>
        <source>{hours} ({person})</source>
        <translation>{hours} ({person})</translation>
    </message>
    <message>
        <source>keep the room at {warmth} or warmer, also at night</source>
        <translation>den Raum auf {warmth} oder wärmer halten, auch nachts</translation>
    </message>
    <message>
        <source>Too late already: to keep the date it had to leave by {due}, and this plan starts {start}.</source>
        <translation>Schon zu spät: Für den Termin hätte es bis {due} abgehen müssen, und dieser Plan beginnt {start}.</translation>
    </message>
    <message>
        <source>Too cold: at the room&apos;s temperature its coats cure too slowly for the date; never below {warmth} they would be in time.</source>
        <translation>Zu kalt: Bei der Temperatur des Raums härten die Schichten für den Termin zu langsam; nie unter {warmth} wären sie pünktlich.</translation>
    </message>
    <message>
        <source>Air: {what}</source>
        <translation>Luft: {what}</translation>
    </message>
    <message>
        <source>Cure time: its coats cannot cure by then, even with hands day and night and every spot free.</source>
        <translation>Härtezeit: Die Schichten können bis dahin nicht aushärten, auch nicht mit Händen Tag und Nacht und allen Plätzen frei.</translation>
    </message>
    <message>
        <source>{what} could start {since}, but nobody can work on it before {until}</source>
        <translation>{what} könnte {since} beginnen, aber vor {until} kann niemand daran arbeiten</translation>
    </message>
    <message>
        <source>{head}: poured as soon as can be, the window of {lower} opens {opens} and closes {closes}, when nobody can work {length} on end; {after}.</source>
        <translation>{head}: So früh wie möglich gegossen, öffnet das Fenster von {lower} {opens} und schließt {closes}, und niemand kann darin {length} am Stück arbeiten; {after}.</translation>
    </message>
    <message>
        <source>{head}: poured as soon as can be, the window of {lower} opens {opens} and closes {closes}, when nobody can work; {after}.</source>
        <translation>{head}: So früh wie möglich gegossen, öffnet das Fenster von {lower} {opens} und schließt {closes}, und niemand kann dann arbeiten; {after}.</translation>
    </message>
    <message>
        <source>No hands: its own pours and packing take {asked}, and until then there are {there} of working hours.</source>
        <translation>Keine Hände: Die eigenen Güsse und das Packen brauchen {asked}, und bis dahin gibt es {there} Arbeitszeit.</translation>
    </message>
    <message>
        <source>Night closes a window</source>
        <translation>Die Nacht schließt ein Fenster</translation>
    </message>
    <message>
        <source>No hands: its own pours and packing take {asked}, and until then nobody works.</source>
        <translation>Keine Hände: Die eigenen Güsse und das Packen brauchen {asked}, und bis dahin arbeitet niemand.</translation>
    </message>
    <message>
        <source>{upper} then waits until it can be washed and sanded</source>
        <translation>{upper} wartet dann, bis gewaschen und angeschliffen werden kann</translation>
    </message>
    <message>
        <source>so {lower} has to be poured at another time</source>
        <translation>also muss {lower} zu anderer Zeit gegossen werden</translation>
    </message>
    <message>
        <source>No spot: its own pieces have to wait for each other, for only {count} spot can hold them.</source>
        <translation>Kein Platz: Die eigenen Stücke müssen aufeinander warten, denn nur {count} Platz kann sie aufnehmen.</translation>
    </message>
    <message>
        <source>No spot: its own pieces have to wait for each other, for only {count} spots can hold them.</source>
        <translation>Kein Platz: Die eigenen Stücke müssen aufeinander warten, denn nur {count} Plätze können sie aufnehmen.</translation>
    </message>
    <message>
        <source>No spot: {names} stands on the shelf when its coats have to be poured{own}.</source>
        <translation>Kein Platz: {names} steht im Regal, wenn die Schichten gegossen werden müssen{own}.</translation>
    </message>
    <message>
        <source>No spot: {names} stand on the shelf when its coats have to be poured{own}.</source>
        <translation>Kein Platz: {names} stehen im Regal, wenn die Schichten gegossen werden müssen{own}.</translation>
    </message>
    <message>
        <source>it needs {count} spots</source>
        <translation>es braucht {count} Plätze</translation>
    </message>
    <message>
        <source>No hands: the free hours go to pours of other orders.</source>
        <translation>Keine Hände: Die freien Stunden gehen an Güsse anderer Aufträge.</translation>
    </message>
    <message>
        <source>No hands: between {low} and {high}, when it has to be made, the free hours go to {names}.</source>
        <translation>Keine Hände: Zwischen {low} und {high}, wenn es gemacht werden muss, gehen die freien Stunden an {names}.</translation>
    </message>
    <message>
        <source>Dust: its pours have to keep away from the sanding for {names}.</source>
        <translation>Staub: Die Güsse müssen dem Schleifen für {names} fernbleiben.</translation>
    </message>
    <message>
        <source>Dust: it has to be sanded, and wet coats of other orders are about all the while.</source>
        <translation>Staub: Es muss geschliffen werden, und die ganze Zeit liegen nasse Schichten anderer Aufträge offen.</translation>
    </message>
    <message>
        <source>Other orders got their places first. It does fit between their pours as they stand.</source>
        <translation>Andere Aufträge bekamen ihre Zeiten zuerst. Zwischen ihre Güsse, wie sie stehen, passt es noch.</translation>
    </message>
    <message>
        <source>Other orders got their places first. It does fit between their pours as they stand and leaves {when}.</source>
        <translation>Andere Aufträge bekamen ihre Zeiten zuerst. Zwischen ihre Güsse, wie sie stehen, passt es noch und geht {when} ab.</translation>
    </message>
</context>
<context>
    <name>legend</name>
    <message>
        <source>Hands: somebody can work</source>
        <translation>Hände: Jemand kann arbeiten</translation>
    </message>
    <message>
        <source>Night: nobody is awake</source>
        <translation>Nacht: Niemand ist wach</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>Work on a coat: weigh, mix, pour</source>
        <translation>Arbeit an einer Schicht: abwiegen, mischen, gießen</translation>
    </message>
    <message>
        <source>Film: amber and rippled while wet, plain when hard</source>
        <translation>Film: bernsteinfarben und gewellt, solange nass, glatt, wenn hart</translation>
    </message>
    <message>
        <source>Doorway: recoat is open, from post to post</source>
        <translation>Tor: überarbeitbar, von Pfosten zu Pfosten</translation>
    </message>
    <message>
        <source>Hatched doorway: open, but nobody can work</source>
        <translation>Schraffiertes Tor: offen, aber niemand kann arbeiten</translation>
    </message>
    <message>
        <source>Dotted doorway: the plan does not use it</source>
        <translation>Gepunktetes Tor: Der Plan nutzt es nicht</translation>
    </message>
    <message>
        <source>Scuff mark: sand before this coat</source>
        <translation>Schleifspur: vor dieser Schicht anschleifen</translation>
    </message>
    <message>
        <source>Ring: test before this coat</source>
        <translation>Ring: vor dieser Schicht Fingerprobe</translation>
    </message>
    <message>
        <source>Wedges: pinned, planning leaves this coat at its time</source>
        <translation>Keile: festgesteckt, Planen lässt diese Schicht an ihrer Zeit</translation>
    </message>
    <message>
        <source>Step: turn, tape, trim or pack</source>
        <translation>Schritt: wenden, Klebeband, Tropfen oder verpacken</translation>
    </message>
    <message>
        <source>Stippled step: sand</source>
        <translation>Getüpfelter Schritt: schleifen</translation>
    </message>
    <message>
        <source>Flag: ready to handle, to pack, or fully cured</source>
        <translation>Fahne: griffest, verpackbar oder ausgehärtet</translation>
    </message>
    <message>
        <source>Legend</source>
        <translation>Legende</translation>
    </message>
</context>
<context>
    <name>lists</name>
    <message>
        <source>{first} and {last}</source>
        <translation>{first} und {last}</translation>
    </message>
    <message>
        <source>{count} more</source>
        <translation>{count} weitere</translation>
    </message>
</context>
<context>
    <name>log</name>
    <message>
        <source>The room log has no rows with a time and a temperature. Export it as CSV with a heading such as time,temperature_c,humidity_pct and try again.</source>
        <translation>Die Aufzeichnung hat keine Zeilen mit Zeit und Temperatur. Als CSV mit einer Kopfzeile wie time,temperature_c,humidity_pct exportieren und noch einmal versuchen.</translation>
    </message>
    <message>
        <source>The room log cannot be read at line {line_num}: {error}.</source>
        <translation>Die Aufzeichnung ist in Zeile {line_num} nicht lesbar: {error}.</translation>
    </message>
    <message>
        <source>The room log has more columns in its rows than in its heading: commas seem to stand for decimals too. Export it with semicolons or decimal points and try again.</source>
        <translation>Die Aufzeichnung hat in den Zeilen mehr Spalten als im Kopf: Kommas stehen wohl auch für Dezimalen. Mit Semikolons oder Dezimalpunkten exportieren und noch einmal versuchen.</translation>
    </message>
    <message>
        <source>Which column is the room&apos;s temperature: {names}?</source>
        <translation>Welche Spalte ist die Temperatur des Raums: {names}?</translation>
    </message>
    <message>
        <source>No heading says temperature; which column is it? There are: {names}.</source>
        <translation>Keine Überschrift nennt die Temperatur; welche Spalte ist es? Es gibt: {names}.</translation>
    </message>
    <message>
        <source>The room log has no column “{said}”; it has {known}.</source>
        <translation>Die Aufzeichnung hat keine Spalte „{said}“; es gibt {known}.</translation>
    </message>
    <message>
        <source>Is {first:02d}/{second:02d}/{year} the day first or the month first? Nothing in the log decides it.</source>
        <translation>Steht in {first:02d}/{second:02d}/{year} der Tag zuerst oder der Monat? Nichts in der Aufzeichnung entscheidet es.</translation>
    </message>
    <message>
        <source>there is no such date</source>
        <translation>diesen Tag gibt es nicht</translation>
    </message>
    <message>
        <source>the clock in {key} skips this time at the spring change</source>
        <translation>die Uhr in {key} überspringt diese Zeit bei der Umstellung im Frühjahr</translation>
    </message>
    <message>
        <source>The heading names no unit; are the temperatures °C or °F?</source>
        <translation>Der Kopf nennt keine Einheit; sind die Temperaturen in °C oder °F?</translation>
    </message>
    <message>
        <source>day first</source>
        <translation>Tag zuerst</translation>
    </message>
    <message>
        <source>month first</source>
        <translation>Monat zuerst</translation>
    </message>
    <message>
        <source>There is no heading: the columns were told by what is in them.</source>
        <translation>Es gibt keinen Kopf: Die Spalten wurden an ihrem Inhalt erkannt.</translation>
    </message>
    <message>
        <source>The heading names no unit; °C was taken.</source>
        <translation>Der Kopf nennt keine Einheit; °C wurde angenommen.</translation>
    </message>
    <message>
        <source>its time cannot be read</source>
        <translation>die Zeit ist nicht lesbar</translation>
    </message>
    <message>
        <source>{unread} readings have no usable humidity.</source>
        <translation>{unread} Messwerte haben keine brauchbare Luftfeuchte.</translation>
    </message>
    <message>
        <source>it has no temperature (“{cell}”)</source>
        <translation>hat keine Temperatur („{cell}“)</translation>
    </message>
    <message>
        <source>it has no temperature</source>
        <translation>hat keine Temperatur</translation>
    </message>
    <message>
        <source>85 °C is what a probe sends when it has just been switched on</source>
        <translation>85 °C sendet ein Fühler, der gerade eingeschaltet wurde</translation>
    </message>
    <message>
        <source>{cell} is an error value or not a room&apos;s temperature</source>
        <translation>{cell} ist ein Fehlerwert oder keine Raumtemperatur</translation>
    </message>
    <message>
        <source>The rows were not in the order of time; they were sorted.</source>
        <translation>Die Zeilen waren nicht nach der Zeit geordnet; sie wurden sortiert.</translation>
    </message>
    <message>
        <source>line {line} has the same time</source>
        <translation>Zeile {line} hat dieselbe Zeit</translation>
    </message>
    <message>
        <source>{key}, local times</source>
        <translation>{key}, Ortszeit</translation>
    </message>
    <message>
        <source>written in every row</source>
        <translation>in jeder Zeile angegeben</translation>
    </message>
    <message>
        <source>{offset}, from the heading</source>
        <translation>{offset}, aus dem Kopf</translation>
    </message>
    <message>
        <source>seconds since 1970</source>
        <translation>Sekunden seit 1970</translation>
    </message>
    <message>
        <source>unmistakable</source>
        <translation>eindeutig</translation>
    </message>
    <message>
        <source>The room log</source>
        <translation>Die Aufzeichnung</translation>
    </message>
    <message>
        <source>Correct: {what}</source>
        <translation>Berichtigen: {what}</translation>
    </message>
    <message>
        <source>Correct the pour of {coat}</source>
        <translation>Guss berichtigen: {coat}</translation>
    </message>
    <message>
        <source>Withdraw: {what}</source>
        <translation>Zurücknehmen: {what}</translation>
    </message>
    <message>
        <source>it was stripped before that; keep it before, or correct that first.</source>
        <translation>es wurde vorher abgetragen; lass es davor, oder berichtige erst das.</translation>
    </message>
    <message>
        <source>it was stripped since, so this stays with it.</source>
        <translation>es wurde seitdem abgetragen, also bleibt dies dabei.</translation>
    </message>
    <message>
        <source>pours name its mix; correct entry {number} first.</source>
        <translation>Güsse nennen seine Mischung; berichtige erst Eintrag {number}.</translation>
    </message>
    <message>
        <source>write down the pour of {coat} first.</source>
        <translation>schreib erst den Guss von {coat} auf.</translation>
    </message>
    <message>
        <source>there is no entry {number} in the log.</source>
        <translation>es gibt keinen Eintrag {number} im Werkstattbuch.</translation>
    </message>
    <message>
        <source>entry {last} says that it never happened; write anew what did.</source>
        <translation>laut Eintrag {last} war das nie; schreib neu auf, was war.</translation>
    </message>
    <message>
        <source>entry {number} was corrected already; correct entry {last}.</source>
        <translation>Eintrag {number} ist schon berichtigt; berichtige Eintrag {last}.</translation>
    </message>
    <message>
        <source>nothing is different from entry {number}; change what was wrong.</source>
        <translation>nichts ist anders als in Eintrag {number}; ändere, was falsch war.</translation>
    </message>
    <message>
        <source>{coat} would be poured twice then; take one pour back first.</source>
        <translation>{coat} wäre dann zweimal gegossen; nimm erst einen Guss zurück.</translation>
    </message>
    <message>
        <source>{coat} can&apos;t be poured before {below}; correct the times.</source>
        <translation>{coat} kann nicht vor {below} gegossen sein; berichtige die Zeiten.</translation>
    </message>
    <message>
        <source>there is no coat “{key}”; the stack is {what}.</source>
        <translation>es gibt keine Schicht „{key}“; der Aufbau ist {what}.</translation>
    </message>
    <message>
        <source>Poured: {what}</source>
        <translation>Gegossen: {what}</translation>
    </message>
    <message>
        <source>it is spoiled; strip it first, or take that back.</source>
        <translation>es ist verdorben; trag es erst ab, oder nimm das zurück.</translation>
    </message>
    <message>
        <source>say on which spot it lies.</source>
        <translation>sag, auf welchem Platz es liegt.</translation>
    </message>
    <message>
        <source>it is written down already; correct that entry instead.</source>
        <translation>das ist schon aufgeschrieben; berichtige stattdessen jenen Eintrag.</translation>
    </message>
    <message>
        <source>write down {missing} first; it lies below.</source>
        <translation>schreib erst {missing} auf; das liegt darunter.</translation>
    </message>
    <message>
        <source>the pour of {coat}</source>
        <translation>dem Guss von {coat}</translation>
    </message>
    <message>
        <source>it is written down already; correct entry {number} instead.</source>
        <translation>das ist schon aufgeschrieben; berichtige stattdessen Eintrag {number}.</translation>
    </message>
    <message>
        <source>taken as planned</source>
        <translation>wie geplant angenommen</translation>
    </message>
    <message>
        <source>{piece}: {what}</source>
        <translation>{piece}: {what}</translation>
    </message>
    <message>
        <source>choose a piece.</source>
        <translation>wähle ein Stück.</translation>
    </message>
    <message>
        <source>nothing is poured on {piece} yet; write down its first coat before that.</source>
        <translation>auf {piece} ist noch nichts gegossen; schreib zuerst die erste Schicht auf.</translation>
    </message>
    <message>
        <source>it has left already; correct that entry instead.</source>
        <translation>es ist schon abgegangen; berichtige stattdessen jenen Eintrag.</translation>
    </message>
    <message>
        <source>Shipped: {order}</source>
        <translation>Abgeschickt: {order}</translation>
    </message>
    <message>
        <source>nothing has happened to it; it is a bare blank already.</source>
        <translation>damit ist noch nichts geschehen; es ist schon ein roher Rohling.</translation>
    </message>
    <message>
        <source>it is packed already; correct that entry instead.</source>
        <translation>es ist schon verpackt; berichtige stattdessen jenen Eintrag.</translation>
    </message>
    <message>
        <source>it had left by then; correct when it was shipped, or the time.</source>
        <translation>da war es schon abgegangen; berichtige, wann es abgeschickt wurde, oder die Zeit.</translation>
    </message>
    <message>
        <source>Weighed: {product}</source>
        <translation>Abgewogen: {product}</translation>
    </message>
    <message>
        <source>weighed: {product}</source>
        <translation>abgewogen: {product}</translation>
    </message>
    <message>
        <source>a two-part mix needs both A and B.</source>
        <translation>eine Zweikomponenten-Mischung braucht A und B.</translation>
    </message>
    <message>
        <source>it is not mixed; there is no B.</source>
        <translation>es wird nicht gemischt; es gibt kein B.</translation>
    </message>
    <message>
        <source>{piece}, {coat} is of {product}.</source>
        <translation>{piece}, {coat} ist aus {product}.</translation>
    </message>
    <message>
        <source>Mix {batch}: {coats}</source>
        <translation>Mischung {batch}: {coats}</translation>
    </message>
</context>
<context>
    <name>logs</name>
    <message>
        <source>What is wanted here is the record of a temperature logger, saved as CSV text: rows with a time and a temperature, and the humidity where it was read.</source>
        <translation>Gesucht ist die Aufzeichnung eines Temperaturloggers, gespeichert als CSV-Text: Zeilen mit Zeit und Temperatur, und Luftfeuchte, wo sie gemessen wurde.</translation>
    </message>
    <message>
        <source>is a studio file or another data file, not a logger&apos;s record.</source>
        <translation>ist eine Studio- oder andere Datendatei, keine Aufzeichnung eines Loggers.</translation>
    </message>
    <message>
        <source>is a PDF document.</source>
        <translation>ist ein PDF-Dokument.</translation>
    </message>
    <message>
        <source>is a picture.</source>
        <translation>ist ein Bild.</translation>
    </message>
    <message>
        <source>is a spreadsheet or an archive; open it and save its table as CSV.</source>
        <translation>ist eine Tabellenkalkulation oder ein Archiv; öffnen und die Tabelle als CSV speichern.</translation>
    </message>
    <message>
        <source>is an old spreadsheet; open it and save its table as CSV.</source>
        <translation>ist eine alte Tabellenkalkulation; öffnen und die Tabelle als CSV speichern.</translation>
    </message>
    <message>
        <source>is a compressed file; unpack it first.</source>
        <translation>ist eine gepackte Datei; erst entpacken.</translation>
    </message>
    <message>
        <source>is a web page or XML; export the record as CSV.</source>
        <translation>ist eine Webseite oder XML; die Aufzeichnung als CSV exportieren.</translation>
    </message>
    <message>
        <source>is JSON, such as an exchange file of a studio.</source>
        <translation>ist JSON, etwa die Austauschdatei eines Studios.</translation>
    </message>
    <message>
        <source>is JSON.</source>
        <translation>ist JSON.</translation>
    </message>
    <message>
        <source>is a calendar.</source>
        <translation>ist ein Kalender.</translation>
    </message>
    <message>
        <source>is empty.</source>
        <translation>ist leer.</translation>
    </message>
    <message>
        <source>It runs from {first} to {last}, and today is {today}. Choose the other order of its dates, or put the logger&apos;s clock right, correct the dates in the file and drop it again.</source>
        <translation>Die Aufzeichnung reicht von {first} bis {last}, und heute ist {today}. Wähl die andere Reihenfolge der Datumsangaben, oder stell die Uhr des Loggers richtig, berichtige die Daten in der Datei und leg sie noch einmal ab.</translation>
    </message>
    <message>
        <source>{path} is a folder. What is wanted here is one CSV file of a logger.</source>
        <translation>{path} ist ein Ordner. Gesucht ist eine CSV-Datei eines Loggers.</translation>
    </message>
    <message>
        <source>{path} {wrong}</source>
        <translation>{path} {wrong}</translation>
    </message>
    <message>
        <source>{file}: {error}</source>
        <translation>{file}: {error}</translation>
    </message>
</context>
<context>
    <name>menus</name>
    <message>
        <source>Lan&amp;guage</source>
        <translation>&amp;Sprache</translation>
    </message>
    <message>
        <source>As the &amp;system</source>
        <translation>Wie das S&amp;ystem</translation>
    </message>
    <message>
        <source>The language is another one from the next start on.</source>
        <translation>Die Sprache gilt ab dem nächsten Start.</translation>
    </message>
    <message>
        <source>Menus</source>
        <translation>Menüs</translation>
    </message>
    <message>
        <source>&amp;Studio</source>
        <translation>&amp;Studio</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>Ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>&amp;New…</source>
        <translation>&amp;Neu…</translation>
    </message>
    <message>
        <source>Save a &amp;copy…</source>
        <translation>&amp;Kopie speichern…</translation>
    </message>
    <message>
        <source>&amp;Back up now</source>
        <translation>Jetzt &amp;sichern</translation>
    </message>
    <message>
        <source>Sheets for &amp;paper</source>
        <translation>Blätter für &amp;Papier</translation>
    </message>
    <message>
        <source>Calendar for the p&amp;hone</source>
        <translation>Kalender fürs &amp;Telefon</translation>
    </message>
    <message>
        <source>&amp;Leave</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <source>&amp;Pour sheet…</source>
        <translation>&amp;Gießblatt…</translation>
    </message>
    <message>
        <source>&amp;Week sheet…</source>
        <translation>&amp;Wochenblatt…</translation>
    </message>
    <message>
        <source>&amp;Order slip…</source>
        <translation>&amp;Begleitzettel…</translation>
    </message>
    <message>
        <source>&amp;Stock list…</source>
        <translation>Be&amp;standsliste…</translation>
    </message>
    <message>
        <source>&amp;Change</source>
        <translation>Ä&amp;ndern</translation>
    </message>
    <message>
        <source>&amp;Plan</source>
        <translation>&amp;Plan</translation>
    </message>
    <message>
        <source>Plan &amp;again</source>
        <translation>Neu &amp;planen</translation>
    </message>
    <message>
        <source>Plan &amp;now</source>
        <translation>Jetzt &amp;planen</translation>
    </message>
    <message>
        <source>&amp;Stop planning</source>
        <translation>Planen a&amp;nhalten</translation>
    </message>
    <message>
        <source>Plan after each &amp;change</source>
        <translation>Nach jeder Ä&amp;nderung planen</translation>
    </message>
    <message>
        <source>What is &amp;due</source>
        <translation>Was &amp;fällig ist</translation>
    </message>
    <message>
        <source>Another &amp;temperature for a time…</source>
        <translation>Andere &amp;Temperatur für einige Zeit…</translation>
    </message>
    <message>
        <source>&amp;Look</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>&amp;Nearer</source>
        <translation>&amp;Näher</translation>
    </message>
    <message>
        <source>&amp;Farther</source>
        <translation>&amp;Weiter weg</translation>
    </message>
    <message>
        <source>&amp;Go to now</source>
        <translation>&amp;Zum Jetzt</translation>
    </message>
    <message>
        <source>The coming &amp;week</source>
        <translation>&amp;Kommende Woche</translation>
    </message>
    <message>
        <source>The &amp;whole plan</source>
        <translation>&amp;Ganzer Plan</translation>
    </message>
    <message>
        <source>&amp;Bench</source>
        <translation>W&amp;erkbank</translation>
    </message>
    <message>
        <source>&amp;Scale</source>
        <translation>&amp;Waage</translation>
    </message>
    <message>
        <source>L&amp;egend</source>
        <translation>Le&amp;gende</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Hell</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>&amp;Dunkel</translation>
    </message>
    <message>
        <source>Little &amp;motion</source>
        <translation>Wenig Be&amp;wegung</translation>
    </message>
    <message>
        <source>The &amp;chosen bar</source>
        <translation>&amp;Gewählter Balken</translation>
    </message>
    <message>
        <source>By &amp;piece</source>
        <translation>Nach &amp;Stück</translation>
    </message>
    <message>
        <source>By &amp;spot</source>
        <translation>Nach &amp;Platz</translation>
    </message>
    <message>
        <source>&amp;Find</source>
        <translation>S&amp;uchen</translation>
    </message>
    <message>
        <source>&amp;Hands next beside it</source>
        <translation>&amp;Handgriffe daneben</translation>
    </message>
</context>
<context>
    <name>missed</name>
    <message>
        <source>Plan each of them</source>
        <translation>Jeden davon planen</translation>
    </message>
    <message>
        <source>It was poured: write that down</source>
        <translation>Es wurde gegossen: aufschreiben</translation>
    </message>
    <message>
        <source>{coat}: its window closed {when}.</source>
        <translation>{coat}: Das Fenster schloss {when}.</translation>
    </message>
    <message>
        <source>{coat}: its window closes {when}, too soon for the pour.</source>
        <translation>{coat}: Das Fenster schließt {when}, zu früh für den Guss.</translation>
    </message>
    <message>
        <source>It will be planned on a copy; nothing changes.</source>
        <translation>Es wird auf einer Kopie geplant; nichts ändert sich.</translation>
    </message>
    <message>
        <source>Planning it…</source>
        <translation>Wird geplant…</translation>
    </message>
    <message>
        <source>It was stopped; nothing has changed.</source>
        <translation>Es wurde angehalten; nichts hat sich geändert.</translation>
    </message>
    <message>
        <source>Done: {words}. Undo takes it back.</source>
        <translation>Erledigt: {words}. Rückgängig nimmt es zurück.</translation>
    </message>
    <message>
        <source>Do it</source>
        <translation>So machen</translation>
    </message>
    <message>
        <source>It costs nothing more.</source>
        <translation>Es kostet nichts zusätzlich.</translation>
    </message>
    <message>
        <source>It costs {time} of hands and {mass} of mix more.</source>
        <translation>Es kostet zusätzlich {time} Handarbeit und {mass} Mischung.</translation>
    </message>
    <message>
        <source>It costs {time} of hands more.</source>
        <translation>Es kostet zusätzlich {time} Handarbeit.</translation>
    </message>
    <message>
        <source>It can&apos;t be planned so: {why}</source>
        <translation>So lässt es sich nicht planen: {why}</translation>
    </message>
    <message>
        <source>Next pour {next}, last one done {last}.</source>
        <translation>Nächster Guss {next}, letzter fertig {last}.</translation>
    </message>
    <message>
        <source>The order leaves {when}: the promise is kept.</source>
        <translation>Der Auftrag geht {when} hinaus: Die Zusage ist gehalten.</translation>
    </message>
    <message>
        <source>The order leaves {when}: the promise is not kept.</source>
        <translation>Der Auftrag geht {when} hinaus: Die Zusage ist nicht gehalten.</translation>
    </message>
</context>
<context>
    <name>missing</name>
    <message>
        <source>{piece}, {coat}: {words}</source>
        <translation>{piece}, {coat}: {words}</translation>
    </message>
    <message>
        <source>{piece}: the data sheet of {product} does not say {asked}; add the figures from the sheet, under Products.</source>
        <translation>{piece}: Das Datenblatt von {product} sagt nicht, {asked}; die Werte aus dem Blatt unter Produkte eintragen.</translation>
    </message>
    <message>
        <source>{piece} is spoiled; strip it in the log, or take it out.</source>
        <translation>{piece} ist verdorben; trag es im Werkstattbuch als abgetragen ein, oder nimm es heraus.</translation>
    </message>
    <message>
        <source>how long it can be worked ({stage})</source>
        <translation>wie lange es sich verarbeiten lässt ({stage})</translation>
    </message>
    <message>
        <source>from when its tape can be pulled ({stage})</source>
        <translation>ab wann sich das Klebeband abziehen lässt ({stage})</translation>
    </message>
    <message>
        <source>until when its tape can be pulled ({stage})</source>
        <translation>bis wann sich das Klebeband abziehen lässt ({stage})</translation>
    </message>
    <message>
        <source>from when its drips can be trimmed ({stage})</source>
        <translation>ab wann sich die Tropfen abnehmen lassen ({stage})</translation>
    </message>
    <message>
        <source>until when its drips can be trimmed ({stage})</source>
        <translation>bis wann sich die Tropfen abnehmen lassen ({stage})</translation>
    </message>
    <message>
        <source>from when the next coat can go on ({stage})</source>
        <translation>ab wann die nächste Schicht darauf kann ({stage})</translation>
    </message>
    <message>
        <source>until when the next coat bonds to it ({stage})</source>
        <translation>bis wann die nächste Schicht darauf haftet ({stage})</translation>
    </message>
    <message>
        <source>when it can be handled ({stage})</source>
        <translation>wann man das Stück anfassen kann ({stage})</translation>
    </message>
    <message>
        <source>when it can be packed ({stage})</source>
        <translation>wann man das Stück verpacken kann ({stage})</translation>
    </message>
    <message>
        <source>when it is cured through ({stage})</source>
        <translation>wann es durchgehärtet ist ({stage})</translation>
    </message>
</context>
<context>
    <name>mix</name>
    <message>
        <source>{count} cup</source>
        <translation>{count} Becher</translation>
    </message>
    <message>
        <source>{count} cups</source>
        <translation>{count} Becher</translation>
    </message>
    <message>
        <source>{cups}, weighed in {parts} portions one after the other, {limit} each at most</source>
        <translation>{cups}, in {parts} Portionen nacheinander abgewogen, höchstens je {limit}</translation>
    </message>
    <message>
        <source>{colour}: pour at minute {minute}</source>
        <translation>{colour}: in Minute {minute} gießen</translation>
    </message>
    <message>
        <source>{colour}: pour at minute {minute}, empty by {by}</source>
        <translation>{colour}: in Minute {minute} gießen, leer bis {by}</translation>
    </message>
    <message>
        <source>It is out of its cups in time.</source>
        <translation>Sie ist rechtzeitig aus den Bechern.</translation>
    </message>
    <message>
        <source>It is not out of its cups in time.</source>
        <translation>Sie ist nicht rechtzeitig aus den Bechern.</translation>
    </message>
    <message>
        <source>{colour} stays where it is poured from minute {minute} on.</source>
        <translation>{colour} bleibt ab Minute {minute} liegen, wo es gegossen wird.</translation>
    </message>
    <message>
        <source>{count} mix</source>
        <translation>{count} Mischung</translation>
    </message>
    <message>
        <source>{count} mixes</source>
        <translation>{count} Mischungen</translation>
    </message>
    <message>
        <source>Sharing saves {mixes}, {grams} and {minutes} of hands.</source>
        <translation>Gemeinsam gemischt spart es {mixes}, {grams} und {minutes} Handarbeit.</translation>
    </message>
    <message>
        <source>The scale weighs {grams} or more of it exactly enough.</source>
        <translation>Die Waage wiegt ab {grams} genau genug.</translation>
    </message>
    <message>
        <source>more runs over the edge</source>
        <translation>mehr läuft über die Kante</translation>
    </message>
    <message>
        <source>the rim holds no more</source>
        <translation>mehr fasst der Rand nicht</translation>
    </message>
    <message>
        <source>its sheet says so</source>
        <translation>so sagt es das Datenblatt</translation>
    </message>
    <message>
        <source>deeper it heats itself</source>
        <translation>tiefer erhitzt es sich selbst</translation>
    </message>
    <message>
        <source>Too deep on {piece}: {film}, at most {limit} ({why}).</source>
        <translation>Zu tief auf {piece}: {film}, höchstens {limit} ({why}).</translation>
    </message>
    <message>
        <source>{piece}: {film} deep, at most {limit} ({why}).</source>
        <translation>{piece}: {film} tief, höchstens {limit} ({why}).</translation>
    </message>
    <message>
        <source>Mix {number}, weighed {when}</source>
        <translation>Mischung {number}, abgewogen {when}</translation>
    </message>
    <message>
        <source>{name}: {share} of all of mix {number}.</source>
        <translation>{name}: {share} der ganzen Mischung {number}.</translation>
    </message>
    <message>
        <source>Colours</source>
        <translation>Farben</translation>
    </message>
    <message>
        <source>Mind</source>
        <translation>Achtung</translation>
    </message>
    <message>
        <source>In this order</source>
        <translation>In dieser Reihenfolge</translation>
    </message>
    <message>
        <source>Cup life</source>
        <translation>Topfzeit</translation>
    </message>
    <message>
        <source>Sinking</source>
        <translation>Absinken</translation>
    </message>
    <message>
        <source>Heat</source>
        <translation>Wärme</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>Shared</source>
        <translation>Gemeinsam</translation>
    </message>
    <message>
        <source>Smallest</source>
        <translation>Kleinste Mischung</translation>
    </message>
    <message>
        <source>Before all</source>
        <translation>Vor allem</translation>
    </message>
</context>
<context>
    <name>mixing</name>
    <message>
        <source>Leaf is laid, not weighed.</source>
        <translation>Blattmetall wird aufgelegt, nicht gewogen.</translation>
    </message>
    <message>
        <source>All colourants together are {share} % of the mix; that is much.</source>
        <translation>Alle Farbmittel zusammen sind {share} % der Mischung; das ist viel.</translation>
    </message>
    <message>
        <source>More than {total} must not be in one cup, and less than {smallest} cannot be weighed exactly enough on this scale: use a finer one.</source>
        <translation>Mehr als {total} dürfen nicht in einen Becher, und weniger als {smallest} lassen sich auf dieser Waage nicht genau genug wiegen: nimm eine feinere.</translation>
    </message>
    <message>
        <source>{needed} would do, but less than {total} cannot be weighed exactly enough on this scale.</source>
        <translation>{needed} würden reichen, aber weniger als {total} lässt sich auf dieser Waage nicht genau genug wiegen.</translation>
    </message>
    <message>
        <source>Do not mix yet: the ratio of {product} is only assumed; enter the one on its sheet.</source>
        <translation>Noch nicht mischen: Das Verhältnis von {product} ist nur angenommen; trag das vom Datenblatt ein.</translation>
    </message>
    <message>
        <source>{colour}: {share} % of {colourant} is over the usual ceiling of {ceiling} % ({reason}); ask the product&apos;s sheet.</source>
        <translation>{colour}: {share} % {colourant} liegt über der üblichen Obergrenze von {ceiling} % ({reason}); im Datenblatt des Produkts nachsehen.</translation>
    </message>
    <message>
        <source>its carrier does not react</source>
        <translation>sein Trägerstoff reagiert nicht mit</translation>
    </message>
    <message>
        <source>it thickens, settles and dulls the gloss</source>
        <translation>es dickt ein, setzt sich ab und nimmt Glanz</translation>
    </message>
    <message>
        <source>it sinks; mind its dust</source>
        <translation>es sinkt; Vorsicht mit dem Staub</translation>
    </message>
    <message>
        <source>it wets poorly and lumps</source>
        <translation>es benetzt schlecht und klumpt</translation>
    </message>
    <message>
        <source>trapped solvent leaves a soft film</source>
        <translation>eingeschlossenes Lösemittel lässt den Film weich</translation>
    </message>
    <message>
        <source>its water leaves a soft, cloudy film</source>
        <translation>sein Wasser macht den Film weich und trüb</translation>
    </message>
    <message>
        <source>it stands out of a thin film</source>
        <translation>es ragt aus einem dünnen Film heraus</translation>
    </message>
    <message>
        <source>Left in its cup it passes {warm} after about {minutes} minutes: spread it before.</source>
        <translation>Im Becher stehen gelassen wird sie nach etwa {minutes} Minuten wärmer als {warm}: vorher ausgießen.</translation>
    </message>
    <message>
        <source>Left in its cup it passes {warm} after about {minutes} minutes and may get hot enough to smoke: spread it before, or put it outdoors on stone.</source>
        <translation>Im Becher stehen gelassen wird sie nach etwa {minutes} Minuten wärmer als {warm} und kann so heiß werden, dass sie raucht: vorher ausgießen oder draußen auf Stein stellen.</translation>
    </message>
    <message>
        <source>The sheet of {product} has no cup life: nobody knows by when its cups have to be empty.</source>
        <translation>Das Datenblatt von {product} hat keine Topfzeit: Niemand weiß, bis wann die Becher leer sein müssen.</translation>
    </message>
    <message>
        <source>The last cup is empty {late} minutes too late, and more mixes of the same kind do not help: take fewer pieces, fewer colours or a slower mix.</source>
        <translation>Der letzte Becher ist {late} Minuten zu spät leer, und mehr Mischungen helfen nicht: weniger Stücke, weniger Farben oder eine langsamere Mischung nehmen.</translation>
    </message>
    <message>
        <source>The last cup is empty {late} minutes too late: weigh it in {parts} mixes, one after the other.</source>
        <translation>Der letzte Becher ist {late} Minuten zu spät leer: in {parts} Mischungen abwiegen, eine nach der anderen.</translation>
    </message>
    <message>
        <source>{colour} poured at minute {minute} sinks about {depth} of {film}; it would stay from minute {stays} on.</source>
        <translation>{colour}, in Minute {minute} gegossen, sinkt um etwa {depth} von {film}; ab Minute {stays} bliebe es liegen.</translation>
    </message>
    <message>
        <source>{colour} poured at minute {minute} sinks about {depth} of {film}; it would stay from minute {stays} on, but its cup has to be empty before.</source>
        <translation>{colour}, in Minute {minute} gegossen, sinkt um etwa {depth} von {film}; ab Minute {stays} bliebe es liegen, aber der Becher muss vorher leer sein.</translation>
    </message>
    <message>
        <source>{product} is not mixed from two parts.</source>
        <translation>{product} wird nicht aus zwei Komponenten gemischt.</translation>
    </message>
    <message>
        <source>Nothing is in the cup yet; weigh part A first.</source>
        <translation>Noch ist nichts im Becher; zuerst Komponente A abwiegen.</translation>
    </message>
    <message>
        <source>{share} % too much B: add {grams} of A, and scoop nothing out.</source>
        <translation>{share} % zu viel B: {grams} A dazugeben und nichts herausschöpfen.</translation>
    </message>
    <message>
        <source>{share} % too little B: add {grams} of B.</source>
        <translation>{share} % zu wenig B: {grams} B dazugeben.</translation>
    </message>
    <message>
        <source>Stop: {total} in one cup are more than the {limit} that {product} allows; it may heat itself.</source>
        <translation>Halt: {total} in einem Becher sind mehr als die {limit}, die {product} erlaubt; das kann sich selbst erhitzen.</translation>
    </message>
    <message>
        <source>Divide what is in it over {cups} cups first.</source>
        <translation>Verteile erst, was darin ist, auf {cups} Becher.</translation>
    </message>
    <message>
        <source>{lacking} less than the coats take: add A, or some of them stay thin.</source>
        <translation>{lacking} weniger, als die Schichten brauchen: A dazugeben, sonst bleiben einige dünn.</translation>
    </message>
</context>
<context>
    <name>months</name>
    <message>
        <source>Jan</source>
        <translation>Jan</translation>
    </message>
    <message>
        <source>Feb</source>
        <translation>Feb</translation>
    </message>
    <message>
        <source>Mar</source>
        <translation>Mär</translation>
    </message>
    <message>
        <source>Apr</source>
        <translation>Apr</translation>
    </message>
    <message>
        <source>May</source>
        <translation>Mai</translation>
    </message>
    <message>
        <source>Jun</source>
        <translation>Jun</translation>
    </message>
    <message>
        <source>Jul</source>
        <translation>Jul</translation>
    </message>
    <message>
        <source>Aug</source>
        <translation>Aug</translation>
    </message>
    <message>
        <source>Sep</source>
        <translation>Sep</translation>
    </message>
    <message>
        <source>Oct</source>
        <translation>Okt</translation>
    </message>
    <message>
        <source>Nov</source>
        <translation>Nov</translation>
    </message>
    <message>
        <source>Dec</source>
        <translation>Dez</translation>
    </message>
</context>
<context>
    <name>moved</name>
    <message>
        <source>{coat}: its window closed {when}.</source>
        <translation>{coat}: Das Fenster schloss {when}.</translation>
    </message>
    <message>
        <source>{coat}: its window closes {when}, too soon for the pour.</source>
        <translation>{coat}: Das Fenster schließt {when}, zu früh für den Guss.</translation>
    </message>
    <message>
        <source>The window of {coat} moved. {what}</source>
        <translation>Das Fenster von {coat} hat sich verschoben. {what}</translation>
    </message>
    <message>
        <source>And {count} more</source>
        <translation>Und {count} weitere</translation>
    </message>
    <message>
        <source>Show it</source>
        <translation>Zeigen</translation>
    </message>
    <message>
        <source>Plan again</source>
        <translation>Neu planen</translation>
    </message>
    <message>
        <source>What now?</source>
        <translation>Was nun?</translation>
    </message>
</context>
<context>
    <name>notice</name>
    <message>
        <source>Got it</source>
        <translation>Verstanden</translation>
    </message>
    <message>
        <source>Got it, hide the notice</source>
        <translation>Verstanden, Hinweis ausblenden</translation>
    </message>
    <message>
        <source>Not done: {why}</source>
        <translation>Nicht gemacht: {why}</translation>
    </message>
</context>
<context>
    <name>nouns</name>
    <message>
        <source>working hours</source>
        <translation>Arbeitszeiten</translation>
    </message>
    <message>
        <source>absence</source>
        <translation>Abwesenheit</translation>
    </message>
    <message>
        <source>person {name}</source>
        <translation>{name}</translation>
    </message>
    <message>
        <source>pour of {piece}, {coat}</source>
        <translation>Guss von {piece}, {coat}</translation>
    </message>
    <message>
        <source>entry {number} of the log</source>
        <translation>Eintrag {number} im Werkstattbuch</translation>
    </message>
    <message>
        <source>{name}, which was taken out</source>
        <translation>{name}, herausgenommen</translation>
    </message>
    <message>
        <source>courier</source>
        <translation>Paketdienst</translation>
    </message>
    <message>
        <source>order {name}</source>
        <translation>Auftrag {name}</translation>
    </message>
    <message>
        <source>colour {name}</source>
        <translation>Farbe {name}</translation>
    </message>
    <message>
        <source>coat {key}</source>
        <translation>Schicht {key}</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>piece {name}</source>
        <translation>Stück {name}</translation>
    </message>
    <message>
        <source>pin of {piece}, {coat}</source>
        <translation>Feststecken von {piece}, {coat}</translation>
    </message>
    <message>
        <source>temperature pattern</source>
        <translation>erwartete Luft</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>spot {name}</source>
        <translation>Platz {name}</translation>
    </message>
    <message>
        <source>place {name}</source>
        <translation>Raum {name}</translation>
    </message>
    <message>
        <source>mix ratio</source>
        <translation>Mischungsverhältnis</translation>
    </message>
    <message>
        <source>sheet figure for {stage} at {celsius:g} °C</source>
        <translation>Angabe für {stage} bei {celsius:g} °C</translation>
    </message>
    <message>
        <source>product {name}</source>
        <translation>Produkt {name}</translation>
    </message>
    <message>
        <source>units</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>settings</source>
        <translation>Faustregeln</translation>
    </message>
    <message>
        <source>free area</source>
        <translation>gemessene Fläche</translation>
    </message>
    <message>
        <source>studio {name}</source>
        <translation>Studio {name}</translation>
    </message>
    <message>
        <source>expected air</source>
        <translation>erwartete Luft</translation>
    </message>
    <message>
        <source>heater off</source>
        <translation>Heizung aus</translation>
    </message>
    <message>
        <source>new {kind}</source>
        <translation>{kind} hinzufügen</translation>
    </message>
    <message>
        <source>new order</source>
        <translation>neuer Auftrag</translation>
    </message>
    <message>
        <source>stack pattern {name}</source>
        <translation>Vorlage {name}</translation>
    </message>
    <message>
        <source>new piece</source>
        <translation>neues Stück</translation>
    </message>
    <message>
        <source>footprint</source>
        <translation>Platzbedarf</translation>
    </message>
    <message>
        <source>heat loss</source>
        <translation>Wärmeverlust</translation>
    </message>
    <message>
        <source>colourant {name}</source>
        <translation>Farbmittel {name}</translation>
    </message>
    <message>
        <source>mix {batch}</source>
        <translation>Mischung {batch}</translation>
    </message>
    <message>
        <source>pigment {name}</source>
        <translation>Pigment {name}</translation>
    </message>
    <message>
        <source>prices</source>
        <translation>Preise</translation>
    </message>
    <message>
        <source>reminders</source>
        <translation>Erinnerungen</translation>
    </message>
    <message>
        <source>reminder {uid}</source>
        <translation>Erinnerung {uid}</translation>
    </message>
    <message>
        <source>temperature for a time</source>
        <translation>Temperatur auf Zeit</translation>
    </message>
    <message>
        <source>count of a bottle</source>
        <translation>Zählung einer Flasche</translation>
    </message>
    <message>
        <source>lot {label}</source>
        <translation>Charge {label}</translation>
    </message>
    <message>
        <source>rules for the stock</source>
        <translation>Regeln für den Bestand</translation>
    </message>
    <message>
        <source>what touch tests taught of {stage}</source>
        <translation>was Fingerproben über {stage} gelehrt haben</translation>
    </message>
    <message>
        <source>log</source>
        <translation>Werkstattbuch</translation>
    </message>
</context>
<context>
    <name>orders</name>
    <message>
        <source>Copy the sentence</source>
        <translation>Satz kopieren</translation>
    </message>
    <message>
        <source>Not planned: {reason}</source>
        <translation>Nicht geplant: {reason}</translation>
    </message>
    <message>
        <source>Why it is late</source>
        <translation>Warum zu spät</translation>
    </message>
    <message>
        <source>What was tried</source>
        <translation>Was versucht wurde</translation>
    </message>
    <message>
        <source>keeps it</source>
        <translation>hält sie</translation>
    </message>
    <message>
        <source>late</source>
        <translation>zu spät</translation>
    </message>
    <message>
        <source>Show on the plan</source>
        <translation>Im Plan zeigen</translation>
    </message>
    <message>
        <source>arrive by</source>
        <translation>Ankunft bis</translation>
    </message>
    <message>
        <source>leave by</source>
        <translation>Versand bis</translation>
    </message>
    <message>
        <source>stand at the market on</source>
        <translation>auf dem Markt am</translation>
    </message>
    <message>
        <source>due {day}: {word}</source>
        <translation>fällig {day}: {word}</translation>
    </message>
    <message>
        <source>no date yet</source>
        <translation>noch kein Termin</translation>
    </message>
    <message>
        <source>{kind} {day}</source>
        <translation>{kind} {day}</translation>
    </message>
    <message>
        <source>Ready, safe date</source>
        <translation>Fertig, sicherer Termin</translation>
    </message>
    <message>
        <source>Leaves, safe date</source>
        <translation>Geht weg, sicherer Termin</translation>
    </message>
    <message>
        <source>Ready, likely</source>
        <translation>Fertig, wahrscheinlich</translation>
    </message>
    <message>
        <source>Leaves, likely</source>
        <translation>Geht weg, wahrscheinlich</translation>
    </message>
    <message>
        <source>Has to be there</source>
        <translation>Muss dort sein</translation>
    </message>
    <message>
        <source>Last pick-up</source>
        <translation>Letzte Abholung</translation>
    </message>
    <message>
        <source>Promised</source>
        <translation>Zugesagt</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Abgegangen</translation>
    </message>
    <message>
        <source>Spare</source>
        <translation>Puffer</translation>
    </message>
    <message>
        <source>How sure</source>
        <translation>Wie sicher</translation>
    </message>
    <message>
        <source>not planned</source>
        <translation>nicht geplant</translation>
    </message>
    <message>
        <source>none, {time} late</source>
        <translation>keiner, {time} zu spät</translation>
    </message>
    <message>
        <source>does not help</source>
        <translation>hilft nicht</translation>
    </message>
    <message>
        <source>leaves {moment}</source>
        <translation>geht ab {moment}</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>{safe} (likely {likely})</source>
        <translation>{safe} (wahrscheinlich {likely})</translation>
    </message>
    <message>
        <source>{when} But that day is not sure yet.</source>
        <translation>{when} Dieser Tag ist aber noch nicht sicher.</translation>
    </message>
    <message>
        <source>I cannot give you a date for {name} yet.</source>
        <translation>Für {name} kann ich noch keinen Termin nennen.</translation>
    </message>
    <message>
        <source>{name} left on {day}.</source>
        <translation>{name} ist am {day} abgegangen.</translation>
    </message>
    <message>
        <source>{name} will be ready on {day}.</source>
        <translation>{name} ist am {day} fertig.</translation>
    </message>
    <message>
        <source>{name} left on {day} and should be with you by {arrives}.</source>
        <translation>{name} ist am {day} abgegangen und sollte bis {arrives} ankommen.</translation>
    </message>
    <message>
        <source>{name} can leave on {day} and should be with you by {arrives}.</source>
        <translation>{name} kann am {day} abgehen und sollte bis {arrives} ankommen.</translation>
    </message>
    <message>
        <source>Order, or market</source>
        <translation>Auftrag oder Markt</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Stücke</translation>
    </message>
    <message>
        <source>Promised to</source>
        <translation>Zugesagt ist</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>The market opens</source>
        <translation>Der Markt öffnet</translation>
    </message>
    <message>
        <source>May go once it may</source>
        <translation>Darf gehen, sobald</translation>
    </message>
    <message>
        <source>Days on which parcels go</source>
        <translation>Tage, an denen Pakete gehen</translation>
    </message>
    <message>
        <source>Last pick-up of the day</source>
        <translation>Letzte Abholung des Tages</translation>
    </message>
    <message>
        <source>Days under way</source>
        <translation>Tage unterwegs</translation>
    </message>
    <message>
        <source>Packing each piece</source>
        <translation>Verpacken je Stück</translation>
    </message>
    <message>
        <source>How much being late counts (1 is usual)</source>
        <translation>Gewicht einer Verspätung (1 ist üblich)</translation>
    </message>
    <message>
        <source>Food</source>
        <translation>Lebensmittel</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>This day is past already.</source>
        <translation>Dieser Tag ist schon vorbei.</translation>
    </message>
    <message>
        <source>Orders</source>
        <translation>Aufträge</translation>
    </message>
    <message>
        <source>No order yet. Add one to see when it can leave.</source>
        <translation>Noch kein Auftrag. Mit einem Auftrag steht hier, wann er abgehen kann.</translation>
    </message>
    <message>
        <source>The chosen order</source>
        <translation>Der gewählte Auftrag</translation>
    </message>
    <message>
        <source>Open a studio first.</source>
        <translation>Erst ein Studio öffnen.</translation>
    </message>
    <message>
        <source>An order needs a piece; add one under Pieces first.</source>
        <translation>Ein Auftrag braucht ein Stück; erst unter Stücke eines anlegen.</translation>
    </message>
    <message>
        <source>Add an order to see when it can leave.</source>
        <translation>Mit einem Auftrag steht hier, wann er abgehen kann.</translation>
    </message>
    <message>
        <source>New order</source>
        <translation>Neuer Auftrag</translation>
    </message>
    <message>
        <source>Add an order</source>
        <translation>Auftrag anlegen</translation>
    </message>
    <message>
        <source>Copy {name}</source>
        <translation>{name} kopieren</translation>
    </message>
    <message>
        <source>Remove {name}</source>
        <translation>{name} entfernen</translation>
    </message>
    <message>
        <source>Move an order</source>
        <translation>Auftrag verschieben</translation>
    </message>
    <message>
        <source>every piece is promised already; add a piece first.</source>
        <translation>jedes Stück ist schon zugesagt; erst ein Stück anlegen.</translation>
    </message>
</context>
<context>
    <name>packing</name>
    <message>
        <source>pack for display</source>
        <translation>für die Ausstellung verpacken</translation>
    </message>
    <message>
        <source>pack</source>
        <translation>verpacken</translation>
    </message>
    <message>
        <source>pack, fully cured</source>
        <translation>verpacken, ausgehärtet</translation>
    </message>
    <message>
        <source>handle (display)</source>
        <translation>griffest (ausstellen)</translation>
    </message>
    <message>
        <source>full cure</source>
        <translation>ausgehärtet</translation>
    </message>
</context>
<context>
    <name>pages</name>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Orders</source>
        <translation>Aufträge</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Stücke</translation>
    </message>
    <message>
        <source>Products</source>
        <translation>Produkte</translation>
    </message>
    <message>
        <source>Studio</source>
        <translation>Studio</translation>
    </message>
    <message>
        <source>Questions</source>
        <translation>Fragen</translation>
    </message>
    <message>
        <source>Log</source>
        <translation>Buch</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation>Bestand</translation>
    </message>
    <message>
        <source>Pages</source>
        <translation>Seiten</translation>
    </message>
</context>
<context>
    <name>paper</name>
    <message>
        <source>last torch: no heat after this</source>
        <translation>letztes Abflammen, dann keine Hitze</translation>
    </message>
    <message>
        <source>cover: now it leaves no mark</source>
        <translation>abdecken: jetzt ohne Abdruck</translation>
    </message>
    <message>
        <source>{words} (until {time} at the latest)</source>
        <translation>{words} (bis spätestens {time})</translation>
    </message>
    <message>
        <source>recoat opens, test first: {pieces}</source>
        <translation>überarbeitbar ab, erst prüfen: {pieces}</translation>
    </message>
    <message>
        <source>recoat opens: {pieces}</source>
        <translation>überarbeitbar ab: {pieces}</translation>
    </message>
    <message>
        <source>recoat closes: {pieces}</source>
        <translation>überarbeitbar bis: {pieces}</translation>
    </message>
    <message>
        <source>next, {pieces}: {what}</source>
        <translation>danach, {pieces}: {what}</translation>
    </message>
    <message>
        <source>A meets B</source>
        <translation>A trifft B</translation>
    </message>
    <message>
        <source>pour by: the last cup is empty</source>
        <translation>gießen bis: letzter Becher leer</translation>
    </message>
    <message>
        <source>stirred: divide, stir the colours in</source>
        <translation>gerührt: verteilen, Farben einrühren</translation>
    </message>
    <message>
        <source>gone: pour no more of it</source>
        <translation>vorbei: nichts mehr gießen</translation>
    </message>
    <message>
        <source>pour</source>
        <translation>gießen</translation>
    </message>
    <message>
        <source>pour cup {number}, {colour}</source>
        <translation>Becher {number} gießen, {colour}</translation>
    </message>
    <message>
        <source>{words} (empty by {minute})</source>
        <translation>{words} (leer bis {minute})</translation>
    </message>
    <message>
        <source>Pour sheet, {date}</source>
        <translation>Gießblatt, {date}</translation>
    </message>
    <message>
        <source>There is no mix {mix} in the plan that is still to be poured.</source>
        <translation>Im Plan ist keine Mischung {mix}, die noch zu gießen ist.</translation>
    </message>
    <message>
        <source>Nothing is to be poured on {day}; the next pours are on {later}.</source>
        <translation>Am {day} ist nichts zu gießen; gegossen wird wieder am {later}.</translation>
    </message>
    <message>
        <source>Nothing is to be poured on {day}, nor planned for later; plan again first.</source>
        <translation>Am {day} ist nichts zu gießen und danach nichts geplant; plane zuerst neu.</translation>
    </message>
    <message>
        <source>portion {part} of {parts}, one after the other</source>
        <translation>Portion {part} von {parts}, eine nach der anderen</translation>
    </message>
    <message>
        <source>Mix</source>
        <translation>Mischung</translation>
    </message>
    <message>
        <source>Pieces and spots</source>
        <translation>Stücke und Plätze</translation>
    </message>
    <message>
        <source>Order {name}</source>
        <translation>Auftrag {name}</translation>
    </message>
    <message>
        <source>{promise} {date}</source>
        <translation>{promise} {date}</translation>
    </message>
    <message>
        <source>{market}, opens {clock}</source>
        <translation>{market}, öffnet {clock}</translation>
    </message>
    <message>
        <source>last pick-up for it: {moment}</source>
        <translation>letzte Abholung dafür: {moment}</translation>
    </message>
    <message>
        <source>As planned it is ready {moment}: after the market opens.</source>
        <translation>Nach dem Plan ist es {moment} fertig: nach Marktbeginn.</translation>
    </message>
    <message>
        <source>As planned it leaves {moment}: too late for the promise.</source>
        <translation>Nach dem Plan geht es {moment} weg: zu spät für die Zusage.</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Stücke</translation>
    </message>
    <message>
        <source>piece</source>
        <translation>Stück</translation>
    </message>
    <message>
        <source>mixes</source>
        <translation>Mischungen</translation>
    </message>
    <message>
        <source>pack from</source>
        <translation>packen ab</translation>
    </message>
    <message>
        <source>packed</source>
        <translation>gepackt</translation>
    </message>
    <message>
        <source>not planned</source>
        <translation>nicht geplant</translation>
    </message>
    <message>
        <source>Release paper or soft foam against the face, never bubble wrap: it prints into a young film.</source>
        <translation>Trennpapier oder weichen Schaum an die Fläche legen, nie Luftpolsterfolie: Sie drückt sich in einen jungen Film ein.</translation>
    </message>
    <message>
        <source>The care card goes with it, with the numbers of its mixes.</source>
        <translation>Die Pflegekarte kommt mit hinein, mit den Nummern der Mischungen.</translation>
    </message>
    <message>
        <source>A declaration is on file: write its number on the care card.</source>
        <translation>Eine Erklärung liegt vor: Schreib ihre Nummer auf die Pflegekarte.</translation>
    </message>
    <message>
        <source>looked over by</source>
        <translation>geprüft von</translation>
    </message>
    <message>
        <source>packed on</source>
        <translation>gepackt am</translation>
    </message>
    <message>
        <source>shipped on</source>
        <translation>verschickt am</translation>
    </message>
    <message>
        <source>parcel number</source>
        <translation>Paketnummer</translation>
    </message>
    <message>
        <source>declaration number</source>
        <translation>Nummer der Erklärung</translation>
    </message>
    <message>
        <source>spot</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>joint</source>
        <translation>Verbund</translation>
    </message>
    <message>
        <source>{joint}, test first</source>
        <translation>{joint}, erst prüfen</translation>
    </message>
    <message>
        <source>The cup&apos;s clock</source>
        <translation>Die Uhr des Bechers</translation>
    </message>
    <message>
        <source>After the pour</source>
        <translation>Nach dem Gießen</translation>
    </message>
    <message>
        <source>really</source>
        <translation>wirklich</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>geplant</translation>
    </message>
    <message>
        <source>Pour</source>
        <translation>Guss</translation>
    </message>
    <message>
        <source>room °F</source>
        <translation>Raum °F</translation>
    </message>
    <message>
        <source>room °C</source>
        <translation>Raum °C</translation>
    </message>
    <message>
        <source>humidity %</source>
        <translation>Feuchte %</translation>
    </message>
    <message>
        <source>poured at</source>
        <translation>gegossen um</translation>
    </message>
    <message>
        <source>Lay out {count} leaf: some of it overlaps or tears.</source>
        <translation>{count} Blatt bereitlegen: Etwas davon überlappt oder reißt.</translation>
    </message>
    <message>
        <source>Lay out {count} leaves: some of it overlaps or tears.</source>
        <translation>{count} Blätter bereitlegen: Etwas davon überlappt oder reißt.</translation>
    </message>
    <message>
        <source>Pour {numbers}</source>
        <translation>Guss {numbers}</translation>
    </message>
    <message>
        <source>Touch: {kinds}</source>
        <translation>Fingerprobe: {kinds}</translation>
    </message>
    <message>
        <source>lot of A</source>
        <translation>Charge von A</translation>
    </message>
    <message>
        <source>Pour {number}: {coat}</source>
        <translation>Guss {number}: {coat}</translation>
    </message>
    <message>
        <source>lot of B</source>
        <translation>Charge von B</translation>
    </message>
    <message>
        <source>lot</source>
        <translation>Charge</translation>
    </message>
    <message>
        <source>grams left over</source>
        <translation>Gramm übrig</translation>
    </message>
    <message>
        <source>What really happened</source>
        <translation>Wie es wirklich war</translation>
    </message>
    <message>
        <source>Lay the leaf</source>
        <translation>Blattmetall auflegen</translation>
    </message>
    <message>
        <source>day and time</source>
        <translation>Tag und Uhrzeit</translation>
    </message>
    <message>
        <source>which</source>
        <translation>welche</translation>
    </message>
    <message>
        <source>already / not yet</source>
        <translation>schon / noch nicht</translation>
    </message>
    <message>
        <source>Mind</source>
        <translation>Achtung</translation>
    </message>
    <message>
        <source>No bottle is entered and nothing is planned: there is nothing to list.</source>
        <translation>Keine Flasche ist eingetragen und nichts geplant: Es gibt nichts aufzulisten.</translation>
    </message>
    <message>
        <source>Stock, {date}</source>
        <translation>Bestand, {date}</translation>
    </message>
    <message>
        <source>What is left, and what the plan takes</source>
        <translation>Was da ist und was der Plan braucht</translation>
    </message>
    <message>
        <source>left</source>
        <translation>da</translation>
    </message>
    <message>
        <source>plan takes</source>
        <translation>Plan braucht</translation>
    </message>
    <message>
        <source>left after</source>
        <translation>bleibt</translation>
    </message>
    <message>
        <source>runs out</source>
        <translation>geht aus</translation>
    </message>
    <message>
        <source>order by</source>
        <translation>bestellen bis</translation>
    </message>
    <message>
        <source>not entered</source>
        <translation>nicht eingetragen</translation>
    </message>
    <message>
        <source>at once</source>
        <translation>sofort</translation>
    </message>
    <message>
        <source>part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Bottles of {product}</source>
        <translation>Flaschen von {product}</translation>
    </message>
    <message>
        <source>Pigments</source>
        <translation>Pigmente</translation>
    </message>
    <message>
        <source>pigment</source>
        <translation>Pigment</translation>
    </message>
    <message>
        <source>free</source>
        <translation>frei</translation>
    </message>
    <message>
        <source>good until</source>
        <translation>gut bis</translation>
    </message>
    <message>
        <source>counted</source>
        <translation>gezählt</translation>
    </message>
    <message>
        <source>{weekday} {day}</source>
        <translation>{weekday} {day}</translation>
    </message>
    <message>
        <source>{start} to {end}</source>
        <translation>{start} bis {end}</translation>
    </message>
    <message>
        <source>made {date}, {clock}</source>
        <translation>erstellt {date}, {clock}</translation>
    </message>
    <message>
        <source>Week from {date}</source>
        <translation>Woche ab {date}</translation>
    </message>
    <message>
        <source>There is no plan yet: plan first, then print the week.</source>
        <translation>Es gibt noch keinen Plan: erst planen, dann die Woche drucken.</translation>
    </message>
    <message>
        <source>Nothing is planned in the week from {date}.</source>
        <translation>In der Woche ab {date} ist nichts geplant.</translation>
    </message>
    <message>
        <source>The plan has something from {first} to {last}.</source>
        <translation>Der Plan reicht von {first} bis {last}.</translation>
    </message>
    <message>
        <source>Something was changed since this plan was made: plan again.</source>
        <translation>Seit diesem Plan hat sich etwas geändert: plane neu.</translation>
    </message>
    <message>
        <source>no hands</source>
        <translation>keine Hände</translation>
    </message>
    <message>
        <source>hands {times}</source>
        <translation>Hände {times}</translation>
    </message>
    <message>
        <source>poured: {coat}</source>
        <translation>gegossen: {coat}</translation>
    </message>
    <message>
        <source>{piece} ({spot})</source>
        <translation>{piece} ({spot})</translation>
    </message>
    <message>
        <source>closes {when}</source>
        <translation>schließt {when}</translation>
    </message>
    <message>
        <source>ready for the market</source>
        <translation>bereit für den Markt</translation>
    </message>
    <message>
        <source>pick-up</source>
        <translation>Abholung</translation>
    </message>
    <message>
        <source>handle</source>
        <translation>griffest</translation>
    </message>
    <message>
        <source>pack</source>
        <translation>packen</translation>
    </message>
    <message>
        <source>full cure</source>
        <translation>durchgehärtet</translation>
    </message>
    <message>
        <source>for</source>
        <translation>für</translation>
    </message>
    <message>
        <source>May be handled, packed, is fully cured: for sure from</source>
        <translation>Griffest, packbar, durchgehärtet: sicher ab</translation>
    </message>
    <message>
        <source>add</source>
        <translation>dazu</translation>
    </message>
    <message>
        <source>scale shows</source>
        <translation>Waage zeigt</translation>
    </message>
    <message>
        <source>Weigh: set each empty cup to zero first</source>
        <translation>Abwiegen: jeden leeren Becher erst auf null stellen</translation>
    </message>
    <message>
        <source>{what}: {lot}</source>
        <translation>{what}: {lot}</translation>
    </message>
    <message>
        <source>A</source>
        <translation>A</translation>
    </message>
    <message>
        <source>B</source>
        <translation>B</translation>
    </message>
    <message>
        <source>cup {number}: {colour}</source>
        <translation>Becher {number}: {colour}</translation>
    </message>
    <message>
        <source>colourant</source>
        <translation>Farbmittel</translation>
    </message>
    <message>
        <source>+ {colourant}</source>
        <translation>+ {colourant}</translation>
    </message>
    <message>
        <source>from mix {numbers}</source>
        <translation>aus Mischung {numbers}</translation>
    </message>
    <message>
        <source>from mixes {numbers}</source>
        <translation>aus den Mischungen {numbers}</translation>
    </message>
    <message>
        <source>How to keep it</source>
        <translation>So bleibt es schön</translation>
    </message>
    <message>
        <source>Food</source>
        <translation>Lebensmittel</translation>
    </message>
    <message>
        <source>Questions, or something wrong? Name the mix.</source>
        <translation>Fragen, oder stimmt etwas nicht? Bitte die Mischung nennen.</translation>
    </message>
    <message>
        <source>maker and address</source>
        <translation>Werkstatt und Anschrift</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>Mischung</translation>
    </message>
    <message>
        <source>Decorative; not for food.</source>
        <translation>Zur Zierde; nicht für Lebensmittel.</translation>
    </message>
    <message>
        <source>Intended for contact with food as a declaration says that the maker keeps on file; ask for it, and keep to what it says.</source>
        <translation>Für den Kontakt mit Lebensmitteln bestimmt, so wie es in einer Erklärung steht, die der Werkstatt vorliegt; bitte danach fragen und sich daran halten.</translation>
    </message>
    <message>
        <source>Made for the customer&apos;s own use; the maker claims nothing about contact with food.</source>
        <translation>Für den eigenen Gebrauch der Kundschaft gemacht; die Werkstatt sagt nichts über den Kontakt mit Lebensmitteln zu.</translation>
    </message>
    <message>
        <source>It goes on curing for weeks: until it is hard all through put no load, heat or water on it.</source>
        <translation>Es härtet noch wochenlang nach: Bis es ganz durchgehärtet ist, keine Last, Hitze oder Nässe darauf.</translation>
    </message>
    <message>
        <source>It goes on curing until {date}: before, put no load, heat or water on it.</source>
        <translation>Es härtet noch bis {date} nach: Vorher keine Last, Hitze oder Nässe darauf.</translation>
    </message>
    <message>
        <source>Put nothing hot on it; use a mat. It softens when it gets hot.</source>
        <translation>Nichts Heißes daraufstellen; einen Untersetzer nehmen. Hitze macht es weich.</translation>
    </message>
    <message>
        <source>Wipe it with a soft, damp cloth. No soaking, no dishwasher, no solvents.</source>
        <translation>Mit einem weichen, feuchten Tuch abwischen. Nicht einweichen, keine Spülmaschine, keine Lösemittel.</translation>
    </message>
    <message>
        <source>Keep it out of direct sun; epoxy yellows with the years.</source>
        <translation>Nicht in die pralle Sonne; Epoxid vergilbt mit den Jahren.</translation>
    </message>
    <message>
        <source>Put pads under what stands on it; hard edges scratch it.</source>
        <translation>Filz unter alles kleben, was darauf steht; harte Kanten zerkratzen es.</translation>
    </message>
    <message>
        <source>nothing planned</source>
        <translation>nichts geplant</translation>
    </message>
    <message>
        <source>page {number} of {count}</source>
        <translation>Seite {number} von {count}</translation>
    </message>
    <message>
        <source>The sheet</source>
        <translation>Das Blatt</translation>
    </message>
    <message>
        <source>No font was found to write with; install one, on Debian or Ubuntu with: sudo apt-get install fonts-dejavu-core.</source>
        <translation>Es wurde keine Schrift zum Schreiben gefunden; installiere eine, unter Debian oder Ubuntu mit: sudo apt-get install fonts-dejavu-core.</translation>
    </message>
    <message>
        <source>Pour sheet</source>
        <translation>Gießblatt</translation>
    </message>
    <message>
        <source>Week sheet</source>
        <translation>Wochenblatt</translation>
    </message>
    <message>
        <source>Order slip</source>
        <translation>Begleitzettel</translation>
    </message>
    <message>
        <source>Stock list</source>
        <translation>Bestandsliste</translation>
    </message>
    <message>
        <source>Nothing is to be poured. Plan first, then come back.</source>
        <translation>Nichts ist zu gießen. Plane erst und komm dann wieder.</translation>
    </message>
    <message>
        <source>There is no order yet. Enter one on the page of orders.</source>
        <translation>Es gibt noch keinen Auftrag. Trag einen auf der Seite der Aufträge ein.</translation>
    </message>
    <message>
        <source>Which</source>
        <translation>Welches</translation>
    </message>
    <message>
        <source>Save as PDF…</source>
        <translation>Als PDF speichern…</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Drucken…</translation>
    </message>
    <message>
        <source>No studio is open.</source>
        <translation>Keine Werkstatt ist geöffnet.</translation>
    </message>
    <message>
        <source>Saved as {file}.</source>
        <translation>Gespeichert als {file}.</translation>
    </message>
    <message>
        <source>Nothing here can print; save it as PDF and print that instead.</source>
        <translation>Hier kann nichts drucken; speichere es als PDF und drucke das.</translation>
    </message>
    <message>
        <source>Sent to the printer.</source>
        <translation>An den Drucker geschickt.</translation>
    </message>
    <message>
        <source>The sheet cannot be drawn; try again.</source>
        <translation>Das Blatt lässt sich nicht zeichnen; versuch es noch einmal.</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <source>The printer does not take the sheet; save it as PDF instead.</source>
        <translation>Der Drucker nimmt das Blatt nicht an; speichere es stattdessen als PDF.</translation>
    </message>
    <message>
        <source>everything</source>
        <translation>alles</translation>
    </message>
    <message>
        <source>{count} mix</source>
        <translation>{count} Mischung</translation>
    </message>
    <message>
        <source>{count} mixes</source>
        <translation>{count} Mischungen</translation>
    </message>
    <message>
        <source>{day}: {mixes}</source>
        <translation>{day}: {mixes}</translation>
    </message>
    <message>
        <source>{moment}: {coat}, {pieces}</source>
        <translation>{moment}: {coat}, {pieces}</translation>
    </message>
    <message>
        <source>from {day}</source>
        <translation>ab {day}</translation>
    </message>
</context>
<context>
    <name>phones</name>
    <message>
        <source>iPhone and iPad</source>
        <translation>iPhone und iPad</translation>
    </message>
    <message>
        <source>Send the file to yourself, by mail or through a shared folder.</source>
        <translation>Schick dir die Datei selbst, per Mail oder über einen gemeinsamen Ordner.</translation>
    </message>
    <message>
        <source>Tap it and choose to add all events.</source>
        <translation>Tippe sie an und füge alle Termine hinzu.</translation>
    </message>
    <message>
        <source>Choose a calendar of its own, such as Studio: make it first.</source>
        <translation>Wähle einen eigenen Kalender, etwa Studio: Leg ihn vorher an.</translation>
    </message>
    <message>
        <source>After the plan has changed, do the same again into the same calendar. Where old events stay, delete that calendar and import once more.</source>
        <translation>Hat sich der Plan geändert, mach dasselbe noch einmal in denselben Kalender. Bleiben alte Termine stehen, lösche diesen Kalender und importiere noch einmal.</translation>
    </message>
    <message>
        <source>Android, with a calendar on the phone</source>
        <translation>Android, mit einem Kalender auf dem Telefon</translation>
    </message>
    <message>
        <source>Copy the file to the phone and tap it.</source>
        <translation>Kopiere die Datei auf das Telefon und tippe sie an.</translation>
    </message>
    <message>
        <source>Choose to import it, into a calendar of its own.</source>
        <translation>Importiere sie in einen eigenen Kalender.</translation>
    </message>
    <message>
        <source>Look that its notifications are on in the calendar&apos;s settings.</source>
        <translation>Sieh in den Einstellungen des Kalenders nach, dass seine Mitteilungen an sind.</translation>
    </message>
    <message>
        <source>After the plan has changed, import again; where events come twice, delete that calendar first.</source>
        <translation>Hat sich der Plan geändert, importiere noch einmal; kommen Termine doppelt, lösche diesen Kalender vorher.</translation>
    </message>
    <message>
        <source>Android, with a calendar in an account</source>
        <translation>Android, mit einem Kalender in einem Konto</translation>
    </message>
    <message>
        <source>On a computer, open that account&apos;s calendar in the browser.</source>
        <translation>Öffne am Rechner den Kalender dieses Kontos im Browser.</translation>
    </message>
    <message>
        <source>Make a calendar of its own, and import the file into it.</source>
        <translation>Leg einen eigenen Kalender an und importiere die Datei dorthin.</translation>
    </message>
    <message>
        <source>Set that calendar&apos;s own default notification: alarms of a file are often dropped there.</source>
        <translation>Stell für diesen Kalender eine eigene Standardmitteilung ein: Wecker aus einer Datei gehen dort oft verloren.</translation>
    </message>
    <message>
        <source>On the phone, switch that calendar on and let it synchronise.</source>
        <translation>Schalte diesen Kalender auf dem Telefon ein und lass ihn abgleichen.</translation>
    </message>
    <message>
        <source>First try the test event: it shows whether this phone rings at all.</source>
        <translation>Nimm zuerst den Probetermin: Er zeigt, ob dieses Telefon überhaupt klingelt.</translation>
    </message>
</context>
<context>
    <name>pieces</name>
    <message>
        <source>poured</source>
        <translation>gegossen</translation>
    </message>
    <message>
        <source>to come</source>
        <translation>kommt noch</translation>
    </message>
    <message>
        <source>to come, {when}</source>
        <translation>kommt noch, {when}</translation>
    </message>
    <message>
        <source>{joint}, test first</source>
        <translation>{joint}, erst prüfen</translation>
    </message>
    <message>
        <source>opens {opens}, stays open</source>
        <translation>öffnet {opens}, bleibt offen</translation>
    </message>
    <message>
        <source>opens {opens}, closes {closes}</source>
        <translation>öffnet {opens}, schließt {closes}</translation>
    </message>
    <message>
        <source>MDF</source>
        <translation>MDF</translation>
    </message>
    <message>
        <source>timber</source>
        <translation>Massivholz</translation>
    </message>
    <message>
        <source>plywood</source>
        <translation>Sperrholz</translation>
    </message>
    <message>
        <source>slate</source>
        <translation>Schiefer</translation>
    </message>
    <message>
        <source>stone</source>
        <translation>Stein</translation>
    </message>
    <message>
        <source>metal</source>
        <translation>Metall</translation>
    </message>
    <message>
        <source>glass</source>
        <translation>Glas</translation>
    </message>
    <message>
        <source>plastic</source>
        <translation>Kunststoff</translation>
    </message>
    <message>
        <source>rectangle</source>
        <translation>Rechteck</translation>
    </message>
    <message>
        <source>round</source>
        <translation>rund</translation>
    </message>
    <message>
        <source>oval</source>
        <translation>oval</translation>
    </message>
    <message>
        <source>measured outline</source>
        <translation>gemessener Umriss</translation>
    </message>
    <message>
        <source>top</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>edge</source>
        <translation>Kante</translation>
    </message>
    <message>
        <source>underside</source>
        <translation>Unterseite</translation>
    </message>
    <message>
        <source>{film} of film; the blank is cut short</source>
        <translation>{film} Film; der Rohling ist gekürzt</translation>
    </message>
    <message>
        <source>bare {material}, {thick} thick</source>
        <translation>roh {material}, {thick} dick</translation>
    </message>
    <message>
        <source>, rim {rim} high</source>
        <translation>, Rand {rim} hoch</translation>
    </message>
    <message>
        <source>The stack in section</source>
        <translation>Der Aufbau im Schnitt</translation>
    </message>
    <message>
        <source>Chosen: {coat}. </source>
        <translation>Gewählt: {coat}. </translation>
    </message>
    <message>
        <source>There is no coat on that side to change places with.</source>
        <translation>Auf dieser Seite gibt es keine Schicht zum Tauschen.</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Stücke</translation>
    </message>
    <message>
        <source>No piece here. Add a piece, or look for other words.</source>
        <translation>Hier ist kein Stück. Eines anlegen oder nach anderen Worten suchen.</translation>
    </message>
    <message>
        <source>Go to Products</source>
        <translation>Zu den Produkten</translation>
    </message>
    <message>
        <source>Stack</source>
        <translation>Aufbau</translation>
    </message>
    <message>
        <source>Blank</source>
        <translation>Rohling</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Patterns</source>
        <translation>Vorlagen</translation>
    </message>
    <message>
        <source>Window missed</source>
        <translation>Fenster verpasst</translation>
    </message>
    <message>
        <source>Of the piece</source>
        <translation>Zum Stück</translation>
    </message>
    <message>
        <source>look for: name, coat, colour</source>
        <translation>suchen nach: Name, Schicht, Farbe</translation>
    </message>
    <message>
        <source>Look for pieces</source>
        <translation>Stücke suchen</translation>
    </message>
    <message>
        <source>Open a studio first.</source>
        <translation>Erst ein Studio öffnen.</translation>
    </message>
    <message>
        <source>{piece}, one of {count} chosen</source>
        <translation>{piece}, eines von {count} gewählten</translation>
    </message>
    <message>
        <source>A piece needs a coat; add a product first.</source>
        <translation>Ein Stück braucht eine Schicht; erst ein Produkt anlegen.</translation>
    </message>
    <message>
        <source>No piece has those words.</source>
        <translation>Kein Stück hat diese Worte.</translation>
    </message>
    <message>
        <source>Add a piece to build its stack.</source>
        <translation>Ein Stück anlegen, um seinen Aufbau zu machen.</translation>
    </message>
    <message>
        <source>New piece</source>
        <translation>Neues Stück</translation>
    </message>
    <message>
        <source>Add a piece</source>
        <translation>Stück anlegen</translation>
    </message>
    <message>
        <source>Copy {pieces}</source>
        <translation>{pieces} kopieren</translation>
    </message>
    <message>
        <source>Remove {pieces}</source>
        <translation>{pieces} entfernen</translation>
    </message>
    <message>
        <source>Remove {pieces} and order {order}</source>
        <translation>{pieces} und Auftrag {order} entfernen</translation>
    </message>
    <message>
        <source>Order {order} has no piece left and goes too. Ctrl+Z brings all back.</source>
        <translation>Auftrag {order} hat kein Stück mehr und geht mit. Strg+Z holt alles zurück.</translation>
    </message>
    <message>
        <source>Remove {pieces} and {count} orders</source>
        <translation>{pieces} und {count} Aufträge entfernen</translation>
    </message>
    <message>
        <source>These orders have no piece left and go too: {orders}. Ctrl+Z brings all back.</source>
        <translation>Diese Aufträge haben kein Stück mehr und gehen mit: {orders}. Strg+Z holt alles zurück.</translation>
    </message>
    <message>
        <source>Move a piece</source>
        <translation>Stück verschieben</translation>
    </message>
    <message>
        <source>{count} pieces</source>
        <translation>{count} Stücke</translation>
    </message>
    <message>
        <source>Piece, or set</source>
        <translation>Stück oder Satz</translation>
    </message>
    <message>
        <source>How many in the set</source>
        <translation>Wie viele im Satz</translation>
    </message>
    <message>
        <source>Outline</source>
        <translation>Umriss</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>Diameter</source>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>Measured area</source>
        <translation>Gemessene Fläche</translation>
    </message>
    <message>
        <source>Measured length of the edge</source>
        <translation>Gemessene Länge der Kante</translation>
    </message>
    <message>
        <source>Bare material</source>
        <translation>Rohes Material</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>Rim that holds a flood, 0 for none</source>
        <translation>Rand, der die Flut hält, 0 für keinen</translation>
    </message>
    <message>
        <source>Belongs to the order</source>
        <translation>Gehört zum Auftrag</translation>
    </message>
    <message>
        <source>Clearance for drips</source>
        <translation>Freiraum für Tropfen</translation>
    </message>
    <message>
        <source>Own footprint, length; empty: from the outline</source>
        <translation>Eigener Platzbedarf, Länge; leer: aus dem Umriss</translation>
    </message>
    <message>
        <source>Own footprint, width</source>
        <translation>Eigener Platzbedarf, Breite</translation>
    </message>
    <message>
        <source>Height with its dust cover on</source>
        <translation>Höhe mit Staubhaube</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>no order</source>
        <translation>kein Auftrag</translation>
    </message>
    <message>
        <source>What one blank cost, {currency}</source>
        <translation>Preis eines Rohlings, {currency}</translation>
    </message>
    <message>
        <source>Takes {length} by {width} on its spot, {high} high.</source>
        <translation>Braucht {length} mal {width} auf dem Platz, {high} hoch.</translation>
    </message>
    <message>
        <source>or areas by name: moon, river</source>
        <translation>oder Bereiche mit Namen: Mond, Fluss</translation>
    </message>
    <message>
        <source>Areas of the top, by name</source>
        <translation>Bereiche der Oberseite, mit Namen</translation>
    </message>
    <message>
        <source>Kind of coat</source>
        <translation>Art der Schicht</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Produkt</translation>
    </message>
    <message>
        <source>Film</source>
        <translation>Film</translation>
    </message>
    <message>
        <source>Faces</source>
        <translation>Flächen</translation>
    </message>
    <message>
        <source>Meets the coat below</source>
        <translation>Trifft die Schicht darunter</translation>
    </message>
    <message>
        <source>Colours</source>
        <translation>Farben</translation>
    </message>
    <message>
        <source>Can be sanded</source>
        <translation>Lässt sich schleifen</translation>
    </message>
    <message>
        <source>The next coat may rely on a touch test</source>
        <translation>Nächste Schicht darf nach Fingerprobe kommen</translation>
    </message>
    <message>
        <source>Taped; the tape is pulled in its window</source>
        <translation>Abgeklebt; Band in seinem Fenster abziehen</translation>
    </message>
    <message>
        <source>Drips are trimmed in their window</source>
        <translation>Tropfen werden in ihrem Fenster abgenommen</translation>
    </message>
    <message>
        <source>Own area of one piece, if measured</source>
        <translation>Eigene Fläche je Stück, falls gemessen</translation>
    </message>
    <message>
        <source>Set-up, once a mix</source>
        <translation>Vorbereitung je Mischung</translation>
    </message>
    <message>
        <source>Every piece</source>
        <translation>Jedes Stück</translation>
    </message>
    <message>
        <source>Grams follow when the film is a number.</source>
        <translation>Gramm folgen, sobald der Film eine Zahl ist.</translation>
    </message>
    <message>
        <source>Leaf is laid, not weighed.</source>
        <translation>Blattmetall wird gelegt, nicht gewogen.</translation>
    </message>
    <message>
        <source>{grams} mixed for this coat, without what stays in cups</source>
        <translation>{grams} gemischt für diese Schicht, ohne Rest in den Bechern</translation>
    </message>
    <message>
        <source>{grams} mixed, were it on {blank}</source>
        <translation>{grams} gemischt, läge sie auf {blank}</translation>
    </message>
    <message>
        <source>Recipe of…</source>
        <translation>Rezept von…</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>% of the mix</source>
        <translation>% der Mischung</translation>
    </message>
    <message>
        <source>% in its cup</source>
        <translation>% in ihrem Becher</translation>
    </message>
    <message>
        <source>colour {number}</source>
        <translation>Farbe {number}</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Share in per cent of the mix</source>
        <translation>Anteil an der Mischung in Prozent</translation>
    </message>
    <message>
        <source>Colourant</source>
        <translation>Farbmittel</translation>
    </message>
    <message>
        <source>Colourant in per cent of its cup</source>
        <translation>Farbmittel in Prozent seines Bechers</translation>
    </message>
    <message>
        <source>a colour</source>
        <translation>eine Farbe</translation>
    </message>
    <message>
        <source>Add a colour</source>
        <translation>Farbe hinzufügen</translation>
    </message>
    <message>
        <source>{percent} % {colourant}</source>
        <translation>{percent} % {colourant}</translation>
    </message>
    <message>
        <source>colourant</source>
        <translation>Farbmittel</translation>
    </message>
    <message>
        <source>{colour}: {mixed} ({piece}, {coat})</source>
        <translation>{colour}: {mixed} ({piece}, {coat})</translation>
    </message>
    <message>
        <source>Seen from above on its spot</source>
        <translation>Von oben auf dem Platz</translation>
    </message>
    <message>
        <source>Stack patterns</source>
        <translation>Aufbau-Vorlagen</translation>
    </message>
    <message>
        <source>No pattern yet. Make one of the stack of the chosen piece; it can then be put on as many pieces as you like.</source>
        <translation>Noch keine Vorlage. Mache eine aus dem Aufbau des gewählten Stücks; sie lässt sich dann auf beliebig viele Stücke legen.</translation>
    </message>
    <message>
        <source>Name of the pattern</source>
        <translation>Name der Vorlage</translation>
    </message>
    <message>
        <source>Put on the chosen piece</source>
        <translation>Auf das gewählte Stück anwenden</translation>
    </message>
    <message>
        <source>Put on {count} pieces</source>
        <translation>Auf {count} Stücke anwenden</translation>
    </message>
    <message>
        <source> and {count} more</source>
        <translation> und {count} weitere</translation>
    </message>
    <message>
        <source>Stack of {piece}</source>
        <translation>Aufbau von {piece}</translation>
    </message>
    <message>
        <source>Save the stack of {piece}</source>
        <translation>Aufbau von {piece} speichern</translation>
    </message>
    <message>
        <source>Put {pattern} on {count} pieces</source>
        <translation>{pattern} auf {count} Stücke anwenden</translation>
    </message>
    <message>
        <source>Rename {pattern}</source>
        <translation>{pattern} umbenennen</translation>
    </message>
    <message>
        <source>Copy {pattern}</source>
        <translation>{pattern} kopieren</translation>
    </message>
    <message>
        <source>Remove {pattern}</source>
        <translation>{pattern} entfernen</translation>
    </message>
    <message>
        <source>Move a pattern</source>
        <translation>Vorlage verschieben</translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png *.webp *.bmp);;All files (*)</source>
        <translation>Bilder (*.jpg *.jpeg *.png *.webp *.bmp);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Photos to keep</source>
        <translation>Fotos zum Aufbewahren</translation>
    </message>
    <message>
        <source>without words</source>
        <translation>ohne Worte</translation>
    </message>
    <message>
        <source>Open the photo of {date}, {words}</source>
        <translation>Foto vom {date} öffnen, {words}</translation>
    </message>
    <message>
        <source>The picture is damaged.</source>
        <translation>Das Bild ist beschädigt.</translation>
    </message>
    <message>
        <source>words</source>
        <translation>Worte</translation>
    </message>
    <message>
        <source>Words of the photo of {date}</source>
        <translation>Worte zum Foto vom {date}</translation>
    </message>
    <message>
        <source>Remove the photo of {date}</source>
        <translation>Foto vom {date} entfernen</translation>
    </message>
    <message>
        <source>Choose photos…</source>
        <translation>Fotos wählen…</translation>
    </message>
    <message>
        <source>No photo yet. Drop pictures here or choose them: what it looked like is the best recipe.</source>
        <translation>Noch kein Foto. Bilder hier ablegen oder auswählen: Wie es aussah, ist das beste Rezept.</translation>
    </message>
    <message>
        <source>{piece}, keep a photo</source>
        <translation>{piece}, Foto behalten</translation>
    </message>
    <message>
        <source>{piece}, remove a photo</source>
        <translation>{piece}, Foto entfernen</translation>
    </message>
    <message>
        <source>{piece}, words of a photo</source>
        <translation>{piece}, Worte zum Foto</translation>
    </message>
    <message>
        <source>The picture is damaged and can&apos;t be shown.</source>
        <translation>Das Bild ist beschädigt und kann nicht gezeigt werden.</translation>
    </message>
    <message>
        <source>{name} is no picture that can be read; choose a JPEG or PNG file.</source>
        <translation>{name} ist kein lesbares Bild; eine JPEG- oder PNG-Datei wählen.</translation>
    </message>
    <message>
        <source>1 coat</source>
        <translation>1 Schicht</translation>
    </message>
    <message>
        <source>{count} coats</source>
        <translation>{count} Schichten</translation>
    </message>
    <message>
        <source>Drag a face to make its film thicker, a coat to move it. Keys: up and down choose, Alt moves, left and right change the film.</source>
        <translation>An einer Fläche ziehen macht ihren Film dicker, an einer Schicht verschiebt sie. Tasten: Auf und Ab wählen, Alt verschiebt, Links und Rechts ändern den Film.</translation>
    </message>
    <message>
        <source>The times are those of the plan before the last changes; plan again.</source>
        <translation>Die Zeiten sind die des Plans vor den letzten Änderungen; neu planen.</translation>
    </message>
    <message>
        <source>{piece}, add {kind}</source>
        <translation>{piece}, {kind} hinzufügen</translation>
    </message>
    <message>
        <source>{piece}, copy {coat}</source>
        <translation>{piece}, {coat} kopieren</translation>
    </message>
    <message>
        <source>{piece}, remove {coat}</source>
        <translation>{piece}, {coat} entfernen</translation>
    </message>
    <message>
        <source>{piece}, move {coat}</source>
        <translation>{piece}, {coat} verschieben</translation>
    </message>
    <message>
        <source>Add above</source>
        <translation>Darüber einfügen</translation>
    </message>
    <message>
        <source>Add a coat above the chosen one</source>
        <translation>Schicht über der gewählten einfügen</translation>
    </message>
    <message>
        <source>the chosen coat</source>
        <translation>die gewählte Schicht</translation>
    </message>
    <message>
        <source>the films</source>
        <translation>die Filme</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Kopieren</translation>
    </message>
    <message>
        <source>Nearer</source>
        <translation>Näher</translation>
    </message>
    <message>
        <source>Whole</source>
        <translation>Ganz</translation>
    </message>
    <message>
        <source>How these grams come about</source>
        <translation>Wie diese Gramm zustande kommen</translation>
    </message>
    <message>
        <source>for this coat in all</source>
        <translation>zusammen für diese Schicht</translation>
    </message>
    <message>
        <source>more stays in its cups, if it is mixed by itself; a shared mix loses it once</source>
        <translation>bleiben dazu in den Bechern, wenn sie allein gemischt wird; eine gemeinsame Mischung verliert sie nur einmal</translation>
    </message>
    <message>
        <source>on its faces: area times film times density</source>
        <translation>auf den Flächen: Fläche mal Film mal Dichte</translation>
    </message>
    <message>
        <source>on the edge and the walls of a rim</source>
        <translation>auf der Kante und den Wänden eines Rands</translation>
    </message>
    <message>
        <source>drips off</source>
        <translation>tropfen ab</translation>
    </message>
    <message>
        <source>is drunk by the bare blank</source>
        <translation>saugt der rohe Rohling auf</translation>
    </message>
    <message>
        <source>is put by in reserve</source>
        <translation>sind Reserve</translation>
    </message>
    <message>
        <source>{colour}: {mix} of mix as it is</source>
        <translation>{colour}: {mix} Mischung, wie sie ist</translation>
    </message>
    <message>
        <source>{colour}: {grams} of {colourant} into {mix} of mix</source>
        <translation>{colour}: {grams} {colourant} in {mix} Mischung</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Was geschehen ist</translation>
    </message>
</context>
<context>
    <name>pigments</name>
    <message>
        <source>paste</source>
        <translation>Paste</translation>
    </message>
    <message>
        <source>mica</source>
        <translation>Glimmer</translation>
    </message>
    <message>
        <source>metal powder</source>
        <translation>Metallpulver</translation>
    </message>
    <message>
        <source>dry pigment</source>
        <translation>Trockenpigment</translation>
    </message>
    <message>
        <source>alcohol ink</source>
        <translation>Alkoholtinte</translation>
    </message>
    <message>
        <source>acrylic paint</source>
        <translation>Acrylfarbe</translation>
    </message>
    <message>
        <source>glitter</source>
        <translation>Glitzer</translation>
    </message>
    <message>
        <source>tint in solvent</source>
        <translation>Abtönfarbe mit Lösemittel</translation>
    </message>
    <message>
        <source>Usual in a mix: {low} to {high} %, at most {ceiling} % (common practice; the data sheets of mix and colourant go before it).</source>
        <translation>Üblich in einer Mischung: {low} bis {high} %, höchstens {ceiling} % (übliche Praxis; die Datenblätter von Mischung und Farbmittel gehen vor).</translation>
    </message>
    <message>
        <source>Where density and size are empty: {density} g/cm³ and {size} µm.</source>
        <translation>Wo Dichte und Größe leer sind, gelten {density} g/cm³ und {size} µm.</translation>
    </message>
    <message>
        <source>Pigments</source>
        <translation>Pigmente</translation>
    </message>
    <message>
        <source>No pigment yet. Add the pots that your colours come from.</source>
        <translation>Noch kein Pigment. Trag die Dosen ein, aus denen deine Farben kommen.</translation>
    </message>
    <message>
        <source>Count it: enter a bottle</source>
        <translation>Mitzählen: Flasche eintragen</translation>
    </message>
    <message>
        <source>Name, as your colours call it</source>
        <translation>Name, wie er bei deinen Farben steht</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Density in g/cm³, where it is known</source>
        <translation>Dichte in g/cm³, wenn bekannt</translation>
    </message>
    <message>
        <source>Grain or flake in micrometres, where it is known</source>
        <translation>Korn oder Plättchen in Mikrometern, wenn bekannt</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Open a studio first.</source>
        <translation>Erst ein Studio öffnen.</translation>
    </message>
    <message>
        <source>Add a pigment for costs, and for how it sinks.</source>
        <translation>Trag ein Pigment ein: für die Kosten und dafür, wie es absinkt.</translation>
    </message>
    <message>
        <source>In colours of {pieces}.</source>
        <translation>In Farben von {pieces}.</translation>
    </message>
    <message>
        <source>No colour of a coat is called so.</source>
        <translation>Keine Farbe einer Schicht heißt so.</translation>
    </message>
    <message>
        <source>Price of 100 g, {currency}</source>
        <translation>Preis für 100 g, {currency}</translation>
    </message>
    <message>
        <source>{count} coat has the new name, too.</source>
        <translation>{count} Schicht trägt jetzt auch den neuen Namen.</translation>
    </message>
    <message>
        <source>{count} coats have the new name, too.</source>
        <translation>{count} Schichten tragen jetzt auch den neuen Namen.</translation>
    </message>
    <message>
        <source>New pigment</source>
        <translation>Neues Pigment</translation>
    </message>
    <message>
        <source>Remove {name}</source>
        <translation>{name} entfernen</translation>
    </message>
    <message>
        <source>Move a pigment</source>
        <translation>Ein Pigment verschieben</translation>
    </message>
</context>
<context>
    <name>places</name>
    <message>
        <source>a place needs one expected temperature; change this one.</source>
        <translation>ein Raum braucht eine erwartete Temperatur; diese ändern.</translation>
    </message>
    <message>
        <source>it has to come on again at another time than it goes off.</source>
        <translation>sie muss zu anderer Zeit wieder angehen, als sie ausgeht.</translation>
    </message>
    <message>
        <source>Workshop</source>
        <translation>Werkraum</translation>
    </message>
    <message>
        <source>Warm box</source>
        <translation>Wärmebox</translation>
    </message>
    <message>
        <source>pours of {pieces} are written down on {spots}. Take those pieces out first, or let it stand.</source>
        <translation>Güsse von {pieces} sind auf {spots} notiert. Diese Stücke erst herausnehmen, oder es stehen lassen.</translation>
    </message>
    <message>
        <source>give what the heater used, more than nothing.</source>
        <translation>angeben, was die Heizung verbraucht hat, mehr als nichts.</translation>
    </message>
    <message>
        <source>it has to be colder outside than inside.</source>
        <translation>draußen muss es kälter sein als drinnen.</translation>
    </message>
    <message>
        <source>Box spot</source>
        <translation>Boxplatz</translation>
    </message>
    <message>
        <source>Shelf</source>
        <translation>Regal</translation>
    </message>
    <message>
        <source>these hours have gone by: give a time that is to come.</source>
        <translation>diese Stunden sind vorbei: gib eine Zeit an, die noch kommt.</translation>
    </message>
</context>
<context>
    <name>planning</name>
    <message>
        <source>First plan</source>
        <translation>Erster Plan</translation>
    </message>
    <message>
        <source>Plan again</source>
        <translation>Neu planen</translation>
    </message>
    <message>
        <source>the quick plan comes first</source>
        <translation>der schnelle Plan kommt zuerst</translation>
    </message>
    <message>
        <source>best so far {words}</source>
        <translation>bisher bester: {words}</translation>
    </message>
    <message>
        <source>Not planned: {why}</source>
        <translation>Nicht geplant: {why}</translation>
    </message>
    <message>
        <source>Planning was stopped; the plan is as it was.</source>
        <translation>Das Planen wurde angehalten; der Plan ist, wie er war.</translation>
    </message>
    <message>
        <source>the best so far is kept; finding out how sure it is, and why orders are late</source>
        <translation>der bisher beste ist behalten; jetzt wird geprüft, wie sicher er ist und warum Aufträge zu spät sind</translation>
    </message>
    <message>
        <source>Planning could not start: {why}.</source>
        <translation>Das Planen ließ sich nicht starten: {why}.</translation>
    </message>
    <message>
        <source>Planning stopped unexpectedly; the plan was left as it is.</source>
        <translation>Das Planen endete unerwartet; der Plan blieb, wie er war.</translation>
    </message>
    <message>
        <source>Everything is packed or has left; there is nothing to plan.</source>
        <translation>Alles ist verpackt oder verschickt; es gibt nichts zu planen.</translation>
    </message>
    <message>
        <source>Planned again.</source>
        <translation>Neu geplant.</translation>
    </message>
    <message>
        <source>Planned again: {summary}.</source>
        <translation>Neu geplant: {summary}.</translation>
    </message>
    <message>
        <source>And {more} more; their lanes say why.</source>
        <translation>Und {more} weitere; ihre Zeilen nennen den Grund.</translation>
    </message>
    <message>
        <source>Planned again, but not all of it. Not planned: {reasons}</source>
        <translation>Neu geplant, aber nicht alles. Nicht geplant: {reasons}</translation>
    </message>
    <message>
        <source>A plan needs hands, a room, a level spot and a piece. Here is what lacks.</source>
        <translation>Ein Plan braucht Hände, einen Raum, einen ebenen Platz und ein Stück. Hier steht, was fehlt.</translation>
    </message>
    <message>
        <source>{piece}, {coat} would have to move; a new plan is better than that.</source>
        <translation>{piece}, {coat} müsste verschoben werden; ein neuer Plan ist besser als das.</translation>
    </message>
    <message>
        <source>The plan that was found breaks a rule and is not used: {finding}</source>
        <translation>Der gefundene Plan bricht eine Regel und wird nicht verwendet: {finding}</translation>
    </message>
</context>
<context>
    <name>prices</name>
    <message>
        <source>Prices and rules</source>
        <translation>Preise und Regeln</translation>
    </message>
    <message>
        <source>Days until bottles are here</source>
        <translation>Tage, bis Flaschen da sind</translation>
    </message>
    <message>
        <source>From your order until they can be used: delivery, and a day in the warm room.</source>
        <translation>Von deiner Bestellung, bis du sie brauchen kannst: Lieferung und ein Tag im warmen Raum.</translation>
    </message>
    <message>
        <source>Days that an opened bottle keeps</source>
        <translation>Tage, die Offenes hält</translation>
    </message>
    <message>
        <source>Where its label says nothing earlier; six to twelve months are common practice.</source>
        <translation>Wenn das Etikett nichts Früheres sagt; sechs bis zwölf Monate sind übliche Praxis.</translation>
    </message>
    <message>
        <source>Reserve of each part</source>
        <translation>Reserve je Komponente</translation>
    </message>
    <message>
        <source>So much is to be left for what nobody has planned.</source>
        <translation>So viel soll übrig bleiben für das, was niemand geplant hat.</translation>
    </message>
    <message>
        <source>An hour of your hands</source>
        <translation>Eine Arbeitsstunde</translation>
    </message>
    <message>
        <source>Attended minutes count; days of curing do not.</source>
        <translation>Es zählen die Minuten, die du daran bist, nicht die Tage des Härtens.</translation>
    </message>
    <message>
        <source>Consumables of a mix</source>
        <translation>Material je Mischung</translation>
    </message>
    <message>
        <source>Gloves, cups and sticks of each mix, shared as it is.</source>
        <translation>Handschuhe, Becher und Rührstäbe jeder Mischung, geteilt wie sie selbst.</translation>
    </message>
    <message>
        <source>Consumables of a piece</source>
        <translation>Material je Stück</translation>
    </message>
    <message>
        <source>Tape, abrasive and packing of each single piece.</source>
        <translation>Klebeband, Schleifmittel und Verpackung für jedes einzelne Stück.</translation>
    </message>
    <message>
        <source>Leaf that overlaps or tears</source>
        <translation>Blattmetall, das überlappt oder reißt</translation>
    </message>
    <message>
        <source>On top of the area that is laid; ten to thirty per cent are common practice.</source>
        <translation>Zusätzlich zur belegten Fläche; üblich sind zehn bis dreißig Prozent.</translation>
    </message>
    <message>
        <source>Overhead</source>
        <translation>Gemeinkosten</translation>
    </message>
    <message>
        <source>On materials or on hours, whichever cost more.</source>
        <translation>Auf Material oder auf Stunden, je nachdem, was mehr kostet.</translation>
    </message>
    <message>
        <source>Pieces that do not pass</source>
        <translation>Ausschuss</translation>
    </message>
    <message>
        <source>Those that pass bear their cost.</source>
        <translation>Was gelingt, trägt die Kosten mit.</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>Aufschlag</translation>
    </message>
    <message>
        <source>On top of the cost, or as a share of the price.</source>
        <translation>Auf die Kosten oder als Anteil am Preis.</translation>
    </message>
    <message>
        <source>Fees of whoever sells it</source>
        <translation>Gebühren beim Verkauf</translation>
    </message>
    <message>
        <source>A share of the price that never reaches you.</source>
        <translation>Ein Anteil am Preis, der nie bei dir ankommt.</translation>
    </message>
    <message>
        <source>Prices are rounded up to</source>
        <translation>Preise aufrunden auf</translation>
    </message>
    <message>
        <source>The step of your price tags.</source>
        <translation>Die Stufe deiner Preisschilder.</translation>
    </message>
    <message>
        <source>More for hours of a rush</source>
        <translation>Zuschlag für Eilstunden</translation>
    </message>
    <message>
        <source>What an evening that is put in to be quick costs on top.</source>
        <translation>Was ein eingeschobener Abend zusätzlich kostet, damit es schnell geht.</translation>
    </message>
    <message>
        <source>More for a quick parcel</source>
        <translation>Zuschlag für Eilpaket</translation>
    </message>
    <message>
        <source>What sending it quickly adds.</source>
        <translation>Was schneller Versand dazu kostet.</translation>
    </message>
    <message>
        <source>Bottles and pigments have their prices in their own entries, blanks with their pieces. What nobody has entered is named where it is missing and counts nothing.</source>
        <translation>Flaschen und Pigmente haben ihren Preis beim eigenen Eintrag, Rohlinge bei ihren Stücken. Was niemand eingetragen hat, wird dort genannt, wo es fehlt, und zählt nicht mit.</translation>
    </message>
    <message>
        <source>The stock</source>
        <translation>Der Bestand</translation>
    </message>
    <message>
        <source>What it costs</source>
        <translation>Was es kostet</translation>
    </message>
    <message>
        <source>What you ask</source>
        <translation>Was du verlangst</translation>
    </message>
    <message>
        <source>a share on top of the cost</source>
        <translation>ein Anteil auf die Kosten</translation>
    </message>
    <message>
        <source>a share of the price</source>
        <translation>ein Anteil am Preis</translation>
    </message>
    <message>
        <source>Your margin is</source>
        <translation>Dein Aufschlag ist</translation>
    </message>
    <message>
        <source>{what}, {currency}</source>
        <translation>{what}, {currency}</translation>
    </message>
    <message>
        <source>So what costs {cost} is offered for {asked}.</source>
        <translation>Was {cost} kostet, bietest du so für {asked} an.</translation>
    </message>
</context>
<context>
    <name>products</name>
    <message>
        <source>Products</source>
        <translation>Produkte</translation>
    </message>
    <message>
        <source>No product yet. Add one, and have its data sheet at hand.</source>
        <translation>Noch kein Produkt. Eines anlegen, mit seinem Datenblatt zur Hand.</translation>
    </message>
    <message>
        <source>Open a studio first.</source>
        <translation>Erst ein Studio öffnen.</translation>
    </message>
    <message>
        <source>Add a product to see what its sheet means in your room.</source>
        <translation>Mit einem Produkt steht hier, was sein Datenblatt im eigenen Raum bedeutet.</translation>
    </message>
    <message>
        <source>New {kind}</source>
        <translation>{kind}, neu</translation>
    </message>
    <message>
        <source>Move a product</source>
        <translation>Produkt verschieben</translation>
    </message>
    <message>
        <source>Cup life over the mass of a mix</source>
        <translation>Topfzeit über der Masse einer Mischung</translation>
    </message>
    <message>
        <source>At {degrees} a cup of {mass} stays usable for {life} at least; be out of it after {out}.</source>
        <translation>Bei {degrees} bleibt ein Becher mit {mass} mindestens {life} brauchbar; nach {out} sollte er leer sein.</translation>
    </message>
    <message>
        <source>be out of the cup</source>
        <translation>aus dem Becher sein</translation>
    </message>
    <message>
        <source>usable, likely</source>
        <translation>brauchbar, wahrscheinlich</translation>
    </message>
    <message>
        <source>No figure for {stage} or later: nothing that waits for it can be planned.</source>
        <translation>Keine Angabe für {stage} oder später: Was darauf wartet, lässt sich nicht planen.</translation>
    </message>
    <message>
        <source>No figure for {stage}: {instead} is used instead.</source>
        <translation>Keine Angabe für {stage}: Stattdessen gilt {instead}.</translation>
    </message>
    <message>
        <source>No figures yet: type what the sheet prints, or paste it.</source>
        <translation>Noch keine Angaben: Eintippen, was das Datenblatt druckt, oder einfügen.</translation>
    </message>
    <message>
        <source>The ratio is only a start: enter the one on the sheet, and say whether it is by weight or by volume.</source>
        <translation>Das Verhältnis ist nur ein Anfang: Trag das vom Datenblatt ein und sag, ob es nach Gewicht oder nach Volumen gilt.</translation>
    </message>
    <message>
        <source>No figure for recoat opens: nothing can be coated over it.</source>
        <translation>Keine Angabe, ab wann überarbeitbar: Nichts kann darüber beschichtet werden.</translation>
    </message>
    <message>
        <source>No figure for recoat closes: no window can be planned, only washing and sanding.</source>
        <translation>Keine Angabe, bis wann überarbeitbar: Kein Fenster lässt sich planen, nur Waschen und Anschleifen.</translation>
    </message>
    <message>
        <source>At {at} the window is not open for sure: opens after {opens}, closes after {closes}. Only a touch test, or sanding, helps there.</source>
        <translation>Bei {at} ist das Fenster nicht sicher offen: öffnet nach {opens}, schließt nach {closes}. Dort hilft nur die Fingerprobe oder Anschleifen.</translation>
    </message>
    <message>
        <source>No cup life: nothing says when a mix has to be out of its cup.</source>
        <translation>Keine Topfzeit: Nichts sagt, wann eine Mischung aus dem Becher sein muss.</translation>
    </message>
    <message>
        <source>The cup life names no mass: 100 g is assumed; larger mixes go faster.</source>
        <translation>Die Topfzeit nennt keine Masse: 100 g sind angenommen; größere Mischungen gehen schneller.</translation>
    </message>
    <message>
        <source>Your room gets colder than the sheet&apos;s {at}: times there are outside the sheet.</source>
        <translation>Der Raum wird kälter als die {at} des Datenblatts: Zeiten dort liegen außerhalb des Blatts.</translation>
    </message>
    <message>
        <source>Your room gets warmer than the sheet&apos;s {at}: times there are outside the sheet.</source>
        <translation>Der Raum wird wärmer als die {at} des Datenblatts: Zeiten dort liegen außerhalb des Blatts.</translation>
    </message>
    <message>
        <source>Your room gets colder than its lowest temperature, {at}: no pour is planned then.</source>
        <translation>Der Raum wird kälter als die tiefste Temperatur, {at}: Dann wird kein Guss geplant.</translation>
    </message>
    <message>
        <source>your room today</source>
        <translation>der Raum heute</translation>
    </message>
    <message>
        <source>too cold for it</source>
        <translation>zu kalt dafür</translation>
    </message>
    <message>
        <source>assumed</source>
        <translation>angenommen</translation>
    </message>
    <message>
        <source>outside the sheet</source>
        <translation>außerhalb des Blatts</translation>
    </message>
    <message>
        <source>Hours over temperature</source>
        <translation>Stunden über der Temperatur</translation>
    </message>
    <message>
        <source>Type a figure, and its law is drawn here.</source>
        <translation>Mit einer Angabe wird ihr Verlauf hier gezeichnet.</translation>
    </message>
    <message>
        <source>Cup life</source>
        <translation>Topfzeit</translation>
    </message>
    <message>
        <source>Working time</source>
        <translation>Verarbeitung</translation>
    </message>
    <message>
        <source>Last torch</source>
        <translation>Abflammen</translation>
    </message>
    <message>
        <source>Cover</source>
        <translation>Abdecken</translation>
    </message>
    <message>
        <source>Tack-free</source>
        <translation>Klebfrei</translation>
    </message>
    <message>
        <source>Recoat opens</source>
        <translation>Fenster ab</translation>
    </message>
    <message>
        <source>Recoat closes</source>
        <translation>Fenster bis</translation>
    </message>
    <message>
        <source>Sandable</source>
        <translation>Schleifbar</translation>
    </message>
    <message>
        <source>Handle</source>
        <translation>Griffest</translation>
    </message>
    <message>
        <source>Print-free</source>
        <translation>Abdruckfrei</translation>
    </message>
    <message>
        <source>Full cure</source>
        <translation>Ausgehärtet</translation>
    </message>
    <message>
        <source>Tape from</source>
        <translation>Klebeband ab</translation>
    </message>
    <message>
        <source>Tape until</source>
        <translation>Klebeband bis</translation>
    </message>
    <message>
        <source>Trim from</source>
        <translation>Tropfen ab</translation>
    </message>
    <message>
        <source>Trim until</source>
        <translation>Tropfen bis</translation>
    </message>
    <message>
        <source>Cup life, mass not printed</source>
        <translation>Topfzeit, Masse nicht gedruckt</translation>
    </message>
    <message>
        <source>Cup life of {mass}</source>
        <translation>Topfzeit von {mass}</translation>
    </message>
    <message>
        <source>At {degrees}</source>
        <translation>Bei {degrees}</translation>
    </message>
    <message>
        <source>{stage} does not come, since below {minimum} its hours do not count</source>
        <translation>{stage} kommt nicht, denn unter {minimum} zählen die Stunden nicht</translation>
    </message>
    <message>
        <source>opens after {safe} (likely {likely})</source>
        <translation>öffnet nach {safe} (wahrscheinlich {likely})</translation>
    </message>
    <message>
        <source>closes after {safe} (likely {likely})</source>
        <translation>schließt nach {safe} (wahrscheinlich {likely})</translation>
    </message>
    <message>
        <source>{stage} after {safe} (likely {likely})</source>
        <translation>{stage} nach {safe} (wahrscheinlich {likely})</translation>
    </message>
    <message>
        <source>{stage} is over after {safe} (likely {likely})</source>
        <translation>{stage} ist vorbei nach {safe} (wahrscheinlich {likely})</translation>
    </message>
    <message>
        <source>; assumed everywhere but at {low}, the one temperature of the sheet</source>
        <translation>; überall angenommen außer bei {low}, der einen Temperatur des Blatts</translation>
    </message>
    <message>
        <source>; outside the sheet below {low} and above {high}</source>
        <translation>; außerhalb des Blatts unter {low} und über {high}</translation>
    </message>
    <message>
        <source>{degrees}: {early} to {late}, likely {likely}</source>
        <translation>{degrees}: {early} bis {late}, wahrscheinlich {likely}</translation>
    </message>
    <message>
        <source>The sheet&apos;s text or table</source>
        <translation>Text oder Tabelle des Datenblatts</translation>
    </message>
    <message>
        <source>Paste lines or a table of the sheet, for example
Recoat window 4-6 h to 24 h at 20 °C</source>
        <translation>Zeilen oder eine Tabelle des Datenblatts einfügen, zum Beispiel
Überarbeitungsfenster 4-6 h bis 24 h bei 20 °C</translation>
    </message>
    <message>
        <source>Where a line names no temperature</source>
        <translation>Wo eine Zeile keine Temperatur nennt</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Call it {name}</source>
        <translation>{name} nennen</translation>
    </message>
    <message>
        <source>Take what was read</source>
        <translation>Gelesenes übernehmen</translation>
    </message>
    <message>
        <source>Take {count} figures</source>
        <translation>{count} Angaben übernehmen</translation>
    </message>
    <message>
        <source>Take 1 figure</source>
        <translation>1 Angabe übernehmen</translation>
    </message>
    <message>
        <source>What is understood will stand here, to be looked over.</source>
        <translation>Was verstanden wird, steht hier zum Durchsehen.</translation>
    </message>
    <message>
        <source>Not understood:</source>
        <translation>Nicht verstanden:</translation>
    </message>
    <message>
        <source>Line {number}, {line}: {reason}</source>
        <translation>Zeile {number}, {line}: {reason}</translation>
    </message>
    <message>
        <source>{count} figures pasted</source>
        <translation>{count} Angaben eingefügt</translation>
    </message>
    <message>
        <source>and {count} more</source>
        <translation>und {count} weitere</translation>
    </message>
    <message>
        <source>By volume it can be weighed only with the densities of A and of B: enter them below, then take the ratio too.</source>
        <translation>Nach Volumen lässt es sich nur mit den Dichten von A und B wiegen: Trag sie unten ein und übernimm dann auch das Verhältnis.</translation>
    </message>
    <message>
        <source>All the rest is taken. The ratio waits here for the densities of A and of B.</source>
        <translation>Alles Übrige ist übernommen. Das Verhältnis wartet hier auf die Dichten von A und B.</translation>
    </message>
    <message>
        <source>Mix ratio {a} to {b} by weight</source>
        <translation>Mischungsverhältnis {a} zu {b} nach Gewicht</translation>
    </message>
    <message>
        <source>Mix ratio {a} to {b} by volume</source>
        <translation>Mischungsverhältnis {a} zu {b} nach Volumen</translation>
    </message>
    <message>
        <source>Mix ratio {a} to {b}; it does not say whether by weight or by volume: choose it from the sheet</source>
        <translation>Mischungsverhältnis {a} zu {b}; ob nach Gewicht oder nach Volumen, steht nicht dabei: Wähl es nach dem Datenblatt</translation>
    </message>
    <message>
        <source>{stage}: {time} at {degrees}</source>
        <translation>{stage}: {time} bei {degrees}</translation>
    </message>
    <message>
        <source>A pour today, in your room</source>
        <translation>Ein Guss heute, im eigenen Raum</translation>
    </message>
    <message>
        <source>not within five weeks</source>
        <translation>nicht innerhalb von fünf Wochen</translation>
    </message>
    <message>
        <source>from {safe}, likely {likely}</source>
        <translation>frühestens {safe}, wahrscheinlich {likely}</translation>
    </message>
    <message>
        <source>until {safe}, likely {likely}</source>
        <translation>spätestens {safe}, wahrscheinlich {likely}</translation>
    </message>
    <message>
        <source>two-part mix</source>
        <translation>Zweikomponenten-Mischung</translation>
    </message>
    <message>
        <source>one-part primer</source>
        <translation>einkomponentige Grundierung</translation>
    </message>
    <message>
        <source>size</source>
        <translation>Anlegemilch</translation>
    </message>
    <message>
        <source>leaf</source>
        <translation>Blattmetall</translation>
    </message>
    <message>
        <source>by weight</source>
        <translation>nach Gewicht</translation>
    </message>
    <message>
        <source>by volume</source>
        <translation>nach Volumen</translation>
    </message>
    <message>
        <source>not said yet</source>
        <translation>noch offen</translation>
    </message>
    <message>
        <source>Deeper coats are refused.</source>
        <translation>Dickere Schichten werden abgelehnt.</translation>
    </message>
    <message>
        <source>Most at once</source>
        <translation>Höchstens auf einmal</translation>
    </message>
    <message>
        <source>As much as can be spread before it sets.</source>
        <translation>So viel, wie verteilt werden kann, bevor es anzieht.</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Only a mix is weighed as A and B.</source>
        <translation>Nur eine Mischung wird als A und B gewogen.</translation>
    </message>
    <message>
        <source>Parts of A</source>
        <translation>Teile A</translation>
    </message>
    <message>
        <source>A wrong ratio never cures.</source>
        <translation>Ein falsches Verhältnis härtet nie aus.</translation>
    </message>
    <message>
        <source>Parts of B</source>
        <translation>Teile B</translation>
    </message>
    <message>
        <source>Ratio is</source>
        <translation>Verhältnis ist</translation>
    </message>
    <message>
        <source>By volume it needs densities.</source>
        <translation>Nach Volumen braucht es die Dichten.</translation>
    </message>
    <message>
        <source>Density of A, g/cm³</source>
        <translation>Dichte von A, g/cm³</translation>
    </message>
    <message>
        <source>Turns a ratio by volume into one by weight.</source>
        <translation>Macht aus einem Verhältnis nach Volumen eines nach Gewicht.</translation>
    </message>
    <message>
        <source>Density of B, g/cm³</source>
        <translation>Dichte von B, g/cm³</translation>
    </message>
    <message>
        <source>Side of a leaf</source>
        <translation>Seite eines Blatts</translation>
    </message>
    <message>
        <source>So that its area counts in what a piece costs.</source>
        <translation>Damit seine Fläche in den Kosten eines Stücks zählt.</translation>
    </message>
    <message>
        <source>Price of one leaf</source>
        <translation>Preis eines Blatts</translation>
    </message>
    <message>
        <source>In your currency: that of a book by its leaves.</source>
        <translation>In deiner Währung: der eines Hefts, geteilt durch seine Blätter.</translation>
    </message>
    <message>
        <source>Density of the mix, g/cm³</source>
        <translation>Dichte der Mischung, g/cm³</translation>
    </message>
    <message>
        <source>From film and area to grams.</source>
        <translation>Von Film und Fläche zu Gramm.</translation>
    </message>
    <message>
        <source>Lowest temperature</source>
        <translation>Tiefste Temperatur</translation>
    </message>
    <message>
        <source>Colder hours do not cure it, and no pour is planned.</source>
        <translation>Kältere Stunden härten nicht, und kein Guss wird geplant.</translation>
    </message>
    <message>
        <source>Highest temperature</source>
        <translation>Höchste Temperatur</translation>
    </message>
    <message>
        <source>No pour is planned in a warmer room.</source>
        <translation>In einem wärmeren Raum wird kein Guss geplant.</translation>
    </message>
    <message>
        <source>Most humidity</source>
        <translation>Höchste Luftfeuchte</translation>
    </message>
    <message>
        <source>Damp air clouds a film; no pour is planned above it.</source>
        <translation>Feuchte Luft trübt einen Film; darüber wird kein Guss geplant.</translation>
    </message>
    <message>
        <source>Deepest film</source>
        <translation>Dickster Film</translation>
    </message>
    <message>
        <source>Deeper coats are refused: they heat themselves.</source>
        <translation>Dickere Schichten werden abgelehnt: Sie erhitzen sich selbst.</translation>
    </message>
    <message>
        <source>Viscosity of the mix, mPa·s</source>
        <translation>Viskosität der Mischung, mPa·s</translation>
    </message>
    <message>
        <source>How fast pigments and glitter sink in it.</source>
        <translation>Wie schnell Pigmente und Glitzer darin absinken.</translation>
    </message>
    <message>
        <source>Largest cup</source>
        <translation>Größter Becher</translation>
    </message>
    <message>
        <source>Larger mixes are weighed in portions.</source>
        <translation>Größere Mischungen werden in Portionen gewogen.</translation>
    </message>
    <message>
        <source>Largest mix</source>
        <translation>Größte Mischung</translation>
    </message>
    <message>
        <source>As much as can be spread in its working time.</source>
        <translation>So viel, wie in der Verarbeitungszeit verteilt werden kann.</translation>
    </message>
    <message>
        <source>Density, g/cm³</source>
        <translation>Dichte, g/cm³</translation>
    </message>
    <message>
        <source>Left and right read it, up and down choose the stage.</source>
        <translation>Links und Rechts lesen ab, Auf und Ab wählen die Stufe.</translation>
    </message>
    <message>
        <source>Paste a sheet</source>
        <translation>Datenblatt einfügen</translation>
    </message>
    <message>
        <source>What the sheet prints</source>
        <translation>Was das Datenblatt druckt</translation>
    </message>
    <message>
        <source>Larger mixes go faster</source>
        <translation>Größere Mischungen gehen schneller</translation>
    </message>
    <message>
        <source>Densities and limits</source>
        <translation>Dichten und Grenzen</translation>
    </message>
    <message>
        <source>Poured today at {time}: {place}</source>
        <translation>Heute gegossen um {time}: {place}</translation>
    </message>
    <message>
        <source>+ cup, {unit}</source>
        <translation>+ Becher, {unit}</translation>
    </message>
    <message>
        <source>There is a column for it already.</source>
        <translation>Dafür gibt es schon eine Spalte.</translation>
    </message>
    <message>
        <source>temperature of the sheet</source>
        <translation>Temperatur des Blatts</translation>
    </message>
    <message>
        <source>A mass has to be more than nothing.</source>
        <translation>Eine Masse muss mehr als nichts sein.</translation>
    </message>
    <message>
        <source>Add a product</source>
        <translation>Produkt anlegen</translation>
    </message>
    <message>
        <source>Copy {name}</source>
        <translation>{name} kopieren</translation>
    </message>
    <message>
        <source>Remove {name}</source>
        <translation>{name} entfernen</translation>
    </message>
    <message>
        <source>bottles of it are entered ({labels}); remove them under Stock first.</source>
        <translation>Flaschen davon sind eingetragen ({labels}); entferne sie erst unter Bestand.</translation>
    </message>
    <message>
        <source>it is in the stack of {names}; give those coats another product first.</source>
        <translation>es steckt im Aufbau von {names}; diesen Schichten erst ein anderes Produkt geben.</translation>
    </message>
</context>
<context>
    <name>promises</name>
    <message>
        <source>shipped</source>
        <translation>verschickt</translation>
    </message>
    <message>
        <source>not planned</source>
        <translation>nicht geplant</translation>
    </message>
    <message>
        <source>late</source>
        <translation>zu spät</translation>
    </message>
    <message>
        <source>in time</source>
        <translation>pünktlich</translation>
    </message>
</context>
<context>
    <name>questions</name>
    <message>
        <source>The chosen question</source>
        <translation>Die gewählte Frage</translation>
    </message>
    <message>
        <source>Open a studio first.</source>
        <translation>Erst ein Studio öffnen.</translation>
    </message>
    <message>
        <source>Promises</source>
        <translation>Zusagen</translation>
    </message>
    <message>
        <source>leaves {leaves}, {word}</source>
        <translation>geht ab {leaves}, {word}</translation>
    </message>
    <message>
        <source>Pours that change</source>
        <translation>Güsse, die sich ändern</translation>
    </message>
    <message>
        <source>and {count} more</source>
        <translation>und {count} weitere</translation>
    </message>
    <message>
        <source>not in this plan</source>
        <translation>nicht in diesem Plan</translation>
    </message>
    <message>
        <source>window from {opens}, stays open</source>
        <translation>Fenster ab {opens}, bleibt offen</translation>
    </message>
    <message>
        <source>window {opens} to {closes}</source>
        <translation>Fenster {opens} bis {closes}</translation>
    </message>
    <message>
        <source>dew-point margin not known</source>
        <translation>Abstand zum Taupunkt nicht bekannt</translation>
    </message>
    <message>
        <source>dew-point margin only {step}: blush</source>
        <translation>Abstand zum Taupunkt nur {step}: Schleier</translation>
    </message>
    <message>
        <source>dew-point margin {step} or more</source>
        <translation>Abstand zum Taupunkt {step} oder mehr</translation>
    </message>
    <message>
        <source>Tried</source>
        <translation>Versucht</translation>
    </message>
    <message>
        <source>Without it</source>
        <translation>Ohne sie</translation>
    </message>
    <message>
        <source>the same</source>
        <translation>gleich</translation>
    </message>
    <message>
        <source>Heat loss</source>
        <translation>Wärmeverlust</translation>
    </message>
    <message>
        <source>Energy: not known. Enter its heat loss: the watts that keep it one degree warmer.</source>
        <translation>Energie: nicht bekannt. Trag den Wärmeverlust ein: die Watt, die den Raum ein Grad wärmer halten.</translation>
    </message>
    <message>
        <source>Energy: {kwh} kWh a day, from {warmth} hours above the room</source>
        <translation>Energie: {kwh} kWh am Tag, aus {warmth}-Stunden über dem Raum</translation>
    </message>
    <message>
        <source>Energy: {kwh} kWh, from {warmth} hours above the usual</source>
        <translation>Energie: {kwh} kWh, aus {warmth}-Stunden über dem Üblichen</translation>
    </message>
    <message>
        <source>about {cost} {currency}</source>
        <translation>etwa {cost} {currency}</translation>
    </message>
    <message>
        <source>Price of a kWh</source>
        <translation>Preis je kWh</translation>
    </message>
    <message>
        <source>{place}, heat loss</source>
        <translation>{place}, Wärmeverlust</translation>
    </message>
    <message>
        <source>Questions</source>
        <translation>Fragen</translation>
    </message>
    <message>
        <source>Try a change</source>
        <translation>Änderung ausprobieren</translation>
    </message>
    <message>
        <source>Answered at once</source>
        <translation>Sofort beantwortet</translation>
    </message>
    <message>
        <source>Try it</source>
        <translation>Ausprobieren</translation>
    </message>
    <message>
        <source>Stop trying</source>
        <translation>Nicht weiter probieren</translation>
    </message>
    <message>
        <source>Do it</source>
        <translation>So machen</translation>
    </message>
    <message>
        <source>It is planned on a copy, in some seconds; nothing changes.</source>
        <translation>Auf einer Kopie wird einige Sekunden geplant; nichts ändert sich.</translation>
    </message>
    <message>
        <source>Trying: the quick plan comes first…</source>
        <translation>Wird probiert: Der schnelle Plan kommt zuerst…</translation>
    </message>
    <message>
        <source>The studio is another one now; try it again.</source>
        <translation>Das Studio ist inzwischen ein anderes; noch einmal probieren.</translation>
    </message>
    <message>
        <source>Done: {words}. Undo takes it back.</source>
        <translation>Gemacht: {words}. Rückgängig nimmt es zurück.</translation>
    </message>
    <message>
        <source>So far, from the quick plan; looking for a better one…</source>
        <translation>Bisher, nach dem schnellen Plan; ein besserer wird gesucht…</translation>
    </message>
    <message>
        <source>Stopped; nothing has changed.</source>
        <translation>Angehalten; nichts hat sich geändert.</translation>
    </message>
    <message>
        <source>Do it all the same</source>
        <translation>Trotzdem so machen</translation>
    </message>
    <message>
        <source>Windows then and now: {pours}</source>
        <translation>Fenster damals und jetzt: {pours}</translation>
    </message>
    <message>
        <source>without it</source>
        <translation>ohne sie</translation>
    </message>
    <message>
        <source>tried</source>
        <translation>versucht</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>with care</source>
        <translation>mit Vorsicht</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>Will this fit before I go away?</source>
        <translation>Passt das noch, bevor ich weg bin?</translation>
    </message>
    <message>
        <source>Which piece</source>
        <translation>Welches Stück</translation>
    </message>
    <message>
        <source>Away from</source>
        <translation>Abwesend von</translation>
    </message>
    <message>
        <source>At</source>
        <translation>Um</translation>
    </message>
    <message>
        <source>Back on</source>
        <translation>Zurück am</translation>
    </message>
    <message>
        <source>Which is my bottleneck?</source>
        <translation>Was ist mein Engpass?</translation>
    </message>
    <message>
        <source>If I pour the base at {time} tonight, when may I pour the colour?</source>
        <translation>Wenn ich heute um {time} den Grund gieße, wann darf ich die Farbe gießen?</translation>
    </message>
    <message>
        <source>Which coat</source>
        <translation>Welche Schicht</translation>
    </message>
    <message>
        <source>Poured on</source>
        <translation>Gegossen am</translation>
    </message>
    <message>
        <source>Poured at</source>
        <translation>Gegossen um</translation>
    </message>
    <message>
        <source>Is it too damp tonight?</source>
        <translation>Ist es heute Nacht zu feucht?</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>If I leave it, what is the worst that happens?</source>
        <translation>Wenn ich es liegen lasse, was passiert schlimmstenfalls?</translation>
    </message>
    <message>
        <source>Left for</source>
        <translation>Liegen gelassen für</translation>
    </message>
    <message>
        <source>How late can I start tonight and still wipe the drips?</source>
        <translation>Wie spät kann ich heute anfangen und noch die Tropfen abwischen?</translation>
    </message>
    <message>
        <source>Which pour</source>
        <translation>Welcher Guss</translation>
    </message>
    <message>
        <source>Hands-on minutes of another pour</source>
        <translation>Handarbeit eines anderen Gusses in Minuten</translation>
    </message>
    <message>
        <source>Can I post it today?</source>
        <translation>Kann ich es heute verschicken?</translation>
    </message>
    <message>
        <source>Hot weather on its way</source>
        <translation>Heißes Wetter unterwegs</translation>
    </message>
    <message>
        <source>May I sand in here now?</source>
        <translation>Darf ich hier jetzt schleifen?</translation>
    </message>
    <message>
        <source>Minutes of sanding</source>
        <translation>Minuten Schleifen</translation>
    </message>
    <message>
        <source>What did I mix last time for that colour?</source>
        <translation>Was habe ich letztes Mal für diese Farbe gemischt?</translation>
    </message>
    <message>
        <source>Which colour</source>
        <translation>Welche Farbe</translation>
    </message>
    <message>
        <source>For which coat now</source>
        <translation>Für welche Schicht jetzt</translation>
    </message>
    <message>
        <source>Can it go to the market on Saturday?</source>
        <translation>Kann es am Samstag zum Markt?</translation>
    </message>
    <message>
        <source>Market day</source>
        <translation>Markttag</translation>
    </message>
    <message>
        <source>Opens at</source>
        <translation>Öffnet um</translation>
    </message>
    <message>
        <source>Can I warm it to catch up?</source>
        <translation>Kann ich es wärmen, um aufzuholen?</translation>
    </message>
    <message>
        <source>Warm it to</source>
        <translation>Wärmen auf</translation>
    </message>
    <message>
        <source>Do I need to wash this before the next coat?</source>
        <translation>Muss ich das vor der nächsten Schicht waschen?</translation>
    </message>
    <message>
        <source>Which film</source>
        <translation>Welcher Film</translation>
    </message>
    <message>
        <source>What if somebody is away?</source>
        <translation>Was, wenn jemand weg ist?</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Wer</translation>
    </message>
    <message>
        <source>What if the heater is on tonight?</source>
        <translation>Was, wenn heute Nacht die Heizung läuft?</translation>
    </message>
    <message>
        <source>Warm to</source>
        <translation>Heizen auf</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>What if I work an evening more?</source>
        <translation>Was, wenn ich einen Abend mehr arbeite?</translation>
    </message>
    <message>
        <source>What if I begin earlier?</source>
        <translation>Was, wenn ich früher anfange?</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Am</translation>
    </message>
    <message>
        <source>What if I have one more level spot?</source>
        <translation>Was, wenn ich einen ebenen Platz mehr habe?</translation>
    </message>
    <message>
        <source>A spot like</source>
        <translation>Ein Platz wie</translation>
    </message>
    <message>
        <source>What if I pour at another time?</source>
        <translation>Was, wenn ich zu anderer Zeit gieße?</translation>
    </message>
    <message>
        <source>What if I have a warm box?</source>
        <translation>Was, wenn ich eine Wärmebox habe?</translation>
    </message>
    <message>
        <source>Inside length</source>
        <translation>Länge innen</translation>
    </message>
    <message>
        <source>Inside width</source>
        <translation>Breite innen</translation>
    </message>
    <message>
        <source>Inside height</source>
        <translation>Höhe innen</translation>
    </message>
    <message>
        <source>Kept at</source>
        <translation>Gehalten auf</translation>
    </message>
    <message>
        <source>Another pour</source>
        <translation>Ein anderer Guss</translation>
    </message>
    <message>
        <source>another pour</source>
        <translation>ein anderer Guss</translation>
    </message>
</context>
<context>
    <name>reminders</name>
    <message>
        <source>weigh now</source>
        <translation>jetzt abwiegen</translation>
    </message>
    <message>
        <source>pour by</source>
        <translation>gießen bis</translation>
    </message>
    <message>
        <source>last torch</source>
        <translation>letztes Abflammen</translation>
    </message>
    <message>
        <source>cover</source>
        <translation>abdecken</translation>
    </message>
    <message>
        <source>pull tape</source>
        <translation>Klebeband abziehen</translation>
    </message>
    <message>
        <source>trim drips</source>
        <translation>Tropfen abnehmen</translation>
    </message>
    <message>
        <source>window opens</source>
        <translation>Fenster öffnet</translation>
    </message>
    <message>
        <source>window about to close</source>
        <translation>Fenster schließt bald</translation>
    </message>
    <message>
        <source>wash and sand</source>
        <translation>waschen und anschleifen</translation>
    </message>
    <message>
        <source>turn over</source>
        <translation>wenden</translation>
    </message>
    <message>
        <source>move to the warm box</source>
        <translation>in die Wärmebox stellen</translation>
    </message>
    <message>
        <source>ready to pack</source>
        <translation>kann verpackt werden</translation>
    </message>
    <message>
        <source>order can ship</source>
        <translation>Auftrag kann abgehen</translation>
    </message>
    <message>
        <source>too cold tonight</source>
        <translation>heute Nacht zu kalt</translation>
    </message>
    <message>
        <source>too near the dew point tonight</source>
        <translation>heute Nacht zu nah am Taupunkt</translation>
    </message>
    <message>
        <source>readings missing</source>
        <translation>Messwerte fehlen</translation>
    </message>
    <message>
        <source>window moved</source>
        <translation>Fenster hat sich verschoben</translation>
    </message>
    <message>
        <source>can&apos;t be saved later</source>
        <translation>später nicht zu retten</translation>
    </message>
    <message>
        <source>can wait</source>
        <translation>kann warten</translation>
    </message>
    <message>
        <source>notification</source>
        <translation>Mitteilung</translation>
    </message>
    <message>
        <source>tray</source>
        <translation>Infobereich</translation>
    </message>
    <message>
        <source>sound</source>
        <translation>Ton</translation>
    </message>
    <message>
        <source>terminal</source>
        <translation>Terminal</translation>
    </message>
    <message>
        <source>Perhaps shown already.</source>
        <translation>Vielleicht schon gezeigt.</translation>
    </message>
    <message>
        <source>This is how the studio reminds you</source>
        <translation>So erinnert dich das Studio</translation>
    </message>
    <message>
        <source>A test: nothing is due because of it.</source>
        <translation>Eine Probe: Fällig ist deswegen nichts.</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Erledigt</translation>
    </message>
    <message>
        <source>It was due while you were away.</source>
        <translation>Es war fällig, während du weg warst.</translation>
    </message>
    <message>
        <source>and {count} more</source>
        <translation>und {count} weitere</translation>
    </message>
    <message>
        <source>Remind me at {until}</source>
        <translation>Erinnere mich {until}</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Planned for {moment}.</source>
        <translation>Geplant für {moment}.</translation>
    </message>
    <message>
        <source>It has to begin by {moment}.</source>
        <translation>Es muss bis {moment} beginnen.</translation>
    </message>
    <message>
        <source>Until {moment} at the latest.</source>
        <translation>Spätestens bis {moment}.</translation>
    </message>
    <message>
        <source>From {moment} on the cover leaves no mark.</source>
        <translation>Ab {moment} hinterlässt die Abdeckung keine Spur.</translation>
    </message>
    <message>
        <source>It can be poured from {moment} on.</source>
        <translation>Ab {moment} kann gegossen werden.</translation>
    </message>
    <message>
        <source>To be done before it closes, it has to begin by {moment}.</source>
        <translation>Um vor dem Schließen fertig zu sein, muss es bis {moment} beginnen.</translation>
    </message>
    <message>
        <source>It is poured there at {moment}.</source>
        <translation>Dort wird {moment} gegossen.</translation>
    </message>
    <message>
        <source>It leaves at {moment}.</source>
        <translation>Sie geht {moment} ab.</translation>
    </message>
    <message>
        <source>From {moment} on the air there is colder than the sheet of a film allows: it stands still until it is warmer.</source>
        <translation>Ab {moment} ist die Luft dort kälter, als das Datenblatt eines Films erlaubt: Er steht still, bis es wärmer ist.</translation>
    </message>
    <message>
        <source>At {moment} the surface comes too near the dew point: keep it warm.</source>
        <translation>{moment} kommt die Oberfläche dem Taupunkt zu nah: Halte sie warm.</translation>
    </message>
    <message>
        <source>Known since {moment}; plan again to follow it.</source>
        <translation>Bekannt seit {moment}; plane neu, um ihm zu folgen.</translation>
    </message>
    <message>
        <source>{what}: {whom}</source>
        <translation>{what}: {whom}</translation>
    </message>
    <message>
        <source>{piece}, {coat}</source>
        <translation>{piece}, {coat}</translation>
    </message>
    <message>
        <source>Readings have been missing since {moment}; what is said of the films is guessed.</source>
        <translation>Seit {moment} fehlen Messwerte; was über die Filme gesagt wird, ist geschätzt.</translation>
    </message>
    <message>
        <source>Put off from {meant}: it could wait until the quiet hours end.</source>
        <translation>Verschoben von {meant}: Es konnte bis zum Ende der Ruhezeit warten.</translation>
    </message>
    <message>
        <source>It is too late for that now.</source>
        <translation>Dafür ist es jetzt zu spät.</translation>
    </message>
    <message>
        <source>It has to begin by {until}.</source>
        <translation>Es muss bis {until} beginnen.</translation>
    </message>
    <message>
        <source>After that it does not bond, and no sanding helps.</source>
        <translation>Danach verbindet es sich nicht, und Schleifen hilft nicht.</translation>
    </message>
    <message>
        <source>After that: wash and sand the one below first.</source>
        <translation>Danach: erst die darunter waschen und anschleifen.</translation>
    </message>
    <message>
        <source>If it is left: {what}.</source>
        <translation>Wenn es liegen bleibt: {what}.</translation>
    </message>
    <message>
        <source>Missed while you were away: {count} reminder</source>
        <translation>Verpasst, während du weg warst: {count} Erinnerung</translation>
    </message>
    <message>
        <source>Missed while you were away: {count} reminders</source>
        <translation>Verpasst, während du weg warst: {count} Erinnerungen</translation>
    </message>
    <message>
        <source>{missed}, {saved} of them can still be done</source>
        <translation>{missed}, {saved} davon noch zu machen</translation>
    </message>
    <message>
        <source>After the quiet hours: {count} reminder</source>
        <translation>Nach der Ruhezeit: {count} Erinnerung</translation>
    </message>
    <message>
        <source>After the quiet hours: {count} reminders</source>
        <translation>Nach der Ruhezeit: {count} Erinnerungen</translation>
    </message>
    <message>
        <source>There is no reminder “{uid}”; remind FILE lists them.</source>
        <translation>Es gibt keine Erinnerung „{uid}“; remind DATEI listet sie auf.</translation>
    </message>
</context>
<context>
    <name>reminding</name>
    <message>
        <source>Stay in the tray when the window is closed</source>
        <translation>Im Infobereich bleiben, wenn das Fenster geschlossen wird</translation>
    </message>
    <message>
        <source>Let the system remind…</source>
        <translation>Das System erinnern lassen…</translation>
    </message>
    <message>
        <source>Let it remind no more…</source>
        <translation>Nicht mehr erinnern lassen…</translation>
    </message>
    <message>
        <source>Do it</source>
        <translation>So machen</translation>
    </message>
    <message>
        <source>Leave it as it is</source>
        <translation>So lassen, wie es ist</translation>
    </message>
    <message>
        <source>With the window closed, the system&apos;s own scheduler reminds of this studio.</source>
        <translation>Ist das Fenster geschlossen, erinnert die Aufgabenplanung des Systems an diese Werkstatt.</translation>
    </message>
    <message>
        <source>With the window closed and nothing in the tray, nobody reminds of this studio. The system&apos;s own scheduler can.</source>
        <translation>Ist das Fenster geschlossen und nichts im Infobereich, erinnert niemand an diese Werkstatt. Die Aufgabenplanung des Systems kann es.</translation>
    </message>
    <message>
        <source>The desk goes on without its window and can be called back; Leave, in its menu there, ends it.</source>
        <translation>Das Programm läuft ohne Fenster weiter und lässt sich zurückholen; „Beenden“ in seinem Menü dort beendet es.</translation>
    </message>
    <message>
        <source>There is no tray on this system: whatever is chosen here, the desk ends with its window.</source>
        <translation>Dieses System hat keinen Infobereich: Was hier auch gewählt ist, das Programm endet mit seinem Fenster.</translation>
    </message>
    <message>
        <source>The system is being told…</source>
        <translation>Das System bekommt es gesagt…</translation>
    </message>
    <message>
        <source>Done.</source>
        <translation>Erledigt.</translation>
    </message>
    <message>
        <source>It runs: {command}</source>
        <translation>Es führt aus: {command}</translation>
    </message>
    <message>
        <source>{what}: minutes before its time</source>
        <translation>{what}: Minuten vor der Zeit</translation>
    </message>
    <message>
        <source>min before</source>
        <translation>min vorher</translation>
    </message>
    <message>
        <source>Ring me now</source>
        <translation>Jetzt klingeln</translation>
    </message>
    <message>
        <source>Not tried since the desk was opened.</source>
        <translation>Noch nicht versucht, seit das Fenster offen ist.</translation>
    </message>
    <message>
        <source>It was sounded; whether it can be heard, only you can tell.</source>
        <translation>Er wurde gespielt; ob er zu hören ist, weißt nur du.</translation>
    </message>
    <message>
        <source>It worked the last time.</source>
        <translation>Beim letzten Mal ging es.</translation>
    </message>
    <message>
        <source>Trying every means…</source>
        <translation>Jeder Weg wird versucht…</translation>
    </message>
    <message>
        <source>Every means was tried and none has failed.</source>
        <translation>Jeder Weg wurde versucht, keiner ist gescheitert.</translation>
    </message>
    <message>
        <source>Every means was tried; not working: {means}.</source>
        <translation>Jeder Weg wurde versucht; es geht nicht: {means}.</translation>
    </message>
    <message>
        <source>A notice of the system, with Done, a later time, and Open on it.</source>
        <translation>Eine Mitteilung des Systems mit „Erledigt“, einer späteren Zeit und „Öffnen“ darauf.</translation>
    </message>
    <message>
        <source>A message from the tray, where no notification comes through.</source>
        <translation>Eine Meldung aus dem Infobereich, wo keine Mitteilung durchkommt.</translation>
    </message>
    <message>
        <source>The computer&apos;s own short sound; this program brings no sound of its own.</source>
        <translation>Der kurze Ton des Computers; das Programm bringt keinen eigenen mit.</translation>
    </message>
    <message>
        <source>The whole plan…</source>
        <translation>Den ganzen Plan…</translation>
    </message>
    <message>
        <source>This week…</source>
        <translation>Diese Woche…</translation>
    </message>
    <message>
        <source>A test event…</source>
        <translation>Einen Probetermin…</translation>
    </message>
    <message>
        <source>One order</source>
        <translation>Ein Auftrag</translation>
    </message>
    <message>
        <source>This order…</source>
        <translation>Diesen Auftrag…</translation>
    </message>
    <message>
        <source>Your phone</source>
        <translation>Dein Telefon</translation>
    </message>
    <message>
        <source>Quiet from</source>
        <translation>Ruhe von</translation>
    </message>
    <message>
        <source>Quiet to</source>
        <translation>Ruhe bis</translation>
    </message>
    <message>
        <source>Tell of the night&apos;s air at</source>
        <translation>Von der Luft der Nacht um</translation>
    </message>
    <message>
        <source>Reminders</source>
        <translation>Erinnerungen</translation>
    </message>
    <message>
        <source>What is due always stands in the list at the top of the window, until you have answered it. Beside that, the studio can reach you by these means.</source>
        <translation>Was fällig ist, steht immer in der Liste oben im Fenster, bis du es beantwortet hast. Außerdem kann dich die Werkstatt auf diesen Wegen erreichen.</translation>
    </message>
    <message>
        <source>Quiet hours</source>
        <translation>Ruhezeit</translation>
    </message>
    <message>
        <source>What of, and how long before</source>
        <translation>Woran, und wie lange vorher</translation>
    </message>
    <message>
        <source>With the window closed</source>
        <translation>Bei geschlossenem Fenster</translation>
    </message>
    <message>
        <source>On the phone</source>
        <translation>Auf dem Telefon</translation>
    </message>
    <message>
        <source>A calendar file takes the plan to a phone, which rings by itself. It knows the plan as it is now: write it again after the plan has changed.</source>
        <translation>Eine Kalenderdatei bringt den Plan auf ein Telefon, das dann von selbst klingelt. Sie kennt den Plan, wie er jetzt ist: Schreib sie neu, wenn er sich geändert hat.</translation>
    </message>
    <message>
        <source>Readings are missed after</source>
        <translation>Messwerte fehlen nach</translation>
    </message>
    <message>
        <source>Tell of windows that moved by</source>
        <translation>Verschobene Fenster melden ab</translation>
    </message>
    <message>
        <source>hour of the evening</source>
        <translation>Stunde am Abend</translation>
    </message>
    <message>
        <source>missing readings</source>
        <translation>fehlende Messwerte</translation>
    </message>
    <message>
        <source>moved windows</source>
        <translation>verschobene Fenster</translation>
    </message>
    <message>
        <source>in the tray</source>
        <translation>im Infobereich</translation>
    </message>
    <message>
        <source>quiet hours</source>
        <translation>Ruhezeit</translation>
    </message>
    <message>
        <source>There are no quiet hours: everything rings at its time.</source>
        <translation>Es gibt keine Ruhezeit: Alles klingelt zu seiner Zeit.</translation>
    </message>
    <message>
        <source>From {start} to {end} only what can&apos;t be saved later rings, such as the last torch or a window in which a coat that cannot be sanded is lost. All else waits until {end}. Hours in which somebody works are never quiet.</source>
        <translation>Von {start} bis {end} klingelt nur, was später nicht mehr zu retten ist, etwa das letzte Abflammen oder ein Fenster, nach dem eine Schicht verloren ist, die sich nicht schleifen lässt. Alles andere wartet bis {end}. Stunden, in denen jemand arbeitet, sind nie Ruhezeit.</translation>
    </message>
</context>
<context>
    <name>ringing</name>
    <message>
        <source>The terminal&apos;s bell was not rung: the output is no terminal.</source>
        <translation>Die Glocke des Terminals läutete nicht: Die Ausgabe ist kein Terminal.</translation>
    </message>
    <message>
        <source>The terminal&apos;s bell was not rung: {error}.</source>
        <translation>Die Glocke des Terminals läutete nicht: {error}.</translation>
    </message>
    <message>
        <source>No notification could be shown: the package jeepney is missing; install the program again.</source>
        <translation>Keine Mitteilung ließ sich zeigen: Das Paket jeepney fehlt; installiere das Programm noch einmal.</translation>
    </message>
    <message>
        <source>No notification could be shown: this session has no message bus; open the window instead.</source>
        <translation>Keine Mitteilung ließ sich zeigen: Diese Sitzung hat keinen Nachrichtenbus; öffne stattdessen das Fenster.</translation>
    </message>
    <message>
        <source>No notification could be shown: the desktop&apos;s notification service does not answer.</source>
        <translation>Keine Mitteilung ließ sich zeigen: Der Mitteilungsdienst des Desktops antwortet nicht.</translation>
    </message>
    <message>
        <source>No notification could be shown: the desktop has no notification service, or it refuses: {error}</source>
        <translation>Keine Mitteilung ließ sich zeigen: Der Desktop hat keinen Mitteilungsdienst, oder er weigert sich: {error}</translation>
    </message>
    <message>
        <source>No notification could be shown: {error}.</source>
        <translation>Keine Mitteilung ließ sich zeigen: {error}.</translation>
    </message>
    <message>
        <source>No notification could be shown: the system&apos;s notification service does not answer.</source>
        <translation>Keine Mitteilung ließ sich zeigen: Der Mitteilungsdienst des Systems antwortet nicht.</translation>
    </message>
    <message>
        <source>No notification could be shown: the system does not allow it; allow notifications of this program in the system&apos;s settings.</source>
        <translation>Keine Mitteilung ließ sich zeigen: Das System erlaubt es nicht; erlaube Mitteilungen dieses Programms in den Einstellungen des Systems.</translation>
    </message>
    <message>
        <source>{command} failed: {said}</source>
        <translation>{command} ging nicht: {said}</translation>
    </message>
    <message>
        <source>this system has no {program}.</source>
        <translation>dieses System hat kein {program}.</translation>
    </message>
    <message>
        <source>{path} cannot be written: {error}.</source>
        <translation>{path} lässt sich nicht schreiben: {error}.</translation>
    </message>
    <message>
        <source>The system will run this program each minute while you are logged in: it looks into {studio}, rings what is due, and ends. For that it writes {paths}. Taken away again with: studio-planner remind {studio} --remove</source>
        <translation>Das System wird dieses Programm jede Minute starten, solange du angemeldet bist: Es sieht in {studio} nach, läutet, was fällig ist, und endet. Dafür schreibt es {paths}. Wieder weggenommen mit: studio-planner remind {studio} --remove</translation>
    </message>
    <message>
        <source>The system will no longer remind of {studio} while no window is open. What was written for that is taken away: {paths}.</source>
        <translation>Das System wird nicht mehr an {studio} erinnern, während kein Fenster offen ist. Was dafür geschrieben wurde, wird weggenommen: {paths}.</translation>
    </message>
    <message>
        <source>{means} failed: {error}</source>
        <translation>{means} ging nicht: {error}</translation>
    </message>
</context>
<context>
    <name>room</name>
    <message>
        <source>Rooms and boxes</source>
        <translation>Räume und Boxen</translation>
    </message>
    <message>
        <source>About how warm it is</source>
        <translation>Etwa so warm ist es</translation>
    </message>
    <message>
        <source>No room yet. Add it, then say about how warm it is.</source>
        <translation>Noch kein Raum. Leg ihn an und sag dann, wie warm er etwa ist.</translation>
    </message>
    <message>
        <source>Pieces that need no spot rest in {room}, the first room of the list. Alt with up or down moves a place.</source>
        <translation>Stücke ohne Platz ruhen in {room}, dem ersten Raum der Liste. Alt mit Auf oder Ab verschiebt einen Raum.</translation>
    </message>
    <message>
        <source>{place} cannot be removed: {why}</source>
        <translation>{place} kann nicht entfernt werden: {why}</translation>
    </message>
    <message>
        <source>Add a room first; then drop its readings again.</source>
        <translation>Erst einen Raum anlegen; dann seine Messwerte noch einmal ablegen.</translation>
    </message>
    <message>
        <source>Drop one file at a time: a logger&apos;s CSV.</source>
        <translation>Eine Datei auf einmal ablegen: die CSV eines Loggers.</translation>
    </message>
    <message>
        <source>{kind}, {low} to {high}</source>
        <translation>{kind}, {low} bis {high}</translation>
    </message>
    <message>
        <source>Expected air</source>
        <translation>Erwartete Luft</translation>
    </message>
    <message>
        <source>Point {number} of {all}: {said}</source>
        <translation>Punkt {number} von {all}: {said}</translation>
    </message>
    <message>
        <source>temperature, and how far it may be off</source>
        <translation>Temperatur, und wie weit sie abweichen darf</translation>
    </message>
    <message>
        <source>humidity</source>
        <translation>Luftfeuchte</translation>
    </message>
    <message>
        <source>Drag a point up, down or along; double click on the line to add one. Keys: left and right choose, up and down warm, Shift with left and right moves in time, Delete removes. Or type into the table.</source>
        <translation>Einen Punkt auf, ab oder zur Seite ziehen; Doppelklick auf die Linie fügt einen ein. Tasten: Links und Rechts wählen, Auf und Ab wärmen, Umschalt mit Links und Rechts bewegt in der Zeit, Entf entfernt. Oder in die Tabelle tippen.</translation>
    </message>
    <message>
        <source>Add a point</source>
        <translation>Punkt einfügen</translation>
    </message>
    <message>
        <source>Add a step</source>
        <translation>Stufe einfügen</translation>
    </message>
    <message>
        <source>Remove the point</source>
        <translation>Punkt entfernen</translation>
    </message>
    <message>
        <source>expected air</source>
        <translation>erwartete Luft</translation>
    </message>
    <message>
        <source>{place}, as the week says: {spell}</source>
        <translation>{place}, wieder wie in der Woche: {spell}</translation>
    </message>
    <message>
        <source>a point more</source>
        <translation>ein Punkt mehr</translation>
    </message>
    <message>
        <source>a point less</source>
        <translation>ein Punkt weniger</translation>
    </message>
    <message>
        <source>every day</source>
        <translation>jeden Tag</translation>
    </message>
    <message>
        <source>{text} is no day; write Mon to Sun, or every day.</source>
        <translation>{text} ist kein Tag; Mo bis So schreiben, oder jeden Tag.</translation>
    </message>
    <message>
        <source>{text} is no time; write for example 7:30.</source>
        <translation>{text} ist keine Uhrzeit; zum Beispiel 7:30 schreiben.</translation>
    </message>
    <message>
        <source>handle {when}</source>
        <translation>griffest {when}</translation>
    </message>
    <message>
        <source>colder than its sheet allows at the pour</source>
        <translation>beim Guss kälter, als sein Datenblatt erlaubt</translation>
    </message>
    <message>
        <source>warmer than its sheet allows at the pour</source>
        <translation>beim Guss wärmer, als sein Datenblatt erlaubt</translation>
    </message>
    <message>
        <source>its sheet has no figure for when recoat opens</source>
        <translation>sein Datenblatt sagt nicht, ab wann überarbeitbar</translation>
    </message>
    <message>
        <source>recoat does not open within ten days</source>
        <translation>in zehn Tagen nicht überarbeitbar</translation>
    </message>
    <message>
        <source>recoat opens {opens}; its sheet does not say when it closes</source>
        <translation>überarbeitbar ab {opens}; sein Datenblatt sagt nicht, bis wann</translation>
    </message>
    <message>
        <source>recoat opens {opens}, still open after ten days</source>
        <translation>überarbeitbar ab {opens}, nach zehn Tagen noch offen</translation>
    </message>
    <message>
        <source>no sure window: it may close {closes}, before it is sure to be open, {opens}</source>
        <translation>kein sicheres Fenster: Es kann {closes} schließen, bevor es sicher offen ist, {opens}</translation>
    </message>
    <message>
        <source>recoat {opens} to {closes}, {length} long</source>
        <translation>überarbeitbar {opens} bis {closes}, {length} lang</translation>
    </message>
    <message>
        <source>What this does to a pour {when} in {place}</source>
        <translation>Was das für einen Guss {when} in {place} bedeutet</translation>
    </message>
    <message>
        <source>Add a two-part product under Products to see its window here.</source>
        <translation>Unter Produkte eine Zweikomponenten-Mischung anlegen, um ihr Fenster hier zu sehen.</translation>
    </message>
    <message>
        <source>as found</source>
        <translation>wie gefunden</translation>
    </message>
    <message>
        <source>Temperature column</source>
        <translation>Spalte der Temperatur</translation>
    </message>
    <message>
        <source>Humidity column</source>
        <translation>Spalte der Luftfeuchte</translation>
    </message>
    <message>
        <source>Temperatures in</source>
        <translation>Temperaturen in</translation>
    </message>
    <message>
        <source>Dates such as 03/04/2026</source>
        <translation>Daten wie 03/04/2026</translation>
    </message>
    <message>
        <source>day first</source>
        <translation>Tag zuerst</translation>
    </message>
    <message>
        <source>month first</source>
        <translation>Monat zuerst</translation>
    </message>
    <message>
        <source>Times without a zone are</source>
        <translation>Zeiten ohne Zone sind</translation>
    </message>
    <message>
        <source>Where there are readings already</source>
        <translation>Wo schon Messwerte sind</translation>
    </message>
    <message>
        <source>they stay</source>
        <translation>bleiben sie</translation>
    </message>
    <message>
        <source>the new ones replace them</source>
        <translation>ersetzen die neuen sie</translation>
    </message>
    <message>
        <source>Keep one reading in ten minutes</source>
        <translation>Einen Messwert je zehn Minuten behalten</translation>
    </message>
    <message>
        <source>Take these readings</source>
        <translation>Diese Messwerte übernehmen</translation>
    </message>
    <message>
        <source>Take them, and watch this file</source>
        <translation>Übernehmen und Datei beobachten</translation>
    </message>
    <message>
        <source>Leave them</source>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <source>Take {count} readings</source>
        <translation>{count} Messwerte übernehmen</translation>
    </message>
    <message>
        <source>local times of {zone}</source>
        <translation>Ortszeiten von {zone}</translation>
    </message>
    <message>
        <source>Answer that first; then you see what would be kept.</source>
        <translation>Erst das beantworten; dann steht hier, was behalten würde.</translation>
    </message>
    <message>
        <source>{count} readings, {first} to {last}, {low} to {high}.</source>
        <translation>{count} Messwerte, {first} bis {last}, {low} bis {high}.</translation>
    </message>
    <message>
        <source>No row of it could be read.</source>
        <translation>Keine Zeile davon war lesbar.</translation>
    </message>
    <message>
        <source>Its times: {zone}; dates: {order}.</source>
        <translation>Ihre Zeiten: {zone}; Daten: {order}.</translation>
    </message>
    <message>
        <source>One reading in ten minutes is kept: {count}.</source>
        <translation>Ein Messwert je zehn Minuten wird behalten: {count}.</translation>
    </message>
    <message>
        <source>{count} of them fall where there are readings already.</source>
        <translation>{count} davon liegen, wo schon Messwerte sind.</translation>
    </message>
    <message>
        <source>Nothing would be added: let the new ones replace the others.</source>
        <translation>Nichts käme hinzu: die anderen durch die neuen ersetzen lassen.</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>Time from “{time}”, temperature from “{warmth}” in °{unit}, humidity: {damp}; {delimiter} between columns, “{mark}” for decimals.</source>
        <translation>Zeit aus „{time}“, Temperatur aus „{warmth}“ in °{unit}, Luftfeuchte: {damp}; {delimiter} zwischen den Spalten, „{mark}“ für Dezimalen.</translation>
    </message>
    <message>
        <source>Stretches without readings: {count}.</source>
        <translation>Strecken ohne Messwerte: {count}.</translation>
    </message>
    <message>
        <source>Rows that gave no reading: {count}.</source>
        <translation>Zeilen ohne Messwert: {count}.</translation>
    </message>
    <message>
        <source>    line {line}: {why}</source>
        <translation>    Zeile {line}: {why}</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>How far the expected temperature may be off, either way</source>
        <translation>Wie weit die erwartete Temperatur abweichen darf, nach oben und unten</translation>
    </message>
    <message>
        <source>How far a reading may be off</source>
        <translation>Wie weit ein Messwert abweichen darf</translation>
    </message>
    <message>
        <source>Heat loss (may be empty)</source>
        <translation>Wärmeverlust (darf leer sein)</translation>
    </message>
    <message>
        <source>Further figures of this place</source>
        <translation>Weitere Angaben zu diesem Ort</translation>
    </message>
    <message>
        <source>Heater on a cold day, kWh</source>
        <translation>Heizung an einem kalten Tag, kWh</translation>
    </message>
    <message>
        <source>Warmer inside than outside by</source>
        <translation>Innen wärmer als außen um</translation>
    </message>
    <message>
        <source>Estimate the heat loss</source>
        <translation>Wärmeverlust schätzen</translation>
    </message>
    <message>
        <source>Read the heater&apos;s meter over 24 hours of steady cold: kWh {times} 1000 / (24 {times} degrees difference). Sun and other heat make it too low.</source>
        <translation>Den Zähler der Heizung über 24 Stunden gleichmäßiger Kälte ablesen: kWh {times} 1000 / (24 {times} Grad Unterschied). Sonne und andere Wärme machen ihn zu klein.</translation>
    </message>
    <message>
        <source>{kwh} kWh over that day make {loss}.</source>
        <translation>{kwh} kWh an diesem Tag ergeben {loss}.</translation>
    </message>
    <message>
        <source>room</source>
        <translation>Raum</translation>
    </message>
    <message>
        <source>warm box</source>
        <translation>Wärmebox</translation>
    </message>
    <message>
        <source>Points of the expected air</source>
        <translation>Punkte der erwarteten Luft</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Uhrzeit</translation>
    </message>
    <message>
        <source>Temperature, {unit}</source>
        <translation>Temperatur, {unit}</translation>
    </message>
    <message>
        <source>Humidity, %</source>
        <translation>Luftfeuchte, %</translation>
    </message>
    <message>
        <source>Make the expected air from the last two weeks</source>
        <translation>Erwartete Luft aus den letzten zwei Wochen machen</translation>
    </message>
    <message>
        <source>Expected air as it would be</source>
        <translation>Erwartete Luft, wie sie wäre</translation>
    </message>
    <message>
        <source>Expect this from now on</source>
        <translation>Ab jetzt so erwarten</translation>
    </message>
    <message>
        <source>Leave it as it was</source>
        <translation>Lassen, wie es war</translation>
    </message>
    <message>
        <source>The median of each hour of {count} readings, {first} to {last}. Nine of ten lie within {band} of it; that becomes how far it may be off.</source>
        <translation>Der Median jeder Stunde aus {count} Messwerten, {first} bis {last}. Neun von zehn liegen höchstens {band} daneben; das wird die erlaubte Abweichung.</translation>
    </message>
    <message>
        <source>Only {hours} hours of the day were read; the line runs on between them.</source>
        <translation>Nur {hours} Stunden des Tages wurden gelesen; dazwischen läuft die Linie weiter.</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>Humidity (may be empty)</source>
        <translation>Luftfeuchte (darf leer sein)</translation>
    </message>
    <message>
        <source>Write it down</source>
        <translation>Aufschreiben</translation>
    </message>
    <message>
        <source>Choose a logger&apos;s file</source>
        <translation>Datei eines Loggers wählen</translation>
    </message>
    <message>
        <source>Stop reading</source>
        <translation>Lesen anhalten</translation>
    </message>
    <message>
        <source>Show all readings</source>
        <translation>Alle Messwerte zeigen</translation>
    </message>
    <message>
        <source>Take the last one back</source>
        <translation>Den letzten zurücknehmen</translation>
    </message>
    <message>
        <source>Remove all readings</source>
        <translation>Alle Messwerte entfernen</translation>
    </message>
    <message>
        <source>Nothing was read yet. Type what the thermometer says now, or drop a logger&apos;s CSV file anywhere on this page.</source>
        <translation>Noch nichts gemessen. Eintippen, was das Thermometer jetzt sagt, oder die CSV-Datei eines Loggers irgendwo auf dieser Seite ablegen.</translation>
    </message>
    <message>
        <source>{count} readings; the last one {when}: {warmth}{damp}.</source>
        <translation>{count} Messwerte; der letzte {when}: {warmth}{damp}.</translation>
    </message>
    <message>
        <source>Reading {name}, {lines} lines; {seconds} s so far. You can go on working.</source>
        <translation>{name} wird gelesen, {lines} Zeilen; bisher {seconds} s. Weiterarbeiten ist möglich.</translation>
    </message>
    <message>
        <source>Show two weeks</source>
        <translation>Zwei Wochen zeigen</translation>
    </message>
    <message>
        <source>{first} to {last}, against what is expected.</source>
        <translation>{first} bis {last}, gegen das Erwartete.</translation>
    </message>
    <message>
        <source>solid: what was read; dashes: what is expected</source>
        <translation>durchgezogen: gemessen; gestrichelt: erwartet</translation>
    </message>
    <message>
        <source>Heater off from</source>
        <translation>Heizung aus von</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>temperature then</source>
        <translation>Temperatur dann</translation>
    </message>
    <message>
        <source>Set the nights back</source>
        <translation>Nächte absenken</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Luftfeuchte</translation>
    </message>
    <message>
        <source>Expect this humidity</source>
        <translation>Diese Luftfeuchte erwarten</translation>
    </message>
    <message>
        <source>Leave humidity out</source>
        <translation>Luftfeuchte weglassen</translation>
    </message>
    <message>
        <source>Let the days differ</source>
        <translation>Tage unterscheiden</translation>
    </message>
    <message>
        <source>Use it Mon to Fri</source>
        <translation>Für Mo bis Fr nehmen</translation>
    </message>
    <message>
        <source>Use it Sat and Sun</source>
        <translation>Für Sa und So nehmen</translation>
    </message>
    <message>
        <source>Make every day like it</source>
        <translation>Alle Tage so machen</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>nights set back</source>
        <translation>Nächte abgesenkt</translation>
    </message>
    <message>
        <source>no humidity</source>
        <translation>keine Luftfeuchte</translation>
    </message>
    <message>
        <source>days that differ</source>
        <translation>verschiedene Tage</translation>
    </message>
    <message>
        <source>days like {day}</source>
        <translation>Tage wie {day}</translation>
    </message>
    <message>
        <source>every day alike</source>
        <translation>alle Tage gleich</translation>
    </message>
    <message>
        <source>Write a number here.</source>
        <translation>Hier steht eine Zahl.</translation>
    </message>
    <message>
        <source>Spots on the shelf</source>
        <translation>Plätze im Regal</translation>
    </message>
    <message>
        <source>No spot here yet. Add a level place that holds one piece.</source>
        <translation>Hier noch kein Platz. Einen ebenen Platz für ein Stück anlegen.</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>Clear height, to the shelf above</source>
        <translation>Freie Höhe bis zum Fach darüber</translation>
    </message>
    <message>
        <source>{piece} fits on no spot: it needs {length} by {width}, {height} high with its cover.</source>
        <translation>{piece} passt auf keinen Platz: Es braucht {length} mal {width}, {height} hoch mit seiner Haube.</translation>
    </message>
    <message>
        <source>It cannot be removed: {why}</source>
        <translation>Er kann nicht entfernt werden: {why}</translation>
    </message>
    <message>
        <source>Shelf from above</source>
        <translation>Regal von oben</translation>
    </message>
    <message>
        <source>{spot}: free today, {free}</source>
        <translation>{spot}: heute frei, {free}</translation>
    </message>
    <message>
        <source>{spot}: {pieces}; free beside {free}</source>
        <translation>{spot}: {pieces}; frei daneben {free}</translation>
    </message>
    <message>
        <source>{height} high</source>
        <translation>{height} hoch</translation>
    </message>
    <message>
        <source>free today</source>
        <translation>heute frei</translation>
    </message>
    <message>
        <source>Room</source>
        <translation>Raum</translation>
    </message>
    <message>
        <source>Another temperature…</source>
        <translation>Andere Temperatur…</translation>
    </message>
    <message>
        <source>Nothing is known about the room.</source>
        <translation>Über den Raum ist nichts bekannt.</translation>
    </message>
    <message>
        <source>{low} to {high}; the dew-point margin is unknown.</source>
        <translation>{low} bis {high}; der Abstand zum Taupunkt ist unbekannt.</translation>
    </message>
    <message>
        <source>{low} to {high}; dew-point margin at least {least}.</source>
        <translation>{low} bis {high}; Abstand zum Taupunkt mindestens {least}.</translation>
    </message>
    <message>
        <source>No room yet.</source>
        <translation>Noch kein Raum.</translation>
    </message>
    <message>
        <source>temperature, likely band</source>
        <translation>Temperatur, wahrscheinlich</translation>
    </message>
    <message>
        <source>dew-point margin unknown</source>
        <translation>Taupunktabstand unbekannt</translation>
    </message>
    <message>
        <source>margin to dew point</source>
        <translation>Abstand zum Taupunkt</translation>
    </message>
    <message>
        <source>no pour under the dashes</source>
        <translation>unter den Strichen kein Guss</translation>
    </message>
    <message>
        <source>Another temperature from {moment}…</source>
        <translation>Andere Temperatur ab {moment}…</translation>
    </message>
    <message>
        <source>{margin} above the dew point</source>
        <translation>{margin} über dem Taupunkt</translation>
    </message>
    <message>
        <source>The log could not be read.</source>
        <translation>Die Aufzeichnung war nicht lesbar.</translation>
    </message>
    <message>
        <source>Besides the week</source>
        <translation>Abweichend von der Woche</translation>
    </message>
    <message>
        <source>Another temperature for a time…</source>
        <translation>Andere Temperatur für einige Zeit…</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>Temperature then</source>
        <translation>Temperatur dann</translation>
    </message>
    <message>
        <source>Expect this</source>
        <translation>Damit rechnen</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Lassen</translation>
    </message>
    <message>
        <source>The plan is made again with it. What moves is said over the timeline, where you keep it or take it back. Warm with electric or indirect heat only.</source>
        <translation>Der Plan wird damit neu gemacht. Was sich verschiebt, steht dann über der Zeitleiste; dort behältst du es oder nimmst es zurück. Wärme nur elektrisch oder indirekt.</translation>
    </message>
    <message>
        <source>As things stand, {place} is at {low} in these hours.</source>
        <translation>So wie es jetzt steht, hat {place} in diesen Stunden {low}.</translation>
    </message>
    <message>
        <source>As things stand, {place} is at {low} to {high} then.</source>
        <translation>So wie es jetzt steht, hat {place} dann {low} bis {high}.</translation>
    </message>
    <message>
        <source>{place}, {spell}</source>
        <translation>{place}, {spell}</translation>
    </message>
    <message>
        <source>{span}: {degrees}</source>
        <translation>{span}: {degrees}</translation>
    </message>
    <message>
        <source>Stop watching</source>
        <translation>Nicht mehr beobachten</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>There is no room yet: add one on the page Studio.</source>
        <translation>Es gibt noch keinen Raum: lege auf der Seite Studio einen an.</translation>
    </message>
</context>
<context>
    <name>rule</name>
    <message>
        <source>every day</source>
        <translation>jeden Tag</translation>
    </message>
    <message>
        <source>every {count} days</source>
        <translation>alle {count} Tage</translation>
    </message>
    <message>
        <source>every week</source>
        <translation>jede Woche</translation>
    </message>
    <message>
        <source>every {count} weeks</source>
        <translation>alle {count} Wochen</translation>
    </message>
    <message>
        <source>every month</source>
        <translation>jeden Monat</translation>
    </message>
    <message>
        <source>every {count} months</source>
        <translation>alle {count} Monate</translation>
    </message>
    <message>
        <source>every year</source>
        <translation>jedes Jahr</translation>
    </message>
    <message>
        <source>every {count} years</source>
        <translation>alle {count} Jahre</translation>
    </message>
    <message>
        <source>the first {day}</source>
        <translation>der erste {day}</translation>
    </message>
    <message>
        <source>the second {day}</source>
        <translation>der zweite {day}</translation>
    </message>
    <message>
        <source>the third {day}</source>
        <translation>der dritte {day}</translation>
    </message>
    <message>
        <source>the fourth {day}</source>
        <translation>der vierte {day}</translation>
    </message>
    <message>
        <source>the fifth {day}</source>
        <translation>der fünfte {day}</translation>
    </message>
    <message>
        <source>the last {day}</source>
        <translation>der letzte {day}</translation>
    </message>
    <message>
        <source>by the rule {rule}</source>
        <translation>nach der Regel {rule}</translation>
    </message>
    <message>
        <source>{rule}, from {day}</source>
        <translation>{rule}, ab {day}</translation>
    </message>
    <message>
        <source>{rule} on {days}</source>
        <translation>{rule}: {days}</translation>
    </message>
    <message>
        <source>{rule} on day {days}</source>
        <translation>{rule} am Tag {days}</translation>
    </message>
    <message>
        <source>{rule} in {months}</source>
        <translation>{rule} im {months}</translation>
    </message>
    <message>
        <source>{count} times in all</source>
        <translation>{count} Mal insgesamt</translation>
    </message>
    <message>
        <source>until {day}</source>
        <translation>bis {day}</translation>
    </message>
</context>
<context>
    <name>rules</name>
    <message>
        <source>Air and dust</source>
        <translation>Luft und Staub</translation>
    </message>
    <message>
        <source>Hands and promises</source>
        <translation>Hände und Zusagen</translation>
    </message>
    <message>
        <source>Films</source>
        <translation>Filme</translation>
    </message>
    <message>
        <source>Weighing</source>
        <translation>Wiegen</translation>
    </message>
    <message>
        <source>What does not stay on the piece</source>
        <translation>Was nicht auf dem Stück bleibt</translation>
    </message>
    <message>
        <source>Heating</source>
        <translation>Heizen</translation>
    </message>
    <message>
        <source>Margin above the dew point</source>
        <translation>Abstand zum Taupunkt</translation>
    </message>
    <message>
        <source>A surface must be at least so much warmer than the dew point.</source>
        <translation>Eine Oberfläche muss mindestens so viel wärmer sein als der Taupunkt.</translation>
    </message>
    <message>
        <source>Margin kept for</source>
        <translation>Abstand gehalten für</translation>
    </message>
    <message>
        <source>So long after a pour that margin is still held.</source>
        <translation>So lange nach einem Guss wird der Abstand noch gehalten.</translation>
    </message>
    <message>
        <source>Steady room</source>
        <translation>Gleichmäßiger Raum</translation>
    </message>
    <message>
        <source>The room may warm by so much while bare porous work is coated; more drives air out of the pores and blows bubbles.</source>
        <translation>So viel darf der Raum wärmer werden, während rohes saugendes Material beschichtet wird; mehr treibt Luft aus den Poren und macht Blasen.</translation>
    </message>
    <message>
        <source>Dust settles</source>
        <translation>Staub setzt sich</translation>
    </message>
    <message>
        <source>So long after sanding nothing is poured.</source>
        <translation>So lange nach dem Schleifen wird nichts gegossen.</translation>
    </message>
    <message>
        <source>Spare before a promise</source>
        <translation>Puffer vor einer Zusage</translation>
    </message>
    <message>
        <source>The plan tries to be ready so long before each promise: one recoat cycle, in case a coat goes wrong.</source>
        <translation>So lange vor jeder Zusage versucht der Plan fertig zu sein: ein Überarbeitungsgang, falls eine Schicht misslingt.</translation>
    </message>
    <message>
        <source>Turning a piece</source>
        <translation>Ein Stück wenden</translation>
    </message>
    <message>
        <source>So long somebody&apos;s hands are needed to turn a piece over.</source>
        <translation>So lange sind Hände nötig, um ein Stück zu wenden.</translation>
    </message>
    <message>
        <source>Washing and sanding</source>
        <translation>Waschen und anschleifen</translation>
    </message>
    <message>
        <source>So long it takes to wash and scuff one piece for its next coat.</source>
        <translation>So lange dauert es, ein Stück für die nächste Schicht zu waschen und anzuschleifen.</translation>
    </message>
    <message>
        <source>Pulling tape, trimming drips</source>
        <translation>Klebeband und Tropfen</translation>
    </message>
    <message>
        <source>So long it takes for one piece, by whoever is awake.</source>
        <translation>So lange dauert es je Stück, durch wen auch immer, der wach ist.</translation>
    </message>
    <message>
        <source>A window that moved</source>
        <translation>Ein Fenster, das wandert</translation>
    </message>
    <message>
        <source>Where a window opens or closes by so much otherwise than planned, it is said.</source>
        <translation>Öffnet oder schließt ein Fenster um so viel anders als geplant, wird es gesagt.</translation>
    </message>
    <message>
        <source>Film that may run off</source>
        <translation>Film, der ablaufen kann</translation>
    </message>
    <message>
        <source>Without a rim, a thicker film is warned about.</source>
        <translation>Vor einem dickeren Film ohne Rand wird gewarnt.</translation>
    </message>
    <message>
        <source>Film that runs off</source>
        <translation>Film, der abläuft</translation>
    </message>
    <message>
        <source>Without a rim, a thicker film is refused.</source>
        <translation>Ein dickerer Film ohne Rand wird abgelehnt.</translation>
    </message>
    <message>
        <source>Film on an edge</source>
        <translation>Film an einer Kante</translation>
    </message>
    <message>
        <source>An upright edge holds no more than this.</source>
        <translation>Mehr hält eine senkrechte Kante nicht.</translation>
    </message>
    <message>
        <source>Film on a rim&apos;s inside</source>
        <translation>Film innen am Rand</translation>
    </message>
    <message>
        <source>So much stays on the inner wall of a rim.</source>
        <translation>So viel bleibt an der Innenwand eines Rands.</translation>
    </message>
    <message>
        <source>Step of the scale</source>
        <translation>Schritt der Waage</translation>
    </message>
    <message>
        <source>The smallest difference that your scale shows.</source>
        <translation>Der kleinste Unterschied, den die Waage zeigt.</translation>
    </message>
    <message>
        <source>Ratio may be off by</source>
        <translation>Verhältnis darf abweichen um</translation>
    </message>
    <message>
        <source>How far A to B may be off. With the scale&apos;s step it decides the smallest mix that can be weighed.</source>
        <translation>Wie weit A zu B abweichen darf. Mit dem Schritt der Waage ergibt das die kleinste wiegbare Mischung.</translation>
    </message>
    <message>
        <source>Dripping off</source>
        <translation>Abtropfen</translation>
    </message>
    <message>
        <source>Of a film that runs over the edge, so much is lost.</source>
        <translation>Von einem Film, der über die Kante läuft, geht so viel verloren.</translation>
    </message>
    <message>
        <source>Dripping off inside a rim</source>
        <translation>Abtropfen in einem Rand</translation>
    </message>
    <message>
        <source>Of a film that a rim holds, so much is lost.</source>
        <translation>Von einem Film, den ein Rand hält, geht so viel verloren.</translation>
    </message>
    <message>
        <source>Left in a cup</source>
        <translation>Rest im Becher</translation>
    </message>
    <message>
        <source>So much stays in every cup and on its stick.</source>
        <translation>So viel bleibt in jedem Becher und an seinem Stab.</translation>
    </message>
    <message>
        <source>Drunk by bare wood</source>
        <translation>Von rohem Holz getrunken</translation>
    </message>
    <message>
        <source>A bare face of MDF, timber or plywood drinks so much, in per cent of a thin first coat.</source>
        <translation>So viel trinkt eine rohe Fläche aus MDF, Massiv- oder Sperrholz, in Prozent einer dünnen ersten Schicht.</translation>
    </message>
    <message>
        <source>Reserve</source>
        <translation>Reserve</translation>
    </message>
    <message>
        <source>So much more is mixed than a coat should take.</source>
        <translation>So viel mehr wird gemischt, als eine Schicht brauchen sollte.</translation>
    </message>
    <message>
        <source>Price of heating, each kWh</source>
        <translation>Preis des Heizens je kWh</translation>
    </message>
    <message>
        <source>In the studio&apos;s currency; 0 where nobody asks.</source>
        <translation>In der Währung des Studios; 0, wenn niemand fragt.</translation>
    </message>
    <message>
        <source>Set back</source>
        <translation>Zurücksetzen</translation>
    </message>
    <message>
        <source>Rules of thumb</source>
        <translation>Faustregeln</translation>
    </message>
    <message>
        <source>What the trade does where no data sheet says anything. Change what your studio does otherwise; plans and amounts follow.</source>
        <translation>Was im Handwerk gilt, wo kein Datenblatt etwas sagt. Ändern, was im eigenen Studio anders ist; Pläne und Mengen folgen.</translation>
    </message>
    <message>
        <source>How a surface follows the air</source>
        <translation>Wie eine Oberfläche der Luft folgt</translation>
    </message>
    <message>
        <source>By ISO 8502-4: {usual}.</source>
        <translation>Nach ISO 8502-4: {usual}.</translation>
    </message>
    <message>
        <source>Unless you enter it: {usual}.</source>
        <translation>Ohne Eingabe: {usual}.</translation>
    </message>
    <message>
        <source>Common practice: {usual}.</source>
        <translation>Übliche Praxis: {usual}.</translation>
    </message>
    <message>
        <source>{name} is as warm as the air after about so long.</source>
        <translation>{name} ist nach etwa so langer Zeit so warm wie die Luft.</translation>
    </message>
    <message>
        <source>{value} is outside {low} to {high}.</source>
        <translation>{value} liegt außerhalb von {low} bis {high}.</translation>
    </message>
    <message>
        <source>give it a name.</source>
        <translation>einen Namen geben.</translation>
    </message>
    <message>
        <source>give the time without a zone.</source>
        <translation>die Zeit ohne Zone angeben.</translation>
    </message>
    <message>
        <source>give the time with a zone.</source>
        <translation>die Zeit mit Zone angeben.</translation>
    </message>
    <message>
        <source>it has to end after it starts.</source>
        <translation>es muss nach dem Anfang enden.</translation>
    </message>
    <message>
        <source>start and end are the same time.</source>
        <translation>Anfang und Ende sind dieselbe Zeit.</translation>
    </message>
    <message>
        <source>“{rule}” is not a rule for days; write for example FREQ=WEEKLY;BYDAY=MO,TH.</source>
        <translation>„{rule}“ ist keine Regel für Tage; zum Beispiel FREQ=WEEKLY;BYDAY=MO,TH schreiben.</translation>
    </message>
    <message>
        <source>“{rule}” needs the date it begins on.</source>
        <translation>„{rule}“ braucht den Tag, an dem es beginnt.</translation>
    </message>
    <message>
        <source>“{rule}” never gives a day from its first date on.</source>
        <translation>„{rule}“ ergibt ab dem ersten Tag nie einen Tag.</translation>
    </message>
    <message>
        <source>waking and sleeping are the same time.</source>
        <translation>Aufstehen und Schlafengehen sind dieselbe Zeit.</translation>
    </message>
    <message>
        <source>name at least one day, 0 (Monday) to 6 (Sunday).</source>
        <translation>mindestens einen Tag angeben, 0 (Montag) bis 6 (Sonntag).</translation>
    </message>
    <message>
        <source>an order needs at least one piece.</source>
        <translation>ein Auftrag braucht mindestens ein Stück.</translation>
    </message>
    <message>
        <source>a piece is named twice.</source>
        <translation>ein Stück ist zweimal genannt.</translation>
    </message>
    <message>
        <source>say which face it covers.</source>
        <translation>sagen, welche Fläche sie bedeckt.</translation>
    </message>
    <message>
        <source>name every area.</source>
        <translation>jeden Bereich benennen.</translation>
    </message>
    <message>
        <source>top and underside cannot be coated in one go: it has to lie on one of them.</source>
        <translation>Ober- und Unterseite lassen sich nicht in einem Zug beschichten: Auf einer muss es liegen.</translation>
    </message>
    <message>
        <source>the shares add up to {shares:g} %, not to 100 %.</source>
        <translation>die Anteile ergeben zusammen {shares:g} %, nicht 100 %.</translation>
    </message>
    <message>
        <source>choose wet in wet, in the window or on dry; the plan finds bare and scuffed.</source>
        <translation>nass in nass, im Fenster oder auf trocken wählen; roh und angeschliffen findet der Plan.</translation>
    </message>
    <message>
        <source>give a time with a zone.</source>
        <translation>eine Zeit mit Zone angeben.</translation>
    </message>
    <message>
        <source>a photo is in it twice.</source>
        <translation>ein Foto ist zweimal darin.</translation>
    </message>
    <message>
        <source>add at least one coat.</source>
        <translation>mindestens eine Schicht hinzufügen.</translation>
    </message>
    <message>
        <source>two coats have the same key.</source>
        <translation>zwei Schichten haben denselben Schlüssel.</translation>
    </message>
    <message>
        <source>leaf needs a size or a tacky coat below it.</source>
        <translation>Blattmetall braucht Anlegemilch oder eine klebrige Schicht darunter.</translation>
    </message>
    <message>
        <source>use whole five minutes.</source>
        <translation>ganze fünf Minuten verwenden.</translation>
    </message>
    <message>
        <source>a reading needs a time with a zone.</source>
        <translation>ein Messwert braucht eine Zeit mit Zone.</translation>
    </message>
    <message>
        <source>give at least one expected temperature.</source>
        <translation>mindestens eine erwartete Temperatur angeben.</translation>
    </message>
    <message>
        <source>temperatures for a time must be in order, none over another.</source>
        <translation>Temperaturen auf Zeit müssen nacheinander stehen, keine über einer anderen.</translation>
    </message>
    <message>
        <source>readings must be in the order of time, one for each time.</source>
        <translation>Messwerte müssen nach der Zeit geordnet sein, einer je Zeit.</translation>
    </message>
    <message>
        <source>{day} {time} has {count} temperatures; a step has two.</source>
        <translation>{day} {time} hat {count} Temperaturen; eine Stufe hat zwei.</translation>
    </message>
    <message>
        <source>a two-part mix needs its ratio.</source>
        <translation>eine Zweikomponenten-Mischung braucht ihr Verhältnis.</translation>
    </message>
    <message>
        <source>only a two-part mix has a ratio.</source>
        <translation>nur eine Zweikomponenten-Mischung hat ein Verhältnis.</translation>
    </message>
    <message>
        <source>a ratio by volume can be weighed only with the densities of A and of B.</source>
        <translation>ein Verhältnis nach Volumen lässt sich nur mit den Dichten von A und B wiegen.</translation>
    </message>
    <message>
        <source>the lowest temperature must be under the highest.</source>
        <translation>die tiefste Temperatur muss unter der höchsten liegen.</translation>
    </message>
    <message>
        <source>at {celsius:g} °C it opens after it closes.</source>
        <translation>bei {celsius:g} °C öffnet es, nachdem es schließt.</translation>
    </message>
    <message>
        <source>each stage can be taught only once.</source>
        <translation>jede Stufe kann nur einmal gelehrt werden.</translation>
    </message>
    <message>
        <source>{perimeter_mm:g} mm of edge cannot enclose {area_cm2:g} cm².</source>
        <translation>{perimeter_mm:g} mm Kante können keine {area_cm2:g} cm² umschließen.</translation>
    </message>
    <message>
        <source>use three letters, such as EUR.</source>
        <translation>drei Buchstaben verwenden, etwa EUR.</translation>
    </message>
    <message>
        <source>no mix {batch} was weighed.</source>
        <translation>es wurde keine Mischung {batch} abgewogen.</translation>
    </message>
    <message>
        <source>the log speaks of another “{key}”, which is gone; use another key.</source>
        <translation>das Werkstattbuch spricht von einem anderen „{key}“, das es nicht mehr gibt; nimm einen anderen Schlüssel.</translation>
    </message>
    <message>
        <source>entries must be in the order of their numbers.</source>
        <translation>Einträge müssen in der Reihenfolge ihrer Nummern stehen.</translation>
    </message>
    <message>
        <source>entry {number} does not stand, so it can&apos;t be corrected.</source>
        <translation>Eintrag {number} gilt nicht mehr und kann nicht berichtigt werden.</translation>
    </message>
    <message>
        <source>entry {number} tells of something else.</source>
        <translation>Eintrag {number} erzählt von etwas anderem.</translation>
    </message>
    <message>
        <source>there is no product “{product}”.</source>
        <translation>es gibt kein Produkt „{product}“.</translation>
    </message>
    <message>
        <source>each mix needs a batch number of its own.</source>
        <translation>jede Mischung braucht eine eigene Nummer.</translation>
    </message>
    <message>
        <source>the log has no entry {number} that wrote it down.</source>
        <translation>das Werkstattbuch hat keinen Eintrag {number}, der sie aufgeschrieben hat.</translation>
    </message>
    <message>
        <source>piece “{key}” was spoiled; strip it or correct that before it is packed.</source>
        <translation>Stück „{key}“ war verdorben; trag es ab oder berichtige das, bevor es verpackt wird.</translation>
    </message>
    <message>
        <source>{film_mm:g} mm is deeper than the {limit:g} mm of {product}.</source>
        <translation>{film_mm:g} mm ist tiefer als die {limit:g} mm von {product}.</translation>
    </message>
    <message>
        <source>{film_mm:g} mm runs off a piece without a rim; {refuse:g} mm is most.</source>
        <translation>{film_mm:g} mm laufen von einem Stück ohne Rand ab; {refuse:g} mm sind das Höchste.</translation>
    </message>
    <message>
        <source>leaf is laid from a leaf product, and nothing else is.</source>
        <translation>Blattmetall wird aus einem Produkt der Art Blattmetall gelegt, und nichts anderes.</translation>
    </message>
    <message>
        <source>there is no such coat.</source>
        <translation>eine solche Schicht gibt es nicht.</translation>
    </message>
    <message>
        <source>it is pinned twice.</source>
        <translation>sie ist zweimal festgesteckt.</translation>
    </message>
    <message>
        <source>there is no piece “{key}”.</source>
        <translation>es gibt kein Stück „{key}“.</translation>
    </message>
    <message>
        <source>piece “{key}” is already promised to {taken}.</source>
        <translation>das Stück „{key}“ ist schon {taken} zugesagt.</translation>
    </message>
    <message>
        <source>there is no spot “{spot}”.</source>
        <translation>es gibt keinen Platz „{spot}“.</translation>
    </message>
    <message>
        <source>poured {names}, but the stack is {what}.</source>
        <translation>gegossen sind {names}, aber der Aufbau ist {what}.</translation>
    </message>
    <message>
        <source>the key “{key}” is used twice.</source>
        <translation>der Schlüssel „{key}“ kommt zweimal vor.</translation>
    </message>
    <message>
        <source>tick at least one day.</source>
        <translation>mindestens einen Tag ankreuzen.</translation>
    </message>
    <message>
        <source>give the first date.</source>
        <translation>den ersten Tag angeben.</translation>
    </message>
    <message>
        <source>this entry has no such thing.</source>
        <translation>dieser Eintrag hat so etwas nicht.</translation>
    </message>
    <message>
        <source>say which piece or order was shipped.</source>
        <translation>sag, welches Stück oder welcher Auftrag abgeschickt wurde.</translation>
    </message>
    <message>
        <source>only an earlier entry can be corrected.</source>
        <translation>nur ein früherer Eintrag kann berichtigt werden.</translation>
    </message>
    <message>
        <source>say which piece it happened to.</source>
        <translation>sag, welchem Stück es geschah.</translation>
    </message>
    <message>
        <source>say which coat it is about.</source>
        <translation>sag, um welche Schicht es geht.</translation>
    </message>
    <message>
        <source>say when the pour ended.</source>
        <translation>sag, wann der Guss zu Ende war.</translation>
    </message>
    <message>
        <source>say on which spot it lies.</source>
        <translation>sag, auf welchem Platz es liegt.</translation>
    </message>
    <message>
        <source>say how it met the coat below.</source>
        <translation>sag, wie sie auf die Schicht darunter kam.</translation>
    </message>
    <message>
        <source>say which mix it was.</source>
        <translation>sag, welche Mischung es war.</translation>
    </message>
    <message>
        <source>say which touch test it was.</source>
        <translation>sag, welche Fingerprobe es war.</translation>
    </message>
    <message>
        <source>say what the touch test found.</source>
        <translation>sag, was die Fingerprobe ergab.</translation>
    </message>
    <message>
        <source>say which entry it takes the place of.</source>
        <translation>sag, an die Stelle welches Eintrags er tritt.</translation>
    </message>
    <message>
        <source>a mix weighs more than nothing.</source>
        <translation>eine Mischung wiegt mehr als nichts.</translation>
    </message>
    <message>
        <source>each coat can be named only once.</source>
        <translation>jede Schicht kann nur einmal genannt werden.</translation>
    </message>
    <message>
        <source>margin and fees together leave nothing of the price.</source>
        <translation>Spanne und Gebühren zusammen lassen vom Preis nichts übrig.</translation>
    </message>
    <message>
        <source>it ends before it begins.</source>
        <translation>sie endet, bevor sie beginnt.</translation>
    </message>
    <message>
        <source>it cannot be opened before it was received.</source>
        <translation>sie kann nicht geöffnet sein, bevor sie da war.</translation>
    </message>
    <message>
        <source>more cannot be left than {new_g:g} g, which were in it.</source>
        <translation>mehr als die {new_g:g} g, die darin waren, können nicht übrig sein.</translation>
    </message>
    <message>
        <source>enter the counts in order of time, each at its own.</source>
        <translation>die Zählungen der Zeit nach eintragen, jede zu ihrer eigenen Zeit.</translation>
    </message>
    <message>
        <source>there is no order “{order}”.</source>
        <translation>es gibt keinen Auftrag „{order}“.</translation>
    </message>
    <message>
        <source>there is no pigment “{pigment}”.</source>
        <translation>es gibt kein Pigment „{pigment}“.</translation>
    </message>
    <message>
        <source>say whether it is part A or part B.</source>
        <translation>angeben, ob es Komponente A oder B ist.</translation>
    </message>
    <message>
        <source>a product that is not mixed has no part A or B.</source>
        <translation>ein Produkt, das nicht gemischt wird, hat keine Komponente A oder B.</translation>
    </message>
    <message>
        <source>touch tests teach opens, tack-free, handle and print-free only.</source>
        <translation>Fingerproben lehren nur überarbeitbar, klebfrei, griffest und abdruckfrei.</translation>
    </message>
    <message>
        <source>the likely time must lie between the early and the late one.</source>
        <translation>die wahrscheinliche Zeit muss zwischen der frühen und der späten liegen.</translation>
    </message>
    <message>
        <source>it lies ahead; write it down once it has happened.</source>
        <translation>das liegt in der Zukunft; schreib es auf, wenn es geschehen ist.</translation>
    </message>
    <message>
        <source>it lies before the year 2000; is that clock right?</source>
        <translation>das liegt vor dem Jahr 2000; geht die Uhr richtig?</translation>
    </message>
    <message>
        <source>it lies too far ahead; a pour ends within {hours} hours.</source>
        <translation>das liegt zu weit in der Zukunft; ein Guss endet binnen {hours} Stunden.</translation>
    </message>
    <message>
        <source>it lies before {what}.</source>
        <translation>das liegt vor {what}.</translation>
    </message>
    <message>
        <source>there is no time zone called {name}; use a name such as Europe/Berlin.</source>
        <translation>eine Zeitzone {name} gibt es nicht; einen Namen wie Europe/Berlin angeben.</translation>
    </message>
</context>
<context>
    <name>said</name>
    <message>
        <source>Too cold: the room is at {air} then, {product} needs {limit}.</source>
        <translation>Zu kalt: Der Raum hat dann {air}, {product} braucht {limit}.</translation>
    </message>
    <message>
        <source>Too warm: the room is at {air} then, {product} bears {limit}.</source>
        <translation>Zu warm: Der Raum hat dann {air}, {product} verträgt {limit}.</translation>
    </message>
    <message>
        <source>Too damp: the air has {air} humidity then, {product} bears {limit}.</source>
        <translation>Zu feucht: Die Luft hat dann {air} Feuchte, {product} verträgt {limit}.</translation>
    </message>
    <message>
        <source>Bare {material} while the room warms by {rise}: it would blow bubbles.</source>
        <translation>Rohes Material ({material}), während der Raum um {rise} wärmer wird: Es gäbe Blasen.</translation>
    </message>
    <message>
        <source>Too damp: at {when} the surface is only {least} above the dew point.</source>
        <translation>Zu feucht: {when} ist die Oberfläche nur {least} über dem Taupunkt.</translation>
    </message>
    <message>
        <source>{piece} is not planned any more: {reason}</source>
        <translation>{piece} ist nicht mehr geplant: {reason}</translation>
    </message>
    <message>
        <source>{order} leaves {when}, {lasting} later, and is late.</source>
        <translation>{order} geht {when} ab, {lasting} später, und ist zu spät.</translation>
    </message>
    <message>
        <source>{pour} needs a touch test first.</source>
        <translation>{pour} braucht erst eine Fingerprobe.</translation>
    </message>
    <message>
        <source>{pour} starts {when}, {lasting} later, on {spot}.</source>
        <translation>{pour} beginnt {when}, {lasting} später, auf {spot}.</translation>
    </message>
    <message>
        <source>{pour} starts {when}, {lasting} sooner, on {spot}.</source>
        <translation>{pour} beginnt {when}, {lasting} früher, auf {spot}.</translation>
    </message>
    <message>
        <source>{pour} starts {when}, {lasting} later.</source>
        <translation>{pour} beginnt {when}, {lasting} später.</translation>
    </message>
    <message>
        <source>{pour} starts {when}, {lasting} sooner.</source>
        <translation>{pour} beginnt {when}, {lasting} früher.</translation>
    </message>
    <message>
        <source>{order} is no longer planned to its end.</source>
        <translation>{order} ist nicht mehr bis zum Ende geplant.</translation>
    </message>
    <message>
        <source>{order} leaves {when}.</source>
        <translation>{order} geht {when} ab.</translation>
    </message>
    <message>
        <source>{order} leaves {when}, {lasting} sooner, and is in time.</source>
        <translation>{order} geht {when} ab, {lasting} früher, und ist pünktlich.</translation>
    </message>
    <message>
        <source>{piece} is not planned any more.</source>
        <translation>{piece} ist nicht mehr geplant.</translation>
    </message>
    <message>
        <source>{pour} stands in its window now.</source>
        <translation>{pour} liegt jetzt im Fenster.</translation>
    </message>
    <message>
        <source>{pour} has to be scuffed first.</source>
        <translation>{pour} muss erst angeschliffen werden.</translation>
    </message>
    <message>
        <source>{pour} stands on {spot}.</source>
        <translation>{pour} steht auf {spot}.</translation>
    </message>
    <message>
        <source>{order} leaves {when}, {lasting} later.</source>
        <translation>{order} geht {when} ab, {lasting} später.</translation>
    </message>
    <message>
        <source>{order} leaves {when}, {lasting} sooner.</source>
        <translation>{order} geht {when} ab, {lasting} früher.</translation>
    </message>
    <message>
        <source>{piece} is planned again.</source>
        <translation>{piece} ist wieder geplant.</translation>
    </message>
    <message>
        <source>Hands are busy: {who} is at {what} until {until}.</source>
        <translation>Die Hände sind belegt: {who} ist bis {until} bei {what}.</translation>
    </message>
    <message>
        <source>Nobody can work then: hours begin {begin}.</source>
        <translation>Dann kann niemand arbeiten: Die Arbeitszeit beginnt {begin}.</translation>
    </message>
    <message>
        <source>Nobody can work then: hours end {end}, the pour would end {ends}.</source>
        <translation>Dann kann niemand arbeiten: Die Arbeitszeit endet {end}, der Guss würde {ends} enden.</translation>
    </message>
    <message>
        <source>Nobody can work then: {who} is away until {until}.</source>
        <translation>Dann kann niemand arbeiten: {who} ist bis {until} weg.</translation>
    </message>
    <message>
        <source>Nobody can work then: it is night.</source>
        <translation>Dann kann niemand arbeiten: Es ist Nacht.</translation>
    </message>
    <message>
        <source>Nobody can work then.</source>
        <translation>Dann kann niemand arbeiten.</translation>
    </message>
    <message>
        <source>Nobody works in this studio yet.</source>
        <translation>In diesem Studio arbeitet noch niemand.</translation>
    </message>
    <message>
        <source>Touch-test the {below} first: the time is likely right, but not for sure.</source>
        <translation>Erst eine Fingerprobe an {below}: Die Zeit stimmt wahrscheinlich, aber nicht sicher.</translation>
    </message>
    <message>
        <source>Outside its window: the {below} closes {closes}, you end {late} late.</source>
        <translation>Außerhalb des Fensters: {below} schließt {closes}, das Ende läge {late} zu spät.</translation>
    </message>
    <message>
        <source>The piece lies on the {below}, which can be handled only from {ready}.</source>
        <translation>Das Stück liegt auf {below}, griffest erst ab {ready}.</translation>
    </message>
    <message>
        <source>The sheet of the {below} does not say when its window closes.</source>
        <translation>Das Datenblatt von {below} sagt nicht, wann das Fenster schließt.</translation>
    </message>
    <message>
        <source>The window over the {below} never opens in the time looked at.</source>
        <translation>Das Fenster über {below} öffnet in der betrachteten Zeit nie.</translation>
    </message>
    <message>
        <source>Outside its window: the {below} opens {opens}, you are {early} early.</source>
        <translation>Außerhalb des Fensters: {below} öffnet {opens}, das ist {early} zu früh.</translation>
    </message>
    <message>
        <source>It has to be sanded first, and that is planned until {end}.</source>
        <translation>Erst muss geschliffen werden, und das ist bis {end} geplant.</translation>
    </message>
    <message>
        <source>The {below} cannot be sanded in the time looked at.</source>
        <translation>{below} lässt sich in der betrachteten Zeit nicht schleifen.</translation>
    </message>
    <message>
        <source>The {below} can be sanded only from {ready}.</source>
        <translation>{below} lässt sich erst ab {ready} schleifen.</translation>
    </message>
    <message>
        <source>The piece lies on the {below}, which cannot be handled in the time looked at.</source>
        <translation>Das Stück liegt auf {below}, in der betrachteten Zeit nie griffest.</translation>
    </message>
    <message>
        <source>The coat below is not in the plan.</source>
        <translation>Die Schicht darunter ist nicht im Plan.</translation>
    </message>
    <message>
        <source>The {before} comes first, and is poured until {end}.</source>
        <translation>{before} kommt zuerst und wird bis {end} gegossen.</translation>
    </message>
    <message>
        <source>The {coat} after it no longer fits and will be moved.</source>
        <translation>{coat} danach passt nicht mehr und wird verschoben.</translation>
    </message>
    <message>
        <source>The {coat} after it is pinned and would not hold; let it go first.</source>
        <translation>{coat} danach ist festgesteckt und hielte nicht; erst loslassen.</translation>
    </message>
    <message>
        <source>The promise {order} would be late: it leaves {leaves} at the soonest.</source>
        <translation>Die Zusage {order} würde zu spät: Frühester Abgang ist {leaves}.</translation>
    </message>
    <message>
        <source>That time has passed.</source>
        <translation>Diese Zeit ist vorbei.</translation>
    </message>
    <message>
        <source>{spot} is taken by {piece} until {until}.</source>
        <translation>{spot} ist bis {until} mit {piece} belegt.</translation>
    </message>
    <message>
        <source>It cannot be moved to {spot} before the {before} can be handled, {ready}.</source>
        <translation>Umziehen auf {spot} geht erst, wenn {before} griffest ist, {ready}.</translation>
    </message>
    <message>
        <source>{spot} is taken by {piece} for good.</source>
        <translation>{spot} ist mit {piece} dauerhaft belegt.</translation>
    </message>
    <message>
        <source>{spot} is needed by {piece} from {start}, before this can be handled.</source>
        <translation>{spot} braucht {piece} ab {start}, bevor dies griffest ist.</translation>
    </message>
    <message>
        <source>{piece} stands on its own.</source>
        <translation>{piece} steht für sich.</translation>
    </message>
    <message>
        <source>It cannot be moved to {spot}: the {before} can never be handled.</source>
        <translation>Umziehen auf {spot} geht nicht: {before} wird nie griffest.</translation>
    </message>
    <message>
        <source>It likely stays open until {likely}; a touch test says whether it still is.</source>
        <translation>Es bleibt wahrscheinlich bis {likely} offen; eine Fingerprobe sagt, ob es das noch ist.</translation>
    </message>
    <message>
        <source>Wash it, sand it once it sands to dry powder, and pour when the dust has settled.</source>
        <translation>Waschen, anschleifen, sobald es trockenes Pulver gibt, und gießen, wenn der Staub sich gelegt hat.</translation>
    </message>
    <message>
        <source>A thin clear coat until {closes} keeps the bond; it can be sanded later.</source>
        <translation>Eine dünne klare Schicht bis {closes} hält die Bindung; sie lässt sich später schleifen.</translation>
    </message>
    <message>
        <source>Everything comes off, or a new blank is taken: one coat is poured again.</source>
        <translation>Alles kommt herunter, oder ein neuer Rohling wird genommen: Eine Schicht wird neu gegossen.</translation>
    </message>
    <message>
        <source>Everything comes off, or a new blank is taken: {count} coats are poured again.</source>
        <translation>Alles kommt herunter, oder ein neuer Rohling wird genommen: {count} Schichten werden neu gegossen.</translation>
    </message>
    <message>
        <source>It is no longer wet; pour it in the window that comes instead.</source>
        <translation>Es ist nicht mehr nass; gieß stattdessen im Fenster, das kommt.</translation>
    </message>
    <message>
        <source>The sheet of the {below} does not say when it can be sanded; add that figure.</source>
        <translation>Das Datenblatt von {below} sagt nicht, wann es geschliffen werden kann; trag diesen Wert ein.</translation>
    </message>
    <message>
        <source>It is too late for a lock coat: its window closes {closes}.</source>
        <translation>Für eine Schutzschicht ist es zu spät: Ihr Fenster schließt {closes}.</translation>
    </message>
    <message>
        <source>The {below} can&apos;t be sanded: no sanding helps here.</source>
        <translation>{below} lässt sich nicht schleifen: Hier hilft kein Schleifen.</translation>
    </message>
    <message>
        <source>weighed as mix {batch}</source>
        <translation>abgewogen als Mischung {batch}</translation>
    </message>
    <message>
        <source>touched: {touch}, {verdict}</source>
        <translation>Fingerprobe: {touch}, {verdict}</translation>
    </message>
    <message>
        <source>moved to {spot}</source>
        <translation>umgestellt auf {spot}</translation>
    </message>
    <message>
        <source>entry {number} withdrawn: it never happened</source>
        <translation>Eintrag {number} zurückgenommen: Es ist nie geschehen</translation>
    </message>
    <message>
        <source>Its window does not open in the time looked at; it is too cold there.</source>
        <translation>Sein Fenster öffnet in der betrachteten Zeit nicht; dort ist es zu kalt.</translation>
    </message>
    <message>
        <source>It opens {now} instead of {was}.</source>
        <translation>Es öffnet {now} statt {was}.</translation>
    </message>
    <message>
        <source>It closes {now} instead of {was}.</source>
        <translation>Es schließt {now} statt {was}.</translation>
    </message>
    <message>
        <source>The pour of {start} still fits.</source>
        <translation>Der Guss von {start} passt noch.</translation>
    </message>
    <message>
        <source>The pour of {start} is {early} too early; plan again.</source>
        <translation>Der Guss von {start} ist {early} zu früh; plan neu.</translation>
    </message>
    <message>
        <source>The pour of {start} ends {late} too late; plan again.</source>
        <translation>Der Guss von {start} endet {late} zu spät; plan neu.</translation>
    </message>
    <message>
        <source>Poured {when} on {spot}, before it was stripped.</source>
        <translation>Gegossen {when} auf {spot}, bevor es abgetragen wurde.</translation>
    </message>
    <message>
        <source>Poured {when} on {spot}.</source>
        <translation>Gegossen {when} auf {spot}.</translation>
    </message>
    <message>
        <source>{name}, for {order}; it was taken out of the studio.</source>
        <translation>{name}, für {order}; es wurde aus dem Studio genommen.</translation>
    </message>
    <message>
        <source>Mix {batch}, {when}: {facts}.</source>
        <translation>Mischung {batch}, {when}: {facts}.</translation>
    </message>
    <message>
        <source>Air around it: {low} to {high}, up to {damp} % humid.</source>
        <translation>Luft dabei: {low} bis {high}, bis zu {damp} % feucht.</translation>
    </message>
    <message>
        <source>{piece}: {what}, but no pour of {coats} is written down. Write down what was poured, with its time, or withdraw entry {number}.</source>
        <translation>{piece}: {what}, aber kein Guss von {coats} ist aufgeschrieben. Schreib auf, was gegossen wurde, mit seiner Zeit, oder nimm Eintrag {number} zurück.</translation>
    </message>
    <message>
        <source>Do not pour it so, it may never cure: while it is thin add {grams} of A, or weigh a new one.</source>
        <translation>Gieß sie so nicht, sie härtet vielleicht nie aus: Gib {grams} A dazu, solange sie dünn ist, oder wieg eine neue ab.</translation>
    </message>
    <message>
        <source>Do not pour it so, it may never cure: while it is thin add {grams} of B, or weigh a new one.</source>
        <translation>Gieß sie so nicht, sie härtet vielleicht nie aus: Gib {grams} B dazu, solange sie dünn ist, oder wieg eine neue ab.</translation>
    </message>
    <message>
        <source>{coat} poured {when} from mix {batch} ({product}).</source>
        <translation>{coat} gegossen {when} aus Mischung {batch} ({product}).</translation>
    </message>
    <message>
        <source>{coat} poured {when} from mix {batch} ({product}, {lots}).</source>
        <translation>{coat} gegossen {when} aus Mischung {batch} ({product}, {lots}).</translation>
    </message>
    <message>
        <source>Nothing was poured from it yet, as far as the log knows.</source>
        <translation>Daraus wurde noch nichts gegossen, soweit das Werkstattbuch weiß.</translation>
    </message>
    <message>
        <source>The air around it was not read.</source>
        <translation>Die Luft dabei wurde nicht gemessen.</translation>
    </message>
    <message>
        <source>Air around it: {low} to {high}.</source>
        <translation>Luft dabei: {low} bis {high}.</translation>
    </message>
    <message>
        <source>{coat} poured {when}.</source>
        <translation>{coat} gegossen {when}.</translation>
    </message>
    <message>
        <source>{name}{order}:</source>
        <translation>{name}{order}:</translation>
    </message>
    <message>
        <source>Nothing of it was poured yet.</source>
        <translation>Davon wurde noch nichts gegossen.</translation>
    </message>
    <message>
        <source>No weights were written down for it.</source>
        <translation>Dafür sind keine Gewichte aufgeschrieben.</translation>
    </message>
    <message>
        <source>{when}: {what}.</source>
        <translation>{when}: {what}.</translation>
    </message>
    <message>
        <source>In {share} of {weeks} its piece goes wrong, and with this coat first.</source>
        <translation>In {share} von {weeks} geht ihr Stück schief, und zwar zuerst mit dieser Schicht.</translation>
    </message>
    <message>
        <source>Begin sooner if you can: {who} is free from {free}.</source>
        <translation>Beginne früher, wenn du kannst: {who} ist ab {free} frei.</translation>
    </message>
    <message>
        <source>None: no piece went wrong in any of {weeks}.</source>
        <translation>Keiner: In keiner von {weeks} ging ein Stück schief.</translation>
    </message>
    <message>
        <source>{who} is away from {end} on.</source>
        <translation>{who} ist ab {end} weg.</translation>
    </message>
    <message>
        <source>{who} sleeps from {end} on.</source>
        <translation>{who} schläft ab {end}.</translation>
    </message>
    <message>
        <source>After that {who} is free again from {free}.</source>
        <translation>Danach ist {who} ab {free} wieder frei.</translation>
    </message>
    <message>
        <source>{who} has no other free time for it: more hours would help.</source>
        <translation>{who} hat dafür keine andere freie Zeit: Mehr Stunden würden helfen.</translation>
    </message>
    <message>
        <source>{piece}, {coat}: {how}{order}{left}.</source>
        <translation>{piece}, {coat}: {how}{order}{left}.</translation>
    </message>
    <message>
        <source>{name}: nothing of it was poured yet.</source>
        <translation>{name}: Davon wurde noch nichts gegossen.</translation>
    </message>
    <message>
        <source> for {order}</source>
        <translation> für {order}</translation>
    </message>
    <message>
        <source>{name}, for {order}.</source>
        <translation>{name}, für {order}.</translation>
    </message>
    <message>
        <source>, shipped {when}</source>
        <translation>, hinausgegangen {when}</translation>
    </message>
    <message>
        <source>{count}</source>
        <translation>{count}</translation>
    </message>
    <message>
        <source>{orders}.</source>
        <translation>{orders}.</translation>
    </message>
    <message>
        <source>{name}; it was taken out of the studio.</source>
        <translation>{name}; es wurde aus dem Studio genommen.</translation>
    </message>
    <message>
        <source>{name}, promised to nobody.</source>
        <translation>{name}, niemandem zugesagt.</translation>
    </message>
    <message>
        <source>Washed and sanded first it can be poured from {soonest} on: the {below} can be sanded from {ready}.</source>
        <translation>Erst gewaschen und angeschliffen, lässt es sich ab {soonest} gießen; schleifbar ({below}) ab {ready}.</translation>
    </message>
    <message>
        <source>It is washed and sanded first: {who}, {start} to {end}; the dust settles until {settled}.</source>
        <translation>Erst wird gewaschen und angeschliffen: {who}, {start} bis {end}; der Staub setzt sich bis {settled}.</translation>
    </message>
    <message>
        <source>The sheet of the {below} does not say from when on it can be sanded.</source>
        <translation>Das Datenblatt sagt nicht, ab wann es sich schleifen lässt: {below}.</translation>
    </message>
    <message>
        <source>The {below} can&apos;t be sanded to make up for it.</source>
        <translation>{below} lässt sich nicht schleifen; Anschleifen hilft hier also nicht.</translation>
    </message>
    <message>
        <source>Nobody has {lasting} to wash and sand it before that: from {ready} on hands are busy, or something wet would get the dust.</source>
        <translation>Niemand hat davor {lasting} zum Waschen und Anschleifen: Ab {ready} sind die Hände belegt, oder Nasses bekäme den Staub ab.</translation>
    </message>
    <message>
        <source>Everybody sleeps when the tape is to be pulled.</source>
        <translation>Alle schlafen, wenn das Klebeband abgezogen werden muss.</translation>
    </message>
    <message>
        <source>Everybody sleeps when drips are to be trimmed.</source>
        <translation>Alle schlafen, wenn die Tropfen abgenommen werden müssen.</translation>
    </message>
    <message>
        <source>It goes to {spot}, since {taken}</source>
        <translation>Es geht auf {spot}, denn: {taken}</translation>
    </message>
    <message>
        <source>Dust from sanding {piece} settles until {settled}.</source>
        <translation>Der Staub vom Schleifen von {piece} setzt sich bis {settled}.</translation>
    </message>
    <message>
        <source>Most fragile: {piece}, {coat}, {when} (pour {number})</source>
        <translation>Am heikelsten: {piece}, {coat}, {when} (Guss {number})</translation>
    </message>
    <message>
        <source>Its window closes {closes}.</source>
        <translation>Sein Fenster schließt {closes}.</translation>
    </message>
    <message>
        <source>It opens {opens}.</source>
        <translation>Es öffnet {opens}.</translation>
    </message>
    <message>
        <source>Most fragile</source>
        <translation>Am heikelsten</translation>
    </message>
    <message>
        <source>{what} {fault} Make sure by a touch test that the film below cures at all.</source>
        <translation>{what} {fault} Vergewissere dich mit einer Fingerprobe, dass der Film darunter überhaupt aushärtet.</translation>
    </message>
    <message>
        <source>And so it is with {count} more of what went with it.</source>
        <translation>So ist es auch bei {count} weiteren.</translation>
    </message>
    <message>
        <source>No bottle of {product} has the lot {lot}; there is {known}. Correct entry {number}, or enter that bottle, so that stock and traces count it.</source>
        <translation>Keine Flasche {product} hat die Charge {lot}; es gibt {known}. Berichtige Eintrag {number} oder trag die Flasche ein, damit Vorrat und Herkunft sie kennen.</translation>
    </message>
    <message>
        <source>{coat}: {new} does not go with {old} of {when} (entry {entry}), since a film does not become wet again. Correct whichever is wrong.</source>
        <translation>{coat}: {new} passt nicht zu {old} von {when} (Eintrag {entry}), denn ein Film wird nicht wieder nass. Berichtige, was falsch ist.</translation>
    </message>
    <message>
        <source>{place}: {now} is far from the {was} of {when}; no room changes so fast. If it was mistyped, write the right one down for the same minute; else look where the thermometer stands.</source>
        <translation>{place}: {now} liegt weit von {was} ({when}); so schnell ändert sich kein Raum. Wenn es vertippt war, schreib den richtigen Wert für dieselbe Minute auf; sonst sieh nach, wo das Thermometer steht.</translation>
    </message>
    <message>
        <source>Mix {batch} has {share} % too much B for {product}.</source>
        <translation>Mischung {batch} hat {share} % zu viel B für {product}.</translation>
    </message>
    <message>
        <source>Mix {batch} has {share} % too little B for {product}.</source>
        <translation>Mischung {batch} hat {share} % zu wenig B für {product}.</translation>
    </message>
    <message>
        <source>If only the note is wrong, correct entry {number}.</source>
        <translation>Ist nur falsch aufgeschrieben, berichtige Eintrag {number}.</translation>
    </message>
    <message>
        <source>Do not pour it so, it may never cure: weigh a new one.</source>
        <translation>Gieß sie so nicht, sie härtet vielleicht nie aus: Wieg eine neue ab.</translation>
    </message>
    <message>
        <source>Watch how it cures.</source>
        <translation>Achte darauf, wie sie aushärtet.</translation>
    </message>
    <message>
        <source>It is poured and may never cure: touch-test it before anything goes on it, and strip what stays soft.</source>
        <translation>Sie ist gegossen und härtet vielleicht nie aus: Mach eine Fingerprobe, bevor etwas darauf kommt, und trag ab, was weich bleibt.</translation>
    </message>
    <message>
        <source>It stays where it is until the {coat} can be handled, {until}.</source>
        <translation>Es bleibt, wo es ist, bis {coat} griffest ist, {until}.</translation>
    </message>
    <message>
        <source>{piece} does not fit on {spot}: with its cover it is too high.</source>
        <translation>{piece} passt nicht auf {spot}: mit Haube ist es zu hoch.</translation>
    </message>
    <message>
        <source>{piece} does not fit on {spot}: it is longer or wider than that.</source>
        <translation>{piece} passt nicht auf {spot}: es ist länger oder breiter.</translation>
    </message>
    <message>
        <source>It has been poured on: it stays where it is, with the {coat} on it.</source>
        <translation>Es ist schon gegossen ({coat}): Es bleibt, wo es ist.</translation>
    </message>
    <message>
        <source>The tape of the {coat} comes first, at {at}.</source>
        <translation>Das Klebeband von {coat} kommt zuerst, um {at}.</translation>
    </message>
    <message>
        <source>The trimming of the {coat} comes first, at {at}.</source>
        <translation>Das Abnehmen der Tropfen von {coat} kommt zuerst, um {at}.</translation>
    </message>
    <message>
        <source>{piece} is sanded at {at}, while this is wet until {covered}.</source>
        <translation>{piece} wird um {at} geschliffen, während dies bis {covered} nass ist.</translation>
    </message>
    <message>
        <source>Do not begin {name} before you go; begin it when you are back.</source>
        <translation>{name} nicht vor der Abreise anfangen, sondern nach der Rückkehr.</translation>
    </message>
    <message>
        <source>The {kind} cannot be sanded, and its window closes before you are back.</source>
        <translation>{kind} lässt sich nicht schleifen, und das Fenster schließt vor der Rückkehr.</translation>
    </message>
    <message>
        <source>The window over the {kind} stays open until {closes}.</source>
        <translation>Das Fenster über {kind} bleibt bis {closes} offen.</translation>
    </message>
    <message>
        <source>There is no piece in this studio yet; add one on the page Pieces.</source>
        <translation>In diesem Studio gibt es noch kein Stück; auf der Seite Stücke eines anlegen.</translation>
    </message>
    <message>
        <source>Give a day to leave that is to come, and one to be back after it.</source>
        <translation>Einen künftigen Tag der Abreise angeben und einen späteren der Rückkehr.</translation>
    </message>
    <message>
        <source>It is not in the plan yet; plan again first.</source>
        <translation>Es ist noch nicht im Plan; erst neu planen.</translation>
    </message>
    <message>
        <source>Yes: nothing on {name} needs hands while you are away.</source>
        <translation>Ja: Nichts an {name} braucht in der Abwesenheit Hände.</translation>
    </message>
    <message>
        <source>Planned while you are away: {what}, {at}.</source>
        <translation>Geplant in der Abwesenheit: {what}, {at}.</translation>
    </message>
    <message>
        <source>No other coat lies on the {kind}.</source>
        <translation>Auf {kind} liegt keine andere Schicht.</translation>
    </message>
    <message>
        <source>The {kind} can be washed and sanded when you are back.</source>
        <translation>{kind} lässt sich nach der Rückkehr waschen und anschleifen.</translation>
    </message>
    <message>
        <source>Latest pour of the {kind}: {start}, so that it is tack-free when you leave.</source>
        <translation>Spätester Guss von {kind}: {start}, damit es bei der Abreise klebfrei ist.</translation>
    </message>
    <message>
        <source>Pour no further than the {kind}, and the rest from {back}.</source>
        <translation>Nicht weiter als {kind} gießen, den Rest ab {back}.</translation>
    </message>
    <message>
        <source>No: the {kind} cannot be sanded, so its next coat has to be on before you go.</source>
        <translation>Nein: {kind} lässt sich nicht schleifen, die nächste Schicht muss also vor der Abreise darauf.</translation>
    </message>
    <message>
        <source>The fullest spot is {spot}: in use for {share} of the time.</source>
        <translation>Der vollste Platz ist {spot}: {share} der Zeit in Gebrauch.</translation>
    </message>
    <message>
        <source>The fullest day is {day}: {share} of its working hours are hands-on.</source>
        <translation>Der vollste Tag ist {day}: {share} der Arbeitszeit sind Handarbeit.</translation>
    </message>
    <message>
        <source>Level spots, {spot} most of all: up to {share} of all spots are taken in a week.</source>
        <translation>Ebene Plätze, vor allem {spot}: Bis zu {share} aller Plätze sind in einer Woche belegt.</translation>
    </message>
    <message>
        <source>Your hands, most of all on {day}: up to {share} of a week&apos;s working hours.</source>
        <translation>Die Hände, vor allem am {day}: bis zu {share} der Arbeitszeit einer Woche.</translation>
    </message>
    <message>
        <source>Nothing: neither hands nor spots are in use.</source>
        <translation>Nichts: Weder Hände noch Plätze sind in Gebrauch.</translation>
    </message>
    <message>
        <source>Week of {first}: hands {hands}, spots {spots}.</source>
        <translation>Woche ab {first}: Hände {hands}, Plätze {spots}.</translation>
    </message>
    <message>
        <source>Late: {order}. {why}</source>
        <translation>Zu spät: {order}. {why}</translation>
    </message>
    <message>
        <source>There is no safe window: by the sheet of {product} it may close before it surely opens. Enter its recoat times on the page Products, or wash and sand in between.</source>
        <translation>Es gibt kein sicheres Fenster: Nach dem Datenblatt von {product} kann es schließen, bevor es sicher öffnet. Auf der Seite Produkte seine Überarbeitungszeiten eintragen, oder dazwischen waschen und anschleifen.</translation>
    </message>
    <message>
        <source>Somebody is awake for {awake} of it; the next coat takes {block}.</source>
        <translation>Davon ist {awake} lang jemand wach; die nächste Schicht braucht {block}.</translation>
    </message>
    <message>
        <source>Somebody is awake in its window, but not long enough for the {upper}.</source>
        <translation>Im Fenster ist jemand wach, aber nicht lange genug für {upper}.</translation>
    </message>
    <message>
        <source>The window opens {opens} at the latest and closes {closes} at the earliest.</source>
        <translation>Das Fenster öffnet spätestens {opens} und schließt frühestens {closes}.</translation>
    </message>
    <message>
        <source>No coat is waiting that another one lies on.</source>
        <translation>Keine Schicht wartet, auf der eine andere liegt.</translation>
    </message>
    <message>
        <source>That day lies outside the plan; choose one nearer to today.</source>
        <translation>Dieser Tag liegt außerhalb des Plans; einen näher an heute wählen.</translation>
    </message>
    <message>
        <source>Pour the {upper} from {opens}; somebody is awake for it from {fits}.</source>
        <translation>{upper} gießen ab {opens}; ab {fits} ist jemand dafür wach.</translation>
    </message>
    <message>
        <source>Nobody is awake while the window for the {upper} is open.</source>
        <translation>Niemand ist wach, während das Fenster für {upper} offen ist.</translation>
    </message>
    <message>
        <source>The window opens {opens} and stays open.</source>
        <translation>Das Fenster öffnet {opens} und bleibt offen.</translation>
    </message>
    <message>
        <source>Better: pour at {start}; it opens {opens}.</source>
        <translation>Besser {start} gießen; dann öffnet es {opens}.</translation>
    </message>
    <message>
        <source>Yes, too damp: do not pour now.</source>
        <translation>Ja, zu feucht: jetzt nicht gießen.</translation>
    </message>
    <message>
        <source>It will be: pour only covered and kept warm.</source>
        <translation>Es wird: nur abgedeckt und warm gehalten gießen.</translation>
    </message>
    <message>
        <source>Yes for some mixes: their sheets ask for drier air.</source>
        <translation>Für manche Mischungen ja: Ihre Datenblätter verlangen trockenere Luft.</translation>
    </message>
    <message>
        <source>Warming lowers the humidity but not the dew point; drying the air is what moves both. Warm the blanks too, or wait.</source>
        <translation>Wärmen senkt die Luftfeuchte, aber nicht den Taupunkt; nur Trocknen der Luft ändert beides. Auch die Rohlinge wärmen, oder warten.</translation>
    </message>
    <message>
        <source>There is no room in this studio yet; add one on the page Studio.</source>
        <translation>In diesem Studio gibt es noch keinen Raum; auf der Seite Studio einen anlegen.</translation>
    </message>
    <message>
        <source>Nobody knows: the humidity of this place is not entered. Read it before you pour and enter it, or an expected one, on the page Studio.</source>
        <translation>Das weiß niemand: Die Luftfeuchte ist hier nicht eingetragen. Vor dem Gießen ablesen und eintragen, oder eine erwartete, auf der Seite Studio.</translation>
    </message>
    <message>
        <source>No, it is dry enough to pour.</source>
        <translation>Nein, zum Gießen ist es trocken genug.</translation>
    </message>
    <message>
        <source>Now the surface is {margin} above the dew point.</source>
        <translation>Jetzt ist die Oberfläche {margin} über dem Taupunkt.</translation>
    </message>
    <message>
        <source>At its lowest, {when}, it is {margin} above it, with the air at {celsius}.</source>
        <translation>Am tiefsten Punkt, {when}, liegt sie {margin} darüber, die Luft bei {celsius}.</translation>
    </message>
    <message>
        <source>A pour asks for {asked} throughout (ISO 8502-4 practice).</source>
        <translation>Ein Guss verlangt durchgehend {asked} (Praxis nach ISO 8502-4).</translation>
    </message>
    <message>
        <source>Keep the air at {warm} or more until {until}, with electric or indirect heat: a flame without a flue adds water and makes blush worse.</source>
        <translation>Die Luft bis {until} auf {warm} oder mehr halten, elektrisch oder indirekt geheizt: Eine Flamme ohne Abzug bringt Wasser und verstärkt den Schleier.</translation>
    </message>
    <message>
        <source>{product} asks for a humidity of {limit} or less; it is {now}.</source>
        <translation>{product} verlangt höchstens {limit} Luftfeuchte; es sind {now}.</translation>
    </message>
    <message>
        <source>It can be handled from {when}.</source>
        <translation>Griffest ab {when}.</translation>
    </message>
    <message>
        <source>It is print-free from {when}.</source>
        <translation>Abdruckfrei ab {when}.</translation>
    </message>
    <message>
        <source>It is fully cured from {when}.</source>
        <translation>Ausgehärtet ab {when}.</translation>
    </message>
    <message>
        <source>Nothing is lost for good. The worst is {what}, due by {by}: {why}.</source>
        <translation>Nichts ist endgültig verloren. Am schlimmsten ist {what}, fällig bis {by}: {why}.</translation>
    </message>
    <message>
        <source>Nothing is lost: no window closes and nothing is due in that time.</source>
        <translation>Nichts ist verloren: In dieser Zeit schließt kein Fenster, und nichts ist fällig.</translation>
    </message>
    <message>
        <source>{what} cannot be saved: do it by {by}, whatever else waits.</source>
        <translation>{what} ist nicht zu retten: bis {by} machen, was auch sonst wartet.</translation>
    </message>
    <message>
        <source>{what}, by {by}: {word}; {why}.</source>
        <translation>{what}, bis {by}: {word}; {why}.</translation>
    </message>
    <message>
        <source>Nothing is spoiled; the plan only moves later.</source>
        <translation>Nichts verdirbt; nur der Plan rückt nach hinten.</translation>
    </message>
    <message>
        <source>Begin {what} by {start} at the latest.</source>
        <translation>Spätestens {start} anfangen: {what}.</translation>
    </message>
    <message>
        <source>It is too late for {what}: it would have had to begin at {start}.</source>
        <translation>Zu spät für {what}: Der Anfang hätte {start} sein müssen.</translation>
    </message>
    <message>
        <source>Its window closes at {closes}, before bedtime at {bed}.</source>
        <translation>Sein Fenster schließt um {closes}, vor der Schlafenszeit um {bed}.</translation>
    </message>
    <message>
        <source>Nobody works in this studio yet; add a person on the page Studio.</source>
        <translation>In diesem Studio arbeitet noch niemand; auf der Seite Studio jemanden eintragen.</translation>
    </message>
    <message>
        <source>Nobody is there within a day.</source>
        <translation>Innerhalb eines Tages ist niemand da.</translation>
    </message>
    <message>
        <source>It needs {time} of hands, from weighing to the last wipe of the drips.</source>
        <translation>Es braucht {time} Handarbeit, vom Abwiegen bis zum letzten Abwischen der Tropfen.</translation>
    </message>
    <message>
        <source>Bedtime of {who} is {bed}.</source>
        <translation>Schlafenszeit von {who} ist {bed}.</translation>
    </message>
    <message>
        <source>The plan begins it {at}.</source>
        <translation>Der Plan beginnt es {at}.</translation>
    </message>
    <message>
        <source>That reaches beyond the working hours of {who}.</source>
        <translation>Das reicht über die Arbeitszeit von {who} hinaus.</translation>
    </message>
    <message>
        <source>Not before {day}.</source>
        <translation>Nicht vor {day}.</translation>
    </message>
    <message>
        <source>Not for sure before {day}; a thumbnail that leaves no mark says otherwise.</source>
        <translation>Nicht sicher vor {day}; ein Daumennagel, der keine Spur lässt, sagt mehr.</translation>
    </message>
    <message>
        <source>Not all its coats are planned, so nobody knows when it may be packed; plan again.</source>
        <translation>Nicht alle Schichten sind geplant, also weiß niemand, wann es verpackt werden darf; neu planen.</translation>
    </message>
    <message>
        <source>Pack it today; it leaves {at}.</source>
        <translation>Heute verpacken; es geht {at} ab.</translation>
    </message>
    <message>
        <source>No: its sheet does not say when it may be packed; ask its maker.</source>
        <translation>Nein: Sein Datenblatt sagt nicht, wann es verpackt werden darf; beim Hersteller fragen.</translation>
    </message>
    <message>
        <source>A hot van softens what is not fully cured, so full cure is asked for.</source>
        <translation>Ein heißer Lieferwagen erweicht, was nicht ausgehärtet ist; darum wird volle Aushärtung verlangt.</translation>
    </message>
    <message>
        <source>Pack: release paper or foam on the face, never bubble wrap against it.</source>
        <translation>Verpacken: Trennpapier oder Schaum auf die Fläche, nie Luftpolsterfolie daran.</translation>
    </message>
    <message>
        <source>Nothing presses on it, and the batch number and care card are inside.</source>
        <translation>Nichts drückt darauf, Chargennummer und Pflegekarte liegen bei.</translation>
    </message>
    <message>
        <source>Yes: it leaves today at {at}.</source>
        <translation>Ja: Es geht heute um {at} ab.</translation>
    </message>
    <message>
        <source>Wait for Monday: a parcel of today may spend the weekend in a van.</source>
        <translation>Bis Montag warten: Ein Paket von heute verbringt vielleicht das Wochenende im Lieferwagen.</translation>
    </message>
    <message>
        <source>No, and no free time is in sight; cover what is wet.</source>
        <translation>Nein, und keine freie Zeit ist in Sicht; abdecken, was nass ist.</translation>
    </message>
    <message>
        <source>Not now; from {free}.</source>
        <translation>Jetzt nicht; ab {free}.</translation>
    </message>
    <message>
        <source>End by {end}: the dust has to settle before {what} at {start}.</source>
        <translation>Bis {end} aufhören: Der Staub muss sich setzen, bevor {what} beginnt ({start}).</translation>
    </message>
    <message>
        <source>The first working hours free for it begin {at}.</source>
        <translation>Die erste freie Arbeitszeit dafür beginnt {at}.</translation>
    </message>
    <message>
        <source>No wet piece lies uncovered.</source>
        <translation>Kein nasses Stück liegt offen.</translation>
    </message>
    <message>
        <source>Yes, sand now.</source>
        <translation>Ja, jetzt schleifen.</translation>
    </message>
    <message>
        <source>{what} is wet and in the open until {until}.</source>
        <translation>{what} ist bis {until} nass und offen.</translation>
    </message>
    <message>
        <source>{what} is wet, and its sheet does not say for how long.</source>
        <translation>{what} ist nass, und sein Datenblatt sagt nicht, wie lange.</translation>
    </message>
    <message>
        <source>{what} is poured {start}, and dust takes {settle} to settle.</source>
        <translation>{what} wird {start} gegossen, und Staub braucht {settle}, um sich zu setzen.</translation>
    </message>
    <message>
        <source>{colour} is {product} with nothing in it.</source>
        <translation>{colour} ist {product} ohne Zusatz.</translation>
    </message>
    <message>
        <source>{colour} is {share} % of {colourant} in {product}.</source>
        <translation>{colour} besteht aus {share} % {colourant} in {product}.</translation>
    </message>
    <message>
        <source>For {piece}, {coat}: {colourant} of {stuff} into {mix} of mix, the cups&apos; loss included.</source>
        <translation>Für {piece}, {coat}: {colourant} {stuff} in {mix} Mischung, der Rest in den Bechern eingerechnet.</translation>
    </message>
    <message>
        <source>No photo of {piece} is kept; keep one on the page Pieces for the next time.</source>
        <translation>Von {piece} gibt es kein Foto; leg auf der Seite Stücke eins für das nächste Mal ab.</translation>
    </message>
    <message>
        <source>How it came out: the photos of {piece} on the page Pieces.</source>
        <translation>Wie sie geworden ist: die Fotos von {piece} auf der Seite Stücke.</translation>
    </message>
    <message>
        <source>No coat has a colour yet; enter what goes into its cups on the page Pieces.</source>
        <translation>Noch keine Schicht hat eine Farbe; trag auf der Seite Stücke ein, was in ihre Becher kommt.</translation>
    </message>
    <message>
        <source>No: on {day} {name} would print where it is held.</source>
        <translation>Nein: Am {day} bekäme {name} Abdrücke, wo man es hält.</translation>
    </message>
    <message>
        <source>Not all coats of it are planned, so nobody knows when it is ready; plan again.</source>
        <translation>Nicht alle Schichten davon sind geplant, also weiß niemand, wann es fertig ist; neu planen.</translation>
    </message>
    <message>
        <source>Yes: show and sell {name} on {day}.</source>
        <translation>Ja: {name} am {day} zeigen und verkaufen.</translation>
    </message>
    <message>
        <source>Show {name}, yes; sell it only with a note: handle gently, full cure {full}.</source>
        <translation>{name} zeigen, ja; verkaufen nur mit Hinweis: vorsichtig anfassen, ausgehärtet {full}.</translation>
    </message>
    <message>
        <source>Perhaps: {name} will likely be hard enough to show, but it is not sure. Press the edge with a gloved thumb before you take it.</source>
        <translation>Vielleicht: {name} ist wahrscheinlich hart genug zum Zeigen, aber nicht sicher. Vor dem Mitnehmen mit behandschuhtem Daumen auf die Kante drücken.</translation>
    </message>
    <message>
        <source>Nothing may touch its face on the way: it is not print-free yet.</source>
        <translation>Unterwegs darf nichts seine Fläche berühren: Es ist noch nicht abdruckfrei.</translation>
    </message>
    <message>
        <source>On the way it may lie wrapped in release paper, nothing on top.</source>
        <translation>Unterwegs darf es in Trennpapier liegen, nichts darauf.</translation>
    </message>
    <message>
        <source>Print-free {now} instead of {then}, if it is warmed from now on.</source>
        <translation>Abdruckfrei {now} statt {then}, wenn ab jetzt gewärmt wird.</translation>
    </message>
    <message>
        <source>The {coat} still comes: warmth closes its window sooner, so it may have to be scuffed.</source>
        <translation>{coat} kommt noch: Wärme schließt das Fenster früher, vielleicht muss angeschliffen werden.</translation>
    </message>
    <message>
        <source>No, not before {holds}: it would sag, or print where it lies.</source>
        <translation>Nein, nicht vor {holds}: Es würde absacken oder Abdrücke bekommen, wo es liegt.</translation>
    </message>
    <message>
        <source>Once it holds: up by {rate} an hour to {target}, {hold} there, and cool slowly in the box. Lie it flat on its whole face, and never go above what the data sheet allows.</source>
        <translation>Sobald es hält: um {rate} je Stunde auf {target}, dort {hold}, dann langsam in der Box abkühlen. Flach auf die ganze Fläche legen und nie über das gehen, was das Datenblatt erlaubt.</translation>
    </message>
    <message>
        <source>No film lies open now, so there is nothing to warm.</source>
        <translation>Kein Film liegt jetzt offen, also gibt es nichts zu wärmen.</translation>
    </message>
    <message>
        <source>No: not above {most} for this piece.</source>
        <translation>Nein: nicht über {most} für dieses Stück.</translation>
    </message>
    <message>
        <source>Its sheet does not say when it can be handled, so ask its maker first.</source>
        <translation>Sein Datenblatt sagt nicht, wann es griffest ist; erst beim Hersteller fragen.</translation>
    </message>
    <message>
        <source>Better not: what lies in it may lift or go dull. Wait instead.</source>
        <translation>Lieber nicht: Was darin liegt, kann sich heben oder stumpf werden. Lieber warten.</translation>
    </message>
    <message>
        <source>Yes, with care: it holds.</source>
        <translation>Ja, mit Vorsicht: Es hält.</translation>
    </message>
    <message>
        <source>Yes: it holds.</source>
        <translation>Ja: Es hält.</translation>
    </message>
    <message>
        <source>MDF and timber move when they dry in the warmth; stay under {most}.</source>
        <translation>MDF und Massivholz arbeiten, wenn sie in der Wärme trocknen; unter {most} bleiben.</translation>
    </message>
    <message>
        <source>Leaf, size and glitter move otherwise than the film around them.</source>
        <translation>Blattmetall, Anlegemilch und Glitzer arbeiten anders als der Film um sie herum.</translation>
    </message>
    <message>
        <source>One face of it is bare, so it may cup: seal both faces first.</source>
        <translation>Eine Fläche ist roh, es kann sich also wölben: erst beide Flächen versiegeln.</translation>
    </message>
    <message>
        <source>No need to wash, if a wet finger does not feel greasy on it.</source>
        <translation>Kein Waschen nötig, wenn ein nasser Finger sich darauf nicht fettig anfühlt.</translation>
    </message>
    <message>
        <source>The air went down to {low}, under the {least} of {product}: cold makes blush likelier.</source>
        <translation>Die Luft sank auf {low}, unter die {least} von {product}: Kälte macht Schleier wahrscheinlicher.</translation>
    </message>
    <message>
        <source>Wash it to be sure: the humidity after the pour is not known.</source>
        <translation>Zur Sicherheit waschen: Die Luftfeuchte nach dem Guss ist nicht bekannt.</translation>
    </message>
    <message>
        <source>In the {hours} after its pour the surface came as near as {margin} to the dew point, at {when}.</source>
        <translation>In den {hours} nach dem Guss kam die Oberfläche dem Taupunkt bis auf {margin} nahe, {when}.</translation>
    </message>
    <message>
        <source>Wash it: dew settled on it, and blush is all but sure.</source>
        <translation>Waschen: Tau hat sich gesetzt, ein Schleier ist so gut wie sicher.</translation>
    </message>
    <message>
        <source>Wash it: blush is likely where the margin is under {asked}.</source>
        <translation>Waschen: Schleier ist wahrscheinlich, wo der Abstand unter {asked} liegt.</translation>
    </message>
    <message>
        <source>No two-part film lies open now: there is nothing to wash.</source>
        <translation>Kein Zweikomponenten-Film liegt jetzt offen: Es gibt nichts zu waschen.</translation>
    </message>
    <message>
        <source>Wash with clean water and a pad, then dry with a clean towel; solvent smears it.</source>
        <translation>Mit klarem Wasser und einem Pad waschen, dann mit sauberem Tuch trocknen; Lösemittel verschmiert es.</translation>
    </message>
    <message>
        <source>No promise changes, but a joint gets worse.</source>
        <translation>Keine Zusage ändert sich, aber ein Verbund wird schlechter.</translation>
    </message>
    <message>
        <source>No: {names} would be late.</source>
        <translation>Nein: {names} würde zu spät.</translation>
    </message>
    <message>
        <source>{sooner} would leave sooner, but {later} later.</source>
        <translation>{sooner} ginge früher ab, aber {later} später.</translation>
    </message>
    <message>
        <source>No promise changes; the window of {what} opens {sooner} sooner.</source>
        <translation>Keine Zusage ändert sich; das Fenster von {what} öffnet {sooner} früher.</translation>
    </message>
    <message>
        <source>No promise changes; {count} pours move.</source>
        <translation>Keine Zusage ändert sich; {count} Güsse verschieben sich.</translation>
    </message>
    <message>
        <source>Planning again without any change already brings {names} sooner; that is not counted here.</source>
        <translation>Neu planen ohne jede Änderung bringt schon {names} früher; das zählt hier nicht mit.</translation>
    </message>
    <message>
        <source>Set the heater of {place} to {celsius} from {start} until {end}; electric or indirect heat only. The plan expects it then; once there are readings, it follows them.</source>
        <translation>Stell die Heizung von {place} von {start} bis {end} auf {celsius}; nur elektrisch oder indirekt. Der Plan rechnet dann damit; sobald es Messwerte gibt, folgt er ihnen.</translation>
    </message>
    <message>
        <source>Taken as poured, as planned, though not written down: {count}.</source>
        <translation>Als gegossen angenommen, wie geplant, obwohl nicht aufgeschrieben: {count}.</translation>
    </message>
    <message>
        <source>poured in {length} on {spot}, {joint}, from mix {batch}</source>
        <translation>gegossen in {length} auf {spot}, {joint}, aus Mischung {batch}</translation>
    </message>
    <message>
        <source>poured in {length} on {spot}, {joint}</source>
        <translation>gegossen in {length} auf {spot}, {joint}</translation>
    </message>
    <message>
        <source>There is no plan yet, so nothing is busy; plan first.</source>
        <translation>Es gibt noch keinen Plan, also ist nichts ausgelastet; plane zuerst.</translation>
    </message>
    <message>
        <source>There is no plan yet, so nothing is due; plan first.</source>
        <translation>Es gibt noch keinen Plan, also ist nichts fällig; plane zuerst.</translation>
    </message>
    <message>
        <source>Really weighed into mix {batch} at {when}: {grams} of {stuff}, {share} % of all its mix.</source>
        <translation>Wirklich eingewogen in Mischung {batch} am {when}: {grams} {stuff}, {share} % der ganzen Mischung.</translation>
    </message>
    <message>
        <source>It changes nothing in the plan.</source>
        <translation>Am Plan ändert es nichts.</translation>
    </message>
    <message>
        <source>No: {names} could not be planned any more.</source>
        <translation>Nein: {names} ließe sich nicht mehr planen.</translation>
    </message>
    <message>
        <source>Yes: {names} would be in time.</source>
        <translation>Ja: {names} wäre pünktlich.</translation>
    </message>
    <message>
        <source>{names} would leave sooner.</source>
        <translation>{names} ginge früher ab.</translation>
    </message>
    <message>
        <source>{names} would leave later.</source>
        <translation>{names} ginge später ab.</translation>
    </message>
    <message>
        <source>Meanwhile the dew-point margin is {after} at the least, instead of {before}.</source>
        <translation>Inzwischen ist der Abstand zum Taupunkt mindestens {after}, statt {before}.</translation>
    </message>
    <message>
        <source>Windows close sooner too: that of {what} {sooner} sooner, {closes}.</source>
        <translation>Fenster schließen auch früher: das von {what} {sooner} früher, {closes}.</translation>
    </message>
</context>
<context>
    <name>saying</name>
    <message>
        <source>{weekday} {day} {month} {time}</source>
        <translation>{weekday} {day}. {month} {time}</translation>
    </message>
    <message>
        <source>The {coat} on {piece}</source>
        <translation>{coat} auf {piece}</translation>
    </message>
    <message>
        <source>the {coat} on {piece}</source>
        <translation>{coat} auf {piece}</translation>
    </message>
</context>
<context>
    <name>section</name>
    <message>
        <source>Piece in section</source>
        <translation>Stück im Schnitt</translation>
    </message>
    <message>
        <source>No piece is chosen.</source>
        <translation>Kein Stück ist gewählt.</translation>
    </message>
    <message>
        <source>{material} {thickness}, cut short</source>
        <translation>{material} {thickness}, gekürzt</translation>
    </message>
    <message>
        <source>Choose a bar on the timeline.</source>
        <translation>Einen Balken der Zeitleiste wählen.</translation>
    </message>
    <message>
        <source>{coat}, to come</source>
        <translation>{coat}, folgt</translation>
    </message>
    <message>
        <source>{length} of film</source>
        <translation>{length} Film</translation>
    </message>
</context>
<context>
    <name>set up</name>
    <message>
        <source>Nobody is named yet: add yourself.</source>
        <translation>Noch niemand eingetragen: sich selbst hinzufügen.</translation>
    </message>
    <message>
        <source>Nobody has working hours in the coming four weeks: paint some.</source>
        <translation>In den nächsten vier Wochen hat niemand Arbeitszeiten: welche malen.</translation>
    </message>
    <message>
        <source>No working hours in the coming four weeks: {names}.</source>
        <translation>Keine Arbeitszeiten in den nächsten vier Wochen: {names}.</translation>
    </message>
    <message>
        <source>Everybody is away for the whole of the coming week: nobody is awake to pour, to pull tape or to pack.</source>
        <translation>Die ganze kommende Woche sind alle weg: Niemand ist wach zum Gießen, Klebeband abziehen oder Verpacken.</translation>
    </message>
    <message>
        <source>Nobody works long enough on end for: {names}. Paint a longer stretch.</source>
        <translation>Niemand arbeitet lange genug am Stück für: {names}. Eine längere Strecke malen.</translation>
    </message>
    <message>
        <source>There is no room yet: add one with the temperatures you expect in it.</source>
        <translation>Noch kein Raum: einen mit den erwarteten Temperaturen anlegen.</translation>
    </message>
    <message>
        <source>No humidity is known of: {names}. The margin to the dew point stays unknown there, and every pour is marked so.</source>
        <translation>Keine Luftfeuchte bekannt von: {names}. Der Abstand zum Taupunkt bleibt dort unbekannt, und jeder Guss ist so markiert.</translation>
    </message>
    <message>
        <source>No place ever gets as warm as the sheet asks for: {names}.</source>
        <translation>Kein Raum wird je so warm, wie das Datenblatt verlangt: {names}.</translation>
    </message>
    <message>
        <source>{count} spot</source>
        <translation>{count} Platz</translation>
    </message>
    <message>
        <source>{count} spots</source>
        <translation>{count} Plätze</translation>
    </message>
    <message>
        <source>There is no level spot yet: measure a place on the shelf and add it.</source>
        <translation>Noch kein ebener Platz: eine Stelle im Regal ausmessen und anlegen.</translation>
    </message>
    <message>
        <source>Larger than every spot: {names}. Add a spot that is large enough, with the height of the cover.</source>
        <translation>Größer als jeder Platz: {names}. Einen Platz anlegen, der groß genug ist, samt Höhe der Haube.</translation>
    </message>
    <message>
        <source>There is no product yet: add one with the figures of its data sheet.</source>
        <translation>Noch kein Produkt: eines mit den Angaben seines Datenblatts anlegen.</translation>
    </message>
    <message>
        <source>{product}: the sheet has no figure for when recoat opens, so no coat can follow in its window.</source>
        <translation>{product}: Das Datenblatt sagt nicht, ab wann überarbeitbar, also kann keine Schicht im Fenster folgen.</translation>
    </message>
    <message>
        <source>{product}: the sheet has no figure for when recoat closes, so every coat upon it has to be scuffed.</source>
        <translation>{product}: Das Datenblatt sagt nicht, bis wann überarbeitbar, also muss für jede Schicht darauf angeschliffen werden.</translation>
    </message>
    <message>
        <source>{product}: the sheet has no figure for handle, print-free or full cure, so a piece would never leave its spot; add one from the sheet.</source>
        <translation>{product}: Das Datenblatt sagt nicht, wann es griffest, abdruckfrei oder ausgehärtet ist, also verließe ein Stück nie seinen Platz; eine Angabe vom Blatt eintragen.</translation>
    </message>
    <message>
        <source>There is no piece yet: add one with its stack of coats.</source>
        <translation>Noch kein Stück: eines mit seinem Schichtaufbau anlegen.</translation>
    </message>
    <message>
        <source>{count} piece</source>
        <translation>{count} Stück</translation>
    </message>
    <message>
        <source>{count} pieces</source>
        <translation>{count} Stücke</translation>
    </message>
    <message>
        <source>Nothing is promised yet: a plan then only ends early.</source>
        <translation>Noch nichts zugesagt: Ein Plan endet dann nur früh.</translation>
    </message>
    <message>
        <source>{count} order</source>
        <translation>{count} Auftrag</translation>
    </message>
    <message>
        <source>{count} orders</source>
        <translation>{count} Aufträge</translation>
    </message>
</context>
<context>
    <name>set-up</name>
    <message>
        <source>Hands and their hours</source>
        <translation>Hände und ihre Zeiten</translation>
    </message>
    <message>
        <source>The room&apos;s temperature</source>
        <translation>Die Temperatur des Raums</translation>
    </message>
    <message>
        <source>A level spot</source>
        <translation>Ein ebener Platz</translation>
    </message>
    <message>
        <source>A product with its data sheet</source>
        <translation>Ein Produkt mit Datenblatt</translation>
    </message>
    <message>
        <source>A piece with its coats</source>
        <translation>Ein Stück mit Schichten</translation>
    </message>
    <message>
        <source>An order</source>
        <translation>Ein Auftrag</translation>
    </message>
    <message>
        <source>A pour takes an hour or more of somebody&apos;s hands, and a window is of use only when somebody is there and awake.</source>
        <translation>Ein Guss bindet Hände eine Stunde oder länger, und ein Fenster nützt nur, wenn jemand da und wach ist.</translation>
    </message>
    <message>
        <source>The room&apos;s temperature sets how fast every coat cures; its humidity says when a surface is too damp to be coated.</source>
        <translation>Die Temperatur des Raums bestimmt, wie schnell jede Schicht härtet; die Luftfeuchte sagt, wann eine Oberfläche zu feucht ist.</translation>
    </message>
    <message>
        <source>A wet piece lies level on its spot until it can be handled. Spots decide how many pieces can be under way at once.</source>
        <translation>Ein nasses Stück liegt eben auf seinem Platz, bis es griffest ist. Plätze bestimmen, wie viele Stücke gleichzeitig unterwegs sind.</translation>
    </message>
    <message>
        <source>From the sheet come the hours after which the next coat goes on, the piece can be handled, and packed.</source>
        <translation>Vom Datenblatt kommen die Stunden, nach denen die nächste Schicht darauf darf, das Stück griffest und verpackbar ist.</translation>
    </message>
    <message>
        <source>A plan is made of coats: which product, how thick, on which face.</source>
        <translation>Ein Plan besteht aus Schichten: welches Produkt, wie dick, auf welcher Fläche.</translation>
    </message>
    <message>
        <source>With a promised date the plan knows what has to be ready first.</source>
        <translation>Mit einem zugesagten Termin weiß der Plan, was zuerst fertig sein muss.</translation>
    </message>
    <message>
        <source>Enter hands</source>
        <translation>Hände eintragen</translation>
    </message>
    <message>
        <source>Enter the room</source>
        <translation>Raum eintragen</translation>
    </message>
    <message>
        <source>Enter spots</source>
        <translation>Plätze eintragen</translation>
    </message>
    <message>
        <source>Enter products</source>
        <translation>Produkte eintragen</translation>
    </message>
    <message>
        <source>Enter pieces</source>
        <translation>Stücke eintragen</translation>
    </message>
    <message>
        <source>Enter orders</source>
        <translation>Aufträge eintragen</translation>
    </message>
    <message>
        <source>there, see below</source>
        <translation>da, siehe unten</translation>
    </message>
    <message>
        <source>there</source>
        <translation>da</translation>
    </message>
    <message>
        <source>can wait</source>
        <translation>kann warten</translation>
    </message>
    <message>
        <source>still lacks</source>
        <translation>fehlt noch</translation>
    </message>
    <message>
        <source>Set-up</source>
        <translation>Einrichten</translation>
    </message>
    <message>
        <source>Plan again</source>
        <translation>Neu planen</translation>
    </message>
    <message>
        <source>Everything that a plan needs is there.</source>
        <translation>Alles, was ein Plan braucht, ist da.</translation>
    </message>
    <message>
        <source>An order can wait. {why}</source>
        <translation>Ein Auftrag kann warten. {why}</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Planen</translation>
    </message>
    <message>
        <source>{title}, {number} of {all}: {lacking}</source>
        <translation>{title}, {number} von {all}: {lacking}</translation>
    </message>
    <message>
        <source>Open a studio, or make a new one.</source>
        <translation>Ein Studio öffnen oder ein neues anlegen.</translation>
    </message>
    <message>
        <source>Everything that a plan needs is there: planning can begin.</source>
        <translation>Alles für einen Plan ist da: Das Planen kann beginnen.</translation>
    </message>
    <message>
        <source>{done} of {all} are there. Next: {next}.</source>
        <translation>{done} von {all} sind da. Als Nächstes: {next}.</translation>
    </message>
</context>
<context>
    <name>sheets</name>
    <message>
        <source>it says otherwise than a line before it.</source>
        <translation>sie sagt etwas anderes als eine Zeile davor.</translation>
    </message>
    <message>
        <source>it names no temperature; say above which one its times hold at.</source>
        <translation>sie nennt keine Temperatur; darüber angeben, bei welcher ihre Zeiten gelten.</translation>
    </message>
    <message>
        <source>it can be read two ways; write “Recoat window {time}” if the window opens and closes then, or “Recoat after {time}” if it opens somewhere between.</source>
        <translation>das lässt sich auf zwei Arten lesen; schreib „Überarbeitungsfenster {time}“, wenn das Fenster dann auf- und zugeht, oder „Überarbeitbar ab {time}“, wenn es irgendwo dazwischen aufgeht.</translation>
    </message>
    <message>
        <source>it names no stage that is known here.</source>
        <translation>sie nennt keine hier bekannte Stufe.</translation>
    </message>
    <message>
        <source>it has no time with a unit, such as 4 h or 30 min.</source>
        <translation>sie hat keine Zeit mit Einheit, etwa 4 h oder 30 min.</translation>
    </message>
    <message>
        <source>its times hold for a range of temperatures; enter the one that is meant by hand.</source>
        <translation>ihre Zeiten gelten für einen Temperaturbereich; die gemeinte von Hand eintragen.</translation>
    </message>
    <message>
        <source>its times, masses and temperatures do not pair up; enter them by hand.</source>
        <translation>ihre Zeiten, Massen und Temperaturen gehen nicht auf; von Hand eintragen.</translation>
    </message>
    <message>
        <source>it is not a row of the table.</source>
        <translation>sie ist keine Zeile der Tabelle.</translation>
    </message>
    <message>
        <source>its first cell names no stage known here.</source>
        <translation>ihre erste Zelle nennt keine hier bekannte Stufe.</translation>
    </message>
    <message>
        <source>{text} says only one side; write the time itself, or leave it empty.</source>
        <translation>{text} nennt nur eine Seite; die Zeit selbst schreiben oder leer lassen.</translation>
    </message>
    <message>
        <source>{text} can be read two ways; write 1000, or 1.0.</source>
        <translation>{text} ist auf zwei Arten lesbar; 1000 oder 1.0 schreiben.</translation>
    </message>
    <message>
        <source>{text} is not a time; write for example 4-6 h or 30 min.</source>
        <translation>{text} ist keine Zeit; zum Beispiel 4-6 h oder 30 min schreiben.</translation>
    </message>
    <message>
        <source>{text} ends before it starts; write the short end first.</source>
        <translation>{text} endet, bevor es beginnt; das kurze Ende zuerst schreiben.</translation>
    </message>
    <message>
        <source>{text} is no time; it has to be more than nothing.</source>
        <translation>{text} ist keine Zeit; es muss mehr als nichts sein.</translation>
    </message>
    <message>
        <source>{text} is longer than any cure; check the unit.</source>
        <translation>{text} ist länger als jede Aushärtung; die Einheit prüfen.</translation>
    </message>
    <message>
        <source>d</source>
        <translation>T</translation>
    </message>
</context>
<context>
    <name>side</name>
    <message>
        <source>How good this plan is</source>
        <translation>Wie gut dieser Plan ist</translation>
    </message>
    <message>
        <source>No plan is kept yet.</source>
        <translation>Noch kein Plan behalten.</translation>
    </message>
    <message>
        <source>How good</source>
        <translation>Wie gut</translation>
    </message>
    <message>
        <source>Cups, minutes and heat of the mix of the chosen pour</source>
        <translation>Becher, Minuten und Wärme der Mischung des gewählten Gusses</translation>
    </message>
    <message>
        <source>How good this plan is, and how sure that is</source>
        <translation>Wie gut dieser Plan ist, und wie sicher das ist</translation>
    </message>
    <message>
        <source>In section</source>
        <translation>Im Schnitt</translation>
    </message>
    <message>
        <source>The mix of the chosen pour</source>
        <translation>Die Mischung des gewählten Gusses</translation>
    </message>
    <message>
        <source>Choose a pour that is still to come: here is its mix.</source>
        <translation>Wähle einen Guss, der noch kommt: Hier steht seine Mischung.</translation>
    </message>
    <message>
        <source>The piece in section, its mix, or how good the plan is</source>
        <translation>Das Stück im Schnitt, seine Mischung, oder wie gut der Plan ist</translation>
    </message>
    <message>
        <source>Mix</source>
        <translation>Mischung</translation>
    </message>
    <message>
        <source>The chosen piece, cut through its coats</source>
        <translation>Das gewählte Stück, durch seine Schichten geschnitten</translation>
    </message>
    <message>
        <source>Hands next</source>
        <translation>Nächste Handgriffe</translation>
    </message>
    <message>
        <source>Promises</source>
        <translation>Zusagen</translation>
    </message>
    <message>
        <source>Nothing is planned to need hands.</source>
        <translation>Nichts ist geplant, das Hände braucht.</translation>
    </message>
    <message>
        <source>No orders with a plan yet.</source>
        <translation>Noch keine Aufträge mit Plan.</translation>
    </message>
    <message>
        <source>{pieces}, by {last}</source>
        <translation>{pieces}, bis {last}</translation>
    </message>
    <message>
        <source>{pieces}, planned {when}: not recorded as poured; still possible until {last}</source>
        <translation>{pieces}, geplant {when}: nicht als gegossen notiert; noch möglich bis {last}</translation>
    </message>
    <message>
        <source>under way</source>
        <translation>läuft</translation>
    </message>
    <message>
        <source>not recorded</source>
        <translation>nicht notiert</translation>
    </message>
    <message>
        <source>overdue</source>
        <translation>überfällig</translation>
    </message>
    <message>
        <source>{time} left</source>
        <translation>noch {time}</translation>
    </message>
    <message>
        <source>Nothing to plan</source>
        <translation>Nichts zu planen</translation>
    </message>
    <message>
        <source>Everything is packed or has left.</source>
        <translation>Alles ist verpackt oder verschickt.</translation>
    </message>
    <message>
        <source>How it was made</source>
        <translation>Wie er entstand</translation>
    </message>
    <message>
        <source>no date</source>
        <translation>kein Termin</translation>
    </message>
    <message>
        <source>leaves {when}</source>
        <translation>geht ab {when}</translation>
    </message>
    <message>
        <source>left {when}</source>
        <translation>abgegangen {when}</translation>
    </message>
    <message>
        <source>{leaving}, the day it is due</source>
        <translation>{leaving}, am Tag der Fälligkeit</translation>
    </message>
    <message>
        <source>{leaving}, due {day}</source>
        <translation>{leaving}, fällig {day}</translation>
    </message>
    <message>
        <source>{why} Would keep it: {change}.</source>
        <translation>{why} Das hielte sie: {change}.</translation>
    </message>
    <message>
        <source>{why} No change that was tried keeps it. Soonest {when}: {change}.</source>
        <translation>{why} Keine versuchte Änderung hält sie. Frühestens {when}: {change}.</translation>
    </message>
</context>
<context>
    <name>spots</name>
    <message>
        <source>{piece} on {spot}, {coats}</source>
        <translation>{piece} auf {spot}, {coats}</translation>
    </message>
    <message>
        <source>{coat}, pinned</source>
        <translation>{coat}, festgesteckt</translation>
    </message>
    <message>
        <source>On the spot from {start}, not free in the time looked at.</source>
        <translation>Auf dem Platz ab {start}, in der betrachteten Zeit nicht frei.</translation>
    </message>
    <message>
        <source>On the spot {span}, until it can be handled or goes on.</source>
        <translation>Auf dem Platz {span}, bis griffest oder bis es weitergeht.</translation>
    </message>
    <message>
        <source>Timeline by spot</source>
        <translation>Zeitleiste nach Platz</translation>
    </message>
    <message>
        <source>One row for each spot, one cell for each piece that stands on it. Alt with left and right moves its next pour by five minutes, with Shift by an hour; Alt with up and down puts the piece on another spot.</source>
        <translation>Eine Zeile je Platz, eine Zelle je Stück, das darauf steht. Alt mit Links und Rechts verschiebt den nächsten Guss um fünf Minuten, mit Umschalt um eine Stunde; Alt mit Auf und Ab stellt das Stück auf einen anderen Platz.</translation>
    </message>
    <message>
        <source>No spots yet: add them under Studio.</source>
        <translation>Noch keine Plätze: unter Studio anlegen.</translation>
    </message>
    <message>
        <source>Spots</source>
        <translation>Plätze</translation>
    </message>
</context>
<context>
    <name>stacks</name>
    <message>
        <source>there is no leaf to lay; add a leaf under Products first.</source>
        <translation>es gibt kein Blattmetall zu legen; erst unter Produkte eines anlegen.</translation>
    </message>
    <message>
        <source>there is nothing to make it of; add a product under Products first.</source>
        <translation>es gibt nichts, woraus sie sein könnte; erst unter Produkte eines anlegen.</translation>
    </message>
    <message>
        <source>there is a pattern {name} already; choose another name.</source>
        <translation>eine Vorlage {name} gibt es schon; einen anderen Namen wählen.</translation>
    </message>
    <message>
        <source>{pattern} begins otherwise.</source>
        <translation>{pattern} beginnt anders.</translation>
    </message>
    <message>
        <source>this photo is kept with it already.</source>
        <translation>dieses Foto liegt schon dabei.</translation>
    </message>
    <message>
        <source>a piece needs a coat; add a product under Products first.</source>
        <translation>ein Stück braucht eine Schicht; erst unter Produkte ein Produkt anlegen.</translation>
    </message>
    <message>
        <source>give both sides, or neither: then it follows from the shape.</source>
        <translation>beide Seiten angeben, oder keine: Dann folgt es aus der Form.</translation>
    </message>
    <message>
        <source>{order} would have no piece left; give it another one, or remove it first.</source>
        <translation>{order} hätte kein Stück mehr; ein anderes zuordnen oder den Auftrag erst entfernen.</translation>
    </message>
    <message>
        <source>{film} is near what an edge without a rim holds ({most}): some runs off.</source>
        <translation>{film} ist nahe an dem, was eine Kante ohne Rand hält ({most}): Etwas läuft ab.</translation>
    </message>
    <message>
        <source>the {coat} below cures, and what lies on it bonds only in its window or once it is scuffed; choose in the window.</source>
        <translation>{coat} darunter härtet aus, und was darauf kommt, haftet nur in deren Fenster oder angeschliffen; „im Fenster“ wählen.</translation>
    </message>
    <message>
        <source>leaf laid on a wet coat sinks; let it come to tack: choose in the window.</source>
        <translation>Blattmetall auf nasser Schicht sinkt ein; erst klebrig werden lassen: im Fenster wählen.</translation>
    </message>
    <message>
        <source>leaf does not stick to the {coat}; put a size between them.</source>
        <translation>Blattmetall haftet nicht auf {coat}; Anlegemilch dazwischen legen.</translation>
    </message>
    <message>
        <source>a dry {coat} has no tack for leaf; choose in the window, or put a size on.</source>
        <translation>{coat}, trocken, hält kein Blattmetall; im Fenster wählen, oder Anlegemilch darauf.</translation>
    </message>
    <message>
        <source>only two-part mixes meet wet in wet, and the {coat} below is none; choose on dry.</source>
        <translation>nass in nass geht nur Zweikomponenten-Mischung auf Zweikomponenten-Mischung, und darunter liegt {coat}; „auf trocken“ wählen.</translation>
    </message>
    <message>
        <source>only two-part mixes meet wet in wet, and the {coat} is none; choose in the window.</source>
        <translation>nass in nass geht nur Zweikomponenten-Mischung auf Zweikomponenten-Mischung, und {coat} ist keine; „im Fenster“ wählen.</translation>
    </message>
    <message>
        <source>nothing covers the {coat}; a lock coat in its window keeps it.</source>
        <translation>nichts deckt {coat}; eine Schutzschicht im Fenster bewahrt es.</translation>
    </message>
    <message>
        <source>sanding takes the {coat} off; say that it can&apos;t be sanded.</source>
        <translation>Schleifen nimmt {coat} ab; angeben, dass es sich nicht schleifen lässt.</translation>
    </message>
    <message>
        <source>ink</source>
        <translation>Tinte</translation>
    </message>
    <message>
        <source>the plan sands the {coat} first, which it does not survive.</source>
        <translation>der Plan schleift erst {coat}, was es nicht übersteht.</translation>
    </message>
    <message>
        <source>the plan has no time for it: {reason}</source>
        <translation>der Plan hat dafür keine Zeit: {reason}</translation>
    </message>
    <message>
        <source>poured at any hour with hands in the coming week, the window of {product} closes before hands can be there for the {over}, and the {coat} can&apos;t be sanded: take a slower product, allow a touch test, or lock it wet in wet.</source>
        <translation>zu jeder Stunde mit Händen der kommenden Woche gegossen, schließt das Fenster von {product}, bevor Hände für {over} da sein können, und {coat} lässt sich nicht schleifen: ein langsameres Produkt nehmen, eine Fingerprobe erlauben oder nass in nass überziehen.</translation>
    </message>
    <message>
        <source>{coat} is poured already, so nothing of it changes any more; work on the coats above, or take the pour back first.</source>
        <translation>{coat} ist schon gegossen, daran ändert sich nichts mehr; an den Schichten darüber arbeiten oder erst den Guss zurücknehmen.</translation>
    </message>
    <message>
        <source>{coats} and {coat} are poured already, so nothing of them changes any more; work on the coats above, or take the pours back first.</source>
        <translation>{coats} und {coat} sind schon gegossen, daran ändert sich nichts mehr; an den Schichten darüber arbeiten oder erst die Güsse zurücknehmen.</translation>
    </message>
    <message>
        <source>{piece}, {coat}: it lies on the bare piece, where nothing is wet, and is planned on bare; put a coat below it, or choose in the window.</source>
        <translation>{piece}, {coat}: liegt auf dem rohen Stück, wo nichts nass ist, und wird auf roh geplant; eine Schicht darunter legen oder „im Fenster“ wählen.</translation>
    </message>
</context>
<context>
    <name>stages</name>
    <message>
        <source>working time over</source>
        <translation>Verarbeitungszeit vorbei</translation>
    </message>
    <message>
        <source>tack-free</source>
        <translation>klebfrei</translation>
    </message>
    <message>
        <source>cup life</source>
        <translation>Topfzeit</translation>
    </message>
    <message>
        <source>working time</source>
        <translation>Verarbeitungszeit</translation>
    </message>
    <message>
        <source>last torch</source>
        <translation>letztes Abflammen</translation>
    </message>
    <message>
        <source>cover</source>
        <translation>abdecken</translation>
    </message>
    <message>
        <source>tape opens</source>
        <translation>Klebeband ab</translation>
    </message>
    <message>
        <source>tape closes</source>
        <translation>Klebeband bis</translation>
    </message>
    <message>
        <source>trim opens</source>
        <translation>Tropfen ab</translation>
    </message>
    <message>
        <source>trim closes</source>
        <translation>Tropfen bis</translation>
    </message>
    <message>
        <source>recoat opens</source>
        <translation>überarbeitbar</translation>
    </message>
    <message>
        <source>tack free</source>
        <translation>klebfrei</translation>
    </message>
    <message>
        <source>recoat closes</source>
        <translation>überarbeitbar bis</translation>
    </message>
    <message>
        <source>sandable</source>
        <translation>schleifbar</translation>
    </message>
    <message>
        <source>handle</source>
        <translation>griffest</translation>
    </message>
    <message>
        <source>print free</source>
        <translation>abdruckfrei</translation>
    </message>
    <message>
        <source>print-free</source>
        <translation>abdruckfrei</translation>
    </message>
    <message>
        <source>full cure</source>
        <translation>ausgehärtet</translation>
    </message>
</context>
<context>
    <name>stock</name>
    <message>
        <source>{product}, part {part}</source>
        <translation>{product}, Komponente {part}</translation>
    </message>
    <message>
        <source>No bottle of {stuff} is entered; the plan takes {planned}.</source>
        <translation>Von {stuff} ist keine Flasche eingetragen; der Plan braucht {planned}.</translation>
    </message>
    <message>
        <source>{stuff} runs out at pour {number} ({pieces}): {short} are short in all.</source>
        <translation>{stuff} geht bei Guss {number} ({pieces}) aus: Insgesamt fehlen {short}.</translation>
    </message>
    <message>
        <source>After pour {number} less than the reserve of {stuff} is left.</source>
        <translation>Nach Guss {number} ist von {stuff} weniger als die Reserve übrig.</translation>
    </message>
    <message>
        <source>An order for {stuff} that goes out today may come too late for it.</source>
        <translation>Wird {stuff} heute bestellt, kommt es dafür vielleicht zu spät.</translation>
    </message>
    <message>
        <source>{lacking} more were weighed from lot {label} of {stuff} than it held: count what is left in it.</source>
        <translation>Aus Charge {label} von {stuff} sind {lacking} mehr gewogen, als darin war: zählen, was noch da ist.</translation>
    </message>
    <message>
        <source>{guessed} of {stuff} were weighed without their lot; they count as from lot {label}.</source>
        <translation>{guessed} {stuff} sind ohne Charge gewogen; sie zählen als aus Charge {label}.</translation>
    </message>
    <message>
        <source>{grams} of {stuff} were weighed, but no bottle of it is entered.</source>
        <translation>{grams} {stuff} sind gewogen, aber es ist keine Flasche davon eingetragen.</translation>
    </message>
    <message>
        <source>Lot {label} of {stuff} is past its day at pour {number}.</source>
        <translation>Charge {label} von {stuff} ist bei Guss {number} über ihrem Datum.</translation>
    </message>
    <message>
        <source>Lot {label} of {stuff} was good until {day}.</source>
        <translation>Charge {label} von {stuff} war haltbar bis {day}.</translation>
    </message>
    <message>
        <source>Lot {label} of {stuff} is good until {day}, and nothing planned takes {free} of it.</source>
        <translation>Charge {label} von {stuff} ist haltbar bis {day}, und nichts Geplantes braucht {free} davon.</translation>
    </message>
    <message>
        <source>{piece} would come from lots {lots} of {stuff}: a set from one lot matches in colour.</source>
        <translation>{piece} käme aus den Chargen {lots} von {stuff}: Ein Satz aus einer Charge passt in der Farbe zusammen.</translation>
    </message>
    <message>
        <source>What is in it</source>
        <translation>Was darin ist</translation>
    </message>
    <message>
        <source>Kept for</source>
        <translation>Aufgehoben für</translation>
    </message>
    <message>
        <source>Opened</source>
        <translation>Geöffnet</translation>
    </message>
    <message>
        <source>opened on</source>
        <translation>geöffnet am</translation>
    </message>
    <message>
        <source>Best before</source>
        <translation>Haltbar bis</translation>
    </message>
    <message>
        <source>its label says</source>
        <translation>laut Etikett</translation>
    </message>
    <message>
        <source>Lot number on its label</source>
        <translation>Chargennummer auf dem Etikett</translation>
    </message>
    <message>
        <source>There from</source>
        <translation>Vorhanden ab</translation>
    </message>
    <message>
        <source>In it when new</source>
        <translation>Neu darin</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>any order</source>
        <translation>jeden Auftrag</translation>
    </message>
    <message>
        <source>What all of it cost, {currency}</source>
        <translation>Preis der ganzen Flasche, {currency}</translation>
    </message>
    <message>
        <source>Sections</source>
        <translation>Abschnitte</translation>
    </message>
    <message>
        <source>What lasts</source>
        <translation>Was reicht</translation>
    </message>
    <message>
        <source>Bottles</source>
        <translation>Flaschen</translation>
    </message>
    <message>
        <source>No bottle yet. Add one for each part of what is on the shelf.</source>
        <translation>Noch keine Flasche. Trag für jede Komponente im Regal eine ein.</translation>
    </message>
    <message>
        <source>Open a studio first.</source>
        <translation>Erst ein Studio öffnen.</translation>
    </message>
    <message>
        <source>A bottle holds a product; add one under Products first.</source>
        <translation>In einer Flasche ist ein Produkt; trag erst eines unter Produkte ein.</translation>
    </message>
    <message>
        <source>Add a bottle to see how long it lasts.</source>
        <translation>Trag eine Flasche ein und sieh, wie lange sie reicht.</translation>
    </message>
    <message>
        <source>New bottle</source>
        <translation>Neue Flasche</translation>
    </message>
    <message>
        <source>Add a bottle</source>
        <translation>Eine Flasche eintragen</translation>
    </message>
    <message>
        <source>Copy {name}</source>
        <translation>{name} kopieren</translation>
    </message>
    <message>
        <source>Remove {name}</source>
        <translation>{name} entfernen</translation>
    </message>
    <message>
        <source>Move a bottle</source>
        <translation>Eine Flasche verschieben</translation>
    </message>
    <message>
        <source>In it now, without the bottle</source>
        <translation>Jetzt darin, ohne Flasche</translation>
    </message>
    <message>
        <source>Keep this count</source>
        <translation>So zählen</translation>
    </message>
    <message>
        <source>Count it</source>
        <translation>Zählen</translation>
    </message>
    <message>
        <source>Put it on the scale now and then: from a count on, only what was weighed since is taken off.</source>
        <translation>Stell sie ab und zu auf die Waage: Ab da wird nur abgezogen, was seither abgewogen wurde.</translation>
    </message>
    <message>
        <source>{when}: {left} left</source>
        <translation>{when}: {left} übrig</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <source>Write what the scale shows.</source>
        <translation>Schreib, was die Waage zeigt.</translation>
    </message>
    <message>
        <source>count</source>
        <translation>Zählung</translation>
    </message>
    <message>
        <source>take a count back</source>
        <translation>Zählung zurücknehmen</translation>
    </message>
    <message>
        <source>What the bottles are enough for</source>
        <translation>Wofür die Flaschen reichen</translation>
    </message>
    <message>
        <source>Nothing is planned and no bottle is entered. Enter the bottles on your shelf, and plan: then you see here what lasts and what to order.</source>
        <translation>Nichts ist geplant und keine Flasche eingetragen. Trag die Flaschen aus deinem Regal ein und plane: Dann siehst du hier, was reicht und was zu bestellen ist.</translation>
    </message>
    <message>
        <source>Hatched is what the plan has reserved. Each step on the right is a pour, from today on; the broken line is your reserve, the post the day to order by.</source>
        <translation>Schraffiert ist, was der Plan reserviert hat. Jede Stufe rechts ist ein Guss, von heute an; die gestrichelte Linie ist deine Reserve, der Pfosten der letzte Tag zum Bestellen.</translation>
    </message>
    <message>
        <source>Bottles of {stuff}</source>
        <translation>Flaschen von {stuff}</translation>
    </message>
    <message>
        <source>Its bottles</source>
        <translation>Die Flaschen</translation>
    </message>
    <message>
        <source>Enter a bottle</source>
        <translation>Flasche eintragen</translation>
    </message>
    <message>
        <source>No bottle is entered. The plan takes {planned}.</source>
        <translation>Keine Flasche eingetragen. Der Plan braucht {planned}.</translation>
    </message>
    <message>
        <source>{left} left, {coming} more to come; the plan takes {planned}.</source>
        <translation>{left} übrig, {coming} kommen noch; der Plan braucht {planned}.</translation>
    </message>
    <message>
        <source>{left} left; the plan takes {planned}.</source>
        <translation>{left} übrig; der Plan braucht {planned}.</translation>
    </message>
    <message>
        <source>Nothing that is planned takes of it.</source>
        <translation>Der Plan braucht nichts davon.</translation>
    </message>
    <message>
        <source>Enough: {after} stay when all is poured.</source>
        <translation>Reicht: {after} bleiben, wenn alles gegossen ist.</translation>
    </message>
    <message>
        <source>Runs out at pour {number} ({pieces}), {when}: {short} short. {order}</source>
        <translation>Geht bei Guss {number} ({pieces}) aus, {when}: {short} fehlen. {order}</translation>
    </message>
    <message>
        <source>Enough for the plan, but after pour {number} less than your reserve of {reserve} is left. {order}</source>
        <translation>Reicht für den Plan, aber nach Guss {number} ist weniger als deine Reserve von {reserve} übrig. {order}</translation>
    </message>
    <message>
        <source>Order at once; it may come too late.</source>
        <translation>Sofort bestellen; es kommt vielleicht zu spät.</translation>
    </message>
    <message>
        <source>Order by {date}.</source>
        <translation>Bis {date} bestellen.</translation>
    </message>
    <message>
        <source>{pieces}: no bottle of {stuff} can spare the {grams} for all.</source>
        <translation>{pieces}: Keine Flasche von {stuff} hat neben allem anderen die {grams} dafür.</translation>
    </message>
    <message>
        <source>{pieces}: lot {label} of {stuff} can spare the {grams} for all.</source>
        <translation>{pieces}: Charge {label} von {stuff} hat neben allem anderen die {grams} dafür.</translation>
    </message>
    <message>
        <source>{left} of {new}</source>
        <translation>{left} von {new}</translation>
    </message>
    <message>
        <source>Part {part}, {left} of {new}</source>
        <translation>Komponente {part}, {left} von {new}</translation>
    </message>
    <message>
        <source>{label}: {left} left of {new}, {reserved} of it reserved, {state}.</source>
        <translation>{label}: {left} von {new} übrig, davon {reserved} reserviert, {state}.</translation>
    </message>
    <message>
        <source>not opened</source>
        <translation>nicht geöffnet</translation>
    </message>
    <message>
        <source>opened</source>
        <translation>geöffnet</translation>
    </message>
    <message>
        <source>left</source>
        <translation>übrig</translation>
    </message>
    <message>
        <source>used</source>
        <translation>verbraucht</translation>
    </message>
    <message>
        <source>free</source>
        <translation>frei</translation>
    </message>
    <message>
        <source>is its last day</source>
        <translation>ist der letzte Tag</translation>
    </message>
    <message>
        <source>is the first pour that takes of it, number {number}</source>
        <translation>nimmt der erste Guss davon, Nummer {number}</translation>
    </message>
    <message>
        <source>reserved for pieces of no order</source>
        <translation>reserviert für Stücke ohne Auftrag</translation>
    </message>
    <message>
        <source>reserved for {order}</source>
        <translation>reserviert für {order}</translation>
    </message>
    <message>
        <source>{lacking} more were weighed from it than it held. Count what is left.</source>
        <translation>Daraus sind {lacking} mehr gewogen, als darin war. Zähl, was noch da ist.</translation>
    </message>
    <message>
        <source>It is past its last day. Its data sheet says what to do.</source>
        <translation>Der letzte Tag ist vorbei. Das Datenblatt sagt, was zu tun ist.</translation>
    </message>
    <message>
        <source>It will be past its last day at a planned pour.</source>
        <translation>Bei einem geplanten Guss ist ihr letzter Tag vorbei.</translation>
    </message>
    <message>
        <source>{guessed} were weighed without a lot and count as from this bottle.</source>
        <translation>{guessed} sind ohne Charge gewogen und zählen als aus dieser Flasche.</translation>
    </message>
    <message>
        <source>Add a pigment</source>
        <translation>Ein Pigment eintragen</translation>
    </message>
    <message>
        <source>bottles of it are entered ({labels}); remove them under Bottles first.</source>
        <translation>davon sind Flaschen eingetragen ({labels}); entferne sie erst unter Flaschen.</translation>
    </message>
</context>
<context>
    <name>stuck</name>
    <message>
        <source>There is no piece yet: add a piece with its stack of coats.</source>
        <translation>Noch kein Stück: eines mit seinem Schichtaufbau anlegen.</translation>
    </message>
    <message>
        <source>There are no hands yet: say who can work when.</source>
        <translation>Noch keine Hände: eintragen, wer wann arbeiten kann.</translation>
    </message>
    <message>
        <source>There is no spot yet: add a level place on the shelf.</source>
        <translation>Noch kein Platz: eine ebene Stelle im Regal anlegen.</translation>
    </message>
    <message>
        <source>There is no room yet: add one with its temperature.</source>
        <translation>Noch kein Raum: einen mit seiner Temperatur anlegen.</translation>
    </message>
    <message>
        <source>the {least} above the dew point, which have to hold for {dew_hours:g} h after it</source>
        <translation>die {least} über dem Taupunkt, die noch {dew_hours:g} h danach halten müssen</translation>
    </message>
    <message>
        <source>{words} while somebody can work; {advice}</source>
        <translation>{words}, während jemand arbeiten kann; {advice}</translation>
    </message>
    <message>
        <source>the minimum of {product}, {low}</source>
        <translation>das Mindeste von {product}, {low}</translation>
    </message>
    <message>
        <source>the maximum of {product}, {high}</source>
        <translation>das Höchste von {product}, {high}</translation>
    </message>
    <message>
        <source>the humidity limit of {product}, {damp:g} %</source>
        <translation>die Feuchtegrenze von {product}, {damp:g} %</translation>
    </message>
    <message>
        <source>needs {low}, the minimum of {product}, and {name} never gets warmer than {warmest}</source>
        <translation>braucht {low}, das Mindeste von {product}, und {name} wird nie wärmer als {warmest}</translation>
    </message>
    <message>
        <source>finds no time when {home} keeps every limit of {product} (temperature, humidity, dew point) for its whole block and somebody can work; keep the room in its limits, or add hours at another time of day.</source>
        <translation>findet keine Zeit, in der {home} jede Grenze von {product} (Temperatur, Luftfeuchte, Taupunkt) für die ganze Arbeit hält und jemand arbeiten kann; den Raum in den Grenzen halten oder Stunden zu anderer Tageszeit ergänzen.</translation>
    </message>
    <message>
        <source>needs {high} at most, the maximum of {product}, and {name} never gets colder than {coldest}</source>
        <translation>braucht höchstens {high}, das Höchste von {product}, und {name} wird nie kälter als {coldest}</translation>
    </message>
    <message>
        <source>needs {most:g} % of humidity at most, the limit of {product}, and {name} never gets drier than {driest:.0f} %</source>
        <translation>braucht höchstens {most:g} % Luftfeuchte, die Grenze von {product}, und {name} wird nie trockener als {driest:.0f} %</translation>
    </message>
    <message>
        <source>needs a surface at least {least} above the dew point, and {name} never gets more than {known} above it</source>
        <translation>braucht eine Oberfläche mindestens {least} über dem Taupunkt, und {name} kommt nie mehr als {known} darüber</translation>
    </message>
    <message>
        <source>its tape pulled</source>
        <translation>das Abziehen des Klebebands</translation>
    </message>
    <message>
        <source>its drips trimmed</source>
        <translation>das Abnehmen der Tropfen</translation>
    </message>
    <message>
        <source>it {words}</source>
        <translation>es {words}</translation>
    </message>
    <message>
        <source>each coat alone could be poured, but no choice of pours brings the {name} into its window; more waking hours, a warmer night or a coat that can be sanded would help.</source>
        <translation>jede Schicht für sich ließe sich gießen, aber keine Wahl der Güsse bringt {name} in das Fenster; mehr wache Stunden, eine wärmere Nacht oder eine schleifbare Schicht würden helfen.</translation>
    </message>
    <message>
        <source>the {name} is pinned to {when}, and cannot be poured then; pin it to another time, or let it go.</source>
        <translation>{name} ist auf {when} festgesteckt und lässt sich dann nicht gießen; auf eine andere Zeit feststecken oder loslassen.</translation>
    </message>
    <message>
        <source>the {coat} {words}</source>
        <translation>{coat} {words}</translation>
    </message>
    <message>
        <source>the {coat} never gets to {stage} in the time looked at, so the piece cannot be packed; a warmer room or another product would help.</source>
        <translation>{coat} erreicht in der betrachteten Zeit nie {stage}, also lässt sich das Stück nicht verpacken; ein wärmerer Raum oder ein anderes Produkt würde helfen.</translation>
    </message>
    <message>
        <source>never gets so hard in the time looked at that it can be handled; a warmer room or another product would help.</source>
        <translation>wird in der betrachteten Zeit nie griffest; ein wärmerer Raum oder ein anderes Produkt würde helfen.</translation>
    </message>
    <message>
        <source>has to have {work} while the film is right for it, for {length} at most, and whenever it is poured nobody is awake then; add hours for it at another time of day, or do without.</source>
        <translation>braucht {work}, solange der Film dafür richtig ist, höchstens {length} lang, und wann auch immer gegossen wird, ist dann niemand wach; dafür Stunden zu anderer Tageszeit ergänzen oder darauf verzichten.</translation>
    </message>
    <message>
        <source>has to have {work} in {length}, and on the safe side the figures of {product} leave no time for that; look at them under Products, or do without.</source>
        <translation>braucht {work} in {length}, und auf der sicheren Seite lassen die Angaben von {product} dafür keine Zeit; unter Produkte nachsehen oder darauf verzichten.</translation>
    </message>
    <message>
        <source>finds no spot free from its pour until it can be handled; add a spot, or clear one.</source>
        <translation>findet vom Guss bis griffest keinen freien Platz; einen Platz ergänzen oder einen räumen.</translation>
    </message>
    <message>
        <source>lies on bare porous work, and whenever somebody can work the room warms by more than {steady} meanwhile: the air in the pores would blow bubbles; add hours in which the room cools, or keep it at one temperature.</source>
        <translation>liegt auf rohem saugendem Material, und immer wenn jemand arbeiten kann, wird der Raum dabei um mehr als {steady} wärmer: Die Luft in den Poren gäbe Blasen; Stunden ergänzen, in denen der Raum abkühlt, oder die Temperatur gleich halten.</translation>
    </message>
    <message>
        <source>waits until the {name} on the other face can be handled, and it never can; a warmer room or another product would help.</source>
        <translation>wartet, bis {name} auf der anderen Fläche griffest ist, und das wird es nie; ein wärmerer Raum oder ein anderes Produkt würde helfen.</translation>
    </message>
    <message>
        <source>{name} is away until {until}</source>
        <translation>{name} ist bis {until} weg</translation>
    </message>
    <message>
        <source>{day} {month} {year}</source>
        <translation>{day}. {month} {year}</translation>
    </message>
    <message>
        <source>{name} has no working hours</source>
        <translation>{name} hat keine Arbeitszeiten</translation>
    </message>
    <message>
        <source>no spot is large enough; it needs {length:.0f} by {width:.0f} mm, and the largest, {largest}, has {length_mm:.0f} by {width_mm:.0f} mm; add a larger spot, or give it less clearance.</source>
        <translation>kein Platz ist groß genug; nötig sind {length:.0f} mal {width:.0f} mm, und der größte, {largest}, hat {length_mm:.0f} mal {width_mm:.0f} mm; einen größeren Platz ergänzen oder weniger Abstand geben.</translation>
    </message>
    <message>
        <source>its set needs {count} spots in one place, and there are fewer; add spots, or divide the order.</source>
        <translation>der Satz braucht {count} Plätze an einem Ort, und es gibt weniger; Plätze ergänzen oder den Auftrag teilen.</translation>
    </message>
    <message>
        <source>no spot is high enough; it needs {height:.0f} mm of height with its cover, and where it has room to lie, {highest} is the highest with {height_mm:.0f} mm; make room above it, or take a lower cover.</source>
        <translation>kein Platz ist hoch genug; nötig sind {height:.0f} mm Höhe mit Haube, und wo das Stück liegen kann, ist {highest} mit {height_mm:.0f} mm am höchsten; darüber Platz schaffen oder eine niedrigere Haube nehmen.</translation>
    </message>
    <message>
        <source>no order of its pours was found that keeps every rule; more hours, or a coat that can be sanded, would help.</source>
        <translation>keine Reihenfolge der Güsse wurde gefunden, die alle Regeln hält; mehr Stunden oder eine Schicht, die sich schleifen lässt, würden helfen.</translation>
    </message>
    <message>
        <source>packing it takes {packing} of hands on end, and nobody works longer than {longest} in one go; give somebody longer hours on one day.</source>
        <translation>das Verpacken braucht {packing} Handarbeit am Stück, und niemand arbeitet länger als {longest} in einem Zug; jemandem an einem Tag längere Stunden geben.</translation>
    </message>
    <message>
        <source>{piece}: {words}</source>
        <translation>{piece}: {words}</translation>
    </message>
    <message>
        <source>more hours, or a slower product, would help.</source>
        <translation>mehr Stunden oder ein langsameres Produkt würden helfen.</translation>
    </message>
    <message>
        <source>takes {block}, and no pour of {lower} that keeps the other rules opens a window that somebody can meet</source>
        <translation>braucht {block}, und kein Guss von {lower}, der die anderen Regeln hält, öffnet ein erreichbares Fenster</translation>
    </message>
    <message>
        <source>the {coat} below</source>
        <translation>{coat} darunter</translation>
    </message>
    <message>
        <source>closes {when}</source>
        <translation>schließt {when}</translation>
    </message>
    <message>
        <source>can only go on {lower} after washing and sanding, and no time for that was found; its data sheet does not say when the window closes: add that figure under Products.</source>
        <translation>kann auf {lower} nur nach Waschen und Anschleifen folgen, und dafür wurde keine Zeit gefunden; das Datenblatt sagt nicht, wann das Fenster schließt: den Wert unter Produkte eintragen.</translation>
    </message>
    <message>
        <source>waits for {lower} to reach {stage}, and that never does{no_scuff}; a warmer room or another product would help.</source>
        <translation>wartet, bis {lower} so weit ist ({stage}), und das kommt nie{no_scuff}; ein wärmerer Raum oder ein anderes Produkt würde helfen.</translation>
    </message>
    <message>
        <source>a slower product, or less to pour at once, would help.</source>
        <translation>ein langsameres Produkt oder weniger auf einmal zu gießen würde helfen.</translation>
    </message>
    <message>
        <source>is meant wet in wet and takes {takes}, but {lower} can be worked for {left} at most once it is spread (working time, on the safe side)</source>
        <translation>ist nass in nass gemeint und braucht {takes}, aber {lower} lässt sich nach dem Verteilen höchstens {left} bearbeiten (Verarbeitungszeit, auf der sicheren Seite)</translation>
    </message>
    <message>
        <source>, and starts are on whole five minutes</source>
        <translation>, und begonnen wird auf ganze fünf Minuten</translation>
    </message>
    <message>
        <source>takes {takes}, but on the safe side the window of {lower} has closed before it opens</source>
        <translation>braucht {takes}, aber auf der sicheren Seite ist das Fenster von {lower} zu, bevor es öffnet</translation>
    </message>
    <message>
        <source>finds no time: whenever somebody can work, {home} breaks a limit before the pour is safe, most often {worst}; keep the room in its limits, or add hours at another time of day.</source>
        <translation>findet keine Zeit: Immer wenn jemand arbeiten kann, bricht {home} eine Grenze, bevor der Guss sicher ist, am häufigsten {worst}; den Raum in den Grenzen halten oder Stunden zu anderer Tageszeit ergänzen.</translation>
    </message>
    <message>
        <source>warm it, or choose another product.</source>
        <translation>wärmer heizen oder ein anderes Produkt wählen.</translation>
    </message>
    <message>
        <source>cool it, or choose another product.</source>
        <translation>kühlen oder ein anderes Produkt wählen.</translation>
    </message>
    <message>
        <source>warm it, or dry its air.</source>
        <translation>wärmer heizen oder die Luft trocknen.</translation>
    </message>
    <message>
        <source>{words}; {advice}</source>
        <translation>{words}; {advice}</translation>
    </message>
    <message>
        <source>dry its air, or choose another product.</source>
        <translation>die Luft trocknen oder ein anderes Produkt wählen.</translation>
    </message>
    <message>
        <source>nobody works before {until}, which is as far as was looked: {who}; add working hours or shorten an absence, under Studio.</source>
        <translation>bis {until}, so weit wurde geschaut, arbeitet niemand: {who}; unter Studio Arbeitszeiten ergänzen oder eine Abwesenheit kürzen.</translation>
    </message>
    <message>
        <source>takes {takes}, but the safe window of {lower} is never open for more than {length}{tight}</source>
        <translation>braucht {takes}, aber das sichere Fenster von {lower} ist nie länger als {length} offen{tight}</translation>
    </message>
    <message>
        <source>allow sanding or a touch test of it under Pieces, or strip the piece in the log.</source>
        <translation>unter Stücke Schleifen oder eine Fingerprobe erlauben, oder das Stück im Werkstattbuch als abgetragen eintragen.</translation>
    </message>
    <message>
        <source>comes too late: the window of {lower} closed {closed}</source>
        <translation>kommt zu spät: Das Fenster von {lower} schloss {closed}</translation>
    </message>
    <message>
        <source>misses the window of {lower}: it opens {opens} and {closing}, when nobody can work {length} on end</source>
        <translation>verfehlt das Fenster von {lower}: Es öffnet {opens} und {closing}, und niemand kann dann {length} am Stück arbeiten</translation>
    </message>
    <message>
        <source>needs {length} of hands in the window of {lower}, and each one falls at a time when nobody can work: poured {poured}, for example, it opens {opens} and {closing}</source>
        <translation>braucht {length} Hände im Fenster von {lower}, und jedes fällt in eine Zeit, zu der niemand arbeiten kann: zum Beispiel {poured} gegossen, öffnet es {opens} und {closing}</translation>
    </message>
    <message>
        <source>does not close in the time looked at</source>
        <translation>schließt in der betrachteten Zeit nicht</translation>
    </message>
    <message>
        <source>the {coat}</source>
        <translation>{coat}</translation>
    </message>
    <message>
        <source>; leaf does not stick to what is sanded</source>
        <translation>; Blattmetall haftet nicht auf Geschliffenem</translation>
    </message>
    <message>
        <source>; {name} cannot be sanded</source>
        <translation>; {name} lässt sich nicht schleifen</translation>
    </message>
    <message>
        <source>; nor is there a time to wash and sand it</source>
        <translation>; und auch zum Waschen und Anschleifen ist keine Zeit</translation>
    </message>
    <message>
        <source>; the data sheet of {product} does not say when to sand</source>
        <translation>; das Datenblatt von {product} sagt nicht, ab wann schleifbar</translation>
    </message>
    <message>
        <source>takes {needed} of hands on end, turning it first, and nobody works longer than {longest} in one go; give somebody longer hours on one day, or divide the set.</source>
        <translation>braucht {needed} Handarbeit am Stück, mit Wenden davor, und niemand arbeitet länger als {longest} in einem Zug; jemandem an einem Tag längere Stunden geben oder den Satz teilen.</translation>
    </message>
    <message>
        <source>takes {needed} of hands on end, and nobody works longer than {longest} in one go; give somebody longer hours on one day, or divide the set.</source>
        <translation>braucht {needed} Handarbeit am Stück, und niemand arbeitet länger als {longest} in einem Zug; jemandem an einem Tag längere Stunden geben oder den Satz teilen.</translation>
    </message>
    <message>
        <source>does not fit into the days that were asked for; ask for more.</source>
        <translation>passt nicht in die verlangten Tage; mehr verlangen.</translation>
    </message>
    <message>
        <source>the other pieces take the spots and the hands for all the time looked at; alone it could be made, so add a spot or hours, or take another piece out.</source>
        <translation>die anderen Stücke belegen Plätze und Hände für die ganze betrachtete Zeit; allein ließe es sich machen, also einen Platz oder Stunden ergänzen oder ein anderes Stück herausnehmen.</translation>
    </message>
    <message>
        <source>it never cures far enough to be packed in the time looked at; a warmer room or another product would help.</source>
        <translation>es härtet in der betrachteten Zeit nie weit genug zum Verpacken; ein wärmerer Raum oder ein anderes Produkt würde helfen.</translation>
    </message>
</context>
<context>
    <name>studio</name>
    <message>
        <source>Sections</source>
        <translation>Abschnitte</translation>
    </message>
    <message>
        <source>Set-up</source>
        <translation>Einrichten</translation>
    </message>
    <message>
        <source>Hands</source>
        <translation>Hände</translation>
    </message>
    <message>
        <source>Room and shelf</source>
        <translation>Raum und Regal</translation>
    </message>
    <message>
        <source>Units and words</source>
        <translation>Einheiten und Worte</translation>
    </message>
    <message>
        <source>Rules of thumb</source>
        <translation>Faustregeln</translation>
    </message>
    <message>
        <source>Reminders</source>
        <translation>Erinnerungen</translation>
    </message>
    <message>
        <source>Backups</source>
        <translation>Sicherungen</translation>
    </message>
</context>
<context>
    <name>taps</name>
    <message>
        <source>{what}: {coat}</source>
        <translation>{what}: {coat}</translation>
    </message>
    <message>
        <source>{what} ({names})</source>
        <translation>{what} ({names})</translation>
    </message>
</context>
<context>
    <name>teaching</name>
    <message>
        <source>; as your own touch tests found</source>
        <translation>; so haben es deine Fingerproben ergeben</translation>
    </message>
    <message>
        <source>{name}: {early} to {late}, likely {likely}</source>
        <translation>{name}: {early} bis {late}, wahrscheinlich {likely}</translation>
    </message>
    <message>
        <source>What your own touch tests say</source>
        <translation>Was deine Fingerproben sagen</translation>
    </message>
    <message>
        <source>No touch test of this product yet. Write down in the log what a finger finds, and this studio&apos;s own times are learned from it.</source>
        <translation>Noch keine Fingerprobe von diesem Produkt. Schreib auf, was der Finger findet; daraus werden die Zeiten deiner Werkstatt gelernt.</translation>
    </message>
    <message>
        <source>Tests teach only what a finger can feel. Recoat closes and cup life stay as the sheet prints them.</source>
        <translation>Proben lehren nur, was ein Finger fühlen kann. Das Ende des Fensters und die Topfzeit bleiben, wie das Datenblatt sie druckt.</translation>
    </message>
    <message>
        <source>Use them</source>
        <translation>Danach planen</translation>
    </message>
    <message>
        <source>Go back to the data sheet</source>
        <translation>Zurück zum Datenblatt</translation>
    </message>
    <message>
        <source>Use the newer tests too</source>
        <translation>Auch die neueren nehmen</translation>
    </message>
    <message>
        <source>data sheet</source>
        <translation>Datenblatt</translation>
    </message>
    <message>
        <source>your tests</source>
        <translation>deine Proben</translation>
    </message>
    <message>
        <source>with newer ones</source>
        <translation>mit den neueren</translation>
    </message>
    <message>
        <source>{stage} at {degrees}: safe after {late}</source>
        <translation>{stage} bei {degrees}: sicher nach {late}</translation>
    </message>
    <message>
        <source>Likely {likely}, about what the sheet says ({sheet}).</source>
        <translation>Wahrscheinlich {likely}, etwa wie im Datenblatt ({sheet}).</translation>
    </message>
    <message>
        <source>Likely {likely}, {percent} % later than the sheet ({sheet}).</source>
        <translation>Wahrscheinlich {likely}, {percent} % später als im Datenblatt ({sheet}).</translation>
    </message>
    <message>
        <source>Likely {likely}, {percent} % sooner than the sheet ({sheet}); where they differ, the sheet is the safer guide.</source>
        <translation>Wahrscheinlich {likely}, {percent} % früher als im Datenblatt ({sheet}); wo beide auseinandergehen, ist das Datenblatt die sichere Richtschnur.</translation>
    </message>
    <message>
        <source>It rests on a single test.</source>
        <translation>Das stützt sich auf eine einzige Probe.</translation>
    </message>
    <message>
        <source>It rests on {tests} tests of a single pour.</source>
        <translation>Das stützt sich auf {tests} Proben eines einzigen Gusses.</translation>
    </message>
    <message>
        <source>It rests on {tests} tests of {pours} pours.</source>
        <translation>Das stützt sich auf {tests} Proben aus {pours} Güssen.</translation>
    </message>
    <message>
        <source>Plans go by the data sheet.</source>
        <translation>Geplant wird nach dem Datenblatt.</translation>
    </message>
    <message>
        <source>The sheet has changed since you took your tests, so plans go by the sheet.</source>
        <translation>Das Datenblatt hat sich geändert, seit du deine Proben genommen hast; geplant wird nach dem Datenblatt.</translation>
    </message>
    <message>
        <source>Plans go by your tests, as they were on {day}.</source>
        <translation>Geplant wird nach deinen Proben, Stand {day}.</translation>
    </message>
    <message>
        <source>{name}, touch tests used for {stage}</source>
        <translation>{name}, {stage} nach Fingerproben</translation>
    </message>
    <message>
        <source>{name}, back to the data sheet for {stage}</source>
        <translation>{name}, {stage} wieder nach dem Datenblatt</translation>
    </message>
</context>
<context>
    <name>timeline</name>
    <message>
        <source>Set up the studio</source>
        <translation>Studio einrichten</translation>
    </message>
    <message>
        <source>Timeline</source>
        <translation>Zeitleiste</translation>
    </message>
    <message>
        <source>One row for each piece, one cell for each coat or step.</source>
        <translation>Eine Zeile je Stück, eine Zelle je Schicht oder Schritt.</translation>
    </message>
    <message>
        <source>New studio…</source>
        <translation>Neues Studio…</translation>
    </message>
    <message>
        <source>Days and hours</source>
        <translation>Tage und Stunden</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Stücke</translation>
    </message>
    <message>
        <source>{opens}, stays open</source>
        <translation>{opens}, bleibt offen</translation>
    </message>
    <message>
        <source>test first</source>
        <translation>erst prüfen</translation>
    </message>
    <message>
        <source>bar {number}</source>
        <translation>Balken {number}</translation>
    </message>
    <message>
        <source>Open a studio, or make a new one.</source>
        <translation>Ein Studio öffnen oder ein neues anlegen.</translation>
    </message>
    <message>
        <source>No pieces yet.</source>
        <translation>Noch keine Stücke.</translation>
    </message>
    <message>
        <source>Scroll through time</source>
        <translation>Durch die Zeit rollen</translation>
    </message>
</context>
<context>
    <name>title</name>
    <message>
        <source>Stop planning</source>
        <translation>Planen anhalten</translation>
    </message>
    <message>
        <source>Good enough</source>
        <translation>Gut genug</translation>
    </message>
    <message>
        <source>Look no further and keep the best plan so far</source>
        <translation>Nicht weiter suchen und den bisher besten Plan behalten</translation>
    </message>
    <message>
        <source>Plan again</source>
        <translation>Neu planen</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Planen</translation>
    </message>
    <message>
        <source>No studio is open</source>
        <translation>Kein Studio offen</translation>
    </message>
    <message>
        <source>Open a studio, or make a new one.</source>
        <translation>Ein Studio öffnen oder ein neues anlegen.</translation>
    </message>
    <message>
        <source>Planning: {how}</source>
        <translation>Planen: {how}</translation>
    </message>
    <message>
        <source>{count} piece</source>
        <translation>{count} Stück</translation>
    </message>
    <message>
        <source>{count} pieces</source>
        <translation>{count} Stücke</translation>
    </message>
    <message>
        <source>{pieces}, not planned yet</source>
        <translation>{pieces}, noch nicht geplant</translation>
    </message>
    <message>
        <source>every promise kept</source>
        <translation>jede Zusage gehalten</translation>
    </message>
    <message>
        <source>{late} of {count} promises late</source>
        <translation>{late} von {count} Zusagen zu spät</translation>
    </message>
    <message>
        <source>{late} of {count} not planned</source>
        <translation>{late} von {count} nicht geplant</translation>
    </message>
    <message>
        <source>{late} of {count} in doubt</source>
        <translation>{late} von {count} ungewiss</translation>
    </message>
    <message>
        <source>no promises</source>
        <translation>keine Zusagen</translation>
    </message>
    <message>
        <source>{pieces}, {promises}, planned {made}</source>
        <translation>{pieces}, {promises}, geplant {made}</translation>
    </message>
</context>
<context>
    <name>touches</name>
    <message>
        <source>Touch the film lightly and lift the finger. Not yet: it draws a string and is too wet for the next coat. Already: it draws none any more, which alone says little.</source>
        <translation>Den Film leicht berühren und den Finger heben. Noch nicht: Er zieht einen Faden und ist zu nass für die nächste Schicht. Schon: Er zieht keinen mehr, was allein wenig sagt.</translation>
    </message>
    <message>
        <source>Press a knuckle on it and lift it. Already: it clings like tape, draws no string and leaves the glove clean, and takes the next coat. Not yet: it still leaves something.</source>
        <translation>Einen Fingerknöchel aufdrücken und heben. Schon: Der Film haftet wie Klebeband, zieht keinen Faden, lässt den Handschuh sauber und nimmt die nächste Schicht an. Noch nicht: Es bleibt noch etwas hängen.</translation>
    </message>
    <message>
        <source>Lay a fingertip on it lightly. Already: no mark stays, it is tack-free. Not yet: a mark stays, and it can&apos;t be laid on its face.</source>
        <translation>Eine Fingerspitze leicht auflegen. Schon: Es bleibt kein Abdruck, der Film ist klebfrei. Noch nicht: Ein Abdruck bleibt, und das Stück darf nicht auf dieser Seite liegen.</translation>
    </message>
    <message>
        <source>Press a thumbnail into it. Already: no mark stays, and what lies on it prints nothing into it. Not yet: the nail leaves its mark.</source>
        <translation>Den Daumennagel eindrücken. Schon: Es bleibt kein Abdruck, und was darauf liegt, prägt sich nicht ein. Noch nicht: Der Nagel hinterlässt eine Spur.</translation>
    </message>
    <message>
        <source>Wear a glove and test where it does not show; the data sheet comes first.</source>
        <translation>Mit Handschuh prüfen, wo man es nicht sieht; das Datenblatt geht vor.</translation>
    </message>
</context>
<context>
    <name>trace</name>
    <message>
        <source>What else happened</source>
        <translation>Was sonst geschah</translation>
    </message>
    <message>
        <source>{count} entry was corrected or withdrawn; the log keeps it.</source>
        <translation>{count} Eintrag wurde berichtigt oder zurückgenommen; das Werkstattbuch behält ihn.</translation>
    </message>
    <message>
        <source>{count} entries were corrected or withdrawn; the log keeps them.</source>
        <translation>{count} Einträge wurden berichtigt oder zurückgenommen; das Werkstattbuch behält sie.</translation>
    </message>
    <message>
        <source>From the same mix or lot</source>
        <translation>Aus derselben Mischung oder Charge</translation>
    </message>
    <message>
        <source>What was weighed</source>
        <translation>Was abgewogen wurde</translation>
    </message>
    <message>
        <source>Where it went</source>
        <translation>Wohin es ging</translation>
    </message>
    <message>
        <source>Orders</source>
        <translation>Aufträge</translation>
    </message>
    <message>
        <source>lot {lot}</source>
        <translation>Charge {lot}</translation>
    </message>
    <message>
        <source>A of lot {lot}</source>
        <translation>A aus Charge {lot}</translation>
    </message>
    <message>
        <source>B of lot {lot}</source>
        <translation>B aus Charge {lot}</translation>
    </message>
    <message>
        <source>same mix {batch}</source>
        <translation>dieselbe Mischung {batch}</translation>
    </message>
    <message>
        <source>same lot, mix {batch}</source>
        <translation>dieselbe Charge, Mischung {batch}</translation>
    </message>
    <message>
        <source>A piece</source>
        <translation>Ein Stück</translation>
    </message>
    <message>
        <source>Or an order, the number of a mix, a lot</source>
        <translation>Oder Auftrag, Mischungsnummer oder Charge</translation>
    </message>
    <message>
        <source>Follow it</source>
        <translation>Nachgehen</translation>
    </message>
    <message>
        <source>Copy this for the customer</source>
        <translation>Für den Kunden kopieren</translation>
    </message>
    <message>
        <source>Copy everything</source>
        <translation>Alles kopieren</translation>
    </message>
    <message>
        <source>In one sentence, for the customer</source>
        <translation>In einem Satz, für den Kunden</translation>
    </message>
    <message>
        <source>Where it came from</source>
        <translation>Wo es herkam</translation>
    </message>
    <message>
        <source>It is copied; put it into a letter.</source>
        <translation>Kopiert; füge es in einen Brief ein.</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>Mischung</translation>
    </message>
    <message>
        <source>Nothing is called just {wanted}; there is: {names}.</source>
        <translation>Nur {wanted} heißt nichts; es gibt: {names}.</translation>
    </message>
    <message>
        <source>{wanted} is no piece, order, number of a mix ({mixes}) or lot that anything was weighed from. Numbers stand on the cup and in the log.</source>
        <translation>{wanted} ist kein Stück, kein Auftrag, keine Mischungsnummer ({mixes}) und keine Charge, aus der etwas abgewogen wurde. Nummern stehen auf dem Becher und im Werkstattbuch.</translation>
    </message>
    <message>
        <source>none was weighed yet</source>
        <translation>noch keine abgewogen</translation>
    </message>
</context>
<context>
    <name>trying</name>
    <message>
        <source>Give a time to be back that is to come and after the one to leave.</source>
        <translation>Eine künftige Rückkehr angeben, die nach der Abreise liegt.</translation>
    </message>
    <message>
        <source>There is no room in this studio yet; add one on the page Studio.</source>
        <translation>In diesem Studio gibt es noch keinen Raum; auf der Seite Studio einen anlegen.</translation>
    </message>
    <message>
        <source>No room is heated to more than {most} here; choose a warm box instead.</source>
        <translation>Hier wird kein Raum über {most} geheizt; stattdessen eine Wärmebox wählen.</translation>
    </message>
    <message>
        <source>{place} is expected to be as warm as that anyway; warm it to more.</source>
        <translation>{place} ist ohnehin so warm zu erwarten; höher heizen.</translation>
    </message>
    <message>
        <source>Those hours are past; choose some that are to come.</source>
        <translation>Diese Stunden sind vorbei; künftige wählen.</translation>
    </message>
    <message>
        <source>{person} does not work on that day; ask for an evening more instead.</source>
        <translation>{person} arbeitet an diesem Tag nicht; stattdessen nach einem Abend mehr fragen.</translation>
    </message>
    <message>
        <source>{person} begins at {usual:%H:%M} on that day; go below it.</source>
        <translation>{person} beginnt an diesem Tag um {usual:%H:%M}; darunter gehen.</translation>
    </message>
    <message>
        <source>There is no spot yet that another could be like; add one first.</source>
        <translation>Noch kein Platz, dem ein anderer gleichen könnte; erst einen anlegen.</translation>
    </message>
    <message>
        <source>No pour is planned that could be moved; plan again first.</source>
        <translation>Kein Guss ist geplant, der sich verschieben ließe; erst neu planen.</translation>
    </message>
    <message>
        <source>That time is past; choose one that is to come.</source>
        <translation>Diese Zeit ist vorbei; eine künftige wählen.</translation>
    </message>
    <message>
        <source>Nobody works in this studio yet; add a person on the page Studio.</source>
        <translation>In diesem Studio arbeitet noch niemand; auf der Seite Studio jemanden eintragen.</translation>
    </message>
    <message>
        <source>A warm box for curing is kept at {least} to {most}; the data sheet may allow less.</source>
        <translation>Eine Wärmebox zum Aushärten hält {least} bis {most}; das Datenblatt erlaubt vielleicht weniger.</translation>
    </message>
    <message>
        <source>There is no room for a trial in {where}; make some and try again.</source>
        <translation>In {where} ist kein Platz für einen Versuch; welchen schaffen und noch einmal versuchen.</translation>
    </message>
</context>
<context>
    <name>units</name>
    <message>
        <source>Temperatures</source>
        <translation>Temperaturen</translation>
    </message>
    <message>
        <source>degrees Celsius</source>
        <translation>Grad Celsius</translation>
    </message>
    <message>
        <source>degrees Fahrenheit</source>
        <translation>Grad Fahrenheit</translation>
    </message>
    <message>
        <source>Masses</source>
        <translation>Massen</translation>
    </message>
    <message>
        <source>grams</source>
        <translation>Gramm</translation>
    </message>
    <message>
        <source>ounces</source>
        <translation>Unzen</translation>
    </message>
    <message>
        <source>Sizes of pieces and spots</source>
        <translation>Maße von Stücken und Plätzen</translation>
    </message>
    <message>
        <source>Thickness of a film</source>
        <translation>Dicke eines Films</translation>
    </message>
    <message>
        <source>Volumes</source>
        <translation>Volumen</translation>
    </message>
    <message>
        <source>Times of day</source>
        <translation>Uhrzeiten</translation>
    </message>
    <message>
        <source>24 hours, as 18:30</source>
        <translation>24 Stunden, wie 18:30</translation>
    </message>
    <message>
        <source>12 hours, as 6:30 pm</source>
        <translation>12 Stunden, wie 6:30 pm</translation>
    </message>
    <message>
        <source>A week begins on</source>
        <translation>Eine Woche beginnt am</translation>
    </message>
    <message>
        <source>millimetres</source>
        <translation>Millimeter</translation>
    </message>
    <message>
        <source>centimetres</source>
        <translation>Zentimeter</translation>
    </message>
    <message>
        <source>inches</source>
        <translation>Zoll</translation>
    </message>
    <message>
        <source>mils, thousandths of an inch</source>
        <translation>Mil, Tausendstel Zoll</translation>
    </message>
    <message>
        <source>millilitres</source>
        <translation>Milliliter</translation>
    </message>
    <message>
        <source>US fluid ounces</source>
        <translation>US-Flüssigunzen</translation>
    </message>
    <message>
        <source>imperial fluid ounces</source>
        <translation>britische Flüssigunzen</translation>
    </message>
    <message>
        <source>The studio&apos;s name</source>
        <translation>Name des Studios</translation>
    </message>
    <message>
        <source>Time zone</source>
        <translation>Zeitzone</translation>
    </message>
    <message>
        <source>Currency, in three letters</source>
        <translation>Währung, drei Buchstaben</translation>
    </message>
    <message>
        <source>Units and words</source>
        <translation>Einheiten und Worte</translation>
    </message>
    <message>
        <source>Everything on the desk is shown and typed in these units. What is kept stays exact: nothing is rounded by changing them.</source>
        <translation>Alles in diesem Fenster wird in diesen Einheiten gezeigt und eingegeben. Gespeichert wird genau: Ein Wechsel rundet nichts.</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>time zone</source>
        <translation>Zeitzone</translation>
    </message>
    <message>
        <source>currency</source>
        <translation>Währung</translation>
    </message>
    <message>
        <source>first day of the week</source>
        <translation>erster Wochentag</translation>
    </message>
    <message>
        <source>units</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>So it reads: {now}, {warm}, {mass} in {volume}, a board of {length}, {film} of film.</source>
        <translation>So liest es sich: {now}, {warm}, {mass} in {volume}, ein Brett von {length}, {film} Film.</translation>
    </message>
    <message>
        <source>There is no time zone called {typed}; type a city and choose one.</source>
        <translation>Eine Zeitzone {typed} gibt es nicht; eine Stadt tippen und auswählen.</translation>
    </message>
</context>
<context>
    <name>watching</name>
    <message>
        <source>{name} is watched, but: {why} It is tried again.</source>
        <translation>{name} wird beobachtet, aber: {why} Es wird weiter versucht.</translation>
    </message>
    <message>
        <source>{name} is watched.</source>
        <translation>{name} wird beobachtet.</translation>
    </message>
    <message>
        <source>{count} reading came</source>
        <translation>{count} Messwert kam</translation>
    </message>
    <message>
        <source>{count} readings came</source>
        <translation>{count} Messwerte kamen</translation>
    </message>
    <message>
        <source>{name} is watched every minute; looked at {when}, {came}.</source>
        <translation>{name} wird jede Minute beobachtet; zuletzt {when}, {came}.</translation>
    </message>
    <message>
        <source>The file could not be read.</source>
        <translation>Die Datei war nicht lesbar.</translation>
    </message>
</context>
<context>
    <name>week</name>
    <message>
        <source>Working hours of the week</source>
        <translation>Arbeitszeiten der Woche</translation>
    </message>
    <message>
        <source>No hours yet.</source>
        <translation>Noch keine Stunden.</translation>
    </message>
    <message>
        <source>{day} {start} to {end}</source>
        <translation>{day} {start} bis {end}</translation>
    </message>
</context>
<context>
    <name>weigh</name>
    <message>
        <source>thrown away</source>
        <translation>weggeworfen</translation>
    </message>
    <message>
        <source>Colours of batch {batch}</source>
        <translation>Farben der Mischung {batch}</translation>
    </message>
    <message>
        <source>Poured: {pieces}</source>
        <translation>Gegossen: {pieces}</translation>
    </message>
    <message>
        <source>The mix: its cups and notes</source>
        <translation>Die Mischung: Becher und Hinweise</translation>
    </message>
    <message>
        <source>bottle not noted</source>
        <translation>Flasche nicht vermerkt</translation>
    </message>
    <message>
        <source>bottle {label}, {grams} left</source>
        <translation>Flasche {label}, noch {grams}</translation>
    </message>
    <message>
        <source>Every cup is empty</source>
        <translation>Alle Becher sind leer</translation>
    </message>
    <message>
        <source>The clock starts when B goes in</source>
        <translation>Die Uhr läuft, sobald B dazukommt</translation>
    </message>
    <message>
        <source>Good</source>
        <translation>Gut</translation>
    </message>
    <message>
        <source>Empty it now</source>
        <translation>Jetzt leeren</translation>
    </message>
    <message>
        <source>Gone: do not pour</source>
        <translation>Vorbei: nicht gießen</translation>
    </message>
    <message>
        <source>The sheet has no cup life: nobody knows by when</source>
        <translation>Das Datenblatt hat keine Topfzeit: Niemand weiß, bis wann</translation>
    </message>
    <message>
        <source>pour by minute {by}, gone at {gone}</source>
        <translation>gießen bis Minute {by}, vorbei ab {gone}</translation>
    </message>
    <message>
        <source>Cup clock</source>
        <translation>Becheruhr</translation>
    </message>
    <message>
        <source>Decimal sign</source>
        <translation>Dezimalzeichen</translation>
    </message>
    <message>
        <source>Erase the last digit</source>
        <translation>Letzte Ziffer löschen</translation>
    </message>
    <message>
        <source>Weigh - Studio planner</source>
        <translation>Abwiegen - Studio planner</translation>
    </message>
    <message>
        <source>Leave the scale</source>
        <translation>Waage verlassen</translation>
    </message>
    <message>
        <source>Throw away…</source>
        <translation>Wegwerfen…</translation>
    </message>
    <message>
        <source>Stop: do not pour it like this.</source>
        <translation>Halt: so nicht gießen.</translation>
    </message>
    <message>
        <source>B is not in it yet: take some A out and weigh it again.</source>
        <translation>B ist noch nicht darin: etwas A herausnehmen und neu abwiegen.</translation>
    </message>
    <message>
        <source>Leave it as it is</source>
        <translation>So lassen</translation>
    </message>
    <message>
        <source>So much is left</source>
        <translation>So viel ist übrig</translation>
    </message>
    <message>
        <source>It reads so</source>
        <translation>Das zeigt sie an</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Planned {when}</source>
        <translation>Geplant {when}</translation>
    </message>
    <message>
        <source>Begin to weigh</source>
        <translation>Abwiegen beginnen</translation>
    </message>
    <message>
        <source>Nothing is to be weighed.</source>
        <translation>Es ist nichts abzuwiegen.</translation>
    </message>
    <message>
        <source>Pours of the plan are weighed here; plan again to get some.</source>
        <translation>Hier werden Güsse des Plans abgewogen; plane neu, damit es welche gibt.</translation>
    </message>
    <message>
        <source>Pours of the plan are weighed here; enter a piece and plan first.</source>
        <translation>Hier werden die Güsse des Plans gewogen; trag erst ein Stück ein und plane.</translation>
    </message>
    <message>
        <source>The studio is still being read.</source>
        <translation>Die Werkstatt wird noch gelesen.</translation>
    </message>
    <message>
        <source>Throw this mix away? What A and B are in it stays in the log as weighed; no pour is written down.</source>
        <translation>Diese Mischung wegwerfen? Was an A und B darin ist, bleibt im Buch als abgewogen; kein Guss wird eingetragen.</translation>
    </message>
    <message>
        <source>Throw it away</source>
        <translation>Wegwerfen</translation>
    </message>
    <message>
        <source>No, go on</source>
        <translation>Nein, weiter</translation>
    </message>
    <message>
        <source>{place} of {count} mixes to weigh</source>
        <translation>{place} von {count} Mischungen zu wiegen</translation>
    </message>
    <message>
        <source>step {number} of {count}</source>
        <translation>Schritt {number} von {count}</translation>
    </message>
    <message>
        <source>portion {part} of {parts}</source>
        <translation>Portion {part} von {parts}</translation>
    </message>
    <message>
        <source>mix {number}</source>
        <translation>Mischung {number}</translation>
    </message>
    <message>
        <source>Undo last tap</source>
        <translation>Einen zurück</translation>
    </message>
    <message>
        <source>Mix before</source>
        <translation>Mischung davor</translation>
    </message>
    <message>
        <source>Sound is off</source>
        <translation>Ton ist aus</translation>
    </message>
    <message>
        <source>Next mix</source>
        <translation>Nächste Mischung</translation>
    </message>
    <message>
        <source>Sound is on</source>
        <translation>Ton ist an</translation>
    </message>
    <message>
        <source>It reads {grams}</source>
        <translation>Sie zeigt {grams}</translation>
    </message>
    <message>
        <source>The display then reads {grams}</source>
        <translation>Die Anzeige zeigt dann {grams}</translation>
    </message>
    <message>
        <source>B goes in now: start the clock</source>
        <translation>B kommt jetzt dazu: Uhr starten</translation>
    </message>
    <message>
        <source>Another number…</source>
        <translation>Andere Zahl…</translation>
    </message>
    <message>
        <source>Add more A</source>
        <translation>Mehr A zugeben</translation>
    </message>
    <message>
        <source>Part A</source>
        <translation>Komponente A</translation>
    </message>
    <message>
        <source>Add more B</source>
        <translation>Mehr B zugeben</translation>
    </message>
    <message>
        <source>Add part B</source>
        <translation>Komponente B zugeben</translation>
    </message>
    <message>
        <source>Weigh out</source>
        <translation>Abwiegen</translation>
    </message>
    <message>
        <source>colourant</source>
        <translation>Farbmittel</translation>
    </message>
    <message>
        <source>Add {colourant}</source>
        <translation>{colourant} zugeben</translation>
    </message>
    <message>
        <source>Empty cup on the scale, display at {zero}</source>
        <translation>Leeren Becher auf die Waage, Anzeige auf {zero}</translation>
    </message>
    <message>
        <source>Same cup, {grams} are in it</source>
        <translation>Derselbe Becher, {grams} sind darin</translation>
    </message>
    <message>
        <source>Same cup; {share} % of its mix</source>
        <translation>Derselbe Becher; {share} % seiner Mischung</translation>
    </message>
    <message>
        <source>Same cup; {share} % of its mix, usually {most} at most</source>
        <translation>Derselbe Becher; {share} % seiner Mischung, üblich höchstens {most}</translation>
    </message>
    <message>
        <source>into each</source>
        <translation>in jeden</translation>
    </message>
    <message>
        <source>Stir slowly</source>
        <translation>Langsam rühren</translation>
    </message>
    <message>
        <source>Scrape sides and bottom, then into a second cup and stir again</source>
        <translation>Wand und Boden abstreifen, dann in einen zweiten Becher und noch einmal rühren</translation>
    </message>
    <message>
        <source>in all, on the cup clock</source>
        <translation>im Ganzen, auf der Becheruhr</translation>
    </message>
    <message>
        <source>It is stirred</source>
        <translation>Ist gerührt</translation>
    </message>
    <message>
        <source>The rest is poured</source>
        <translation>Der Rest ist gegossen</translation>
    </message>
    <message>
        <source>gone</source>
        <translation>vorbei</translation>
    </message>
    <message>
        <source>do not pour what is hot or stiff</source>
        <translation>was heiß oder steif ist, nicht gießen</translation>
    </message>
    <message>
        <source>Pour at minute {at}, empty by {by}</source>
        <translation>In Minute {at} gießen, leer bis {by}</translation>
    </message>
    <message>
        <source>is the number of the mix: write it under the piece</source>
        <translation>ist die Nummer der Mischung: unter das Stück schreiben</translation>
    </message>
    <message>
        <source>Pour</source>
        <translation>Gießen</translation>
    </message>
    <message>
        <source>Pour cup {cup}: {colour}</source>
        <translation>Becher {cup} gießen: {colour}</translation>
    </message>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>to wait</source>
        <translation>warten</translation>
    </message>
    <message>
        <source>Into cup {cup}: {colour}</source>
        <translation>In Becher {cup}: {colour}</translation>
    </message>
    <message>
        <source>Stop: {cups} cups</source>
        <translation>Halt: {cups} Becher</translation>
    </message>
    <message>
        <source>It is in {cups} cups</source>
        <translation>Ist in {cups} Bechern</translation>
    </message>
    <message>
        <source>The cup is empty</source>
        <translation>Der Becher ist leer</translation>
    </message>
    <message>
        <source>Some is left…</source>
        <translation>Etwas ist übrig…</translation>
    </message>
    <message>
        <source>it would stay where it is poured from minute {stays} on</source>
        <translation>ab Minute {stays} bliebe es liegen, wo es gegossen wird</translation>
    </message>
    <message>
        <source>Written down</source>
        <translation>Eingetragen</translation>
    </message>
    <message>
        <source>All is poured</source>
        <translation>Alles ist gegossen</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Poured: write it down</source>
        <translation>Gegossen: eintragen</translation>
    </message>
    <message>
        <source>{colour}: {share} % of {colourant} is in it, usually {most} % at most: ask the product&apos;s sheet.</source>
        <translation>{colour}: {share} % {colourant} sind darin, üblich sind höchstens {most} %: im Datenblatt des Produkts nachsehen.</translation>
    </message>
    <message>
        <source>{colour}: {grams} of {colourant} instead of {recipe}: it becomes another shade; weigh what has to match it in the same way.</source>
        <translation>{colour}: {grams} {colourant} statt {recipe}: Das wird ein anderer Ton; was dazu passen soll, genauso wiegen.</translation>
    </message>
    <message>
        <source>It is enough for {piece}, {coat}: {grams}, spot {spot}.</source>
        <translation>Es reicht für {piece}, {coat}: {grams}, Platz {spot}.</translation>
    </message>
    <message>
        <source>No planned coat takes it now: {grams} make a witness chip; spread the rest thin on what does not burn.</source>
        <translation>Keine geplante Schicht nimmt es jetzt: {grams} geben ein Probeplättchen; den Rest dünn auf etwas streichen, das nicht brennt.</translation>
    </message>
    <message>
        <source>{what} left; nobody knows how long it is good.</source>
        <translation>{what} übrig; niemand weiß, wie lange es gut ist.</translation>
    </message>
    <message>
        <source>{what} left; its time in the cup is over.</source>
        <translation>{what} übrig; seine Zeit im Becher ist vorbei.</translation>
    </message>
    <message>
        <source>{what} left, good for {minutes} min.</source>
        <translation>{what} übrig, noch {minutes} min gut.</translation>
    </message>
    <message>
        <source>The mix that was on the scale is of a piece that is gone; it is forgotten.</source>
        <translation>Die Mischung auf der Waage war für ein Stück, das es nicht mehr gibt; sie ist vergessen.</translation>
    </message>
    <message>
        <source>The mix was ended in another window.</source>
        <translation>Die Mischung wurde in einem anderen Fenster beendet.</translation>
    </message>
    <message>
        <source>The mix went on in another window; this is how it stands now.</source>
        <translation>Die Mischung ging in einem anderen Fenster weiter; so steht sie jetzt.</translation>
    </message>
    <message>
        <source>The studio was changed since: take these pours back in the log.</source>
        <translation>Das Studio wurde seither geändert: Nimm diese Güsse im Buch zurück.</translation>
    </message>
    <message>
        <source>What was kept of the mix on the scale cannot be read; it was put aside as {path}. Look into the log for what was weighed.</source>
        <translation>Was von der Mischung auf der Waage aufgehoben war, lässt sich nicht lesen; es liegt jetzt beiseite als {path}. Was gewogen wurde, steht im Buch.</translation>
    </message>
    <message>
        <source>From bottle {label}</source>
        <translation>Aus Flasche {label}</translation>
    </message>
    <message>
        <source>Only {grams} were in this cup.</source>
        <translation>In diesem Becher waren nur {grams}.</translation>
    </message>
    <message>
        <source>{before} are in the cup already, so the display reads more. Was it set to zero in between? Then type {together}.</source>
        <translation>{before} sind schon im Becher, also zeigt die Waage mehr. Hast du sie dazwischen auf null gestellt? Dann tippe {together}.</translation>
    </message>
    <message>
        <source>At most {grams}</source>
        <translation>Höchstens {grams}</translation>
    </message>
    <message>
        <source>More than {grams}</source>
        <translation>Mehr als {grams}</translation>
    </message>
</context>
<context>
    <name>weights</name>
    <message>
        <source>Colourants, such as: 1.2 teal; 0.4 white</source>
        <translation>Farbmittel, etwa: 1,2 petrol; 0,4 weiß</translation>
    </message>
    <message>
        <source>{part} is no mass and name; write it as 1.2 teal.</source>
        <translation>{part} ist keine Masse mit Namen; schreib es wie 1,2 petrol.</translation>
    </message>
    <message>
        <source>Its weights</source>
        <translation>Die Gewichte</translation>
    </message>
    <message>
        <source>Write the weights down</source>
        <translation>Gewichte aufschreiben</translation>
    </message>
    <message>
        <source>Leave it as it is</source>
        <translation>So lassen</translation>
    </message>
    <message>
        <source>Mix</source>
        <translation>Mischung</translation>
    </message>
    <message>
        <source>A met B</source>
        <translation>A traf B</translation>
    </message>
    <message>
        <source>A weighed</source>
        <translation>A gewogen</translation>
    </message>
    <message>
        <source>B weighed</source>
        <translation>B gewogen</translation>
    </message>
    <message>
        <source>Lot of A (if known)</source>
        <translation>Charge von A (falls bekannt)</translation>
    </message>
    <message>
        <source>Lot of B (if known)</source>
        <translation>Charge von B (falls bekannt)</translation>
    </message>
    <message>
        <source>a new one, number {number}</source>
        <translation>eine neue, Nummer {number}</translation>
    </message>
    <message>
        <source>number {number}, weighed {when}</source>
        <translation>Nummer {number}, abgewogen {when}</translation>
    </message>
    <message>
        <source>number {number}</source>
        <translation>Nummer {number}</translation>
    </message>
    <message>
        <source>Weighed</source>
        <translation>Gewogen</translation>
    </message>
    <message>
        <source>The weights are in the log.</source>
        <translation>Die Gewichte stehen im Werkstattbuch.</translation>
    </message>
</context>
<context>
    <name>window</name>
    <message>
        <source>Opening…</source>
        <translation>Wird geöffnet…</translation>
    </message>
    <message>
        <source>A mix is still at the scale: F12 goes on with it.</source>
        <translation>Eine Mischung ist noch auf der Waage: F12 macht mit ihr weiter.</translation>
    </message>
    <message>
        <source>No studio</source>
        <translation>Kein Studio</translation>
    </message>
    <message>
        <source>A copy is saved as {name}.</source>
        <translation>Eine Kopie ist als {name} gespeichert.</translation>
    </message>
    <message>
        <source>The studio was changed in another window; this is how it is now.</source>
        <translation>Das Studio wurde in einem anderen Fenster geändert; so ist es jetzt.</translation>
    </message>
    <message>
        <source>{why} Put it right, or leave once more to go without what is typed.</source>
        <translation>{why} Berichtige es, oder geh noch einmal: dann ohne das Eingetippte.</translation>
    </message>
</context>
<context>
    <name>words</name>
    <message>
        <source>noon</source>
        <translation>Mittag</translation>
    </message>
    <message>
        <source>{weekday} {day} {month}</source>
        <translation>{weekday} {day}. {month}</translation>
    </message>
    <message>
        <source>{weekday} {day}</source>
        <translation>{weekday} {day}.</translation>
    </message>
    <message>
        <source>{start} to {end}</source>
        <translation>{start} bis {end}</translation>
    </message>
    <message>
        <source>{days} d {hours} h</source>
        <translation>{days} T {hours} h</translation>
    </message>
    <message>
        <source>{count} day</source>
        <translation>{count} Tag</translation>
    </message>
    <message>
        <source>{count} days</source>
        <translation>{count} Tage</translation>
    </message>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>{time} ago</source>
        <translation>vor {time}</translation>
    </message>
    <message>
        <source>in {time}</source>
        <translation>in {time}</translation>
    </message>
    <message>
        <source>{joint}, test first</source>
        <translation>{joint}, erst prüfen</translation>
    </message>
    <message>
        <source>not planned</source>
        <translation>nicht geplant</translation>
    </message>
    <message>
        <source>shipped, {time} late</source>
        <translation>verschickt, {time} zu spät</translation>
    </message>
    <message>
        <source>in doubt, {time} late or more</source>
        <translation>ungewiss, {time} oder mehr zu spät</translation>
    </message>
    <message>
        <source>{time} late</source>
        <translation>{time} zu spät</translation>
    </message>
    <message>
        <source>shipped</source>
        <translation>verschickt</translation>
    </message>
    <message>
        <source>in doubt, {time} spare as planned</source>
        <translation>ungewiss, nach Plan {time} Puffer</translation>
    </message>
    <message>
        <source>kept, nothing spare</source>
        <translation>gehalten, ohne Puffer</translation>
    </message>
    <message>
        <source>kept, only {time} spare</source>
        <translation>gehalten, nur {time} Puffer</translation>
    </message>
    <message>
        <source>kept, {time} spare</source>
        <translation>gehalten, {time} Puffer</translation>
    </message>
</context>
<context>
    <name>work</name>
    <message>
        <source>Choose a bar first</source>
        <translation>Erst einen Balken wählen</translation>
    </message>
    <message>
        <source>What &amp;happened</source>
        <translation>Was &amp;geschehen ist</translation>
    </message>
    <message>
        <source>Poured: it stays where it is</source>
        <translation>Gegossen: bleibt, wo es ist</translation>
    </message>
    <message>
        <source>Let &amp;go</source>
        <translation>&amp;Loslassen</translation>
    </message>
    <message>
        <source>&amp;Pin here</source>
        <translation>Hier &amp;feststecken</translation>
    </message>
    <message>
        <source>Pour &amp;at…</source>
        <translation>Gießen &amp;um…</translation>
    </message>
    <message>
        <source>&amp;Weigh this mix</source>
        <translation>Diese Mischung ab&amp;wiegen</translation>
    </message>
    <message>
        <source>Or drag it, or use Alt with left and right</source>
        <translation>Oder ziehen, oder Alt mit Links und Rechts</translation>
    </message>
    <message>
        <source>Let a&amp;ll go</source>
        <translation>A&amp;lle loslassen</translation>
    </message>
    <message>
        <source>Nobody works in the &amp;evening of {day}</source>
        <translation>Am &amp;Abend von {day} arbeitet niemand</translation>
    </message>
    <message>
        <source>Show the p&amp;iece</source>
        <translation>&amp;Stück zeigen</translation>
    </message>
    <message>
        <source>Show the &amp;order</source>
        <translation>Auf&amp;trag zeigen</translation>
    </message>
    <message>
        <source>Show the p&amp;roduct</source>
        <translation>&amp;Produkt zeigen</translation>
    </message>
    <message>
        <source>Pour {bar} at</source>
        <translation>{bar} gießen um</translation>
    </message>
    <message>
        <source>The clock is put forward then: there is no such time.</source>
        <translation>Da wird die Uhr vorgestellt: Diese Zeit gibt es nicht.</translation>
    </message>
    <message>
        <source>{bar} follows its pour: move that.</source>
        <translation>{bar} folgt seinem Guss: diesen verschieben.</translation>
    </message>
    <message>
        <source>{bar} is poured: what is poured stays where it is.</source>
        <translation>{bar} ist gegossen: Was gegossen ist, bleibt, wo es ist.</translation>
    </message>
    <message>
        <source>{bar} stays where it was.</source>
        <translation>{bar} bleibt, wo es war.</translation>
    </message>
    <message>
        <source>The plan has changed meanwhile: take the pour again.</source>
        <translation>Der Plan hat sich inzwischen geändert: den Guss noch einmal nehmen.</translation>
    </message>
    <message>
        <source>Pour {bar} {when}</source>
        <translation>{bar} gießen {when}</translation>
    </message>
    <message>
        <source>{bar} is pinned to {when}.</source>
        <translation>{bar} ist auf {when} festgesteckt.</translation>
    </message>
    <message>
        <source>Pour {bar} {when} on {spot}</source>
        <translation>{bar}: {when} auf {spot} gießen</translation>
    </message>
    <message>
        <source>{bar} is pinned to {when}, on {spot}; planning leaves it there where it can.</source>
        <translation>{bar} ist auf {when} festgesteckt, auf {spot}; die Planung lässt es dort, wo sie kann.</translation>
    </message>
    <message>
        <source>Put {piece} on {spot}</source>
        <translation>{piece} auf {spot} stellen</translation>
    </message>
    <message>
        <source>{piece} goes on {spot}; planning leaves it there where it can.</source>
        <translation>{piece} kommt auf {spot}; die Planung lässt es dort, wo sie kann.</translation>
    </message>
    <message>
        <source>{bar} stays where it was. {why}</source>
        <translation>{bar} bleibt, wo es war. {why}</translation>
    </message>
    <message>
        <source>Pour {when}</source>
        <translation>Gießen {when}</translation>
    </message>
    <message>
        <source>Pin {bar}</source>
        <translation>{bar} feststecken</translation>
    </message>
    <message>
        <source>Let {bar} go</source>
        <translation>{bar} loslassen</translation>
    </message>
    <message>
        <source>{bar} may be moved by planning again.</source>
        <translation>{bar} darf beim nächsten Planen verschoben werden.</translation>
    </message>
    <message>
        <source>Let all pins go</source>
        <translation>Alle loslassen</translation>
    </message>
    <message>
        <source>No pour is pinned any more.</source>
        <translation>Kein Guss ist mehr festgesteckt.</translation>
    </message>
    <message>
        <source>Nobody works on {day}</source>
        <translation>Niemand arbeitet am {day}</translation>
    </message>
    <message>
        <source>Nobody works in the evening of {day}.</source>
        <translation>Am Abend von {day} arbeitet niemand.</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Zeigen</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <source>only late</source>
        <translation>nur zu späte</translation>
    </message>
    <message>
        <source>only this week</source>
        <translation>nur diese Woche</translation>
    </message>
    <message>
        <source>Find a piece, order, product, colour</source>
        <translation>Stück, Auftrag, Produkt, Farbe suchen</translation>
    </message>
    <message>
        <source>Find on the timeline</source>
        <translation>In der Zeitleiste suchen</translation>
    </message>
    <message>
        <source>Day and time to pour at</source>
        <translation>Tag und Uhrzeit zum Gießen</translation>
    </message>
    <message>
        <source>Pour then</source>
        <translation>Dann gießen</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Lassen</translation>
    </message>
    <message>
        <source>{shown} of {every} pieces</source>
        <translation>{shown} von {every} Stücken</translation>
    </message>
    <message>
        <source>One row for each piece, one cell for each coat or step. Alt with left and right moves a pour by five minutes, with Shift by an hour.</source>
        <translation>Eine Zeile je Stück, eine Zelle je Schicht oder Schritt. Alt mit Links und Rechts verschiebt einen Guss um fünf Minuten, mit Umschalt um eine Stunde.</translation>
    </message>
    <message>
        <source>No piece is like that. Esc shows all.</source>
        <translation>Kein Stück passt. Esc zeigt alle.</translation>
    </message>
    <message>
        <source>From one mix: moves with {pieces}.</source>
        <translation>Aus einer Mischung: geht zusammen mit {pieces}.</translation>
    </message>
    <message>
        <source>{time}, {spot}</source>
        <translation>{time}, {spot}</translation>
    </message>
</context>
<context>
    <name>worth</name>
    <message>
        <source>not known whether a better plan exists</source>
        <translation>nicht bekannt, ob es einen besseren Plan gibt</translation>
    </message>
    <message>
        <source>The goals stand in their order: each line compares plans as good in those above it.</source>
        <translation>Die Ziele stehen in ihrer Reihenfolge: Jede Zeile vergleicht Pläne, die in denen darüber gleich gut sind.</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>Ausgelassen</translation>
    </message>
    <message>
        <source>Late</source>
        <translation>Zu spät</translation>
    </message>
    <message>
        <source>Scuffed</source>
        <translation>Angeschliffen</translation>
    </message>
    <message>
        <source>To test first</source>
        <translation>Erst zu prüfen</translation>
    </message>
    <message>
        <source>Moved</source>
        <translation>Verschoben</translation>
    </message>
    <message>
        <source>Separate mixes</source>
        <translation>Getrennte Mischungen</translation>
    </message>
    <message>
        <source>{count} piece</source>
        <translation>{count} Stück</translation>
    </message>
    <message>
        <source>{count} pieces</source>
        <translation>{count} Stücke</translation>
    </message>
    <message>
        <source>{count} joint</source>
        <translation>{count} Verbund</translation>
    </message>
    <message>
        <source>{count} joints</source>
        <translation>{count} Verbünde</translation>
    </message>
    <message>
        <source>{count} pour</source>
        <translation>{count} Guss</translation>
    </message>
    <message>
        <source>{count} pours</source>
        <translation>{count} Güsse</translation>
    </message>
    <message>
        <source>{count} mix</source>
        <translation>{count} Mischung</translation>
    </message>
    <message>
        <source>{count} mixes</source>
        <translation>{count} Mischungen</translation>
    </message>
    <message>
        <source>{count} order has pieces left out and is not planned</source>
        <translation>{count} Auftrag hat ausgelassene Stücke und ist nicht geplant</translation>
    </message>
    <message>
        <source>{count} orders have pieces left out and are not planned</source>
        <translation>{count} Aufträge haben ausgelassene Stücke und sind nicht geplant</translation>
    </message>
    <message>
        <source>no order that is planned</source>
        <translation>kein geplanter Auftrag</translation>
    </message>
    <message>
        <source>no order</source>
        <translation>kein Auftrag</translation>
    </message>
    <message>
        <source>{hours} in all, weighted</source>
        <translation>{hours} insgesamt, gewichtet</translation>
    </message>
    <message>
        <source>{hours} in all</source>
        <translation>{hours} insgesamt</translation>
    </message>
    <message>
        <source>Spare missing before promises</source>
        <translation>Fehlender Puffer vor Zusagen</translation>
    </message>
    <message>
        <source>Until each piece is done</source>
        <translation>Bis jedes Stück fertig ist</translation>
    </message>
    <message>
        <source>proved the best possible on starts every {minutes} minutes</source>
        <translation>bewiesen der beste mit Starts alle {minutes} Minuten</translation>
    </message>
    <message>
        <source>no plan can be below {least}</source>
        <translation>kein Plan kommt unter {least}</translation>
    </message>
    <message>
        <source>This is the quick plan; no better one was looked for.</source>
        <translation>Dies ist der schnelle Plan; ein besserer wurde nicht gesucht.</translation>
    </message>
    <message>
        <source>A better plan was looked for, for {time}.</source>
        <translation>Ein besserer Plan wurde {time} lang gesucht.</translation>
    </message>
    <message>
        <source>A better plan was looked for, for {time}. It was not rehearsed, so how sure it is is not known.</source>
        <translation>Ein besserer Plan wurde {time} lang gesucht. Er wurde nicht geprobt, darum ist nicht bekannt, wie sicher er ist.</translation>
    </message>
    <message>
        <source>{pieces} left out</source>
        <translation>{pieces} ausgelassen</translation>
    </message>
    <message>
        <source>{pieces} scuffed</source>
        <translation>{pieces} angeschliffen</translation>
    </message>
    <message>
        <source>no orders</source>
        <translation>keine Aufträge</translation>
    </message>
    <message>
        <source>{count} order not planned</source>
        <translation>{count} Auftrag nicht geplant</translation>
    </message>
    <message>
        <source>{count} orders not planned</source>
        <translation>{count} Aufträge nicht geplant</translation>
    </message>
    <message>
        <source>no planned order late</source>
        <translation>kein geplanter Auftrag zu spät</translation>
    </message>
    <message>
        <source>no order late</source>
        <translation>kein Auftrag zu spät</translation>
    </message>
    <message>
        <source>{count} order late</source>
        <translation>{count} Auftrag zu spät</translation>
    </message>
    <message>
        <source>{count} orders late</source>
        <translation>{count} Aufträge zu spät</translation>
    </message>
    <message>
        <source>{hours} weighted</source>
        <translation>{hours} gewichtet</translation>
    </message>
    <message>
        <source>proved the best</source>
        <translation>bewiesen der beste</translation>
    </message>
    <message>
        <source>cannot be below {least}</source>
        <translation>kommt nicht unter {least}</translation>
    </message>
    <message>
        <source>under 1 %</source>
        <translation>unter 1 %</translation>
    </message>
    <message>
        <source>over 99 %</source>
        <translation>über 99 %</translation>
    </message>
    <message>
        <source>{count} rehearsed week</source>
        <translation>{count} geprobten Woche</translation>
    </message>
    <message>
        <source>{count} rehearsed weeks</source>
        <translation>{count} geprobten Wochen</translation>
    </message>
    <message>
        <source>leaves that day or sooner in {share} of {weeks}</source>
        <translation>geht in {share} von {weeks} an diesem Tag oder früher ab</translation>
    </message>
    <message>
        <source>kept in {share} of {weeks}, in nine of ten with {time} spare</source>
        <translation>gehalten in {share} von {weeks}, in neun von zehn mit {time} Puffer</translation>
    </message>
    <message>
        <source>kept in {share} of {weeks}</source>
        <translation>gehalten in {share} von {weeks}</translation>
    </message>
    <message>
        <source>held in {share} of rehearsed weeks</source>
        <translation>gehalten in {share} der geprobten Wochen</translation>
    </message>
</context>
</TS>
