type Said = Readonly<Record<string, string>>

export const formula = {
  title: 'A value worked out here',
  name: 'name',
  from: 'worked from',
  in: 'in',
  finding: (name: string, value: string) => `${name} is ${value}.`,
  unnamed: 'this value',
  note: 'Numbers take a point; units stand after their number, as in 2 mm. Angles are in rad unless deg is written.',
  names: 'Names that can be used here',
  table: { caption: 'What it is worked out from', name: 'name', value: 'value', unit: 'unit' },
}

const THINGS: Said = {
  'plain number': 'a plain number',
  length: 'a length',
  area: 'an area',
  volume: 'a volume',
  mass: 'a mass',
  time: 'a time',
  speed: 'a speed',
  acceleration: 'an acceleration',
  force: 'a force',
  'force per length': 'a force per length',
  pressure: 'a pressure',
  'pressure per length': 'a pressure per length',
  energy: 'an energy',
  turning: 'so many turns in a time',
}
const thing = (name = ''): string => THINGS[name] ?? `something in ${name}`

/** Why a formula has no value, each with what to change. */
export const formulaReasons = {
  'formula is empty': () => 'Write what it is worked from, such as drop / front.load.',
  'formula has no name': () =>
    'Give it a name of letters and digits, so that prose and other values can call it.',
  'name cannot be used': ({ name }: Said) =>
    `“${name}” cannot be its name: a name begins with a letter and holds letters, digits and _.`,
  'name is taken': ({ name }: Said) => `“${name}” already means something else: choose another name.`,
  'formula sign': ({ sign, at }: Said) =>
    `“${sign}” at character ${at} has no meaning here: names, numbers, units, brackets and + − × ÷ ^ have.`,
  'formula length': ({ most }: Said) => `This is longer than can be read: at most ${most} characters.`,
  'formula shape': ({ text, why }: Said) => `“${text}” cannot be read (${why}).`,
  'name unknown': ({ name, near }: Said) =>
    near === ''
      ? `Nothing here is called “${name}”.`
      : `Nothing here is called “${name}”; did you mean ${near}?`,
  'function unknown': ({ name, known }: Said) => `“${name}” is no function known here; these are: ${known}.`,
  'function arguments': ({ name, wanted }: Said) =>
    `${name} takes ${wanted === '1' ? 'one value' : 'one value or more'} between its brackets.`,
  'factors without a sign': ({ text }: Said) =>
    `Between two factors stands × or ÷: “${text}” has neither. Only a unit may follow its number at once.`,
  circle: ({ names }: Said) => `These need each other, so none can be worked out: ${names}.`,
  'value not known': ({ name }: Said) => `${name} is not known, so this is not either.`,
  'dimensions differ': ({ left, right, sign }: Said) =>
    `${thing(left).replace(/^./, first => first.toUpperCase())} and ${thing(right)} are different things: ${sign} cannot join them.`,
  'plain number wanted': ({ where, received }: Said) =>
    `${where === '^' ? 'A power' : where} takes a plain number, not ${thing(received)}.`,
  'unit unknown': ({ unit, near }: Said) =>
    near === ''
      ? `“${unit}” is no unit known here.`
      : `“${unit}” is no unit known here; did you mean ${near}?`,
  'unit does not fit': ({ unit, received, proposal }: Said) =>
    proposal === ''
      ? `What is worked out is a plain number; it cannot be told in ${unit}. Leave “in” empty.`
      : `What is worked out is ${thing(received)}; it cannot be told in ${unit}, but in ${proposal}.`,
  'not a number': () =>
    'This has no value for the values that stand: it divides by nothing, or takes a root of less.',
} satisfies Readonly<Record<string, (values: Said) => string>>
