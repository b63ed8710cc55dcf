// Figures: data and a width in, a drawing out. No English, no state, no measuring of the page.

export {
  type CheckedRow,
  type CheckScale,
  type CheckWords,
  checkAxis,
  checkRow,
  checkScale,
} from './checkRow.ts'
export { contactPatch } from './contactPatch.ts'
export type { CurvesSpec, DrawnCurve } from './curvesLayout.ts'
export type { CurvesWords } from './curvesWords.ts'
export { type FaceStripSpec, faceStrip, stripHeight } from './faceStrip.ts'
export { fitCurve } from './fitCurve.ts'
export type { FitSpec } from './fitLayout.ts'
export type { FitWords } from './fitWords.ts'
export type { Format, Frame } from './frame.ts'
export { grooveSection } from './grooveSection.ts'
export { heightGlyph } from './heightGlyph.ts'
export { heightSpread } from './heightSpread.ts'
export { mapDomain } from './mapDrawing.ts'
export { type MapDomain, type MapScales, mapScales } from './mapScales.ts'
export type { SinkageMapWords } from './mapWords.ts'
export type { PatchSpec } from './patchLayout.ts'
export type { PatchWords } from './patchWords.ts'
export { type PredictionSpec, predictionLayout } from './predictionLayout.ts'
export { predictionRow, predictionScale } from './predictionScale.ts'
export type { PredictionWords } from './predictionWords.ts'
export { type RackPlotWords, type RackScale, rackAxis, rackRow, rackScale } from './rackPlot.ts'
export { type SectionSpec, sectionLayout } from './sectionLayout.ts'
export { timesText } from './sectionScales.ts'
export type { SectionWords } from './sectionWords.ts'
export { type SetsSpec, type SetsWords, setsFigure } from './setsFigure.ts'
export { type SettingScaleSpec, settingParts, settingScale } from './settingScale.ts'
export { type SharesSpec, shareBars } from './shareBars.ts'
export { type SideLayout, type SideViewSpec, sideLayout } from './sideLayout.ts'
export { sideView } from './sideView.ts'
export type { SideViewWords } from './sideWords.ts'
export { sinkageCurves } from './sinkageCurves.ts'
export { type MapPlace, type SinkageMapSpec, sinkageMapView } from './sinkageMapView.ts'
export { type SlidingSpec, slidingProfile } from './slidingProfile.ts'
export type { SlidingWords } from './slidingWords.ts'
export type { SpreadSpec } from './spreadLayout.ts'
export type { SpreadWords } from './spreadWords.ts'
export { linearTicksOf, logTicksOf } from './ticks.ts'
export { type WeighedUnitSpec, type WeighedUnitWords, weighedUnit } from './weighedUnit.ts'
