import { counted, type Values } from './speaking.ts'

export const rollers = {
  title: (count: number) => (count === 1 ? 'Eine Walze im Regal' : `${counted(count)} Walzen im Regal`),
  fitted: ({ front, rear }: Values<'front' | 'rear'>) => `Vorn ist ${front} montiert, hinten ${rear}.`,
  frontOnly: (front: string) => `Vorn ist ${front}; die Hinterwalze ist nicht aus diesem Regal.`,
  rearOnly: (rear: string) => `Hinten ist ${rear}; die Vorderwalze ist nicht aus diesem Regal.`,
  neither: 'Keine Walze der gewählten Einheit ist aus diesem Regal.',
  inFront: 'Vorn ist',
  buildUp: ({ name, buildUp, raises }: Values<'name' | 'buildUp' | 'raises'>) =>
    `An ${name} haften ${buildUp}; das hebt den Schnitt um ${raises}.`,
  runout: ({ name, rise, every }: Values<'name' | 'rise' | 'every'>) =>
    `${name} läuft unrund: Der Schnitt geht alle ${every} um ${rise} auf und ab.`,
  note: 'Mäntel längs der Achse geschnitten, Stege nach unten, alle im selben Maßstab. Anhaftung und Rundlauffehler gelten radial: die Hälfte dessen, was ein Messschieber am Durchmesser zeigt.',
  caption: 'Das Regal',
  roller: 'Walze',
  face: 'Mantel',
  columns: {
    mass: 'Masse',
    diameter: 'Durchmesser',
    length: 'Länge',
    sections: 'Segmente',
    buildUp: 'Anhaftung',
    runout: 'Rundlauffehler',
    raises: 'hebt den Schnitt',
  },
  where: 'montiert',
  nowhere: 'im Regal',
  places: { front: 'vorn', rear: 'hinten' },
  placeOn: ({ unit, place }: Values<'unit' | 'place'>) => `${place} an ${unit}`,
  faceName: (name: string) => `Der Mantel von ${name}`,
  open: (name: string) => `${name}: ihre Zahlen`,
  openWords: (name: string) => `${name} vermessen`,
  fitFront: 'vorn montieren',
  fitRear: 'hinten montieren',
  follows: (places: string) => `Montiert ${places}: Was hier geändert wird, ändert sich dort mit.`,
  free: 'Nirgends montiert: Änderungen hier lassen jede Einheit, wie sie ist.',
  last: 'Die letzte Walze eines Regals lässt sich nicht herausnehmen.',
  touches: 'Sie würde die andere Walze der gewählten Einheit berühren und kann nicht montiert werden.',
  tooSmall:
    'Mit ihr läge die Schneidkante unter der Bezugslinie: Sie kann nicht montiert werden, bevor höher eingestellt ist.',
  newName: 'neue Walze',
  add: 'Walze hinzufügen',
}

export const rollersWorkings = {
  rollerBuildUp: 'Um wie viel die Anhaftung den Schnitt hebt',
  rollerRunout: 'Wie weit und wie oft der Schnitt auf und ab geht',
}
