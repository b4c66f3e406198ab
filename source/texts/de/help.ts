import type { helpPages as en } from '../en/help.js';
import type { Translated } from '../texts.js';

/** Was `--help` ausgibt. Befehle, Optionen und Beispiele sind in jeder Sprache dieselben. */
export const helpPages = {
  program: `
  Beispiele
    $ kettlehand cook                            das mitgelieferte Beispiel
    $ kettlehand cook mint-pull                  ein anderes Rezept
    $ kettlehand plan mint-pull --guests 24      Einkauf, Zieltemperatur, Stücke
    $ kettlehand rehearse --surprise any         erst an einem simulierten Topf
    $ kettlehand watch                           zweiter Bildschirm für den Raum
    $ kettlehand debrief                         was war, was zu ändern ist
    $ kettlehand cooks                           auflisten, vergleichen, sichern
    $ kettlehand handout mint-pull --html        ein Blatt für die Zuschauer
    $ kettlehand labels mint-pull                ein Etikett für Verschenktes
    $ kettlehand recipes                         was sich kochen lässt
    $ kettlehand kitchen set altitude "1450 m"   einmal von der Küche erzählen
    $ kettlehand follow mint-pull --json         derselbe Kochgang aus der Pipe
    $ kettlehand syrup --item granulated-sugar=400g --celsius 121

  Befehle
    cook, plan, rehearse, watch, follow, debrief, cooks, handout, labels,
    recipes, kitchen, syrup; jeder mit --help

  Optionen
    --language en|de   die Sprache, in der gelesen wird (Vorgabe: die der Küche,
                       sonst die des Systems)

  Wer die Aufsicht hat, die örtlichen Regeln für Küchen und Kinder, das
  Lebensmittelrecht und ausgebildete Erste Hilfe gehen allem vor, was dieses
  Programm sagt.
`,
  cook: `
  Beispiele
    $ kettlehand cook                     das mitgelieferte Beispiel
    $ kettlehand cook mint-pull           ein anderes Rezept, beim Namen
    $ kettlehand cook ./mine.yaml         ein eigenes, mit seinem Pfad
    $ kettlehand cook mint-pull --plain   Zeile um Zeile: jedes Terminal, eine
                                          Pipe, ein Vorleser
    $ kettlehand cook mint-pull --feed readings.txt
                                          ein schreibendes Thermometer neben der
                                          Tastatur: Zeilen, die an eine Datei
                                          angehängt oder in eine Pipe (mkfifo)
                                          geschrieben werden

  Führt einen Kochgang vom kalten Topf bis zu den gewickelten Stücken. Jede
  Antwort wird sofort gespeichert; verlass ihn, wie du willst, starte wieder,
  und es geht dort weiter.

  Optionen
    --kitchen DATEI  wo gekocht wird (Vorgabe: die gespeicherte Küche)
    --at 15:00       wann das Ziehen vor Zuschauern beginnt: sagt, wie viel zu
                     früh oder spät es ist
    --feed PFAD      Zeilen einer wachsenden Datei oder einer Pipe als
                     Ablesungen: 238, 238f oder 114.5c
    --plain          Zeilen statt des ganzen Bildschirms
    --quiet          keine Klingel
    --no-color       keine Farbe (ebenso NO_COLOR in der Umgebung)
    --background dark|light   was hinter der Schrift ist, wo das Terminal es
                              nicht sagt
    --ascii          Buchstaben, Linien und Kurve nur aus ASCII-Zeichen, wo
                     andere als Kästchen oder zwei Zellen breit erscheinen
    --still          laufende Zahlen rücken nur alle zehn Sekunden weiter,
                     nichts dreht sich
    --screen-reader  kein Bild: Neues wird angehängt, in der Folge, in der es
                     gesprochen wird
    --new            die offenen Kochgänge nicht anbieten

  Wer die Aufsicht hat, die örtlichen Regeln für Küchen und Kinder, das
  Lebensmittelrecht und ausgebildete Erste Hilfe gehen allem vor, was dieses
  Programm sagt.
`,
  plan: `
  Beispiele
    $ kettlehand plan hill-hall-ginger-pull
    $ kettlehand plan mint-pull --altitude 1450m --guests 24 --children 10
    $ kettlehand plan mint-pull --pot 3l --json
    $ kettlehand plan mint-pull --weights ounces
    $ kettlehand plan honey-pull --pressure 850hPa --explain
    $ kettlehand plan hill-hall-ginger-pull --at "tomorrow 15:00" --batches 2
    $ kettlehand plan hill-hall-ginger-pull --card --html > card.html

  Was zu kaufen und zu wiegen ist, wie heiß an diesem Thermometer hier und
  heute, was es ergibt.

  Optionen
    --altitude 1450m|4750ft   --pressure 850hPa (Luftdruck am Ort)
    --kitchen DATEI
    --pieces N   --guests N [--children N]   --batch 1.5   --pot 3l
    --weights grams|ounces   das zweite: Unzen, Becher und Löffel neben den
                             Gramm (Vorgabe: die der Küche)
    --at 15:00  der Ablauf: zurückgerechnet von dem, wann das Ziehen vor den
                Zuschauern beginnt (auch 3:30pm, "2026-11-28 15:00")
    --batches N mit --at: so viele Kochgänge auf einem Herd, nacheinander
    --alone     mit --at: eine Person tut alles, die Kochgänge liegen also
                weiter auseinander
    --card      ein Blatt für die Wand, wenn der Strom oder der Rechner
                ausfällt; mit --html zum Drucken
    --explain   Formeln, Eingaben, Quellen, Unsicherheit
    --json      ein JSON-Objekt
`,
  rehearse: `
  Beispiele
    $ kettlehand rehearse
      das mitgelieferte Beispiel, in etwa 4 Minuten
    $ kettlehand rehearse mint-pull --surprise foam-over
      dem Schaum begegnen, bevor jemand zusieht
    $ kettlehand rehearse --surprise any --seed 7
      irgendetwas, bei gleicher Zahl jedes Mal dasselbe
    $ kettlehand rehearse --auto
      der Topf tippt seine Ablesungen selbst
    $ kettlehand rehearse --auto --headless --json
      eine simulierte Person tippt alles, für Skripte

  Derselbe Kochgang, an einem simulierten Topf und mit einer schnellen Uhr.
  "look" sagt, was das Thermometer zeigt und was zu sehen ist, "skip" springt
  zum Nächsten, das zu tun ist, "pause" und "go" halten die Uhr an und lassen
  sie weiterlaufen.

  Optionen
    --surprise NAME  foam-over, hot-hob, weak-hob, thermometer-off,
                     interruption, grains, overshoot, power-cut, early-touch,
                     burning-smell oder any (Vorgabe: keine)
    --seed N         dieselbe Zahl ergibt denselben Probelauf
    --pace N         1- bis 60-mal so schnell (Vorgabe 30); von selbst
                     langsamer, wo gleich etwas zu tun ist
    --at 15:00       wann das echte Ziehen beginnt: das Ergebnis nennt Uhrzeiten
                     (auch "morgen 15 Uhr")
    --kitchen DATEI  wo gekocht wird (Vorgabe: die gespeicherte Küche)
    --auto           der Topf tippt die Ablesungen
    --plain          Zeilen statt des ganzen Bildschirms; --quiet keine Klingel;
                     --no-color, --background dark|light, --ascii, --still,
                     --screen-reader wie bei cook
    --headless       mit --auto: eine simulierte Person, kein Bildschirm
    --json           Protokoll und Ergebnis als ein JSON-Objekt; die Zeilen
                     davor auf der Fehlerausgabe
`,
  follow: `
  Beispiele
    $ kettlehand follow hill-hall-ginger-pull --json < typed.txt
    $ my-logging-thermometer | kettlehand follow mint-pull --kitchen hall.yaml
    $ kettlehand follow honey-pull --from fold --journal today.jsonl

  Liest Zeilen, jede so, wie jemand sie in der Konsole tippen würde, oder
  {"t": Sekunden, "typed": "..."}; beantwortet jede mit dem Rat für diesen
  Augenblick.

  Optionen
    --kitchen DATEI  wo gekocht wird (Vorgabe: die gespeicherte Küche)
    --from PHASE     in dieser Phase beginnen; alles davor gilt als bestätigt
    --journal DATEI  den Kochgang dort aufbewahren, oder mit dem weitermachen,
                     der dort steht
    --json           ein JSON-Objekt je Zeile
`,
  watch: `
  Beispiele
    $ kettlehand watch                    auf einem zweiten Bildschirm: der
                                          laufende Kochgang, oder der nächste
    $ kettlehand watch 2026-11-25         jener Kochgang, nach seiner Kennung
                                          oder einem Teil davon
    $ kettlehand watch --once             was jetzt zu sehen ist, in Zeilen, und
                                          Schluss
    $ kettlehand watch --plain            Zeilen, die immer nur angehängt werden

  Für die Leute im Raum: Temperatur und Stufe in großen Buchstaben, was
  geschieht und warum in einfachen Worten, wann man zurücktritt, und was die
  vortragende Person sagt. Es liest immer nur: keine Taste tut etwas außer q,
  Esc und Ctrl+C, und der Kochgang merkt nichts davon. Notizen, Namen und
  Probleme werden nicht gezeigt.

  Optionen
    --once       sagen, was zu sehen ist, und enden; ohne laufenden Kochgang
                 schlägt das fehl
    --plain      Zeilen statt des ganzen Bildschirms
    --no-color, --background dark|light, --ascii, --still, --screen-reader
                 wie bei cook
`,
  debrief: `
  Beispiele
    $ kettlehand debrief                      der letzte Kochgang: was geschah,
                                              was zu ändern ist
    $ kettlehand debrief 2026-11-25           ein anderer, nach seiner Kennung
                                              oder einem Teil davon
    $ kettlehand debrief ./fair.jsonl         ein Protokoll oder ein gesicherter
                                              Kochgang, mit seinem Pfad
    $ kettlehand debrief --html > fair.html   eine Seite zum Drucken oder
                                              Verteilen
    $ kettlehand debrief --chapters           Zeiten und Titel für unter ein
                                              Video

  Optionen
    --markdown   --html    zum Lesen und zum Drucken
    --json --csv für Programme und Tabellen (Ereignisse und Ablesungen)
    --chapters             gezählt ab "mark recording"

  Ein Kochgang, der nicht fertig ist, wird so weit erzählt, wie er kam.
  "kettlehand cooks" zählt sie auf.
`,
  cooks: `
  Beispiele
    $ kettlehand cooks                                 alle, der neueste zuerst
    $ kettlehand cooks --recipe ginger --since 2026-11-01
    $ kettlehand cooks compare 2026-11-25 2026-12-02   nebeneinander: was anders
                                                       war, was daraus wurde
    $ kettlehand cooks export 2026-11-25 --to fair.kettlehand-cook
    $ kettlehand cooks import fair.kettlehand-cook
    $ kettlehand cooks delete 2026-11-25-143502-9f2c   fragt vorher

  Ein Kochgang heißt nach seiner Kennung, oder nach einem Teil davon, den nur
  einer hat.

  Optionen
    --recipe WORT   --since JJJJ-MM-TT   --unfinished   --rehearsals
                    welche aufgelistet werden
    --to DATEI      wohin gesichert wird; "-" ist die Standardausgabe
    --yes           löschen, ohne zu fragen
    --json          Liste und Vergleich als ein JSON-Objekt
`,
  handout: `
  Beispiele
    $ kettlehand handout mint-pull
      ein Blatt für die Zuschauer, als Markdown
    $ kettlehand handout mint-pull --html > mint.html
      zum Drucken auf A4 oder Letter, oder zum Verschicken
    $ kettlehand handout mint-pull --pot 2l
      so viel, wie ein Topf von zwei Litern fasst
    $ kettlehand handout mint-pull --have sugar=300g
      so viel, wofür das reicht, was daheim ist

  Mengen in beiden Systemen, Schritte, die Wasserprobe, Vorsicht, Erste Hilfe,
  Allergene, Aufbewahrung, deine eigenen Worte aus den Stichworten des Rezepts,
  und Platz für mehr. Für jede Küche: es sagt, wie sich das Ziel auf einem Berg
  oder bei einem Thermometer verschiebt, das falsch zeigt.

  Optionen
    --html   --markdown (Vorgabe)
    --pieces N   --batch 1.5        wie viel, oder
    --have ZUTAT=MENGE   --pot 2l   was daheim ist, --have so oft wie nötig: das
                         Knappste entscheidet
`,
  labels: `
  Beispiele
    $ kettlehand labels mint-pull                      für eine Tüte mit zehn
                                                       Stücken, heute gemacht
    $ kettlehand labels mint-pull --net 100g
    $ kettlehand labels --cook 2026-11-25 --pieces 12  nach dem, was jener
                                                       Kochgang wog, mit seinem
                                                       Datum
    $ kettlehand labels mint-pull --checked wheat      die Packung wurde
                                                       gelesen: kein Weizen
                                                       darin

  Ein Textblock: Zutaten nach Gewicht, Allergene in Großbuchstaben,
  Nettogewicht, Datum. Das örtliche Lebensmittelrecht bestimmt, was darauf
  stehen muss; was noch nachzusehen ist, steht auf der Fehlerausgabe.

  Optionen
    --pieces N   --net 100g   in einer Tüte
    --date JJJJ-MM-TT         gemacht am (Vorgabe: heute, oder am Tag des
                              Kochgangs)
    --checked WORT            ein Allergen, das die Packung ausschließt; so oft
                              wie nötig
    --kitchen DATEI
`,
  recipes: `
  Beispiele
    $ kettlehand recipes                  alle aufzählen
    $ kettlehand recipes show mint-pull   eines, mit seinen Gründen
    $ kettlehand recipes check mine.yaml  stimmt meine Datei?
    $ kettlehand recipes instead mint-pull honey   dasselbe Bonbon mit einem
                                                   anderen Sirup
    $ kettlehand recipes items            welche Zutaten bekannt sind

  Optionen
    --json   ein JSON-Objekt
`,
  kitchen: `
  Beispiele
    $ kettlehand kitchen                          was von deiner Küche bekannt
                                                  ist
    $ kettlehand kitchen set altitude "1450 m"    ihm etwas davon erzählen
    $ kettlehand kitchen set stove gas
    $ kettlehand kitchen set learned.carry-over "3 F"   statt dessen, was
                                                        frühere Kochgänge
                                                        lehrten; none vergisst
                                                        es
    $ kettlehand kitchen path                     wo die Datei liegt

  Optionen
    --json   ein JSON-Objekt
`,
  syrup: `
  Beispiele
    $ kettlehand syrup --item granulated-sugar=400g --item water=100g
    $ kettlehand syrup --item glucose-syrup:42=200g --celsius 124
    $ kettlehand syrup --item honey=200g --solids 0.92 --altitude 1450m --json

  Optionen
    --item ZUTAT=MENGE      mehrmals; glucose-syrup:42=200g trägt seinen DE-Wert
    --pressure, --altitude  wo (Vorgabe: auf Meereshöhe)
    --celsius T, --solids F eines davon ersetzt das angegebene Wasser
    --json                  ein JSON-Objekt
`,
} as const satisfies Translated<typeof en>;
