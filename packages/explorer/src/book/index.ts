export { forget, keep, kept, type Store } from './autosave.ts'
export type { Book, Entry, Page, ReadBook } from './book.ts'
export { type Fields, isRecord } from './fields.ts'
export {
  changeRackRoller,
  fitRoller,
  fittedName,
  mapUnits,
  POSITIONS,
  type Position,
  placesOf,
  rollerIn,
} from './fittedRollers.ts'
export { canRedo, canUndo } from './history.ts'
export {
  type Answer,
  type Failure,
  type Kind,
  type KindShelf,
  type Kinds,
  kindsByName,
  type LiveValue,
  type WorkedLine,
} from './kind.ts'
export { readLink, scenarioLink } from './link.ts'
export { parseBook, readBook } from './parse.ts'
export { scalesOf } from './scaleSettables.ts'
export { serialiseBook } from './serialise.ts'
export {
  bookOf,
  changeEntry,
  choose,
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
export { presentTurf, turfSettableNames } from './turfSettables.ts'
