import { html, svg, type TemplateResult } from 'lit'
import { FIRST_DEEP_CONTOUR } from '../look/index.ts'
import { title } from './axis.ts'
import { drawLevelDimension, levelDimension, uprightDimension } from './dimension.ts'
import { type Frame, lineHeight, type Point, pathOf, px, textSize } from './frame.ts'
import type { Mark } from './marks.ts'
import { drawEdgeForce } from './patchEdges.ts'
import { type PatchField, type PatchPlace, patchField } from './patchField.ts'
import { type PatchLayout, type PatchSpec, patchLayout } from './patchLayout.ts'
import { drawPatchStrip } from './patchStrip.ts'
import type { PatchWords } from './patchWords.ts'
import { spreadOut } from './spreadOut.ts'
import { textWidth } from './textWidth.ts'

/** Pressure of one groove period over the length of its contact, seen from above, and the turf below it. */
export function contactPatch(spec: PatchSpec, frame: Frame<PatchWords>): TemplateResult {
  const layout = patchLayout(spec, frame)
  const field = patchField(spec.quarter, spec.grooves?.land ?? 0, frame)
  const { width, words } = frame
  const { height } = layout
  return html`<svg class="figure contact-patch" width=${width} height=${px(height)} viewBox="0 0 ${width} ${px(height)}" font-size=${textSize(frame)} role="img" aria-label=${words.title}>
    ${drawField(spec, field, layout)}${drawLands(spec, layout)}${drawEdgeForce(spec, layout, frame)}
    ${drawNames(spec, field, layout, frame)}${drawSizes(spec, layout, frame)}${drawPatchStrip(spec, layout, frame)}
  </svg>`
}

function drawField(spec: PatchSpec, { ladder, bands }: PatchField, layout: PatchLayout): Mark {
  const { left, right, top, foot, x, y, half } = layout
  // Across a smooth roller everything is the same: its two lines lie at the ends of what is drawn.
  const across = spec.grooves ? 1 : half.across
  const box = `M${px(left)} ${px(top)}H${px(right)}V${px(foot)}H${px(left)}Z`
  const inside = (ring: readonly Point[]) =>
    pathOf(
      ring.map(point => ({
        x: Math.min(right, Math.max(left, x(point.x))),
        y: Math.min(foot, Math.max(top, y(point.y * across))),
      })),
      true,
    )
  const contact = outlineOf(spec, layout)
  // Bands close along the frame: the cover takes the outer half of their lines as well.
  const cover = `M${px(left - 3)} ${px(top - 3)}H${px(right + 3)}V${px(foot + 3)}H${px(left - 3)}Z`
  return svg`<path class="sink-${ladder.base}" d=${contact} />
    ${bands.map(({ rung, area }) => svg`<path class="sink-${rung.above}" d=${area.map(inside).join('')} />`)}
    ${bands.map(({ rung, area }) => {
      const ink = Math.min(rung.above, rung.below) < FIRST_DEEP_CONTOUR ? 'on-pale' : 'on-deep'
      return svg`<path class=${ink} d=${area.map(inside).join('')} />`
    })}
    <path class="solid" fill-rule="evenodd" d=${cover + contact} /><path class="outline" d=${contact} /><path class="axis" d=${box} />`
}

/** The whole outline of contact from its quarter; of a smooth roller the part that is drawn. */
function outlineOf({ quarter, grooves }: PatchSpec, { x, y, half, end }: PatchLayout): string {
  if (!grooves)
    return pathOf(
      [
        { x: x(-end), y: y(-half.across) },
        { x: x(end), y: y(-half.across) },
        { x: x(end), y: y(half.across) },
        { x: x(-end), y: y(half.across) },
      ],
      true,
    )
  const corner = (places: readonly PatchPlace[], along: 1 | -1, across: 1 | -1): readonly Point[] =>
    places.map(place => ({ x: x(along * place.along), y: y(across * place.across) }))
  const round = (places: readonly PatchPlace[], both: boolean) =>
    both
      ? [
          pathOf(
            [
              ...corner(places, 1, 1),
              ...corner(places, -1, 1).toReversed(),
              ...corner(places, -1, -1),
              ...corner(places, 1, -1).toReversed(),
            ],
            true,
          ),
        ]
      : ([1, -1] as const).map(across =>
          pathOf([...corner(places, 1, across), ...corner(places, -1, across).toReversed()], true),
        )
  const { land, floor } = quarter.outline
  const edge = grooves.land / 2
  const last = land.at(-1)
  const first = land[0]
  if (!first || !last) return ''
  const whole = [{ ...first, across: 0 }, ...land, { ...last, across: edge }]
  const lands = round(whole, true)
  const floors = floor.length > 1 ? round(floor, false) : []
  return [...lands, ...floors].join('')
}

function drawLands({ grooves }: PatchSpec, layout: PatchLayout): Mark {
  const { left, right, top, foot, x, y } = layout
  const axis = `M${px(x(0))} ${px(top - 7)}V${px(foot + 7)}`
  const edges = grooves
    ? [-1, 1].map(side => `M${px(left)} ${px(y((side * grooves.land) / 2))}H${px(right)}`).join('')
    : ''
  return svg`<path class="hidden" d=${edges} /><path class="centre" d=${axis} />`
}

/** Names of the bands stand over the plan, led to where each ends on the edge of the land. */
function drawNames(
  spec: PatchSpec,
  { ladder, ends, greatest }: PatchField,
  layout: PatchLayout,
  frame: Frame<PatchWords>,
): Mark {
  const { words, format } = frame
  const size = textSize(frame)
  const line = lineHeight(frame)
  const { x, y, top, end } = layout
  const from = spec.grooves ? y(-spec.grooves.land / 2) : top
  const peak = { at: x(0), text: format(greatest, 'pressure', { unit: false }), strong: true }
  const rungs = ladder.rungs.flatMap(({ text }, i) => {
    const at = ends[i]
    return at === null || at === undefined || at > end ? [] : [{ at: x(at), text, strong: false }]
  })
  const names = [peak, ...rungs]
  const widest = Math.max(...names.map(({ text, strong }) => textWidth(text, size, strong))) + 6
  const baseline = line + 4 + size
  const places = spreadOut(
    names.map(({ at }) => at),
    { gap: widest, low: widest / 2, high: frame.width - widest / 2 },
  )
  return svg`${title(words.pressure, { x: 0, y: size })}${names.map(({ at, text, strong }, i) => {
    const place = places[i] ?? at
    const stalk = [
      { x: place, y: baseline + 4 },
      { x: at, y: top },
      { x: at, y: from },
    ]
    return svg`<path class="hair" d=${pathOf(stalk)} /><text class=${strong ? 'strong' : ''} x=${px(place)} y=${px(baseline)} text-anchor="middle">${text}</text>`
  })}`
}

/** Length of the contact below, pitch and land at the right. */
function drawSizes({ grooves }: PatchSpec, layout: PatchLayout, frame: Frame<PatchWords>): Mark {
  const { words, format } = frame
  const size = textSize(frame)
  const { x, y, end, length, foot, right, top } = layout
  const along = levelDimension({
    y: length,
    from: x(-end),
    to: x(end),
    text: words.length(format(2 * end, 'length')),
    size,
  })
  const shown = along.label.x < 0 ? { ...along, label: { ...along.label, x: along.to + 20 } } : along
  const ends = [-end, end].map(place => `M${px(x(place))} ${px(foot + 4)}V${px(length + 5)}`).join('')
  const below = svg`<path class="hair" d=${ends} />${drawLevelDimension(shown)}`
  if (!grooves) return below
  const upright = (at: number, from: number, to: number, text: string, baseline: number) =>
    svg`<path class="hair" d=${`M${px(right + 4)} ${px(from)}H${px(at + 5)}M${px(right + 4)} ${px(to)}H${px(at + 5)}`} />${uprightDimension({ x: at, from, to })}<text class="on-paper" x=${px(at + 8)} y=${px(baseline)}>${text}</text>`
  const land = [y(-grooves.land / 2), y(grooves.land / 2)] as const
  const middle = (land[0] + land[1]) / 2 + size * 0.36
  const widest = frame.width - right > 90
  const pitch = words.pitch(format(grooves.pitch, 'pitch', { unit: false }))
  const wide = words.landWidth(format(grooves.land, 'land', { unit: false }))
  return svg`${below}${upright(right + (widest ? 36 : 26), top, foot, pitch, foot - 6)}${upright(right + 14, land[0], land[1], wide, middle)}`
}
