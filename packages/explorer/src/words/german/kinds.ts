/** Every kind of entry by the name books use: what it is called, and one sentence for who may add one. */
export const kinds: Readonly<Record<string, { readonly name: string; readonly about: string }>> = {
  text: { name: 'In Worten', about: 'Einige Absätze von Ihnen, mit Werten darin, die mitrechnen.' },
  setting: {
    name: 'Einstellungen',
    about: 'Eine Liste einstellbarer Größen: Walzen, Rasen, Einheit, Betrieb.',
  },
  sideView: {
    name: 'Von der Seite',
    about: 'Die Einheit auf ihrem Rasen, maßstäblich, mit der Höhe, die sie schneidet.',
  },
  section: {
    name: 'Quer zu den Rillen',
    about: 'Der Rasenfilz unter Stegen und Rillen, und was die Walze trägt.',
  },
  curves: { name: 'Kurven', about: 'Druck oder Last über der Einsinktiefe, für mehrere Walzen oder Rasen.' },
  map: { name: 'Karte', about: 'Masse der Walze gegen Weichheit des Rasens, mit Höhenlinien.' },
  rack: { name: 'Regal', about: 'Alle Ihre Walzen auf dieser Einheit und diesem Rasen im Vergleich.' },
  headland: {
    name: 'Vorgewende',
    about: 'Wie weit eine Walze auf dem Rasen rutscht, wenn die Maschine wendet.',
  },
  readings: {
    name: 'Messwerte',
    about: 'Was ein Messgerät zeigte: getippt, eingefügt oder aus einer Datei geöffnet.',
  },
  check: { name: 'Gegenprobe', about: 'Nach einem Probestreifen gemessene Höhen gegen die erwarteten.' },
  fit: { name: 'Anpassung', about: 'Die Weichheit des Rasens aus Messwerten, mit ihren Grenzen.' },
  formula: { name: 'Formel', about: 'Ein eigener Wert, aus anderen berechnet, mit seiner Maßeinheit.' },
  question: { name: 'Frage', about: 'Eine Vorhersage, bevor die Abbildung antwortet.' },
  patch: { name: 'Kontaktfläche', about: 'Der Druck unter einer Walze nach der vollen Lösung.' },
  uncertainty: {
    name: 'Wie sicher',
    about: 'Welche Höhe es werden kann, und an welchem Ihrer Werte sie hängt.',
  },
  rollers: {
    name: 'Ihre Walzen',
    about: 'Das Regal selbst: Walzen hinzufügen, kopieren, vermessen, montieren.',
  },
  turfs: {
    name: 'Ihre Rasen',
    about: 'Rasen getippt, gewählt oder angepasst, und das Gesetz, dem jeder folgt.',
  },
  unitFromScales: {
    name: 'Die Einheit von der Waage',
    about: 'Gewicht und Gleichgewicht der Einheit aus wenigen Wägungen.',
  },
  units: {
    name: 'Einheiten einer Maschine',
    about: 'Mehrere Einheiten nebeneinander: Schneiden sie gleich?',
  },
}
