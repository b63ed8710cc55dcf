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
import { unitFromScales, unitFromScalesFigure, unitFromScalesWorkings } from './unitFromScales.ts'
import { units, unitsWorkings } from './units.ts'

/** Parts that come with the first kind of entry that is fetched: what only such kinds say. */
export const more = {
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
  unitFromScales,
  units,
  settables: headlandSettables,
  failures: { reasons: { ...formulaReasons, ...questionReasons } },
  workings: {
    ...curvesWorkings,
    ...fitWorkings,
    ...headlandWorkings,
    ...patchWorkings,
    ...questionWorkings,
    ...rollersWorkings,
    ...sectionWorkings,
    ...turfsWorkings,
    ...unitFromScalesWorkings,
    ...unitsWorkings,
  },
  figures: {
    unitFromScales: unitFromScalesFigure,
    headland: headlandFigure,
    fit: fitFigure,
    sets: setsFigure,
    curves: curvesFigure,
    section: sectionFigure,
    patch: patchFigure,
    question: questionFigure,
  },
}
