import type { Values } from './speaking.ts'

const minutes = (count: number): string => (count === 1 ? '1 Minute' : `${count} Minuten`)

/** What is said in a lecture, on the wall and on the teacher's sheet. */
export const lecture = {
  lecture: 'Vortrag',
  step: ({ book, number, total }: Values<'book' | 'number' | 'total'>) => `${book}, ${number} von ${total}`,
  walk: ({ number, total }: Values<'number' | 'total'>) => `Schritt ${number} von ${total}`,
  earlier: 'zurück',
  later: 'weiter',
  leave: 'beenden',
  overflows: 'Die Folie; sie geht unten weiter',
  sheet: 'Blatt für die Lehrkraft',
  sheetTitle: 'Blatt für die Lehrkraft',
  blocked:
    'Dieser Browser ließ kein Fenster zu: Das Blatt steht stattdessen unter der Folie, wo alle es sehen, die zur Wand schauen.',
  notes: 'Notizen',
  noNotes: 'Zu diesem Schritt gibt es keine Notizen.',
  next: 'Als Nächstes',
  last: 'Das ist der letzte Schritt.',
  nextQuestion: 'Nächste Frage',
  noPlan: 'Dieses Buch plant keine Minuten.',
  planned: ({ minutes: total, after }: { readonly minutes: number; readonly after: number }) =>
    `Geplant: ${minutes(total)}; die Schritte danach brauchen ${minutes(after)}. Die Zeit beginnt mit dem ersten Weiterblättern.`,
  left: ({ minutes: left, after }: { readonly minutes: number; readonly after: number }) =>
    left < 0
      ? `Der Plan ist um ${minutes(-left)} überschritten; die Schritte danach brauchen ${minutes(after)}.`
      : `Im Plan noch ${minutes(left)}; die Schritte danach brauchen ${minutes(after)}.`,
  begin: 'Zeit jetzt beginnen',
  beginAgain: 'Zeit neu beginnen',
  keys: 'Bild auf und Bild ab blättern hier und auf der Folie, ein Presenter ebenso. Auf der Folie blättern auch die Pfeile links und rechts, wenn kein Bedienelement den Fokus hat; Escape beendet.',
}
