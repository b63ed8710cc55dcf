import { cautions, places } from './cautions.ts'
import {
  belonging,
  control,
  layers,
  naming,
  options,
  parts,
  refusals,
  settables,
  tableEditor,
} from './controls.ts'
import { curves, curvesFigure, curvesWorkings } from './curves.ts'
import { editing } from './editing.ts'
import { entry } from './entry.ts'
import { failures } from './failures.ts'
import { files } from './files.ts'
import { fit, fitFigure, fitWorkings, setsFigure } from './fit.ts'
import { formula } from './formula.ts'
import { headland, headlandFigure, headlandSettables, headlandWorkings } from './headland.ts'
import { kinds } from './kinds.ts'
import { lecture } from './lecture.ts'
import { map, mapFigure, mapWorkings } from './map.ts'
import { page } from './page.ts'
import { patch, patchFigure, patchWorkings } from './patch.ts'
import { presentCase } from './presentCase.ts'
import { question, questionFigure, questionWorkings } from './question.ts'
import { rack, rackFigure, rackSettables, rackWorkings, surfaces } from './rack.ts'
import { readings } from './readings.ts'
import { rollers, rollersWorkings } from './rollers.ts'
import { section, sectionFigure, sectionWorkings } from './section.ts'
import { setting } from './setting.ts'
import { sheets } from './sheets.ts'
import { sideView, sideViewFigure, sideViewWorkings } from './sideView.ts'
import { list, percent } from './speaking.ts'
import { text } from './text.ts'
import { turfs, turfsWorkings } from './turfs.ts'
import { unitFromScales, unitFromScalesFigure, unitFromScalesWorkings } from './unitFromScales.ts'
import { units, unitsWorkings } from './units.ts'

/**
 * Everything the book says of itself, in English, a file for each part of it. Values come in formatted; sentences
 * about them are made here. Another language is another folder of the same shape.
 */
export const english = {
  language: 'en',
  percent,
  list,
  page,
  entry,
  editing,
  files,
  lecture,
  sheets,
  /** Long tables that few readers open are fetched when they do. */
  glossary: async () => (await import('./glossary.ts')).glossary,
  trust: async () => (await import('./trust.ts')).trust,
  kinds,
  settables: { ...settables, ...headlandSettables, ...rackSettables },
  parts,
  layers,
  belonging,
  options,
  control,
  naming,
  tableEditor,
  refusals,
  failures,
  cautions,
  places,
  surfaces,
  sideView,
  map,
  rack,
  setting,
  headland,
  curves,
  section,
  text,
  readings,
  fit,
  units,
  presentCase,
  unitFromScales,
  turfs,
  rollers,
  formula,
  patch,
  question,
  /** What a line of "how this is worked out" works out, by the name the kind gives it. */
  workings: {
    ...headlandWorkings,
    ...fitWorkings,
    ...curvesWorkings,
    ...sectionWorkings,
    ...sideViewWorkings,
    ...mapWorkings,
    ...rackWorkings,
    ...patchWorkings,
    ...questionWorkings,
    ...unitsWorkings,
    ...unitFromScalesWorkings,
    ...turfsWorkings,
    ...rollersWorkings,
  } as Readonly<Record<string, string>>,
  /** What the figures say inside themselves. */
  figures: {
    unitFromScales: unitFromScalesFigure,
    headland: headlandFigure,
    fit: fitFigure,
    sets: setsFigure,
    curves: curvesFigure,
    section: sectionFigure,
    rack: rackFigure,
    patch: patchFigure,
    question: questionFigure,
    sideView: sideViewFigure,
    map: mapFigure,
  },
}
