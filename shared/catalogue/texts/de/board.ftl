# German, "du". The school board in a browser: its own words.

wall-title = Tafel der Schule
wall-invented = Erfunden, zur Vorführung
wall-unreachable = Der Server ist nicht erreichbar.
wall-unreachable-hint = Was du eingegeben hast, ist noch hier. Versuch es noch einmal, wenn die Verbindung wieder da ist.
wall-nothing-there = An dieser Adresse ist nichts.

## Signing in

wall-sign-in = Mit deinem Gerät anmelden
wall-step-open = Öffne Witness Mark auf deinem Handy und darin: Code öffnen.
wall-step-scan = Lies den Code auf dieser Seite, oder kopier seinen Text dorthin.
wall-step-pin = Sieh nach, ob diese Schule genannt wird, und gib deine PIN ein.
wall-sign-in-why = Dein Handy unterschreibt für diese Seite, höchstens für zwölf Stunden. Die Seite selbst kann niemals etwas unterschreiben.
wall-code = Code dieser Seite, zum Lesen mit deinem Handy
wall-code-anew = Neuen Code zeigen
wall-passphrase-open = Mit Kennwort ansehen
wall-passphrase = Kennwort
wall-passphrase-hint = Damit kannst du ansehen. Um etwas vorzubereiten, brauchst du dein Gerät.
wall-passphrase-go = Ansehen
wall-by-passphrase = Mit Kennwort angemeldet
wall-look-only = nur ansehen
wall-role-viewer = Leser
wall-role-pilot = Pilot
wall-role-mechanic = Mechaniker
wall-role-instructor = Fluglehrer
wall-sign-out = Abmelden

## The board

wall-beside = Neben den Maschinen
wall-second = Zweitkontrollen ({ $count })
wall-prepared = Vorbereitet, nicht unterschrieben ({ $count })
wall-publish = Liste veröffentlichen
wall-live-coming = Verbindet …
wall-live-live = Live seit { $time }
wall-live-lost = Verbindung um { $time } verloren. Was du siehst, ist von da; es wird weiter versucht.
wall-counts = Wie viele wovon; drück darauf, um nur diese zu zeigen
wall-count-defects = mit offenen Mängeln
wall-count-deferred = darf warten
wall-count-due = bald fällig oder überfällig
wall-count-second = wartet auf Zweitkontrolle
wall-search = Suchen
wall-owner = Halter
wall-everybody = alle
wall-sort = Reihenfolge
wall-sort-first = was zuerst einen Menschen braucht
wall-sort-name = nach Name
wall-sort-owner = nach Halter
wall-sort-looked = am längsten nicht angesehen
wall-sort-due = Fälliges zuerst
wall-every = Alle zeigen
wall-machines = Die Maschinen der Schule
wall-verdict = Urteil
wall-eyes = Wartet auf Zweitkontrolle
wall-no-permission = Ein Urteil fasst zusammen, was eingetragen wurde. Es ist keine Erlaubnis zu fliegen: Sieh dir die Maschine selbst an; das Handbuch des Herstellers, die örtlichen Vorschriften und wer die nötige Berechtigung hat, gehen vor.
wall-close = Zurück zur Tafel

## A machine

wall-open = Offen
wall-happened = Verlauf
wall-job = Arbeit nicht freigegeben
wall-second-code = Code zur Zweitkontrolle
wall-defer = Darf warten …
wall-to-machine = Zur Maschine
wall-left = { $count ->
    [one] Ein Punkt, den niemand angesehen hat
   *[other] { $count } Punkte, die niemand angesehen hat
  }

## Second looks

wall-second-title = Zweitkontrolle
wall-second-none = Keine Arbeit wartet auf ein zweites Paar Augen.
wall-second-caution = Bevor eine Hand in die Nähe kommt: Stoppschalter auf Stopp und Kerzenstecker ab, oder Flugakku getrennt. An heißen Teilen verbrennst du dich. Sieh dir die Verbindungen selbst an; ein Bildschirm zeigt keine davon.
wall-second-how = Jemand, der die Arbeit nicht gemacht hat, öffnet diesen Code in Witness Mark, sieht sich jede Verbindung an und unterschreibt. Mit dem nächsten Abgleich kommt es hierher zurück.

## Preparing

wall-until = Bis wann, höchstens? Was zuerst eintritt, gilt.
wall-now = Jetzt: { NUMBER($hours, minimumFractionDigits: 1, maximumFractionDigits: 1) } h, { $flights ->
    [one] ein Flug
   *[other] { $flights } Flüge
  }
wall-hours = Motorstunden
wall-flights = Flüge insgesamt
wall-date = Tag
wall-condition = Unter welcher Bedingung darf sie fliegen?
wall-condition-hint = Etwa: nur solo, höchstens Halbgas.
wall-reason = Warum darf es warten?
wall-defer-caution = Wer das unterschreibt, steht dafür ein. Verbieten das Handbuch des Herstellers oder die örtlichen Vorschriften, mit dem Mangel zu fliegen, darf er nicht warten.
wall-prepare = Zum Unterschreiben vorbereiten
wall-prepare-what = Noch ändert sich nichts. Du unterschreibst auf deinem eigenen Gerät, und es zeigt dir, was daraus folgt.
wall-sign-there = Jetzt auf deinem Gerät unterschreiben
wall-sign-there-how = Öffne den Code in Witness Mark, lies, was dort steht, und gib deine PIN ein. Die Tafel folgt von selbst.
wall-sign-there-code = Was du vorbereitet hast, zum Lesen mit deinem Handy
wall-signed = Es wartet nicht mehr: Es wurde unterschrieben oder zurückgenommen. Die Tafel zeigt, was gilt.
wall-publish-what = Wähl Listen oder Datenblätter. Jedes wird sofort geprüft; nichts, worin ein Fehler ist, lässt sich veröffentlichen.
wall-publish-caution = Listen und Grenzwerte aller Mitglieder folgen dem, was du veröffentlichst. Eine falsche Zahl kann jemanden verletzen: Vergleich jede mit dem Handbuch des Herstellers.
wall-publish-title = Titel
wall-publish-title-hint = Derselbe Titel tritt an die Stelle der Version davor.
wall-publish-note = Was ist neu?
wall-prepared-title = Vorbereitet, nicht unterschrieben
wall-prepared-none = Nichts, was du vorbereitet hast, wartet auf eine Unterschrift.
wall-take-back = Zurücknehmen
wall-draft-deferral = { $machine }: { $title } darf warten
wall-draft-publication = { $title }, Version { $version }

## What the records tell

wall-lives = Wie lange Teile halten
wall-lives-what = Alle Kontrollen an allen Maschinen der Schule, zusammengenommen. Es sind wenige, und sie sind kein Handbuch: Die Intervalle des Herstellers gelten, bis jemand sie verkürzt.
wall-worth = Was die Punkte wert sind
wall-looking = Wie jeder hinsieht

## What the server refuses

wall-fault-code-gone = Dieser Code wurde nicht rechtzeitig bestätigt.
wall-fault-code-gone-hint = Fordere einen neuen Code an.
wall-fault-no-device = Mit einem Kennwort darfst du nur ansehen.
wall-fault-no-device-hint = Melde dich mit deinem eigenen Gerät an: Was du hier vorbereitest, unterschreibst du dort.
wall-fault-looking-instructors = Wie jeder hinsieht, sieht hier nur ein Fluglehrer.
wall-fault-looking-instructors-hint = Jeder sieht auf dem eigenen Gerät, wie er selbst hinsieht; für alle meldet sich hier ein Fluglehrer an.
wall-fault-not-a-member = Dieses Gerät ist heute kein Mitglied.
wall-fault-not-a-member-hint = Bitte die Schule, dieses Gerät aufzunehmen.
wall-fault-not-instructor = Nur ein Fluglehrer bereitet hier etwas vor.
wall-fault-not-instructor-hint = Bitte einen Fluglehrer, oder sieh dir die Tafel weiter an.
wall-fault-not-yours = Das hat jemand anders vorbereitet.
wall-fault-not-yours-hint = Nur wer etwas vorbereitet hat, nimmt es zurück.
wall-fault-other-page = Diese Anfrage kam nicht von der eigenen Seite der Tafel.
wall-fault-other-page-hint = Öffne die Tafel unter der eigenen Adresse des Servers und versuch es dort noch einmal.
wall-fault-passphrase-off = Diese Tafel hat kein Kennwort.
wall-fault-passphrase-off-hint = Melde dich mit deinem Gerät an.
wall-fault-passphrase-too-often = Zu viele falsche Kennwörter. Warte { $minutes ->
    [one] eine Minute
   *[other] { $minutes } Minuten
  }.
wall-fault-passphrase-too-often-hint = Oder melde dich mit deinem Gerät an: Das geht weiterhin.
wall-fault-passphrase-wrong = Das ist nicht das Kennwort.
wall-fault-passphrase-wrong-hint = Versuch es noch einmal, oder melde dich mit deinem Gerät an.
wall-fault-signed-out = Auf dieser Seite ist niemand angemeldet.
wall-fault-signed-out-hint = Melde dich mit deinem Gerät an.
