type Term = {
  readonly word: string
  /** What the same thing is called elsewhere: another German word, or the English one that stands on machines. */
  readonly elsewhere?: string
  readonly means: string
}

/** The words of the trade as this book uses them in German, in the order of the alphabet. */
export const glossary: readonly Term[] = [
  {
    word: 'Absenkung',
    elsewhere: 'englisch: drop',
    means: 'Wie weit die Schneidkante nach unten geht, weil die Walzen einsinken.',
  },
  {
    word: 'Achsabstand',
    means: 'Hier der Abstand der Achsen der beiden Walzen einer Einheit.',
  },
  {
    word: 'Anhaftung',
    means:
      'Schnittgut und Erde, die an einer Walze kleben. Sie machen sie dicker und heben damit den Schnitt, bis sie abgenommen werden.',
  },
  {
    word: 'Anschlag',
    means:
      'Der Rasen ist am Anschlag, wenn er fast bis zu seiner Grenztiefe gedrückt ist und nicht weiter nachgibt.',
  },
  {
    word: 'effektive Schnitthöhe',
    elsewhere: 'englisch: effective height of cut',
    means: 'Die Höhe, auf der das Gras wirklich geschnitten wird: Einstellhöhe weniger Absenkung.',
  },
  {
    word: 'Einheit',
    elsewhere: 'auch: Schneideinheit, Spindelmäheinheit',
    means: 'Spindel, Untermesser, zwei Walzen und was sie hält. Eine Maschine kann mehrere tragen.',
  },
  {
    word: 'Einsinktiefe',
    means: 'Wie tief die tiefste Linie einer Walze unter dem Rasen liegt, wie er vorher stand.',
  },
  {
    word: 'Einstellhöhe',
    elsewhere: 'auch: Werkstatthöhe; englisch: bench height',
    means:
      'Höhe der Schneidkante über der geraden Linie unter beiden Walzen, wie sie in der Werkstatt eingestellt wird.',
  },
  {
    word: 'Festigkeit',
    means:
      'Wie wenig der Rasen nachgibt. Zahlen von Fallgeräten sind keine Weichheit und werden hier auch nie in eine umgerechnet.',
  },
  {
    word: 'Grasfangkorb',
    elsewhere: 'auch: Fangkasten',
    means:
      'Wohin das Schnittgut geworfen wird. Voll kann er einer der Walzen mehrere Kilogramm mehr aufladen.',
  },
  {
    word: 'Grenztiefe',
    means: 'Die Tiefe, ab der dieser Rasen nicht weiter nachgibt, was auch immer auf ihn drückt.',
  },
  {
    word: 'Grün',
    elsewhere: 'hier: jeder kurz gemähte Rasen',
    means: 'Der gewählte Rasen. Dieselben Rechnungen gelten für Tennis-, Bowls- und Cricketrasen.',
  },
  {
    word: 'Lastverteilung',
    means:
      'Wie weit der Rasen eine Last über die Kante dessen hinaus trägt, was auf ihn drückt. Ihretwegen tragen schmale Stege mehr als ihre Breite.',
  },
  {
    word: 'Rasenfilz',
    elsewhere: 'auch: Filz; mit Sand durchsetzt: Matte',
    means:
      'Tote und lebende Halme zwischen Blatt und Boden: das meiste von dem, was unter einer Walze nachgibt.',
  },
  {
    word: 'Rasentragschicht',
    means: 'Die Schicht unter dem Filz, in der die Wurzeln stehen, oft aus Sand.',
  },
  {
    word: 'Relief',
    means: 'Wie weit der Rasen in einer Rille über die tiefste Linie der Walze aufsteht.',
  },
  {
    word: 'Rillenwalze',
    elsewhere: 'auch: gerillte Walze',
    means:
      'Eine Walze, aus deren Mantel Ringe ausgedreht sind. Sie sinkt tiefer ein als eine glatte gleichen Gewichts, weil weniger von ihr trägt.',
  },
  {
    word: 'Rückfederung',
    means: 'Der Teil der Einsinktiefe, der sofort zurückkommt, wenn die Last weg ist.',
  },
  {
    word: 'Rundlauffehler',
    means:
      'Wie weit eine Walze unrund läuft. Der Schnitt geht mit ihr bei jeder Umdrehung einmal auf und ab.',
  },
  {
    word: 'Scheibenwalze',
    elsewhere: 'auch: Spiralwalze',
    means:
      'Eine Walze, die nur mit schmalen, weit auseinanderliegenden Stegen aufliegt. Hier eine Rillenwalze mit schmalem Steg und weiter Teilung.',
  },
  {
    word: 'Scheuern',
    means: 'Was das Rutschen in einer engen Kurve mit dem Rasen macht.',
  },
  {
    word: 'Schnittabstand',
    elsewhere: 'englisch: clip',
    means: 'Wie weit die Maschine vom Schnitt eines Messers bis zu dem des nächsten fährt.',
  },
  {
    word: 'Schnitthöhe',
    means: 'Entweder Einstellhöhe oder effektive Schnitthöhe; darum steht hier eines dieser beiden Wörter.',
  },
  {
    word: 'Segmentwalze',
    elsewhere: 'auch: geteilte Walze',
    means: 'Eine Walze aus Teilen, die sich für sich drehen, sodass jedes in der Kurve weniger rutscht.',
  },
  {
    word: 'Skalpieren',
    means: 'So tief schneiden, dass statt der Blätter Halme und Filz geschnitten werden.',
  },
  {
    word: 'Spindel',
    elsewhere: 'auch: Messerspindel',
    means: 'Der drehende Korb der Messer. Eine Einheit mit Spindel gehört zu einem Spindelmäher.',
  },
  {
    word: 'Spurenbildung',
    means:
      'Streifen, die sichtbar bleiben, wo eine Walze, ihr Ende oder ein Steg gedrückt hat oder gerutscht ist.',
  },
  {
    word: 'Steg',
    elsewhere: 'englisch: land',
    means: 'Der Teil einer Rillenwalze zwischen zwei Rillen: was zuerst aufliegt.',
  },
  {
    word: 'Teilung',
    elsewhere: 'englisch: pitch',
    means: 'Ein Steg und eine Rille zusammen: der Abstand von einem Steg zum nächsten.',
  },
  {
    word: 'Topdressing',
    elsewhere: 'auch: Besanden',
    means:
      'Auf den Rasen gestreuter Sand oder Boden. Danach ist die Weichheit eine andere, und die Höhen werden neu geprüft.',
  },
  {
    word: 'Traganteil',
    means:
      'Wie viel von dem, was eine glatte Walze in dieser Tiefe trüge, eine gerillte trägt. Mehr als ihre Stege allein, weil der Filz dazwischen hängt.',
  },
  {
    word: 'Untermesser',
    elsewhere: 'englisch: bottom blade, bedknife',
    means:
      'Das feste Messer, gegen das die Messer der Spindel das Gras abscheren. Seine Vorderkante ist die Schneidkante.',
  },
  {
    word: 'Vorgewende',
    elsewhere: 'auch: Randschnitt',
    means:
      'Der Streifen, auf dem die Maschine wendet, oder die letzte Runde außen herum. Dort rutscht eine breite Walze.',
  },
  {
    word: 'Weichheit',
    means: 'Wie tief eine breite Platte bei 10 kPa einsinkt. Doppelte Weichheit, doppelte Tiefe.',
  },
]
