import { html, svg, type TemplateResult } from 'lit'
import { axisLeft, title } from './axis.ts'
import { type Frame, lineHeight, type Point, pathOf, px, textSize } from './frame.ts'
import { type Mark, presentRing, wedge } from './marks.ts'
import { type SpreadLayout, type SpreadSpec, spreadLayout } from './spreadLayout.ts'
import { spreadOut } from './spreadOut.ts'
import type { SpreadWords } from './spreadWords.ts'
import { linearTicksOf } from './ticks.ts'

const GAP = 12

/** How often each height is cut: heights upwards, the oftener the further to the right. */
export function heightSpread(spec: SpreadSpec, frame: Frame<SpreadWords>): TemplateResult {
  const layout = spreadLayout(spec, frame)
  const { width, words } = frame
  const { height } = layout
  return html`<svg class="figure height-spread" width=${width} height=${px(height)} viewBox="0 0 ${width} ${px(height)}" font-size=${textSize(frame)} role="img" aria-label=${words.title}>
    ${drawWanted(spec, layout)}${drawOutline(spec, layout)}${drawAxis(layout, frame)}${drawLevels(spec, layout, frame)}
  </svg>`
}

function drawWanted({ wanted }: SpreadSpec, { left, names, y }: SpreadLayout): Mark | undefined {
  if (!wanted) return undefined
  const [high, low] = [y(wanted.height + wanted.tolerance), y(wanted.height - wanted.tolerance)]
  const right = names - 8
  return svg`<rect class="tolerance" x=${px(left)} y=${px(high)} width=${px(right - left)} height=${px(low - high)} /><path class="hidden" d=${`M${px(left)} ${px(high)}H${px(right)}M${px(left)} ${px(low)}H${px(right)}`} />`
}

/** A stepped outline of counts, a smooth one while only its width is known. */
function drawOutline({ histogram }: SpreadSpec, layout: SpreadLayout): Mark | undefined {
  const { steps, left, reach, y } = layout
  const x = (often: number) => left + (reach - left) * often
  if (steps.length === 0) return undefined
  const [first, last] = [steps[0]?.from ?? 0, steps.at(-1)?.to ?? 0]
  const along: readonly Point[] = histogram
    ? steps.flatMap(({ from, to, often }) => [
        { x: x(often), y: y(from) },
        { x: x(often), y: y(to) },
      ])
    : steps.map(({ from, to, often }) => ({ x: x(often), y: y((from + to) / 2) }))
  const outline = [{ x: left, y: y(first) }, ...along, { x: left, y: y(last) }]
  return svg`<path class="solid" d=${pathOf(outline, true)} /><path class=${histogram ? 'outline' : 'outline carried-on'} d=${pathOf(outline)} />`
}

function drawAxis({ domain, left, top, foot, y, height }: SpreadLayout, frame: Frame<SpreadWords>): Mark {
  const { words } = frame
  const size = textSize(frame)
  const ticks = linearTicksOf({
    domain,
    quantity: 'height',
    count: (foot - top) / (lineHeight(frame) * 2.2),
    reader: frame,
  })
  return svg`<path class="axis" d=${`M${px(left)} ${px(top)}V${px(foot)}`} />
    ${axisLeft({ ticks: ticks.map(({ value, text }) => ({ at: y(value), text })), x: left, gap: GAP, size })}
    ${title(words.axis, { x: 0, y: size })}${title(words.often, { x: left, y: height - 2 })}`
}

/** A level line for each height that is told, named at its end. */
function drawLevels(spec: SpreadSpec, layout: SpreadLayout, frame: Frame<SpreadWords>): Mark {
  const { words, format } = frame
  const size = textSize(frame)
  const { left, names, top, foot, y } = layout
  const height = (value: number) => format(value, 'height', { unit: false })
  const [low, middle, high] = spec.quantiles
  const { nominal, wanted } = spec
  const levels = [
    { at: low, text: words.low(height(low)), kind: 'hidden', strong: false },
    { at: middle, text: words.middle(height(middle)), kind: 'axis', strong: false },
    { at: high, text: words.high(height(high)), kind: 'hidden', strong: false },
    ...(nominal === null
      ? []
      : [{ at: nominal, text: words.present(height(nominal)), kind: 'present-cross', strong: true }]),
    ...(wanted
      ? [
          {
            at: wanted.height,
            text: words.wanted({ height: height(wanted.height), tolerance: height(wanted.tolerance) }),
            kind: 'dotted',
            strong: false,
          },
        ]
      : []),
  ]
  const places = spreadOut(
    levels.map(({ at }) => y(at)),
    { gap: lineHeight(frame), low: top, high: foot },
  )
  const lines = levels.map(({ at, text, kind, strong }, i) => {
    const level = y(at)
    const name = places[i] ?? level
    const line = [
      { x: left, y: level },
      { x: names - 22, y: level },
      { x: names - 8, y: name },
    ]
    return svg`<path class=${kind} d=${pathOf(line)} /><text class=${strong ? 'strong' : ''} x=${px(names - 2)} y=${px(name + size * 0.36)}>${text}</text>`
  })
  const present =
    nominal === null
      ? undefined
      : svg`${wedge({ x: left, y: y(nominal) }, { size: 10, turned: -90 })}${presentRing({ x: (left + names) / 2, y: y(nominal) })}`
  return svg`${lines}${present}`
}
