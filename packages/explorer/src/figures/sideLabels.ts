import type { SettledUnit, Unit } from '@swardsink/model'
import type { Box } from './box.ts'
import { type Frame, layoutOf, lineHeight, type Point, textSize } from './frame.ts'
import { alongLine, leaderStart, needsLeader } from './leader.ts'
import { type LabelLine, type PlacedLabel, placeLabel, placeName } from './placeLabel.ts'
import type { Circle } from './sideGeometry.ts'
import { type Arrow, LABEL_GAP, type SideLayout } from './sideLayout.ts'
import { arrowBoxes, obstacles } from './sideObstacles.ts'
import type { SideViewWords } from './sideWords.ts'

export type SideLabel = PlacedLabel & {
  readonly name: string
  /** The end of its leader, where the label stands away from what it names. */
  readonly target?: Point
}
type Place = Point & { readonly anchor: 'start' | 'end' }
type Asked = {
  readonly name: string
  readonly lines: readonly LabelLine[]
  readonly places: readonly Place[]
  readonly target?: Point
  /** Of a part: left out where it would spoil the drawing. A value never is. */
  readonly isName?: boolean
}

/** Every label of the side view but those of the level dimensions, in the order of who chooses first. */
export function sideLabels(
  q: { layout: SideLayout; unit: Unit; settled: SettledUnit; fixed: readonly Box[] },
  frame: Frame<SideViewWords>,
): readonly SideLabel[] {
  const room = { bounds: q.layout.bounds, size: textSize(frame), lineHeight: lineHeight(frame) }
  const taken: Box[] = [...q.fixed, ...arrowBoxes(q.layout)]
  const avoided: Box[] = obstacles(q.layout)
  return asked(q, frame).flatMap(({ name, target, isName, ...wanted }): SideLabel[] => {
    const within = { ...room, taken, avoided }
    const placed = isName
      ? placeName({ ...wanted, ...(target && { target }) }, within)
      : placeLabel(wanted, within)
    if (!placed) return []
    taken.push(placed.box)
    if (!target || !needsLeader(placed.box, target)) return [{ ...placed, name }]
    avoided.push(...alongLine(leaderStart(placed.box, target), target))
    return [{ ...placed, name, target }]
  })
}

function asked(
  { layout, unit, settled }: { layout: SideLayout; unit: Unit; settled: SettledUnit },
  frame: Frame<SideViewWords>,
): readonly Asked[] {
  const { words, format } = frame
  const line = lineHeight(frame)
  const { X, Y, geometry: g, edgeLine, benchLine, ground, trackLine, benchAt, heightAt, bounds } = layout
  const rightEnd = bounds.x + bounds.width
  const beside = (x: number, anchor: 'start' | 'end', from: number, to: number): readonly Place[] => {
    const at = x + (anchor === 'end' ? -LABEL_GAP : LABEL_GAP)
    const middle = (from + to) / 2 - line
    return [middle, Math.min(from, to) - 2 * line - 3, Math.max(from, to) + 4].map(y => ({
      x: at,
      y,
      anchor,
    }))
  }
  const layoutName = layoutOf(frame)
  const narrow = layoutName === 'narrow'
  const arrowLabel = (arrow: Arrow, y: number): readonly Place[] => [
    { x: arrow.x + 9, y, anchor: 'start' },
    { x: arrow.x - 9, y, anchor: 'end' },
  ]
  // Where there is little width, the drop's value needs the room behind the rear roller's load.
  const rearLabel = (arrow: Arrow, y: number) =>
    layoutName === 'wide' ? arrowLabel(arrow, y) : arrowLabel(arrow, y).toReversed()
  const onRoller = (roller: Circle, side: -1 | 1): Point => ({
    x: X(roller.x + side * roller.radius * 0.62),
    y: Y(roller.y + roller.radius * 0.62),
  })
  const outward = (target: Point, side: -1 | 1, reach: number, rise: number): readonly Place[] =>
    [1, 1.6, 0.5].map(k => ({
      x: target.x + side * reach,
      y: target.y - rise * k - line / 2,
      anchor: side < 0 ? ('end' as const) : ('start' as const),
    }))
  const { front, rear } = layout.loads
  const frontTarget = onRoller(g.front, -1)
  const rearTarget = onRoller(g.rear, 1)
  const bladeTarget = { x: X(g.edge.x + 40 * g.blade), y: Y(g.edge.y + 3 * g.blade) }
  const cylinderTarget = g.cylinder && {
    x: X(g.cylinder.x - g.cylinder.radius * 0.66),
    y: Y(g.cylinder.y + g.cylinder.radius * 0.66),
  }
  const value = (text: string, word: string): readonly LabelLine[] => [{ text, strong: true }, { text: word }]
  const below = Math.max(ground, benchLine)
  const drop = words.drop(format(settled.drop.middle, 'drop'))
  return [
    {
      name: 'bench',
      lines: value(format(unit.benchHeight, 'height'), words.bench),
      places: beside(benchAt, 'end', edgeLine, benchLine),
    },
    {
      name: 'effective',
      lines: value(format(settled.effectiveHeight.middle, 'height'), words.effective),
      places: beside(heightAt, 'start', edgeLine, trackLine),
    },
    {
      name: 'front load',
      lines: [{ text: format(front.newtons, 'load'), strong: true }],
      places: arrowLabel(front, front.y + front.length - line),
    },
    {
      name: 'rear load',
      lines: [{ text: format(rear.newtons, 'load'), strong: true }],
      places: rearLabel(rear, rear.y + rear.length - line),
    },
    {
      name: 'drop',
      lines: [{ text: drop }],
      places: [
        { x: heightAt + LABEL_GAP, y: below + 6, anchor: 'start' },
        { x: rightEnd, y: below + 18, anchor: 'end' },
        { x: rightEnd, y: below + 32, anchor: 'end' },
      ],
    },
    ...layout.loads.above.map((arrow): Asked => {
      const newtons = format(arrow.newtons, 'load')
      const text = arrow.handle ? words.body(newtons) : words.load(arrow.name, newtons)
      return {
        name: `weight ${arrow.name}`,
        lines: [{ text, strong: true }],
        places: arrowLabel(arrow, arrow.y - 2),
      }
    }),
    ...(narrow ? [] : [edgeName(layout, words.edgeLine, line)]),
    {
      name: 'front roller',
      isName: true,
      lines: [{ text: words.frontRoller }],
      target: frontTarget,
      places: outward(frontTarget, -1, 26, 32),
    },
    {
      name: 'rear roller',
      isName: true,
      lines: [{ text: words.rearRoller }],
      target: rearTarget,
      places: outward(rearTarget, 1, 26, 32),
    },
    ...(cylinderTarget
      ? [
          {
            name: 'cylinder',
            isName: true,
            lines: [{ text: words.cuttingCylinder }],
            target: cylinderTarget,
            places: outward(cylinderTarget, -1, 42, 30),
          },
        ]
      : []),
    {
      name: 'blade',
      isName: true,
      lines: [{ text: words.bottomBlade }],
      target: bladeTarget,
      places: bladePlaces(layout, bladeTarget, line),
    },
    {
      name: 'turf',
      isName: true,
      lines: [{ text: words.turf }],
      places: [
        { x: bounds.x + 4, y: below + 5, anchor: 'start' },
        { x: rightEnd - 4, y: layout.foot - line - 3, anchor: 'end' },
        { x: bounds.x + 4, y: layout.foot - line - 3, anchor: 'start' },
      ],
    },
  ]
}

function edgeName({ bounds, edgeLine }: SideLayout, words: readonly string[], line: number): Asked {
  const end = bounds.x + bounds.width
  const above = (lines: number): Place => ({ x: end, y: edgeLine - lines * line - 5, anchor: 'end' })
  return {
    name: 'edge line',
    isName: true,
    lines: words.map(text => ({ text })),
    target: { x: end - 8, y: edgeLine },
    places: [above(words.length), above(words.length + 2), { x: end, y: edgeLine + 5, anchor: 'end' }],
  }
}

/** Beyond the cylinder, above the rear roller's name. */
function bladePlaces({ X, Y, geometry: g }: SideLayout, target: Point, line: number): readonly Place[] {
  const top = Math.min(Y(g.rear.y + g.rear.radius), target.y)
  const beside = g.cylinder ? X(g.cylinder.x + g.cylinder.radius) + 8 : target.x + 30
  return [2.6, 3.6, 4.6].map(lines => ({
    x: Math.max(beside, target.x + 24),
    y: top - lines * line,
    anchor: 'start' as const,
  }))
}
