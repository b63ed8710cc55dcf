export {
  type Address,
  booksAddress,
  isBooksAddress,
  readAddress,
  type ViewName,
  writeAddress,
} from './address.ts'
export {
  addEntry,
  canMoveEntry,
  copyEntry,
  entryOf,
  freshId,
  moveEntry,
  placeOf,
  putBeside,
  takeOutEntry,
  type Way,
  withEntry,
} from './arrange.ts'
export { addPage, copyPage, movePage, takeOutPage, withPage } from './arrangePages.ts'
export {
  forget,
  freeName,
  type Kept,
  keep,
  keepOpened,
  kept,
  keptBooks,
  keptOpened,
  keptText,
  keptUnder,
  type Listed,
  type Store,
} from './autosave.ts'
export type { Book, Entry, Page, ReadBook } from './book.ts'
export { addRoller, copyRoller, type Edited, renameRoller, takeOutRoller } from './editRack.ts'
export { addTurf, copyTurf, renameTurf, takeOutTurf } from './editTurfs.ts'
export { changeUnit, copyUnit, renameUnit, takeOutUnit } from './editUnits.ts'
export { type Fields, fieldsOf, isRecord } from './fields.ts'
export {
  changeRackRoller,
  fitRoller,
  fittedName,
  POSITIONS,
  type Position,
  placesOf,
} from './fittedRollers.ts'
export { heldBackBy } from './heldBack.ts'
export { canRedo, canUndo } from './history.ts'
export {
  type Answer,
  type Failure,
  type Kind,
  type KindShelf,
  type Kinds,
  kindsByName,
  type LiveValue,
  type Offered,
  type WorkedLine,
} from './kind.ts'
export { firstExpression, lawOfKind } from './lawOfKind.ts'
export { packScenario, readLink, scenarioLink } from './link.ts'
export { type NameRefusal, refuseName } from './naming.ts'
export { completeBook, parseBook, type ReadingOptions, readBook } from './parse.ts'
export { lecturePlan, type Plan, type Step } from './plan.ts'
export { retelling, speaksLike } from './retell.ts'
export { ROLLER_FIELDS, type RollerField } from './rollerSettables.ts'
export { type Row, rowsOf } from './rows.ts'
export { scalesOf } from './scaleSettables.ts'
export { serialiseBook } from './serialise.ts'
export {
  bookOf,
  changeBook,
  changeEntry,
  choose,
  completed,
  endGestureOf,
  enter,
  type Held,
  openSession,
  replaceBook,
  replaceScenario,
  type Session,
  stepBack,
  stepForward,
} from './session.ts'
export type { ChoiceSettable, Line, QuantitySettable, Refusal, Settable } from './settable.ts'
export { isThere, setQuantity, settable, settableNames, settables, touching } from './settables.ts'
export { openShelf, type Shelf } from './shelf.ts'
export { byHand, presentTurf, TURF_FIELDS } from './turfSettables.ts'
