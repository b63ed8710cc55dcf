type Template = { readonly strings: readonly string[]; readonly values: readonly unknown[] }
const isTemplate = (value: unknown): value is Template =>
  typeof value === 'object' && value !== null && 'strings' in value && 'values' in value

/** Markup as a page would get it, with every value put in. */
export function markup(value: unknown): string {
  if (value === undefined || value === null) return ''
  if (Array.isArray(value)) return value.map(markup).join('')
  if (!isTemplate(value)) return String(value)
  return value.strings.map((text, i) => text + markup(value.values[i])).join('')
}

/** What the figure itself writes between tags, without the values handed to it. */
export function ownText(value: unknown): string {
  if (Array.isArray(value)) return value.map(ownText).join('')
  if (!isTemplate(value)) return ''
  const between = value.strings
    .join('\u0000')
    .replace(/<[^>]*>/g, '')
    .replaceAll('\u0000', '')
  return between.trim() + value.values.map(ownText).join('')
}
