import { type CSSResult, unsafeCSS } from 'lit'
import { rampSteps, type ThemeName, themes } from './colour.ts'
import { hexOf } from './oklch.ts'

type Declarations = Readonly<Record<string, string>>

/** Every colour of a theme as it stands in a style sheet; `--sink-1` is shallow, `--sink-8` deep. */
export function colourTokens(theme: ThemeName): Declarations {
  const roles = Object.entries(themes[theme]).map(([role, colour]) => [`--${role}`, hexOf(colour)])
  const wash = rampSteps(theme).map((colour, i) => [`--sink-${i + 1}`, hexOf(colour)])
  return { 'color-scheme': theme === 'dark' ? 'dark' : 'light', ...Object.fromEntries([...roles, ...wash]) }
}

/** The reader's own system colours, where they ask for them. The wash stays: its meaning is its lightness. */
const forcedColours: Declarations = {
  '--paper': 'Canvas',
  '--ground': 'Canvas',
  '--field': 'Field',
  '--ink': 'CanvasText',
  '--ink-2': 'CanvasText',
  '--ink-3': 'CanvasText',
  '--rule': 'CanvasText',
  '--present': 'Highlight',
  '--present-wash': 'Canvas',
  '--measured': 'LinkText',
  '--measured-wash': 'Canvas',
  '--caution': 'CanvasText',
  '--caution-wash': 'Canvas',
}

/** Type in rem, so that a reader's own size and a zoom of 400 % carry through. 1rem is 16 px. */
const base: Declarations = {
  // Every member has lining figures of one width, or yields them to tabular-nums.
  '--face': '-apple-system, "Segoe UI", "Noto Sans", Roboto, "Liberation Sans", Arial, sans-serif',
  '--weight': '400',
  '--weight-strong': '600',
  '--t-axis': '0.8125rem',
  '--t-note': '0.875rem',
  '--t-text': '1.0625rem',
  '--t-title': '1.1875rem',
  '--t-lead': '1.75rem',
  '--t-number': '3.25rem',
  '--lh-text': '1.55',
  '--lh-tight': '1.3',
  '--s-1': '0.25rem',
  '--s-2': '0.5rem',
  '--s-3': '0.75rem',
  '--s-4': '1rem',
  '--s-6': '1.5rem',
  '--s-8': '2rem',
  '--s-12': '3rem',
  '--s-18': '4.5rem',
  '--page': '75rem',
  '--measure': '38.5rem',
  '--figure': '49.5rem',
  '--gap': '1.5rem',
  '--w-hair': '0.75px',
  '--w-thin': '1px',
  '--w-line': '1.75px',
  '--w-ground': '2.25px',
  '--w-present': '2.75px',
  '--corner': '2px',
  '--target': '24px',
  '--row': '40px',
}

/** Room for a gloved finger. */
const workshopReach: Declarations = { '--target': '48px', '--row': '48px' }

const workshop: Declarations = {
  '--t-axis': '0.875rem',
  '--t-note': '1rem',
  '--t-text': '1.125rem',
  '--t-number': '4.75rem',
}

/** Nothing under 20 px, lines that hold at the back of a room. */
const projector: Declarations = {
  '--t-axis': '1.25rem',
  '--t-note': '1.25rem',
  '--t-text': '1.75rem',
  '--t-title': '1.75rem',
  '--t-lead': '2.75rem',
  '--t-number': '4rem',
  '--w-hair': '1.5px',
  '--w-thin': '1.75px',
  '--w-line': '3px',
  '--w-ground': '4px',
  '--w-present': '4.5px',
}

const printed: Declarations = {
  '--t-axis': '7.5pt',
  '--t-note': '8.5pt',
  '--t-text': '9.5pt',
  '--t-title': '11pt',
  '--t-lead': '15pt',
  '--t-number': '26pt',
  '--w-hair': '0.25mm',
  '--w-thin': '0.25mm',
  '--w-line': '0.4mm',
  '--w-ground': '0.5mm',
  '--w-present': '0.7mm',
}

const rule = (selector: string, ...declarations: Declarations[]): string =>
  `${selector} {\n${Object.entries(Object.assign({}, ...declarations))
    .map(([name, value]) => `  ${name}: ${value};`)
    .join('\n')}\n}`

const within = (query: string, body: string): string => `@media ${query} {\n${body}\n}`

/** As specific as the strongest rule above it, so that paper and forced colours win over any chosen theme. */
const EVERY_ROOT = ':root, :root:not([data-theme]), :root[data-theme]'

/** The style sheet that gives a document its tokens, written from the data above. */
export const tokenText: string = [
  rule(':root', base, colourTokens('light')),
  within('(prefers-color-scheme: dark)', rule(':root:not([data-theme])', colourTokens('dark'))),
  ...(['light', 'dark'] as const).map(name => rule(`[data-theme='${name}']`, colourTokens(name))),
  rule("[data-theme='projector']", colourTokens('projector'), projector),
  rule("[data-theme='print']", colourTokens('print'), printed),
  // On a wall type is larger still.
  rule(":root:where(:not([data-theme='projector']))[data-reach='workshop']", workshop),
  within('(pointer: coarse)', rule(':root', { '--target': '44px', '--row': '48px' })),
  rule(":root[data-reach='workshop']", workshopReach),
  within('print', rule(EVERY_ROOT, colourTokens('print'), printed)),
  within('(forced-colors: active)', rule(`${EVERY_ROOT}, [data-theme]`, forcedColours)),
].join('\n\n')

export const tokens: CSSResult = unsafeCSS(tokenText)

/** Text of a figure in px: the size a figure is laid out for, the same that `--t-axis` sets on screen. */
export const figureText = (theme: ThemeName | 'system', workshop = false): number =>
  theme === 'projector' ? 20 : workshop ? 14 : 13
