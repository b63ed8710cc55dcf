import type { Values } from './speaking.ts'

export const headland = {
  title: { front: 'The front roller on a headland turn', rear: 'The rear roller on a headland turn' },
  roller: 'Roller',
  places: { front: 'front', rear: 'rear' },
  axles: 'Turns about',
  axleChoices: { one: 'its own axis', both: 'a place between both rollers' },
  found: ({ radius, greatest, mean }: Values<'radius' | 'greatest' | 'mean'>) =>
    `On a turn of ${radius} its ends slide ${greatest} over the turf while they roll; ${mean} on average over the face.`,
  against: ({ sections, greatest }: Values<'sections' | 'greatest'>) =>
    `In one piece instead of ${sections} sections the ends would slide ${greatest}.`,
  ifCut: ({ greatest }: Values<'greatest'>) =>
    `In three free sections it would be ${greatest} at their ends.`,
  note: 'Each section rolls about its own middle and slides to both sides of it: the outer half is held back, the inner pushed. Friction is assumed, not measured. Sliding tells how far the face rubs, not whether the turf marks.',
  crossways:
    'Two rollers that turn about a place between them slide crossways as well: sections do not take that away.',
  table: {
    caption: 'The rack on this turn',
    roller: 'roller',
    sections: 'sections',
    load: 'load',
    greatest: 'slides at the ends',
    mean: 'on average',
    rootMeanSquare: 'root mean square',
    work: 'friction work',
    slides: 'slides whole',
  },
}

export const headlandSettables: Readonly<Record<string, { readonly name: string; readonly note: string }>> = {
  'headland.radius': { name: 'Radius of the turn', note: 'to the middle of the roller' },
  'headland.friction': { name: 'Friction on the turf', note: 'over the load; assumed' },
  'headland.drag': { name: 'Drag on the roller', note: 'holds it back from rolling' },
}

/** What the profile says inside itself. */
export const headlandFigure = ({ unit, placeUnit }: Values<'unit' | 'placeUnit'>) => ({
  title: 'Sliding over the width of the roller',
  up: `sliding, ${unit}`,
  across: `place along the roller, ${placeUnit} from its middle`,
  inner: 'inner end',
  outer: 'outer end',
  mean: (value: string) => `mean ${value}`,
  rootMeanSquare: (value: string) => `r.m.s. ${value}`,
  still: 'does not slide',
  least: 'slides least',
  whole: 'in one piece',
})

export const headlandWorkings = {
  headlandGreatest: 'Sliding at the ends of a section, per length travelled',
  headlandMean: 'Mean over the face',
  headlandWork: 'Work of friction per metre travelled, which is a force',
}
