import { html, svg, type TemplateResult } from 'lit'
import { loadArrow } from './dimension.ts'
import { type Frame, layoutOf, lineHeight, pathOf, px, textSize } from './frame.ts'
import { arrowHead, type Mark, wedge } from './marks.ts'
import { textWidth } from './textWidth.ts'

export type WeighedUnitWords = {
  readonly title: string
  readonly front: string
  readonly rear: string
  readonly edge: string
  /** "body 18.40 kg" */
  readonly body: string
  /** Lengths are to scale. */
  readonly scale: string
}

/** Metres behind the front axis, and diameters; readings of the two scales in kg, null where none was taken. */
export type WeighedUnitSpec = {
  readonly wheelbase: number
  readonly edge: number
  readonly front: number
  readonly rear: number
  readonly at: number
  readonly loads: readonly { readonly name: string; readonly at: number }[]
  readonly readings: { readonly front: number | null; readonly rear: number | null }
}

const PLATFORM = 9
const ARROW = 44
/** Between the frame and the taller roller: room for a name. */
const AIR = 12
/** Text of a page, px: larger text on a wall has a larger drawing round it. */
const SMALL = 13
const MOST = { wide: 620, middle: 520, narrow: 358 }

/** The unit on two scales, from the side: where its weight acts decides what each of them reads. */
export function weighedUnit(spec: WeighedUnitSpec, frame: Frame<WeighedUnitWords>): TemplateResult {
  const { words, format } = frame
  const size = textSize(frame)
  const line = lineHeight(frame)
  const width = Math.min(frame.width, (MOST[layoutOf(frame)] * size) / SMALL)
  const places = [spec.at, ...spec.loads.map(({ at }) => at)]
  const left = Math.min(-spec.front / 2, ...places)
  const right = Math.max(spec.wheelbase + spec.rear / 2, ...places)
  const side = Math.min(70, width * 0.14)
  const scale = (width - 2 * side) / (right - left || 1)
  const x = (at: number) => side + (at - left) * scale
  const radius = (diameter: number) => (diameter / 2) * scale
  const tallest = 2 * Math.max(radius(spec.front), radius(spec.rear))
  const names = spread(
    [{ text: words.body, x: x(spec.at) }, ...spec.loads.map(({ name, at }) => ({ text: name, x: x(at) }))],
    { size, width },
  )
  const rows = 1 + Math.max(0, ...names.map(({ row }) => row))
  const top = rows * line + 6
  const bench = top + ARROW + AIR + line + tallest
  const height = bench + PLATFORM + 10 + 2 * line + AIR + line
  const axle = (diameter: number) => bench - radius(diameter)
  const beam = top + ARROW
  const roller = (at: number, diameter: number): Mark =>
    svg`<circle class="solid outline" cx=${px(x(at))} cy=${px(axle(diameter))} r=${px(radius(diameter))} /><path class="centre" d=${`M${px(x(at) - 6)} ${px(axle(diameter))}h12M${px(x(at))} ${px(axle(diameter) - 6)}v12`} />`
  const platform = (at: number, name: string, reading: number | null): Mark => {
    const half = Math.min(34, side)
    const foot = bench + PLATFORM
    return svg`<path class="ground outline" d=${`M${px(x(at) - half)} ${px(bench)}H${px(x(at) + half)}V${px(foot)}H${px(x(at) - half)}Z`} />
      <text x=${px(x(at))} y=${px(foot + 6 + line)} text-anchor="middle">${name}</text>
      ${reading === null ? undefined : svg`<text class="strong" x=${px(x(at))} y=${px(foot + 6 + 2 * line)} text-anchor="middle">${format(reading, 'mass')}</text>`}`
  }
  const frameLine = `M${px(x(0))} ${px(axle(spec.front))}L${px(x(0))} ${px(beam)}H${px(x(spec.wheelbase))}L${px(x(spec.wheelbase))} ${px(axle(spec.rear))}`
  const outside = places.filter(at => at < 0 || at > spec.wheelbase)
  const arms = outside.map(at => `M${px(x(at))} ${px(beam)}H${px(x(at < 0 ? 0 : spec.wheelbase))}`).join('')
  return html`<svg class="figure weighed-unit" width=${px(width)} height=${px(height)} viewBox="0 0 ${px(width)} ${px(height)}" font-size=${size} role="img" aria-label=${words.title}>
    <path class="hair" d=${frameLine + arms} />
    ${roller(0, spec.front)}${roller(spec.wheelbase, spec.rear)}
    <path class="edge-line" d=${pathOf([
      { x: x(spec.edge), y: bench },
      { x: x(spec.edge), y: beam },
    ])} />${wedge({ x: x(spec.edge), y: bench }, { size: 9 })}
    <text class="on-paper" x=${px(x(spec.edge) + 7)} y=${px(beam + line)}>${words.edge}</text>
    ${platform(0, words.front, spec.readings.front)}${platform(spec.wheelbase, words.rear, spec.readings.rear)}
    ${names.map(({ text, at, x: place, row }) => {
      const y = (row + 1) * line - 4
      return svg`${loadArrow({ x: place, y: y + 6 }, { length: beam - y - 8, lifts: false })}<text class="on-paper" x=${px(at)} y=${px(y)} text-anchor="middle">${text}</text>`
    })}
    ${dimensionLine({ from: x(0), to: x(spec.wheelbase), y: height - line * 0.5, text: format(spec.wheelbase, 'wheelbase'), size })}
  </svg>`
}

/** Names over the arrows, each in the first row that has room for it; none runs out of the drawing. */
function spread(
  names: readonly { readonly text: string; readonly x: number }[],
  q: { readonly size: number; readonly width: number },
): readonly { readonly text: string; readonly x: number; readonly at: number; readonly row: number }[] {
  const taken: { row: number; from: number; to: number }[] = []
  return names.map(({ text, x }) => {
    const half = textWidth(text, q.size, true) / 2 + 6
    const at = Math.max(half, Math.min(q.width - half, x))
    let row = 0
    while (taken.some(one => one.row === row && one.from < at + half && one.to > at - half)) row++
    taken.push({ row, from: at - half, to: at + half })
    return { text, x, at, row }
  })
}

function dimensionLine(q: {
  readonly from: number
  readonly to: number
  readonly y: number
  readonly text: string
  readonly size: number
}): Mark {
  const { from, to, y, text, size } = q
  const middle = (from + to) / 2
  const half = textWidth(text, size) / 2 + 6
  return svg`<path class="hair" d=${`M${px(from)} ${px(y)}H${px(middle - half)}M${px(middle + half)} ${px(y)}H${px(to)}`} />${arrowHead({ x: from, y }, 180)}${arrowHead({ x: to, y }, 0)}<text x=${px(middle)} y=${px(y + size * 0.35)} text-anchor="middle">${text}</text>`
}
