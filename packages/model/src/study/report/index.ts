export {
  type Exported,
  type ExportLanguage,
  type ExportQuestion,
  exportFit,
  exportLanguages,
} from './exportFit.ts'
export { type FitReport, fitReport, type ReportQuestion } from './fitReport.ts'
export { type MethodsQuestion, methodsParagraph } from './methodsParagraph.ts'
export { parameterWord, quantityOf as parameterQuantity } from './shownParameter.ts'
