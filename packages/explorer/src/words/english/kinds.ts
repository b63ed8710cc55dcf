/** Every kind of entry by the name books use: what it is called, and one sentence for who may add one. */
export const kinds: Readonly<Record<string, { readonly name: string; readonly about: string }>> = {
  text: { name: 'In words', about: 'A few paragraphs of your own, with live values inside them.' },
  setting: { name: 'Settings', about: 'A ruled list of numbers to set: rollers, turf, unit, condition.' },
  sideView: {
    name: 'From the side',
    about: 'The unit on its turf, drawn to scale, with the height it cuts at.',
  },
  section: {
    name: 'Across the grooves',
    about: 'The mat of the turf under lands and grooves, and what carries the roller.',
  },
  curves: { name: 'Curves', about: 'Pressure or load against sinkage, for several rollers or turfs.' },
  map: { name: 'Map', about: 'Mass of the roller against softness of the turf, with contours.' },
  rack: { name: 'Rack', about: 'All your rollers compared on this unit and turf.' },
  headland: { name: 'Headland', about: 'How far a roller slides on the turf when the machine turns.' },
  readings: { name: 'Readings', about: 'What a gauge said: typed, pasted or opened from a file.' },
  check: { name: 'Check', about: 'Heights measured after a test strip against those expected.' },
  fit: { name: 'Fit', about: 'The softness of the turf found from readings, with its limits.' },
  formula: { name: 'Formula', about: 'A value of your own, worked out from others, with its unit.' },
  question: { name: 'Question', about: 'A prediction made before the figure answers.' },
  patch: { name: 'Contact patch', about: 'The pressure under a roller by the full solution.' },
  uncertainty: { name: 'How sure', about: 'What the height may be, and which of your values it hangs on.' },
  rollers: { name: 'Your rollers', about: 'The rack itself: rollers added, copied, measured, fitted.' },
  turfs: { name: 'Your turfs', about: 'Turfs typed, chosen or fitted, and the law each follows.' },
  unitFromScales: {
    name: 'The unit from scales',
    about: 'The unit’s weight and balance from a few readings of the scales.',
  },
  units: { name: 'Units of one machine', about: 'Several units side by side: do they cut alike?' },
}
