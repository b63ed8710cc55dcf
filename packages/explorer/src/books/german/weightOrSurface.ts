import type { ToldBook } from '../told.ts'

/** Weight or surface? In German. */
export const weightOrSurface: ToldBook = {
  title: 'Gewicht oder Oberfläche?',
  pages: [
    {
      title: 'Zwei Zahlen',
      lead: 'Die Werkstatt sagt die eine Höhe, und was unter der Einheit liegt, macht eine andere daraus.',
      notes: `Sagen Sie zuerst die Worte zur Sicherheit, wenn eine Einheit im Raum ist: Motor aus oder Batterie getrennt, schnittfeste Handschuhe, zu zweit heben, nichts unter einer Einheit, die nur ein Wagenheber hält, die Anleitung der Maschine und die örtlichen Vorschriften.

Gerät: die Einheit, oder nur ihr vorderes Ende; eine Schaumstoffmatte, breiter als die Walzen, auf festem Boden; drei Vorderwalzen, leicht und glatt, schwer und glatt, gerillt; eine Waage; ein Lineal über zwei Klötzen, die neben der Matte stehen; ein Messschieber oder Tiefenmaß; Zettel. Keine Matte? Eine Kiste mit Rasen tut es auch, wenn er gerade gestochen und am Vortag gewässert ist.

Bevor die Gruppe kommt: Wiegen Sie Ihre Einheit und Ihre Walzen, tippen Sie die Werte unter dieser Abbildung ein, setzen Sie eine Walze auf Ihre Matte, und verschieben Sie die Weichheit, bis das Buch sagt, was Ihr Messgerät sagt. Von da an sagt es voraus, und die Gruppe kann es ertappen.

Fragen Sie, wer wusste, dass die beiden Höhen verschieden sind, und wer danach einstellt.`,
      entries: {
        yours: {
          title: 'Ihre eigene Einheit und Matte',
          notes:
            'Für vor der Stunde. Lassen Sie es weg, wenn Sie das Buch zeigen; in der Gruppe braucht es niemand.',
        },
      },
    },
    {
      title: 'Schätzen: das Gewicht',
      lead: 'Zwei glatte Walzen, gleich groß, eine viel schwerer als die andere.',
      notes: `Lassen Sie beide Walzen herumgehen: Wer sie in der Hand wiegt, schätzt mutiger. Zettel einsammeln, nicht reden, dann die Zahlen eintippen, wie sie kommen, oder als Strichliste. Ihre Punkte stehen auf der Abbildung, bevor irgendetwas gesagt ist.

Legen Sie sich fest, bevor Sie weitergehen, vor aller Augen. Zeigen Sie noch nichts: Die Matte ist zuerst dran.`,
      entries: {
        'guess-weight': {
          question:
            'Mit der leichten Walze, {rollers.light.mass}, steht die Vorderwalze {front.sinkage} tief in der Matte. Wie tief steht sie mit der schweren, {rollers.heavy.mass}?',
          because:
            'Die Vorderwalze drückt mit {then.front.load} statt {front.load}. Eine runde Walze, die einsinkt, verbreitert ihr eigenes Bett, sodass mehr von der Matte dem hilft, was dazukommt.',
        },
      },
    },
    {
      title: 'Drücken: das Gewicht',
      lead: 'Erst die leichte Walze, dann die schwere: sanft aufsetzen, und jedes Mal gleich lang warten.',
      notes: `Jemand aus der Gruppe setzt sie auf, jemand anderes zählt die Wartezeit laut. Dieselbe Stelle der Matte, dieselbe Wartezeit. Schaum kriecht: Ohne feste Wartezeit messen Sie Geduld.

Während die schwere Walze eingebaut wird, lassen Sie die Gruppe sagen, was sie auf einem Grün täte, um die Bedingungen gleich zu halten.`,
      entries: {
        'press-weight': {
          text: `Motor aus oder Batterie getrennt, Handschuhe an, zu zweit heben.

Aufsetzen ohne Gewicht: Das ist null. Loslassen, zählen, ablesen. Abheben, die Matte zurückkommen lassen, die Walze wechseln und an derselben Stelle noch einmal.

Was muss gleich bleiben, damit nur das Gewicht verschieden ist?`,
        },
      },
    },
    {
      title: 'Messen: das Gewicht',
      lead: 'Lesen Sie vom Lineal hinunter zur Achse der Walze ab, einmal vor dem Loslassen und einmal nach der Wartezeit.',
      notes: `Lesen Sie dreimal ab, und schreiben Sie alle drei an die Tafel, nicht nur die schönste Zahl. Fragen Sie, wie weit sie auseinanderliegen, bevor Sie nach ihrer Mitte fragen: So gut kann diese Gruppe heute messen.

Die Klötze müssen auf dem Boden stehen, nicht auf der Matte.`,
      entries: {
        'measure-weight': {
          text: `Der Unterschied der beiden Ablesungen ist die Einsinktiefe. Drei Leute lesen ab; niemand sagt eine Zahl, bevor alle drei ihre aufgeschrieben haben.

Wie weit liegen sie auseinander? Kleineres als das lässt sich mit der Matte nicht unterscheiden.`,
        },
      },
    },
    {
      title: 'Eintippen: das Gewicht',
      lead: 'Die Messwerte dieser Gruppe neben der Kurve des Buchs.',
      notes: `Tippen Sie die Last ein, die Ihre Waage unter der Vorderwalze zeigte, und die Einsinktiefe. Jeder Messwert landet als kleiner Ring auf der Kurve, sobald er getippt ist.

Wenn die Matte widerspricht: Sagen Sie es, und lassen Sie es an der Wand stehen. Ein Messwert tiefer als die Kurve, mit beiden Walzen: Die Matte ist weicher als im Buch, oder wärmer; stellen Sie die Weichheit so, dass die leichte Walze stimmt, und fragen Sie, ob die schwere es jetzt auch tut. Tiefer nur mit der schweren: Die Matte sitzt auf dem Boden auf, oder die Klötze standen auf der Matte. Weniger tief: Die Wartezeit war kürzer, oder die Walze war nicht losgelassen. Nichts davon ist ein Misserfolg; dafür ist ein Modell da.`,
      entries: {
        weights: { title: 'Von der Matte abgelesen: das Gewicht' },
      },
    },
    {
      title: 'Erklären: das Gewicht',
      lead: 'Zeigen Sie nun, was das Buch sagte, und lassen Sie die Gruppe sagen, warum es so wenig ist.',
      notes: `Gehen Sie Seite für Seite zurück, wenn die Gruppe ihre Schätzungen neben dem Ring sehen will: Die Frage des zweiten Schritts wird dort aufgelöst.

Das Wort, das aus der Gruppe kommen soll, ist „Bett“. Drücken Sie eine Flasche in ein Kissen, wenn Sie ein Bild brauchen: Zuerst berührt sie eine Linie, dann einen breiten Streifen. Doppelter Streifen, und jeder Teil davon drückt auch noch stärker.

Frage zum Stellen: Was täte eine flache Platte?`,
      entries: {
        'explain-weight': {
          text: `Eine Walze trifft die Matte entlang einer Linie. Sinkt sie ein, wird aus der Linie ein Streifen. Der Streifen wächst mit der Wurzel der Tiefe, und die Matte drückt umso stärker zurück, je tiefer sie eingedrückt ist: Also kostet jedes Newton mehr weniger Tiefe als das davor.

Unter {front.load} steht diese Walze {front.sinkage} tief. {oneKilogram.mass} mehr vorn würden die Schneidkante um {oneKilogramMore.drop} senken.`,
        },
      },
    },
    {
      title: 'Schätzen: die Oberfläche',
      lead: 'Nun eine Walze, die kaum mehr wiegt als die leichte, aber Rillen hat.',
      notes: `Bauen Sie die leichte Walze wieder ein, im Raum und im Buch. Geben Sie die Rillenwalze neben der leichten herum. Jemand wird die Stege messen: gut, fragen Sie, welcher Teil des Mantels übrig bleibt.

Wieder Zettel, festlegen, nichts zeigen.`,
      entries: {
        'guess-surface': {
          question:
            'Die Rillenwalze wiegt {rollers.grooved.mass}, die leichte {rollers.light.mass}. Ihre Stege sind {rollers.grooved.land} breit, alle {rollers.grooved.pitch} einer. Die Vorderwalze steht jetzt {front.sinkage} tief. Wie tief steht sie mit der gerillten?',
          because:
            'Sie wiegt so gut wie nichts mehr und drückt mit {then.front.load} statt {front.load}. Aber sie hat nur ihre Stege, um darauf zu stehen, und was die Matte dazwischen hergibt.',
        },
      },
    },
    {
      title: 'Drücken: die Oberfläche',
      lead: 'Dieselbe Stelle der Matte, dieselbe Wartezeit, die Rillenwalze.',
      notes: `Lassen Sie jemanden auf Augenhöhe an der Matte entlangsehen, während sie aufgesetzt wird: In den Rillen steht der Schaum auf. Das ist die ganze Lektion, und sie haben es gesehen, bevor Sie es gesagt haben.

Ein tief gehaltenes Telefon macht davon ein Bild für die Wand.`,
      entries: {
        'press-surface': {
          text: `Handschuhe an, zu zweit heben. Setzen Sie die Rillenwalze auf. Bevor Sie ablesen, sehen Sie von der Seite an der Matte entlang.

Was macht die Matte zwischen den Stegen? Was macht sie neben den Enden der Walze?`,
        },
      },
    },
    {
      title: 'Messen: die Oberfläche',
      lead: 'Drei Leute lesen ab wie zuvor; dann die Walze längs ihrer Achse um eine halbe Teilung versetzen und noch einmal ablesen.',
      notes: `Die halbe Teilung kostet eine Minute und schafft Vertrauen: Die Stege stehen auf frischem Schaum, und der Messwert ist derselbe. Ist er es nicht, haben Sie gefunden, wie verschieden eine Stelle der Matte von der nächsten ist.`,
      entries: {
        'measure-surface': {
          text: `Lesen Sie ab wie zuvor. Versetzen Sie dann die Einheit seitlich um den halben Abstand zweier Stege, und lesen Sie noch einmal ab.

Ist es dasselbe? Dann war es die Walze. Ist es das nicht? Dann war es die Matte.`,
        },
      },
    },
    {
      title: 'Eintippen: die Oberfläche',
      lead: 'Alle Walzen auf einem Bild, und darauf die Messwerte dieser Gruppe.',
      notes: `Jetzt hat jede Walze ihre Kurve, jede mit einem Punkt, wo sie auf dieser Einheit stünde.

Wenn die Matte widerspricht: Beim gerillten Messwert ist am ehesten am Modell zu zweifeln. Der Schaum in den Rillen ist weiter gedehnt, als den Gleichungen lieb ist, und das Buch sagt es in einem Hinweis; lesen Sie ihn vor. Sank die Rillenwalze tiefer als ihre Kurve, ist der Schaum vielleicht weniger zugfest, als das Buch annimmt, oder beim Drücken weicher: Ändern Sie die Lastverteilung, und sehen Sie, wie die gerillte Kurve wandert und die glatten kaum.

Sank sie nicht so tief, sehen Sie nach, ob der Schaum den Rillengrund berührte.`,
      entries: {
        surfaces: { title: 'Von der Matte abgelesen: die Oberfläche' },
      },
    },
    {
      title: 'Erklären: die Oberfläche',
      lead: 'Stege tragen, Rillen nicht, und der Filz dazwischen hilft ein wenig.',
      notes: `Montieren Sie die Rillenwalze in der Liste neben der Abbildung, und lassen Sie die Gruppe die Stege, den Filz und die kleinen Pfeile an den Stegkanten finden. Fragen Sie, was eine viel weitere Teilung täte, und stellen Sie sie dann ein.

Nennen Sie die Zahlen nicht so, als wären sie auf Rasen gemessen. Kein wiederholter Versuch im Druck vergleicht gerillte und glatte Walzen in Schnitttiefen. Wer ein Grün und ein Regal hat: So wird er gemacht.`,
      entries: {
        lands: { title: 'Eine andere Oberfläche' },
      },
    },
    {
      title: 'Die Höhe zurückgeben',
      lead: 'Gewicht oder Oberfläche: Was auch immer die Höhe genommen hat, die Einstellung kann sie zurückgeben.',
      notes: `Eine Hand hoch für Gewicht, eine für Oberfläche: Worauf würden Sie auf einem skalpierten Grün zuerst sehen? Fragen Sie dann nach der Zahl, diesmal laut, und zeigen Sie die Antwort.

Zum Schluss: Niemand hat Ihr Grün gemessen. Was müssten Sie nächste Woche messen, um das hier zu verwenden? Walzen auf der Waage, eine Absenkung auf dem Grün, einen Probestreifen.

Sagen Sie noch einmal, dass eine Matte kein Rasen ist: Sie federt sofort zurück, hat keinen Filz und keinen Regen.`,
      entries: {
        'guess-bench': {
          question:
            'Die Rillenwalze bleibt dran, des Schnittbilds wegen. Um wie viel müssen Sie die Schneidkante in der Werkstatt höher stellen, damit sie so hoch über der Matte steht wie jetzt?',
          because:
            'Die Schneidkante geht um {then.drop} statt {drop} nach unten, ein kleinerer Unterschied als unter der Walze selbst: Sie hängt zwischen den beiden Walzen, und die hintere hat sich nicht geändert.',
        },
      },
    },
  ],
}
