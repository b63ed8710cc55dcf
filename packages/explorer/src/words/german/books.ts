/** Books that ship, by the name an address gives them: what a list says of each. */
export const books: Readonly<Record<string, { readonly title: string; readonly about: string }>> = {
  'heavier-roller': {
    title: 'Warum eine schwerere Walze tiefer schneidet',
    about:
      'Für Lernende: sechs kurze Seiten von der Werkstatt auf den Rasen und zurück, auf jeder eine Vorhersage, und ein Blatt zum Abgeben.',
  },
  'own-gauge': {
    title: 'Passen Sie Ihr eigenes Messgerät an',
    about:
      'Für Forschende: von einer Tabelle mit Messwerten zu einer Weichheit, wie sicher sie ist, was sie für die Höhe bedeutet, und zu einem Absatz Methodik.',
  },
  'weight-or-surface': {
    title: 'Gewicht oder Oberfläche?',
    about:
      'Für Lehrende: eine Stunde in zwölf Schritten mit einer Matte und drei Walzen, den Schätzungen und Messwerten der Gruppe darin, Notizen und einem Minutenplan.',
  },
  'choose-fit-reset': {
    title: 'Wählen, montieren, neu einstellen',
    about:
      'Für die Werkstatt: von der Waage zum gedruckten Einstellblatt, mit Walze, Einstellhöhe und Umdrehungen der Verstellung.',
  },
}
