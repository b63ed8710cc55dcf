import type { Roller } from '@swardsink/model'
import { html, svg, type TemplateResult } from 'lit'
import { drawLevelDimension, levelDimension, loadArrow, uprightDimension } from './dimension.ts'
import { drawLabel, drawLeader } from './drawLabel.ts'
import { type Frame, pathOf, px, textSize } from './frame.ts'
import { type Mark, wedge } from './marks.ts'
import type { Circle } from './sideGeometry.ts'
import { sideLabels } from './sideLabels.ts'
import { type SideLayout, type SideViewSpec, sideLayout } from './sideLayout.ts'
import { arm, bottomBlade, cylinderBlades, grass, INNER_RING, surfacePoints } from './sideParts.ts'
import { drawScales, sideScales } from './sideScales.ts'
import type { SideViewWords } from './sideWords.ts'

const MM = 1e-3
/** Half of the square that takes hold of a handle, px. */
const REACH = 14

/** The unit from the side, standing on turf, to scale. */
export function sideView(spec: SideViewSpec, frame: Frame<SideViewWords>): TemplateResult {
  const layout = sideLayout(spec, frame)
  const { geometry: g, X, Y, width, height } = layout
  const size = textSize(frame)
  const level = sideDimensions(spec, layout, frame)
  const scales = sideScales(layout, frame, level)
  const labels = sideLabels({ layout, unit: spec.unit, settled: spec.settled, fixed: [] }, frame)
  const surface = surfacePoints(layout)
  const drawn = ({ x, y, radius }: Circle, kind: string) =>
    svg`<circle class=${kind} cx=${px(X(x))} cy=${px(Y(y))} r=${px(radius * layout.scale)} />`
  const arms = [g.front, g.rear].map(axis =>
    arm(layout, { ...g.hub, radius: g.arm.hub }, { x: axis.x, y: axis.y, radius: g.arm.axis }),
  )
  const blade = bottomBlade(layout)
  const total = Math.max(height, scales.foot)
  return html`<svg class="figure side-view" width=${width} height=${px(total)} viewBox="0 0 ${width} ${px(total)}" font-size=${size} role="group" aria-label=${frame.words.title}>
    <path class="ground" d=${`${pathOf(surface)}L${width} ${px(layout.foot)}L0 ${px(layout.foot)}Z`} />
    <path class="grass" d=${grass(
      layout,
      labels.map(label => label.box),
    )} />
    ${g.cylinder && svg`${drawn(g.cylinder, 'solid thin')}<path class="outline" d=${cylinderBlades(layout, g.cylinder)} />${drawn({ ...g.cylinder, radius: g.cylinder.radius * INNER_RING }, 'thin')}`}
    <path class="solid outline" d=${blade.bar} /><path class="solid outline" d=${blade.blade} />
    ${drawRoller(layout, g.front, spec.unit.frontRoller)}${drawRoller(layout, g.rear, spec.unit.rearRoller)}
    ${arms.map(d => svg`<path class="solid outline" d=${d} />`)}${arms.map(d => svg`<path class="solid" d=${d} />`)}
    ${drawn({ ...g.hub, radius: g.arm.hub * 0.42 }, 'solid thin')}
    ${[g.front, g.rear].map(axis => drawn({ ...axis, radius: g.arm.axis * 0.45 }, 'solid thin'))}
    ${[g.front, g.rear].map(
      axis =>
        svg`<path class="hidden" d=${pathOf([
          { x: X(axis.x - axis.radius * 0.8), y: layout.ground },
          { x: X(axis.x + axis.radius * 0.8), y: layout.ground },
        ])} />`,
    )}
    <path class="surface" d=${pathOf(surface)} />
    ${drawHeights(layout)}
    ${level.map(drawLevelDimension)}${drawScales(scales)}
    ${[layout.loads.front, layout.loads.rear, ...layout.loads.above].map(arrow => loadArrow(arrow, arrow))}
    ${labels.map(label => label.target && drawLeader(label, label.target))}
    ${labels.map(label => drawLabel(label, label.box.y > layout.ground ? 'on-ground' : 'on-paper'))}
    ${drawHandles(layout, frame.words)}
  </svg>`
}

/** The level dimensions under the ground: the edge and the rear axis behind the front axis. */
export function sideDimensions({ unit }: SideViewSpec, layout: SideLayout, frame: Frame<SideViewWords>) {
  const [near, far] = layout.dimensionRows
  const from = layout.X(0)
  const size = textSize(frame)
  const at = (value: number, y: number) =>
    levelDimension({ y, from, to: layout.X(value / MM), text: frame.format(value, 'wheelbase'), size })
  return [at(unit.edge, near), at(unit.wheelbase, far)]
}

function drawRoller({ X, Y, scale }: SideLayout, { x, y, radius }: Circle, roller: Roller): Mark {
  const groove = roller.surface.kind === 'grooved' ? roller.surface.depth / MM : 0
  const [cx, cy] = [px(X(x)), px(Y(y))]
  const arm = scale * radius + 7
  const cross = `M${px(X(x) - arm)} ${cy}H${px(X(x) + arm)}M${cx} ${px(Y(y) - arm)}V${px(Y(y) + arm)}`
  return svg`<circle class="solid outline" cx=${cx} cy=${cy} r=${px(scale * radius)} />${
    groove > 0 && groove < radius
      ? svg`<circle class="hidden" cx=${cx} cy=${cy} r=${px(scale * (radius - groove))} />`
      : undefined
  }<path class="centre" d=${cross} />`
}

/** The chain line of the cutting edge and the three heights at the turf. */
function drawHeights({
  X,
  geometry: g,
  width,
  edgeLine,
  benchLine,
  trackLine,
  ground,
  benchAt,
  heightAt,
}: SideLayout): Mark {
  const level = (from: number, to: number, y: number) =>
    pathOf([
      { x: from, y },
      { x: to, y },
    ])
  const past = 8
  const underFront = X(g.front.x - g.front.radius * 0.2)
  const underRear = X(g.rear.x + g.rear.radius * 0.2)
  const dropAt = Math.min(heightAt, width - past)
  return svg`<path class="edge-line" d=${level(4, width - 4, edgeLine)} />
    <path class="hair" d=${level(benchAt - past, underFront, benchLine) + level(underRear, heightAt + past, benchLine)} />
    ${uprightDimension({ x: benchAt, from: edgeLine, to: benchLine })}
    ${uprightDimension({ x: heightAt, from: edgeLine, to: trackLine })}
    ${
      Math.abs(benchLine - ground) > 1
        ? svg`<path class="hair" d=${pathOf([
            { x: dropAt, y: benchLine },
            { x: dropAt, y: benchLine + 16 },
          ])} />`
        : undefined
    }`
}

function drawHandles(layout: SideLayout, words: SideViewWords): Mark {
  const { X, Y, geometry: g, loads } = layout
  const handle = (name: keyof SideViewWords['handle'], x: number, y: number, mark?: Mark) =>
    svg`<g data-handle=${name} aria-label=${words.handle[name]} role="img"><circle class="reach" cx=${px(x)} cy=${px(y)} r=${REACH} />${mark}</g>`
  const edge = { x: X(g.edge.x), y: layout.edgeLine }
  const body = loads.above.find(arrow => arrow.handle === 'body')
  return svg`${handle('front', X(g.front.x), Y(g.front.y))}${handle('rear', X(g.rear.x), Y(g.rear.y))}${handle('edge', edge.x, edge.y - 4, wedge(edge, { size: 11 }))}${body && handle('body', body.x, body.y + body.length / 2)}`
}
