import { phrasebook } from '../phrasebook.ts'
import { modelFits } from './modelFits.ts'
import { modelParts } from './modelParts.ts'
import { modelProblems } from './modelProblems.ts'
import { modelReports } from './modelReports.ts'
import { list } from './speaking.ts'

/** Sentences that the model makes, in German. */
export const modelSays = phrasebook({
  phrases: [...modelFits, ...modelReports, ...modelProblems, ...modelParts],
  list,
  number: text => text.replace('.', ','),
})
