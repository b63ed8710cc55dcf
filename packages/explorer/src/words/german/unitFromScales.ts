import type { Values } from './speaking.ts'

export const unitFromScales = {
  titles: { scales: 'Die Einheit, von der Waage', dimensions: 'Die Einheit, aus ihren Maßen' },
  from: 'Angegeben durch',
  sources: { scales: 'Wägungen', dimensions: 'Maße' },
  tooFew: 'Zwei der drei Wägungen ganz, vorn und hinten genügen: Die dritte folgt daraus.',
  weighed: ({ total, front, rear, body, at }: Values<'total' | 'front' | 'rear' | 'body' | 'at'>) =>
    `Von ${total} trägt die Vorderwalze ${front} und die Hinterwalze ${rear}: ein Aufbau von ${body}, dessen Gewicht ${at} hinter der Vorderachse angreift.`,
  fullBox: ({ front, rear }: Values<'front' | 'rear'>) =>
    `Ein voller Fangkorb bringt vorn ${front} und hinten ${rear} dazu.`,
  threeDisagree: ({ parts, whole, difference }: Values<'parts' | 'whole' | 'difference'>) =>
    `Vorn und hinten ergeben ${parts}, die ganze Einheit ${whole}: ${difference} Unterschied, mehr als Waagen haben dürfen. Wiegen Sie noch einmal; bis dahin bleibt die Einheit, wie sie war.`,
  sidesDisagree: ({ parts, whole, difference }: Values<'parts' | 'whole' | 'difference'>) =>
    `Links und rechts ergeben ${parts}, die ganze Einheit ${whole}: ${difference} Unterschied, mehr als Waagen haben dürfen.`,
  contradicts: 'Diese Wägungen widersprechen sich; bis eine berichtigt ist, bleibt die Einheit, wie sie war.',
  changed: ({ total, front }: Values<'total' | 'front'>) =>
    `Die gewählte Einheit wurde seither geändert: Die Waage würde insgesamt ${total} und vorn ${front} zeigen.`,
  again: 'diese Wägungen wieder nehmen',
  dimensions: ({ body, at, total }: Values<'body' | 'at' | 'total'>) =>
    `Ein Aufbau von ${body}, ${at} hinter der Vorderachse; mit ihren Walzen würde die Einheit auf der Waage ${total} zeigen.`,
  note: 'Wiegen Sie die Einheit waagrecht, jede Walze auf einer Waage oder einem gleich hohen Klotz, den Fangkorb abgenommen. Längen in der Zeichnung sind maßstäblich, Höhen nicht.',
  readings: 'Was die Waage zeigt',
  lengths: 'Was ein Maßstab zeigt',
  labels: {
    total: 'Ganze Einheit',
    front: 'Vorderwalze',
    rear: 'Hinterwalze',
    left: 'Linkes Ende',
    right: 'Rechtes Ende',
    boxEmpty: 'Fangkorb, leer',
    boxFull: 'Fangkorb, voll',
    boxAt: 'Fangkorb hängt',
    height: 'Höhe des Gewichts des Aufbaus',
  },
  notes: {
    total: '',
    front: 'die hintere auf einem gleich hohen Klotz',
    rear: 'die vordere auf einem gleich hohen Klotz',
    left: 'je eine Waage unter den Enden der Vorderwalze',
    right: 'eines der Enden genügt',
    boxEmpty: 'für sich gewogen',
    boxFull: '',
    boxAt: 'hinter der Vorderachse; davor ist negativ',
    height: 'über der Bezugslinie, falls bekannt',
  },
  table: {
    caption: 'Die Einheit auf der Waage',
    what: 'Wägung',
    read: 'gezeigt',
    would: 'die gewählte Einheit würde zeigen',
    none: 'keine Wägung',
  },
}

export const unitFromScalesFigure = ({ body, title }: Values<'body' | 'title'>) => ({
  title,
  front: 'vorn',
  rear: 'hinten',
  edge: 'Schneidkante',
  body: `Aufbau ${body}`,
  scale: '',
})

export const unitFromScalesWorkings = {
  scalesBody: 'Was von den Wägungen ohne die Walzen bleibt',
  scalesPlace: 'Wo das Gewicht des Aufbaus angreifen muss, damit die Waage das zeigt',
}
