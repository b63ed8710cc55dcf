import type { ToldBook } from '../told.ts'

/** Choose, fit, re-set, in German. */
export const chooseFitReset: ToldBook = {
  title: 'Wählen, montieren, neu einstellen',
  pages: [
    {
      title: 'Von der Waage',
      lead: 'Drei Wägungen und zwei Längen: Das ist die Einheit, soweit es ihre Schnitthöhe betrifft.',
      entries: {
        weigh: {
          text: `Machen Sie die Einheit zuerst sicher, und reinigen Sie die Walzen, bevor Sie etwas wiegen. Nehmen Sie den Fangkorb ab. Stellen Sie die ganze Einheit auf die Waage; dann nur die Vorderwalze, die hintere auf einem Klotz so hoch wie die Waage; dann, wenn es geht, umgekehrt. Zwei der drei genügen, und die dritte zeigt, ob eine falsch abgelesen ist.

Messen Sie mit einem Maßstab längs der Linie unter beiden Walzen von der Vorderachse zur Hinterachse und zur Schneidkante.`,
        },
        weighed: {
          title: 'Was dabei herauskommt',
          text: `Auf ebenem Boden drückt die Vorderwalze mit {front.load}, die hintere mit {rear.load}. Montieren Sie eine schwerere Vorderwalze, gewinnt das vordere Ende ihr Gewicht; das hintere gewinnt so gut wie nichts. Verschieben Sie Gewicht im Aufbau, gewinnt eine, was die andere verliert.`,
        },
      },
    },
    {
      title: 'Die Walzen, die Sie haben',
      lead: 'Jede Walze im Regal einmal auf die Waage und einmal unter den Messschieber, und das Buch kennt sie von da an.',
      entries: {
        inspect: {
          text: `Sehen Sie sich jede an, bevor Sie messen: Lager leichtgängig, Enden nicht verbogen, nichts angebacken. Was an einer Walze klebt, hebt die Schneidkante. Von dem, was es zum Radius hinzufügt, bekommt ein Punkt zwischen den Achsen seinen Teil: Hier liegt die Schneidkante {unit.edge} hinter der Vorderachse, von {unit.wheelbase}. Ein Rundlauffehler tut dasselbe einmal je Umdrehung und hinterlässt Wellen.

Nehmen Sie den Durchmesser über die Stege; die Teilung von einem Steg zum nächsten; die Tiefe bis zum Rillengrund.`,
        },
      },
    },
    {
      title: 'Das Grün, diese Woche',
      lead: 'Wie weich das Grün ist, entscheidet mehr als die Walze, also kommt es vor der Wahl.',
      entries: {
        'read-green': {
          text: `Sie brauchen einen Messwert, dem Sie trauen. Stellen Sie das Buch auf Stehen, setzen Sie die Einheit auf das Grün, wo es eben ist, warten Sie so lange wie immer, und lesen Sie ab, wie weit die Schneidkante unter die eingestellte Höhe gegangen ist. Sechs bis zehn Stellen, und ihre Mitte. Verschieben Sie dann unten die Weichheit, bis das Buch dieselbe Absenkung sagt: Jetzt sagt es {drop}.

Ändern Sie dann etwas, das Sie nachprüfen können, eine andere Walze oder ein bekanntes Gewicht auf der Achse, sagen Sie es hier voraus, und lesen Sie wieder ab. Hat das Buch zweimal recht, verwenden Sie es. Hat es das nicht, messen Sie die Lastverteilung mit einem zweiten Fuß: Das steht im Buch über Messgeräte.`,
        },
        'after-rain': {
          title: 'Nach Regen neu messen',
          text: `Weichheit ist keine Zahl des Grüns, sondern des Grüns in dieser Woche. Doppelt so weicher Rasen würde die Schneidkante um weitere {twiceAsSoft.drop} senken. Lesen Sie nach Regen, nach dem Topdressing und nach dem Aerifizieren neu ab, bevor Sie einer Walze die Schuld geben.`,
        },
      },
    },
    {
      title: 'Wählen',
      lead: 'Alle Walzen im Regal auf dieser Einheit und diesem Grün: wie jede schnitte, drückte, und was dafür einzustellen wäre.',
      entries: {
        'at-work': {
          text: `Auf dem Grün wurde im Stehen abgelesen. Gewählt wird für das Mähen: Stellen Sie das Buch auf Mähen, mit Ihrer Geschwindigkeit. Dann trägt hinter jeder Walze weniger Rasen, die Einheit sinkt tiefer ein, und ein Teil des Eingedrückten ist noch nicht zurück, wenn die Schneidkante kommt.`,
        },
        expect: {
          question:
            'Mit der jetzigen Einstellung schneidet die Einheit auf {effectiveHeight}. Sagen Sie, was Sie erwarten, bevor Sie die Tabelle lesen: Auf welcher Höhe würde sie mit der Walze „wide grooves“ schneiden?',
          because:
            'Sie würde {then.front.sinkage} statt {front.sinkage} einsinken, obwohl die Walze leichter ist. Was sie nimmt, steht in der Tabelle unten, und ebenso, was für sie einzustellen ist.',
        },
        season: {
          title: 'Was die Praxis sagt, und was niemand gemessen hat',
          text: `Übliche Empfehlung: glatte Walzen im Herbst und Winter, auf nassem Boden und auf abgenutzten Randrunden; gerillte, solange das Gras wächst, weil sie es aufstehen lassen, bis es geschnitten wird; zwei oder drei Teile, wo die Maschine eng wendet. Das ist Erfahrung. Ein wiederholter Versuch, der gerillte und glatte in Schnitttiefen vergleicht, fand sich nicht im Druck.

Diese Tabelle kann die Höhe aus dem Streit nehmen: richtig eingestellt, schneiden alle gleich, und Sie können nach dem Schnittbild wählen.`,
        },
      },
    },
    {
      title: 'In den Kurven',
      lead: 'Eine Walze, die mit der Maschine wendet, rutscht an ihren Enden, und eine breite rutscht mehr.',
      entries: {
        turning: {
          text: `In einer Kurve hat das innere Ende einer Walze weniger Weg als das äußere, beide gehören aber zu einem Stück Metall: Die Enden rutschen, eines nach vorn und eines zurück. Freie Teile finden jedes ihre eigene Geschwindigkeit und teilen das Rutschen unter sich auf. Geben Sie Ihre engste Randrunde ein.`,
        },
        pieces: {
          title: 'Mehr Teile, gleiche Höhe',
          text: `In dieser Kurve rutschen die Enden des Mantels {turn.greatest} Weg. Teile ändern das und sonst nichts: Die Einheit sinkt ein und schneidet wie zuvor. Eine weitere Kurve tut dasselbe umsonst, und die Randrunde zuerst zu mähen, auf trockenem Rasen, hilft auch etwas.`,
        },
      },
    },
    {
      title: 'Montieren und wieder ablesen',
      lead: 'Die Walze ist dran: Sehen Sie vor dem Einstellen nach, ob die Absenkung die angekündigte ist.',
      entries: {
        'fit-it': {
          text: `Stellen Sie den Motor ab oder trennen Sie die Batterie, tragen Sie schnittfeste Handschuhe, heben Sie zu zweit, und greifen Sie nie unter eine Einheit, die nur ein Wagenheber hält.

Montieren Sie die Walze, setzen Sie die Einheit in derselben Weise auf dasselbe Grün, und lesen Sie die Absenkung ab. Wählen Sie die Walze auch hier. Liegen Messwert und Buch näher beisammen, als Ihr Messgerät unterscheiden kann, machen Sie weiter. Tun sie es nicht, wiegen Sie die Walze noch einmal, bevor Sie an etwas anderem zweifeln.

Eine Walze mit anderem Durchmesser hebt oder senkt die Schneidkante in der Werkstatt ganz von selbst; das Buch hat das mitgezählt. Messen Sie die Einstellhöhe mit der neuen Walze.`,
        },
      },
    },
    {
      title: 'Neu einstellen',
      lead: 'Was der Rasen nimmt, gibt die Einstellung zurück: die Höhe, die einzustellen ist, und was das an der Verstellung heißt.',
      entries: {
        wanted: { title: 'Die Höhe, die gewünscht ist' },
        'to-set': {
          text: `Um hier auf {wantedHeight} zu schneiden, stellen Sie {toHold.benchHeight} ein, mit dieser Walze gemessen. Gegenüber der jetzigen Einstellung ist das eine Änderung von {toHold.change}; weniger als nichts ist tiefer.

Die Schneidkante hängt zwischen den Achsen, also muss die Vorderwalze weiter wandern als die Kante: {toHold.travel}. Mit dem Gewinde Ihrer Verstellung sagt das Einstellblatt es auch in Umdrehungen.`,
        },
        sheet: {
          title: 'Nehmen Sie es mit zur Maschine',
          text: `Das Einstellblatt steht unter den Wörtern am Fuß dieser Seite. Es hat zuerst die Sicherheitshinweise, beide Maßsysteme, die einzustellende Höhe, die Umdrehungen, und Felder für das, was Sie wirklich gemessen haben. Tippen Sie ein, wie weit eine Umdrehung Ihrer Verstellung die Walze bewegt, drucken Sie es, und schreiben Sie darauf.

Stellen Sie beide Enden gleich ein. Mähen Sie dann einen Streifen, und messen Sie an zehn Stellen. Das sind Schätzungen: Das letzte Wort hat das Messgerät auf dem Rasen.`,
        },
      },
    },
    {
      title: 'Gleich über die ganze Maschine',
      lead: 'Drei Einheiten, ein Grün: Schneiden sie gleich, und wenn nicht, welche ist schuld?',
      entries: {
        stripes: {
          text: `Eine Stufe zwischen zwei Einheiten sieht man lange, bevor man sagen kann, welche falsch ist. Wiegen Sie alle, messen Sie alle Walzen, und reinigen Sie sie, bevor Sie messen. Die Einstellhöhen der drei unten sind gleich, die Schnitthöhen sind es nicht.`,
        },
        match: {
          title: 'Finden Sie die Ursache, bevor Sie eine Schraube drehen',
          text: `Zwischen der höchsten und der tiefsten liegen {machine.spread}. Eine Einheit hat etwas an ihrer Walze, eine andere ist schwerer. Eine Schraube würde beides für eine Woche verdecken: Reinigen Sie die eine, finden Sie heraus, was die andere trägt, und stellen Sie zuletzt ein.`,
        },
      },
    },
  ],
}
