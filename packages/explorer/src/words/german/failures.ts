import type { Values } from './speaking.ts'

export const failures = {
  bottomedOut: ({ where, load, lockingDepth }: Values<'where' | 'load' | 'lockingDepth'>) =>
    `Der Rasen ist unter der ${where} am Anschlag: ${load} würde ihn bis zu seiner Grenztiefe von ${lockingDepth} drücken. Erhöhen Sie die Grenztiefe, oder verringern Sie Masse oder Weichheit.`,
  thatLoad: 'ihre Last',
  notConverged: ({ where, iterations }: Values<'where' | 'iterations'>) =>
    `In ${iterations} Schritten wurde kein Ergebnis gefunden (${where}). Ändern Sie einen Wert ein wenig; bleibt es dabei, widersprechen sich die Werte.`,
  worker: (message: string) => `Die feinere Abbildung ließ sich nicht berechnen (${message}).`,
  fault: (message: string) =>
    `Das ließ sich nicht berechnen: ein Fehler im Programm (${message}). Der Rest der Seite stimmt, und Ihre Eingaben bleiben erhalten.`,
  /** Reasons of the kinds of entry themselves; each brings its own. */
  reasons: {} as Readonly<Record<string, (values: Readonly<Record<string, string>>) => string>>,
  places: {
    roller: 'Vorderwalze',
    front: 'Vorderwalze',
    rear: 'Hinterwalze',
    plate: 'Platte',
    unit: 'Einheit',
  } as Readonly<Record<string, string>>,
}
