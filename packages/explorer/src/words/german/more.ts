import type { more as english } from '../english/more.ts'
import { check, checkFigure, checkSettables, checkWorkings } from './check.ts'
import { curves, curvesFigure, curvesWorkings } from './curves.ts'
import { fit, fitFigure, fitWorkings, setsFigure } from './fit.ts'
import { formula, formulaReasons } from './formula.ts'
import { headland, headlandFigure, headlandSettables, headlandWorkings } from './headland.ts'
import { patch, patchFigure, patchWorkings } from './patch.ts'
import { question, questionFigure, questionReasons, questionWorkings } from './question.ts'
import { readings } from './readings.ts'
import { rollers, rollersWorkings } from './rollers.ts'
import { section, sectionFigure, sectionWorkings } from './section.ts'
import { turfs, turfsWorkings } from './turfs.ts'
import {
  uncertainty,
  uncertaintyFigure,
  uncertaintyReasons,
  uncertaintySettables,
  uncertaintyWorkings,
} from './uncertainty.ts'
import { unitFromScales, unitFromScalesFigure, unitFromScalesWorkings } from './unitFromScales.ts'
import { units, unitsWorkings } from './units.ts'

type MoreWords = typeof english

/** Parts that come with the first kind of entry that is fetched: what only such kinds say. */
export const more: MoreWords = {
  check,
  curves,
  fit,
  formula,
  headland,
  patch,
  question,
  readings,
  rollers,
  section,
  turfs,
  uncertainty,
  unitFromScales,
  units,
  settables: { ...headlandSettables, ...checkSettables, ...uncertaintySettables },
  failures: { reasons: { ...formulaReasons, ...questionReasons, ...uncertaintyReasons } },
  workings: {
    ...checkWorkings,
    ...curvesWorkings,
    ...fitWorkings,
    ...headlandWorkings,
    ...patchWorkings,
    ...questionWorkings,
    ...rollersWorkings,
    ...sectionWorkings,
    ...turfsWorkings,
    ...uncertaintyWorkings,
    ...unitFromScalesWorkings,
    ...unitsWorkings,
  },
  figures: {
    check: checkFigure,
    unitFromScales: unitFromScalesFigure,
    headland: headlandFigure,
    fit: fitFigure,
    sets: setsFigure,
    curves: curvesFigure,
    section: sectionFigure,
    patch: patchFigure,
    question: questionFigure,
    uncertainty: uncertaintyFigure,
  },
}
