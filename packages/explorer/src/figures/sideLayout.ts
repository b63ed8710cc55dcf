import { GRAVITY, type SettledUnit, type Turf, type Unit } from '@swardsink/model'
import type { Box } from './box.ts'
import { type Frame, type Layout, layoutOf, lineHeight, type Point, textSize } from './frame.ts'
import { fittingExaggeration, type SideGeometry, type SideInput, sideGeometry } from './sideGeometry.ts'
import type { SideViewWords } from './sideWords.ts'
import { textWidth } from './textWidth.ts'

export type SideViewSpec = {
  readonly unit: Unit
  readonly settled: SettledUnit
  readonly turf: Turf
  /** Wanted factor of heights at the turf; a smaller one is used where this would spoil the drawing. */
  readonly exaggeration: 1 | 5 | 10
}
export type Arrow = Point & {
  readonly length: number
  /** Not negative; a load that lifts points up. */
  readonly newtons: number
  readonly lifts: boolean
  readonly handle?: 'body'
  readonly name: string
}
export type SideLayout = {
  readonly width: number
  readonly height: number
  /** px for a millimetre of the unit. */
  readonly scale: number
  /** Factor of heights at the turf that was used. */
  readonly exaggeration: number
  readonly newton: number
  readonly geometry: SideGeometry
  readonly X: (mm: number) => number
  readonly Y: (mm: number) => number
  /** px of the undisturbed surface, of the ground's lower end, of the cutting edge, and of the line under both rollers. */
  readonly ground: number
  readonly foot: number
  readonly edgeLine: number
  readonly benchLine: number
  /** Level of the recovered turf that the edge passes over. */
  readonly trackLine: number
  readonly benchAt: number
  readonly heightAt: number
  readonly dimensionRows: readonly [number, number]
  readonly scaleRow: number
  readonly loads: { readonly front: Arrow; readonly rear: Arrow; readonly above: readonly Arrow[] }
  /** Where labels may stand. */
  readonly bounds: Box
}

const MM = 1e-3
/** Tallest drawing of each layout, px at 13 px text: the wide one leaves the map below it in view on a laptop. */
const TALLEST: Record<Layout, number> = { wide: 392, middle: 404, narrow: 360 }
/** px a newton, and the longest arrow. */
const NEWTON = 0.3
const LONGEST_LOAD = 42
/** From a roller to the dimension beside it, and from there to its label, px. */
export const BESIDE = 16
export const LABEL_GAP = 7
const EDGE = 4
/** Rounding of sums of widths must not push a label over the figure's edge. */
const SLACK = 1

export const sideInput = ({
  unit,
  settled,
  turf,
}: Omit<SideViewSpec, 'exaggeration'>): Omit<SideInput, 'exaggeration'> => ({
  wheelbase: unit.wheelbase / MM,
  edge: unit.edge / MM,
  benchHeight: unit.benchHeight / MM,
  frontDiameter: unit.frontRoller.diameter / MM,
  rearDiameter: unit.rearRoller.diameter / MM,
  frontSinkage: settled.front.sinkage / MM,
  rearSinkage: settled.rear.sinkage / MM,
  drop: settled.drop.middle / MM,
  unrecovered: settled.unrecovered / MM,
  spread: (turf.spread ?? 0) / MM,
})

/** Where everything of the side view stands, px. */
export function sideLayout(spec: SideViewSpec, frame: Frame<SideViewWords>): SideLayout {
  const input = sideInput(spec)
  const exaggeration = fittingExaggeration(input, spec.exaggeration)
  const geometry = sideGeometry({ ...input, exaggeration })
  const { unit, settled } = spec
  const size = textSize(frame)
  const line = lineHeight(frame)
  const weights = [
    { name: '', newtons: unit.body.mass * GRAVITY, at: unit.body.at, handle: 'body' as const },
    ...(unit.loads ?? []).map(({ name, mass = 0, down = 0, at }) => ({
      name,
      newtons: mass * GRAVITY + down,
      at,
    })),
  ]
    .filter(({ newtons }) => newtons !== 0)
    .map(weight => ({ ...weight, newtons: Math.abs(weight.newtons), lifts: weight.newtons < 0 }))
  const heaviest = Math.max(settled.front.load, settled.rear.load, ...weights.map(weight => weight.newtons))
  const newton = Math.min(NEWTON, LONGEST_LOAD / heaviest) * (size / 13)
  const longest = (newtons: readonly number[]) => newton * Math.max(0, ...newtons)

  const wide = (...texts: string[]) => Math.max(...texts.map(text => textWidth(text, size, true)))
  const { words, format } = frame
  const left = EDGE + SLACK + wide(format(unit.benchHeight, 'height'), words.bench) + LABEL_GAP + BESIDE
  const right =
    EDGE +
    SLACK +
    wide(format(settled.effectiveHeight.middle, 'height'), words.effective) +
    LABEL_GAP +
    BESIDE
  const ends = extent(geometry)
  const length = ends.rear - ends.front
  const above = ceiling(geometry)
  const below = Math.max(0, ...[geometry.front, geometry.rear].map(({ y, radius }) => radius - y))
  const overhead =
    10 + longest(weights.map(weight => weight.newtons)) + line * (layoutOf(frame) === 'narrow' ? 1.4 : 0.4)
  const underneath = 18 + longest([settled.front.load, settled.rear.load])
  const dimensions = 2 * (line + 3) + 10
  const tallest = Math.min(TALLEST[layoutOf(frame)] * (size / 13), frame.tallest ?? Number.POSITIVE_INFINITY)
  const scale = Math.max(
    0.05,
    Math.min(
      (frame.width - left - right) / length,
      (tallest - overhead - underneath - dimensions) / (above + below),
    ),
  )

  const slack = frame.width - left - right - scale * length
  const x0 = left + slack / 2 - scale * ends.front
  const ground = overhead + scale * above
  const X = (mm: number) => x0 + scale * mm
  const Y = (mm: number) => ground - scale * mm
  const foot = Y(-below) + underneath
  const rows = [foot + line * 0.5 + 8, foot + line * 1.5 + 11] as const
  const bench = -exaggeration * input.drop
  const reaction = (roller: SideGeometry['front'], newtons: number, name: string): Arrow => ({
    x: X(roller.x),
    y: Y(roller.y - roller.radius) + 4,
    length: Math.max(14, newton * newtons),
    newtons,
    lifts: false,
    name,
  })
  const scaleRow = rows[1]
  return {
    width: frame.width,
    height: scaleRow + line + 4,
    scale,
    exaggeration,
    newton,
    geometry,
    X,
    Y,
    ground,
    foot,
    edgeLine: Y(geometry.edge.y),
    benchLine: Y(bench),
    trackLine: Y(-exaggeration * input.unrecovered),
    benchAt: X(ends.front) - BESIDE,
    heightAt: X(ends.rear) + BESIDE,
    dimensionRows: rows,
    scaleRow,
    loads: {
      front: reaction(geometry.front, settled.front.load, 'front'),
      rear: reaction(geometry.rear, settled.rear.load, 'rear'),
      above: weights.map(({ at, ...weight }) => {
        const length = Math.max(14, newton * weight.newtons)
        const x = Math.max(EDGE + 6, Math.min(frame.width - EDGE - 6, X(at / MM)))
        return { ...weight, x, y: Y(topAt(geometry, at / MM)) - 4 - length, length }
      }),
    },
    bounds: { x: EDGE, y: 0, width: frame.width - 2 * EDGE, height: foot },
  }
}

/** Foremost and rearmost point: of a roller, or of the cylinder over an edge far forward. */
function extent({ cylinder, front, rear }: SideGeometry): { readonly front: number; readonly rear: number } {
  const circles = [front, rear, ...(cylinder ? [cylinder] : [])]
  return {
    front: Math.min(...circles.map(({ x, radius }) => x - radius)),
    rear: Math.max(...circles.map(({ x, radius }) => x + radius)),
  }
}

function ceiling({ cylinder, front, rear, hub, arm }: SideGeometry): number {
  const tops = [front, rear, ...(cylinder ? [cylinder] : [])].map(({ y, radius }) => y + radius)
  return Math.max(hub.y + arm.hub, ...tops)
}

/** Height of the unit's outline above a place along it: where a weight's arrow ends. */
function topAt(geometry: SideGeometry, x: number): number {
  const { cylinder, front, rear, hub, arm } = geometry
  const round = [front, rear, { ...hub, radius: arm.hub }, ...(cylinder ? [cylinder] : [])]
  const tops = round.map(({ x: middle, y, radius }) => {
    const aside = Math.abs(x - middle)
    return aside < radius ? y + Math.sqrt(radius * radius - aside * aside) : 0
  })
  return Math.max(front.y, rear.y, ...tops)
}
