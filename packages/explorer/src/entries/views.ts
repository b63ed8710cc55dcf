import { mapView } from './map/view.ts'
import { rackView } from './rack/view.ts'
import { settingView } from './setting/view.ts'
import { sideViewView } from './sideView/view.ts'
import { textView } from './text/view.ts'
import type { View } from './view.ts'

/** The looks of every kind of entry that kinds.ts lists. */
export const views: readonly View[] = [sideViewView, settingView, mapView, rackView, textView]
