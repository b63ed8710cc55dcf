import type { Caution, Problem, QuantityName, Scenario } from '@swardsink/model'
import type { Format } from '../words/index.ts'
import type { Entry } from './book.ts'
import type { Fields } from './fields.ts'
import type { Shelf } from './shelf.ts'

/** Why there is no answer: a physical or numerical outcome of the model, or problems in what was asked. */
export type Failure =
  | {
      readonly kind: 'bottomed out'
      readonly where: string
      readonly load: number | null
      readonly lockingDepth: number
    }
  | {
      readonly kind: 'not converged'
      readonly where: string
      readonly iterations: number
      readonly residual: number
    }
  | { readonly kind: 'problems'; readonly problems: readonly Problem[] }
  | { readonly kind: 'worker'; readonly message: string }
  /** A fault of the program itself. */
  | { readonly kind: 'fault'; readonly message: string }
  /** A reason of the entry's own: the words table has its sentence. */
  | { readonly kind: 'reason'; readonly reason: string; readonly values: Readonly<Record<string, string>> }

export type Answer<Result> =
  | {
      readonly outcome: 'answered'
      readonly result: Result
      readonly cautions: readonly Caution[]
      /** Nothing finer is to come, though the kind refines others. */
      readonly whole?: true
    }
  /** Too dear for a frame, and no draft of it either: the last answer stays, and the worker is asked. */
  | { readonly outcome: 'later' }
  | { readonly outcome: 'no answer'; readonly why: Failure; readonly cautions: readonly Caution[] }

/** A number by name in prose and formulas. */
export type LiveValue = {
  /** SI where it is a quantity, else in `unit`; null where there is none: said in words. */
  readonly value: number | null
} & ({ readonly quantity: QuantityName } | { readonly unit: string })

/** Numbers offered by entries, by their ids and then by name. */
export type Offered = Readonly<Record<string, Readonly<Record<string, LiveValue>>>>

/** One line of "how this is worked out": the equation, and the same with the values put in. */
export type WorkedLine = {
  /** Names the sentence in the words table that says what the line works out. */
  readonly what: string
  readonly equation: string
  readonly filled: string
}

/**
 * A kind of entry without its looks: nothing in here touches a document, so that the worker can load it.
 * Methods rather than function fields: a table of kinds with different results is still one type.
 */
export type Kind<
  Name extends string = string,
  Settings extends object = object,
  Input = unknown,
  Result = unknown,
> = {
  readonly kind: Name
  /** The complete settings from what a file says; what is wrong is reported to `fields`. They are written as they are. */
  read(fields: Fields): Settings
  problems(settings: Settings, scenario: Scenario, entries: readonly Entry[]): readonly Problem[]
  /** What a reader who adds such an entry to this book meets first; the usual settings stand for the rest. */
  whenAdded?(q: { readonly scenario: Scenario; readonly entries: readonly Entry[] }): Partial<Settings>
  /** Names of what can be set in this entry: a reader who asks where something is set is led here. */
  sets?(settings: Settings): readonly string[]
  /** Whether entries that come after this one are held back for now; absent: never. */
  holdsBack?(settings: Settings): boolean
  /** Ids of entries whose answers this one reads; `entries` are all of the book. */
  needs(settings: Settings, entries: readonly Entry[]): readonly string[]
  /** Everything the answer depends on, as plain data: equal input means equal answer. */
  input(q: {
    readonly settings: Settings
    readonly scenario: Scenario
    /** By id, of the entries it needs. */
    readonly answers: Readonly<Record<string, unknown>>
    readonly entries: readonly Entry[]
    /** By id, what the entries it needs offer to formulas and prose. */
    readonly offered: Offered
  }): Input
  /** At once, within a frame: the answer, or a draft of it when `refine` follows. */
  compute(input: Input): Answer<Result>
  /** In the worker. `onStep` hears how far it has come, 0 to 1. */
  refine?(input: Input, onStep: (done: number) => void): Answer<Result>
  /** Buffers of a result that are handed over between threads, not copied. */
  buffers?(result: Result): readonly ArrayBuffer[]
  /** Numbers that formulas and prose may call by name. */
  offers?(result: Result): Readonly<Record<string, LiveValue>>
  /** Absent where there is nothing to work out. */
  workedOut?(q: {
    readonly input: Input
    readonly result: Result
    readonly format: Format
  }): readonly WorkedLine[]
  /** Section of docs/physics.md the answer rests on. */
  readonly section: string
  /** The test that checks it, as a path in the repository. */
  readonly check: string
}

/** A table of kinds by name. */
export type Kinds = Readonly<Record<string, Kind>>

export type KindShelf = Shelf<Kind>

export function kindsByName(kinds: readonly Kind[]): Kinds {
  return Object.fromEntries(kinds.map(kind => [kind.kind, kind]))
}
