/** What a figure cannot be trusted with, by the names that views give (docs/physics.md §5 and §6). */
export const trust: Readonly<Record<string, string>> = {
  softness:
    'Ein Ergebnis ist so gut wie die Weichheit, die hineingeht. Sie ändert sich mit der Woche, dem Wasser und dem Ort: Messen Sie sie dort, wo die Einheit arbeiten wird.',
  arc: 'Der Bogen einer Walze wird als Parabel genommen. In einer Tiefe von einem Zehntel ihres Radius wird die Last damit um 1,5 % zu hoch; ist sie tiefer, sagt es ein Hinweis.',
  grooves:
    'Eine Rillenwalze wird mit einem schnellen Modell berechnet, das an vollen Lösungen erprobt ist. Je kleiner die Lastverteilung des Rasens gegen die Länge des Kontakts, desto näher kommt es: bestenfalls auf 0,3 %, auf 5 %, bevor ein Hinweis erscheint, darüber hinaus weniger genau.',
  mat: 'Zwischen zwei Stegen soll der Filz nur wenig geneigt hängen. Wo er am Steg steil ist, weiß niemand, wie weit das danebenliegt; ein Hinweis sagt, wo.',
  mowing:
    'Beim Mähen auf Rillen, in Rasen mit Lastverteilung, trägt die Walze 2 bis 9 % mehr, als hier gesagt wird.',
  strain:
    'Wo die Einsinktiefe ein großer Teil der weichen Schicht ist, ist diese steifer, als hier angenommen: Die Last ist bei 0,04 ihrer Dicke um 2 % zu niedrig, bei 0,08 um 5 % und bei 0,24 um 17 %.',
  locking:
    'Nahe der Tiefe, in der der Rasen am Anschlag ist, hängt das Ergebnis an dieser Tiefe, die niemand gut misst.',
  contact:
    'Die Länge des Kontakts ist die auf einem Bett aus Federn. Unter einer wirklichen Schicht ist sie zwischen 42 % kürzer und 3 % länger: Eine Einsinktiefe, die zum Messgerät passt, beweist weder die Länge noch den Druck.',
  exponent:
    'Eine angepasste Hochzahl ist keine Konstante des Rasens: Sie ändert sich mit der Walze, der Dicke der Schicht und der Last.',
  fitted: 'Außerhalb der gemessenen Drücke ist die Kurve nur fortgesetzt.',
  trial:
    'Ein wiederholter Versuch, der gerillte und glatte Walzen in Millimetern vergleicht, fand sich nicht im Druck. Was hier über sie gesagt wird, beruht auf Mechanik: Es ist ein Weg zu einem solchen Versuch, nicht dessen Ergebnis.',
  sliding:
    'Wie weit eine Walze in der Kurve rutscht, ist Geometrie, und sicher. Die Reibung dabei ist angenommen, nicht gemessen, und was das Rutschen mit dem Rasen macht, wird nicht gesagt.',
  injury: 'Über Schäden, Krankheiten, Dichte oder Spielqualität wird hier nichts gesagt.',
}
