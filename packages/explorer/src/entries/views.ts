import { openShelf, type Shelf } from '../book/index.ts'
import { fetchMoreWords } from '../words/index.ts'
import { settingView } from './setting/view.ts'
import { sideViewView } from './sideView/view.ts'
import { textView } from './text/view.ts'
import type { View } from './view.ts'

const atHand = [sideViewView, settingView, textView] as const

const onDemand = {
  map: async () => (await import('./map/view.ts')).mapView,
  rack: async () => (await import('./rack/view.ts')).rackView,
  headland: async () => (await import('./headland/view.ts')).headlandView,
  curves: async () => (await import('./curves/view.ts')).curvesView,
  formula: async () => (await import('./formula/view.ts')).formulaView,
  section: async () => (await import('./section/view.ts')).sectionView,
  units: async () => (await import('./units/view.ts')).unitsView,
  rollers: async () => (await import('./rollers/view.ts')).rollersView,
  turfs: async () => (await import('./turfs/view.ts')).turfsView,
  unitFromScales: async () => (await import('./unitFromScales/view.ts')).unitFromScalesView,
  question: async () => (await import('./question/view.ts')).questionView,
  uncertainty: async () => (await import('./uncertainty/view.ts')).uncertaintyView,
  patch: async () => (await import('./patch/view.ts')).patchView,
  check: async () => (await import('./check/view.ts')).checkView,
  fit: async () => (await import('./fit/view.ts')).fitView,
  readings: async () => (await import('./readings/view.ts')).readingsView,
} as const satisfies Readonly<Record<string, () => Promise<View>>>

/** Fetched with the words that only such kinds say. */
const withWords = (fetch: () => Promise<View>) => async (): Promise<View> => {
  const [view] = await Promise.all([fetch(), fetchMoreWords()])
  return view
}

/** The looks of every kind of entry that kinds.ts lists. */
export const viewShelf = (): Shelf<View> =>
  openShelf<View>({
    atHand,
    onDemand: Object.fromEntries(Object.entries(onDemand).map(([kind, fetch]) => [kind, withWords(fetch)])),
  })
