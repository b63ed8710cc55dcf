import type { Values } from './speaking.ts'

export const headland = {
  title: {
    front: 'Die Vorderwalze in einer Kurve am Vorgewende',
    rear: 'Die Hinterwalze in einer Kurve am Vorgewende',
  },
  roller: 'Walze',
  places: { front: 'vorn', rear: 'hinten' },
  axles: 'Dreht um',
  axleChoices: { one: 'ihre eigene Achse', both: 'eine Stelle zwischen beiden Walzen' },
  found: ({ radius, greatest, mean }: Values<'radius' | 'greatest' | 'mean'>) =>
    `In einer Kurve von ${radius} rutschen ihre Enden beim Rollen ${greatest} über den Rasen; im Mittel über den Mantel ${mean}.`,
  against: ({ sections, greatest }: Values<'sections' | 'greatest'>) =>
    `In einem Stück statt in ${sections} Segmenten würden die Enden ${greatest} rutschen.`,
  ifCut: ({ greatest }: Values<'greatest'>) =>
    `In drei freien Segmenten wären es an deren Enden ${greatest}.`,
  note: 'Jedes Segment rollt um seine eigene Mitte und rutscht zu beiden Seiten davon: Die äußere Hälfte wird gebremst, die innere geschoben. Die Reibung ist angenommen, nicht gemessen. Das Rutschen sagt, wie weit der Mantel reibt, nicht ob der Rasen Spuren behält.',
  crossways:
    'Zwei Walzen, die sich um eine Stelle zwischen ihnen drehen, rutschen auch quer: Daran ändern Segmente nichts.',
  table: {
    caption: 'Das Regal in dieser Kurve',
    roller: 'Walze',
    sections: 'Teile',
    load: 'Last',
    greatest: 'an den Enden',
    mean: 'im Mittel',
    rootMeanSquare: 'quadr. M.',
    work: 'Reibung',
    slides: 'rutscht ganz',
  },
}

export const headlandSettables: Readonly<Record<string, { readonly name: string; readonly note: string }>> = {
  'headland.radius': { name: 'Radius der Kurve', note: 'bis zur Mitte der Walze' },
  'headland.friction': { name: 'Reibung auf dem Rasen', note: 'bezogen auf die Last; angenommen' },
  'headland.drag': { name: 'Rollwiderstand', note: 'hält die Walze vom Rollen ab' },
}

/** What the profile says inside itself. */
export const headlandFigure = ({ unit, placeUnit }: Values<'unit' | 'placeUnit'>) => ({
  title: 'Rutschen über die Breite der Walze',
  up: `Rutschen, ${unit}`,
  across: `Stelle auf der Walze, ${placeUnit} von ihrer Mitte`,
  inner: 'inneres Ende',
  outer: 'äußeres Ende',
  mean: (value: string) => `Mittel ${value}`,
  rootMeanSquare: (value: string) => `quadr. Mittel ${value}`,
  still: 'rutscht nicht',
  least: 'rutscht am wenigsten',
  whole: 'in einem Stück',
})

export const headlandWorkings = {
  headlandGreatest: 'Rutschen an den Enden eines Segments, je gefahrener Länge',
  headlandMean: 'Mittel über den Mantel',
  headlandWork: 'Arbeit der Reibung je gefahrenem Meter; das ist eine Kraft',
}
