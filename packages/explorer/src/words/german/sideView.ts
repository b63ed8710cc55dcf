import { inFull, type Values } from './speaking.ts'

export const sideView = {
  title: 'In der Werkstatt eingestellt, auf dem Rasen geschnitten',
  bench: 'in der Werkstatt eingestellt',
  cut: 'hier geschnitten',
  sinks: (drop: string) => `Die Walzen sinken ein, und die Schneidkante geht mit ihnen nach unten: ${drop}.`,
  sinksAndRecovers: ({ drop, unrecovered, lost }: Values<'drop' | 'unrecovered' | 'lost'>) =>
    `Die Schneidkante geht mit den Walzen um ${drop} nach unten, aber unter ihr läuft Rasen durch, der noch ${unrecovered} eingedrückt ist: Sie schneidet ${lost} tiefer als eingestellt.`,
  rises: (by: string) =>
    `Der Rasen ist noch nicht zurück, wenn die Schneidkante kommt: Sie schneidet ${by} höher als eingestellt.`,
  condition: { standing: 'Im Stehen.', mowing: (speed: string) => `Beim Mähen mit ${speed}.` },
  scale: (times: number) =>
    times === 1
      ? 'Maßstäblich gezeichnet.'
      : `Maßstäblich gezeichnet; Höhen am Rasen, Einsinktiefe wie Schnitthöhe, ×${inFull(times)}.`,
  reduced: ({ asked, drawn }: Values<'asked' | 'drawn'>) =>
    `Mit ${asked} passten diese Höhen nicht auf die Seite: Sie sind ${drawn} gezeichnet.`,
  invented: 'Einheit und Grün sind erfunden, Ellerby Hollow Turf School.',
  heights: 'Höhen',
  factor: (times: number) => `×${inFull(times)}`,
  table: {
    caption: 'Lasten und Höhen',
    quantity: 'Größe',
    value: 'Wert',
    unit: 'Maßeinheit',
    frontLoad: 'Last auf der Vorderwalze',
    rearLoad: 'Last auf der Hinterwalze',
    frontSinkage: 'Einsinktiefe der Vorderwalze',
    rearSinkage: 'Einsinktiefe der Hinterwalze',
    frontPeak: 'Druck unter der Vorderwalze, tiefste Linie',
    rearPeak: 'Druck unter der Hinterwalze, tiefste Linie',
    drop: 'Absenkung der Schneidkante, links / Mitte / rechts',
    height: 'effektive Schnitthöhe, links / Mitte / rechts',
  },
}

/** What the drawing says inside itself. */
export const sideViewFigure = {
  title: 'Die Einheit von der Seite, auf dem Rasen',
  frontRoller: 'Vorderwalze',
  rearRoller: 'Hinterwalze',
  cuttingCylinder: 'Messerspindel',
  bottomBlade: 'Untermesser',
  edgeLine: ['Linie der', 'Schneidkante'],
  turf: 'Rasen',
  bench: 'eingestellt',
  effective: 'effektiv',
  drop: (value: string) => `${value} Absenkung`,
  body: (load: string) => `Aufbau ${load}`,
  load: (name: string, load: string) => `${name} ${load}`,
  heightBar: (length: string, times: number) => (times === 1 ? length : `${length}, ×${inFull(times)}`),
  handle: {
    edge: 'Schneidkante: ziehen, um die Einstellhöhe zu ändern',
    front: 'Vorderwalze: ziehen, um ihre Masse zu ändern',
    rear: 'Hinterwalze',
    body: 'Gewicht des Aufbaus',
  },
}

export const sideViewWorkings = {
  weight: 'Die Gewichte teilen sich nach dem Momentengleichgewicht auf die Achsen auf',
  lowestPressure: 'Druck an der tiefsten Linie der Vorderwalze',
  balance: 'Sie sinkt ein, bis der Rasen sie trägt: mittlerer Druck mal Kontaktlänge ist die Last je Länge',
  drop: 'Die Schneidkante liegt zwischen den Achsen und geht mit beiden nach unten; das Kippen gibt den Rest dazu',
  height: 'Also schneidet sie auf',
}
