/** Works that are cited by their name, and files of numbers made by another tool. */
const works: Readonly<Record<string, RegExp>> = {
  'Abramowitz and Stegun': /Abramowitz and Stegun/g,
  'Contact Mechanics': /Contact Mechanics/g,
  'IEC 61966': /IEC 61966/g,
  'ISO/IEC 18004': /ISO\/IEC 18004/g,
  'NIST StRD': /NIST StRD|Statistical Reference Datasets/g,
  'NIST/SEMATECH e-Handbook': /NIST\/SEMATECH/g,
  'R manual': /\bR manual/g,
  'Student’s table': /[Tt]ables? of Student[’']s t|Student[’']s (?:t[^(\n]*\()?tables?/g,
  WCAG: /\bWCAG\b/g,
  Wong: /\bWong\b/g,
  xoshiro: /test vector[^.]{0,40}xoshiro128/g,
}

const surname = String.raw`\p{Lu}[\p{L}’'-]*\p{Ll}[\p{L}’'-]*`
const authorsAndYear = new RegExp(
  String.raw`(${surname})(?:(?:, | and |, and )${surname})*(?: et al\.)?,? \(?((?:1[6-9]|20)\d\d)\b(?!-\d)`,
  'gu',
)
const table = /\bdata\/([a-z_]+)\.csv|referenceTable\('([a-z_]+)'\)/g

/**
 * What a text cites, by keys that are the same however it is put: "May 1959" for "May, Morris and Atack 1959",
 * "data/patch.csv" for a table of test/reference, the name of a work that is known by its name.
 */
export function citationsIn(text: string): ReadonlySet<string> {
  // A comment breaks its lines where it has to.
  const flowing = text.replace(/\n\s*(?:\*|\/\/)?\s*/g, ' ')
  const found = new Set<string>()
  for (const [, first = '', year = ''] of flowing.matchAll(authorsAndYear))
    found.add(`${first.replace(/['’]/g, '')} ${year}`)
  for (const [, named, read] of flowing.matchAll(table)) found.add(`data/${named ?? read}.csv`)
  for (const [work, pattern] of Object.entries(works)) if (flowing.search(pattern) >= 0) found.add(work)
  return found
}
