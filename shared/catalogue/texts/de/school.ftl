# German, "du". Schools: members, roles, the server, the board.

role-none = noch keine Rolle
term-stands = seit { $from }{ $open ->
    [no] {", bis "}{ $until }
   *[yes] {""}
  }
term-ended = beendet (begann { $from })
published-by = { $person }, { $day }

sync-none = Diese Schule hat auf diesem Gerät keinen Server. Einträge gehen per Datei oder Code.
    .hint = Frag die Schule nach der Adresse ihres Servers, oder mach ohne weiter.
sync-never = Noch wurde nichts gesendet oder geholt.
    .hint = Gleich jetzt ab, oder bei der nächsten Verbindung.
sync-done = Gleichauf mit dem Server, { $at }.
sync-waits = Die Schule hat dieses Gerät noch nicht aufgenommen ({ $at }).
    .hint = Lies deinen Code dem vor, der das Stammgerät der Schule hat.
sync-failed = { $at }: { $words }
    .hint = Nichts ist verloren: Alles wartet hier und geht beim nächsten Versuch.

net-plain = die Verbindung wäre nicht verschlüsselt
net-silent = innerhalb von { $seconds } Sekunden kam nichts
net-too-large = es kamen mehr als { $most } MB, und das sendet kein Server einer Schule
net-unreachable = { $why }

lie-shrunk = Der Server hat Einträge weggelassen, für die er unterschrieben hatte.
    .hint = Sag es der Schule. Deine Einträge sind auf diesem Gerät sicher; mit diesem Server wird nichts ausgetauscht.
lie-rewritten = Der Server zeigt jetzt eine andere Geschichte derselben Länge als die, für die er unterschrieben hatte.
    .hint = Sag es der Schule. Deine Einträge sind auf diesem Gerät sicher; mit diesem Server wird nichts ausgetauscht.
lie-inconsistent = Was der Server jetzt zeigt, setzt nicht fort, wofür er unterschrieben hatte.
    .hint = Sag es der Schule. Deine Einträge sind auf diesem Gerät sicher; mit diesem Server wird nichts ausgetauscht.
lie-other-records = Der Server gibt andere Einträge aus als die, für die er unterschrieben hat.
    .hint = Sag es der Schule. Deine Einträge sind auf diesem Gerät sicher; mit diesem Server wird nichts ausgetauscht.
lie-swallowed = Der Server sagte, er habe einen Eintrag angenommen, und hat ihn weggelassen.
    .hint = Sag es der Schule. Deine Einträge sind auf diesem Gerät sicher; mit diesem Server wird nichts ausgetauscht.
lie-other-key = Das Wort des Servers ist nicht mit dem Schlüssel unterschrieben, den er hatte, als du beigetreten bist.
    .hint = Frag die Schule, ob ihr Server neu eingerichtet wurde, bevor du ihm wieder folgst.
lie-two-faced = Der Server erzählt euch beiden Verschiedenes.
    .hint = Sag es der Schule. Deine Einträge sind auf diesem Gerät sicher; mit diesem Server wird nichts ausgetauscht.

receipts-good = Alle { $records } Einträge, für die dieses Gerät eine Quittung hat, sind die, für die der Server unterschrieben hat.
receipts-bad = Die Quittungen passen nicht zu dem, wofür der Server unterschrieben hat.
compare-good = Der Server hat euch beiden dasselbe gesagt, für { $records } Einträge.

desk-sign-in = Jemand meldet sich an der Tafel der Schule als du an. Stimm nur zu, wenn du das bist, jetzt, an einem Bildschirm der Schule.
desk-draft = Jemand hat an der Tafel etwas für deine Unterschrift vorbereitet.

publish-adds = { $file } ist neu.
publish-replaces = { $file } tritt an die Stelle der vorhandenen Datei.
warning-published = Was deine Schule veröffentlicht hat, kann diese Version nicht benutzen: { $why }

board-looked = { $list }: { $person }, { $at }
board-never = Noch von niemandem angesehen.

imported = { $taken ->
    [0] Nichts Neues
    [one] Ein neuer Eintrag
   *[other] { $taken } neue Einträge
  }{ $refused ->
    [0] .
    [one] {", "}eine Zeile nicht angenommen.
   *[other] {", "}{ $refused } Zeilen nicht angenommen.
  }
imported-line = Zeile { $line }: { $why }
refusal-unreadable = Sie ist kein Eintrag.
refusal-bad-signature = Die Unterschrift passt nicht: Der Eintrag wurde geändert, oder jemand anders hat unterschrieben.
refusal-unknown-key = Nichts sagt, wessen Schlüssel unterschrieben hat.
refusal-malformed = Sie sagt etwas, das ein solcher Eintrag nicht sagen kann.

told-machine-enrolled = Schule geändert

fault-no-school = Dieses Gerät gehört zu keiner Schule.
    .hint = Gründe eine, oder tritt einer mit Code oder Adresse bei.
fault-no-server = Diese Schule hat auf diesem Gerät keinen Server.
    .hint = Gib die Adresse des Servers ein, oder tausch per Datei oder Code aus.
fault-school-name = Eine Schule braucht einen Namen von bis zu 80 Buchstaben.
    .hint = Sag, wie man sie nennt.
fault-school-already = Dieses Gerät gehört zu einer anderen Schule.
    .hint = Tritt zuerst aus dieser aus.
fault-letter-signature = Dieser Code wurde geändert: Eine Unterschrift darin ist nicht gut.
    .hint = Zeig und lies ihn noch einmal, direkt vom anderen Bildschirm.
fault-letter-of-other = Dieser Code ist nicht für dieses Gerät.
    .hint = Zeig zuerst deinen eigenen Code, und lies die Antwort darauf ein.
fault-server-answer = Was dort antwortet, ist kein Server einer Schule.
    .hint = Prüf die Adresse, mit https:// am Anfang.
fault-root-stays = Das Stammgerät kann nicht austreten, und seine Mitgliedschaft kann nicht beendet werden.
    .hint = Mach zuerst das Gerät eines anderen Mitglieds zum Stammgerät.
fault-not-your-device = Über jenes Gerät hat dieses nichts zu sagen.
    .hint = Einen Schlüssel widerruft das Stammgerät der Schule, oder ein anderes Gerät derselben Person.
fault-not-your-machine = Nur der Halter unterstellt eine Maschine einer Schule oder nimmt sie heraus.
    .hint = Frag die Person, die sie angelegt hat.
fault-role-missing = Es wurde keine Rolle gewählt.
    .hint = Wähl, was die Person sein wird: Leser, Pilot, Mechaniker oder Fluglehrer.
fault-until-passed = Dieser letzte Tag ist schon vorbei.
    .hint = Gib einen Tag ein, der noch kommt, oder lass es offen.
fault-no-such-member = Dieses Mitglied gibt es nicht.
    .hint = Sieh in die Liste der Mitglieder.
fault-not-root = Das kann nur das Stammgerät der Schule.
    .hint = Nimm das Stammgerät, oder bitte die Person, die es hat.
fault-end-reason = Es fehlt ein Grund.
    .hint = Sag in wenigen Worten, warum es endet.
fault-server-address = „{ $address }“ ist keine Adresse eines Servers.
    .hint = Gib sie ein, wie die Schule sie schreibt: school.example, oder mit Port school.example:8443. Dahinter kommt nichts.
fault-server-plain = Was an { $address } geht, wäre nicht verschlüsselt.
    .hint = Frag die Schule nach ihrer Adresse mit https://. Hat sie keine und ist das Netz für andere geschlossen, starte das Programm mit WITNESSMARK_PLAIN_HTTP=1.
fault-draft-not-shown = Was vorbereitet wurde, ist hier noch nicht gezeigt worden.
    .hint = Öffne den Code noch einmal, lies, dann unterschreib.
fault-server-unreachable = Der Server ist nicht erreichbar: { $why }
    .hint = Alles wartet hier und geht beim nächsten Versuch. Die App braucht keine Verbindung.
fault-server-busy = Der Server ist beschäftigt (Status { $status }).
    .hint = Versuch es in einer Minute noch einmal; nichts ist verloren.
fault-server-refused = Der Server lehnt ab: { $words }
    .hint = { $hint }
fault-server-lies = { $words }
    .hint = Sag es der Schule. Deine Einträge sind auf diesem Gerät sicher; mit diesem Server wird nichts ausgetauscht.
fault-server-distrusted = Dieser Server hat sich selbst widersprochen: Mit ihm wird nichts ausgetauscht.
    .hint = Sprich mit der Schule; dann folge ihrem Server neu.
fault-nothing-followed = Diesem Server wurde noch nicht gefolgt.
    .hint = Gleich zuerst einmal ab.
fault-compare-later = Das andere Gerät hat mehr vom Logbuch gesehen als dieses.
    .hint = Gleich dieses zuerst ab, oder zeig deinen Code dem anderen.
fault-checkpoint-other = Das ist das Wort eines anderen Servers.
    .hint = Vergleich mit einem Mitglied derselben Schule.
fault-desk-of-other = Dieser Code ist von der Tafel einer anderen Schule, oder von einer anderen Adresse.
    .hint = Melde dich nur an der Tafel deiner eigenen Schule an.
fault-draft-odd = Was dort vorbereitet wurde, lässt sich so nicht unterschreiben.
    .hint = Lass es an der Tafel neu vorbereiten.
fault-publish-role = Nur ein Fluglehrer der Schule veröffentlicht Listen.
    .hint = Bitte einen Fluglehrer.
fault-publish-title = Eine Veröffentlichung braucht einen Titel von bis zu 80 Buchstaben und mindestens eine Datei.
    .hint = Gib ihr einen Titel und wähl ihre Dateien.
fault-publish-large = Das ist zu viel auf einmal (höchstens { $most } kB).
    .hint = Veröffentliche es in Teilen.
fault-publish-faults = { $where }: { $why }
    .hint = Bring die Datei in Ordnung und versuch es noch einmal.
